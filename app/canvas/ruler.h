// SPDX-License-Identifier: MIT
#pragma once

#include <QPixmap>
#include <QWidget>
#include <optional>
#include <vector>

#include "app/canvas/viewport.h"
#include "core/measure/length_text.h"

namespace matwright::app {

// How a ruler is divided at one zoom: the finest ticks that stay apart, and the figures.
struct RulerScale {
    Length tick;                 // between two strokes
    Length figure;               // between two figures; a multiple of `tick`
    std::vector<Length> levels;  // strokes at multiples of these are longer, shortest first
};
// In inches down to 1/16 (1/32 where the scale shows them) or in mm down to 1 (1/2).
RulerScale rulerScaleFor(Scale scale, double pixelsPerInch);

// The measure along one edge of the canvas, with a mark at the pointer and a band along the
// selection. The strokes are kept as a picture, so that the marks move for next to nothing.
class Ruler final : public QWidget {
    Q_OBJECT

  public:
    Ruler(Qt::Orientation orientation, QWidget* parent = nullptr);

    void setView(const Viewport& viewport, Scale scale);
    // Where pages begin along the ruler, ascending: it counts from the last one before a place, and
    // before the first from that.
    void setPages(std::vector<Length> begins);
    void setPointer(std::optional<double> at);       // view pixels along the ruler
    void setExtent(std::optional<Interval> extent);  // page coordinates
    static int thickness() { return 26; }
    QSize sizeHint() const override { return {thickness(), thickness()}; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    bool isAcross() const { return m_orientation == Qt::Horizontal; }
    int length() const { return isAcross() ? width() : height(); }
    QRect strip(double from, double to) const;
    double toPixels(Length at) const;
    QRect extentStrip() const;
    void drawPicture();
    void paintStrokes(QPainter& painter) const;
    void paintPage(QPainter& painter, const RulerScale& ruler, std::size_t page) const;
    void paintStroke(QPainter& painter, const RulerScale& ruler, Length at, Length begin,
                     bool mayHaveFigure) const;
    void paintFigure(QPainter& painter, Length at, double pixel) const;

    Qt::Orientation m_orientation;
    Viewport m_viewport;
    Scale m_scale = Scale::SixteenthInch;
    std::vector<Length> m_pages{Length()};
    std::optional<double> m_pointer;
    std::optional<Interval> m_extent;
    QPixmap m_picture;
    bool m_isPictureValid = false;
};

}  // namespace matwright::app
