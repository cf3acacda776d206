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
    // Nothing: the pointer is not on the canvas. On a double page left counts from the page it is
    // on.
    void showPointer(std::optional<Point> at, const PageSetup& page, Scale scale);
    void showZoom(double zoom);
    void showFindings(int count);

    QString sentence() const { return m_hint->text(); }
    QComboBox& zoomBox() { return *m_zoom; }
    QToolButton& checksButton() { return *m_checks; }

  signals:
    void zoomChosen(double zoom);
    void checksRequested();

  private:
    void readZoom();

    QLabel* m_hint;
    QLabel* m_pointer;
    QToolButton* m_checks;
    QComboBox* m_zoom;
    double m_shownZoom = 1;
};

}  // namespace matwright::app
