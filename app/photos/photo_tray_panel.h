// SPDX-License-Identifier: MIT
#pragma once

#include <QLabel>
#include <QProgressBar>
#include <QToolButton>
#include <QWidget>
#include <span>

#include "app/photos/photo_tray_view.h"
#include "app/settings/settings.h"

class QComboBox;

namespace matwright::app {

class PhotoDetails;
class TintedLabel;

// The photos of the open page: how they are sorted, the photos themselves, what is known of the
// chosen ones, and how far reading has come.
class PhotoTrayPanel final : public QWidget {
    Q_OBJECT

  public:
    // All outlive the panel. `add` are the commands of its Add button.
    PhotoTrayPanel(Session& session, PhotoAccess& access, SettingsStore& settings,
                   const QList<QAction*>& add, QWidget* parent = nullptr);

    PhotoTrayView& view() { return *m_view; }
    PhotoTrayModel& model() { return *m_model; }
    // Says where photos cannot be read at all.
    void showFault(const QString& sentence);

  signals:
    void cancelRequested();
    void whereIsIt(matwright::PhotoId photo);
    void said(const QString& sentence);

  private:
    QWidget* makeTop(SettingsStore& settings, const QList<QAction*>& add);
    QWidget* makeProgress();
    void listenTo(PhotoService* service);
    void showProgress(int done, int total);
    void showChosen();

    Session& m_session;
    PhotoTrayModel* m_model;
    PhotoTrayView* m_view;
    PhotoDetails* m_details;
    TintedLabel* m_fault;
    QWidget* m_progressRow;
    QLabel* m_progressText;
    QProgressBar* m_progress;
};

}  // namespace matwright::app
