// SPDX-License-Identifier: MIT
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QObject>
#include <QStatusBar>
#include <QToolButton>
#include <optional>

#include "core/measure/length_text.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

// What stands in the status bar: one line of advice, where the pointer is, how many checks found
// something, and the zoom.
class StatusLine final : public QObject {
    Q_OBJECT

  public:
    explicit StatusLine(QStatusBar& bar);

    void say(const QString& sentence);
    // Something stays wrong until it is taken back: says it once, and keeps `words` in sight with
    // the sentence as its tool tip and accessible description. A click says the sentence again.
    void warn(const QString& words, const QString& sentence);
    void takeBackWarning();
    // Nothing: the pointer is not on the canvas. On a double page left counts from the page it is
    // on.
    void showPointer(std::optional<Point> at, const PageSetup& page, Scale scale);
    void showZoom(double zoom);
    void showFindings(int count);

    // Empty where nothing is wrong.
    QString warning() const;
    QString sentence() const { return m_hint->text(); }
    QComboBox& zoomBox() { return *m_zoom; }
    QToolButton& checksButton() { return *m_checks; }

  signals:
    void zoomChosen(double zoom);
    void checksRequested();

  private:
    void readZoom();

    QToolButton* m_warning;
    QLabel* m_hint;
    QLabel* m_pointer;
    QToolButton* m_checks;
    QComboBox* m_zoom;
    double m_shownZoom = 1;
};

}  // namespace matwright::app
