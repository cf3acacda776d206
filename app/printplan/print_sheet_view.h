// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QWidget>
#include <functional>

#include "core/printplan/print_plan.h"

namespace matwright::app {

// One sheet of a plan as it will come out: the prints where they lie, each with its number, and
// the cuts numbered in the order they are made.
class PrintSheetView final : public QWidget {
    Q_OBJECT

  public:
    // A print as it comes out (see printPicture()), or a null image.
    using Picture = std::function<QImage(std::size_t print, int longSide)>;

    PrintSheetView(PrintSheet sheet, SheetSteps steps, Picture picture, QWidget* parent = nullptr);

    // The sheet within the widget, in pixels.
    QRectF sheetRect() const;
    QSize sizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QRectF onView(const Rect& area) const;
    void paintPrint(QPainter& painter, const Gang::Place& place, std::size_t index);
    QLineF lineOf(const CutStep& step) const;
    void paintCuts(QPainter& painter) const;

    const PrintSheet m_sheet;
    const SheetSteps m_steps;
    Picture m_picture;
    std::vector<QImage> m_pictures;  // of the places, once they are there
};

}  // namespace matwright::app
