// SPDX-License-Identifier: MIT
#pragma once

#include <QFutureWatcher>
#include <QTimer>
#include <QWidget>
#include <stop_token>
#include <vector>

#include "app/editing/session.h"
#include "app/settings/settings.h"
#include "core/checks/checks.h"

class QLabel;
class QListWidget;
class QListWidgetItem;
class QStackedLayout;

namespace matwright::app {

// What a person may want to mend, one sentence a line. Kept up to date in the background: a change
// is checked once the sketch has rested for restMs, on a worker, and of overlapping runs only the
// latest counts; an outdated one is stopped. A click or Enter selects the pieces.
class ChecksPanel final : public QWidget {
    Q_OBJECT

  public:
    static constexpr int restMs = 150;

    // Both must outlive the panel.
    ChecksPanel(Session& session, SettingsStore& settings, QWidget* parent = nullptr);
    ~ChecksPanel() override;

    const std::vector<CheckFinding>& findings() const { return m_findings; }
    // The same with and without findings, so that nothing around the panel jumps.
    QSize sizeHint() const override { return {420, 150}; }
    // Three findings of two lines each.
    QSize minimumSizeHint() const override { return {160, 136}; }

  signals:
    // Fresh findings are shown.
    void countChanged(int count);
    void revealRequested(matwright::PieceId id);

  protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void ask();
    void start();
    void finished();
    void showFindings();
    void fitRows();
    void choose(const QListWidgetItem* item);
    CheckSettings checkSettings() const;

    Session& m_session;
    SettingsStore& m_settings;
    QStackedLayout* m_layers;
    QLabel* m_nothing;
    QListWidget* m_list;
    QTimer m_rest;
    QFutureWatcher<std::vector<CheckFinding>> m_run;
    std::stop_source m_stop;  // of that run
    bool m_outdated = false;  // something changed while a run was on its way
    std::vector<CheckFinding> m_findings;
};

}  // namespace matwright::app
