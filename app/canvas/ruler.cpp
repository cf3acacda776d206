// SPDX-License-Identifier: MIT
#include "app/canvas/ruler.h"

#include <QEvent>
#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/canvas/overlay.h"

namespace matwright::app {

namespace {

constexpr double smallestTickGap = 5;
constexpr double smallestFigureGap = 38;

// Every length a ruler may be divided by, finest first.
std::vector<Length> divisions(Scale scale) {
    std::vector<Length> steps;
    if (unitOf(scale) == Unit::Inch) {
        if (scale == Scale::ThirtySecondInch) {
            steps.push_back(Length::inches(0, 1, 32));
        }
        for (const int part : {16, 8, 4, 2}) {
            steps.push_back(Length::inches(0, 1, part));
        }
        for (const int inches : {1, 2, 6, 12, 24, 48, 96}) {
            steps.push_back(Length::inches(inches));
        }
        return steps;
    }
    if (scale == Scale::HalfMillimetre) {
        steps.push_back(Length::hundredthMillimetres(50));
    }
    for (const int mm : {1, 5, 10, 50, 100, 200, 500, 1000, 2000}) {
        steps.push_back(Length::millimetres(mm));
    }
    return steps;
}

Length finestApart(const std::vector<Length>& steps, double pixelsPerInch, double gap,
                   Length multipleOf) {
    for (const Length step : steps) {
        if (step.toInches() * pixelsPerInch >= gap && step.isMultipleOf(multipleOf)) {
            return step;
        }
    }
    return steps.back();
}

}  // namespace

RulerScale rulerScaleFor(Scale scale, double pixelsPerInch) {
    const auto steps = divisions(scale);
    RulerScale ruler;
    ruler.tick = finestApart(steps, pixelsPerInch, smallestTickGap, steps.front());
    ruler.figure = finestApart(steps, pixelsPerInch, smallestFigureGap, ruler.tick);
    for (const Length step : steps) {
        if (step >= ruler.tick && step <= ruler.figure) {
            ruler.levels.push_back(step);
        }
    }
    return ruler;
}

Ruler::Ruler(Qt::Orientation orientation, QWidget* parent)
    : QWidget(parent), m_orientation(orientation) {
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(isAcross() ? tr("Ruler across") : tr("Ruler down"));
    if (isAcross()) {
        setFixedHeight(thickness());
    } else {
        setFixedWidth(thickness());
    }
}

void Ruler::setView(const Viewport& viewport, Scale scale) {
    if (viewport == m_viewport && scale == m_scale && m_isPictureValid) {
        return;
    }
    m_viewport = viewport;
    m_scale = scale;
    m_isPictureValid = false;
    update();
}

void Ruler::setPages(std::vector<Length> begins) {
    if (begins != m_pages) {
        m_pages = std::move(begins);
        m_isPictureValid = false;
        update();
    }
}

void Ruler::setPointer(std::optional<double> at) {
    for (const auto& mark : {m_pointer, at}) {
        if (mark) {
            update(strip(*mark - 5, *mark + 5));
        }
    }
    m_pointer = at;
}

void Ruler::setExtent(std::optional<Interval> extent) {
    if (extent == m_extent) {
        return;
    }
    // Only the ends of the band have moved, unless it has jumped.
    const QRegion before = extentStrip();
    m_extent = extent;
    update(before.xored(extentStrip()));
}

double Ruler::toPixels(Length at) const {
    const QPointF point = m_viewport.toView(Point{at, at});
    return isAcross() ? point.x() : point.y();
}

QRect Ruler::strip(double from, double to) const {
    const double low = std::clamp(from, -10.0, length() + 10.0);
    const double high = std::clamp(to, -10.0, length() + 10.0);
    const QRectF area =
        isAcross() ? QRectF(low, 0, high - low, height()) : QRectF(0, low, width(), high - low);
    return area.toAlignedRect();
}

QRect Ruler::extentStrip() const {
    return m_extent ? strip(toPixels(m_extent->low), toPixels(m_extent->high)) : QRect();
}

void Ruler::resizeEvent(QResizeEvent*) {
    m_isPictureValid = false;
}

void Ruler::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        m_isPictureValid = false;
        update();
    }
    QWidget::changeEvent(event);
}

void Ruler::drawPicture() {
    const double ratio = devicePixelRatioF();
    m_picture = QPixmap((QSizeF(size()) * ratio).toSize());
    m_picture.setDevicePixelRatio(ratio);
    m_picture.fill(palette().color(QPalette::Base));
    QPainter painter(&m_picture);
    paintStrokes(painter);
    m_isPictureValid = true;
}

void Ruler::paintStrokes(QPainter& painter) const {
    const RulerScale ruler = rulerScaleFor(m_scale, m_viewport.pixelsPerInch());
    painter.setFont(smallFont(font()));
    for (std::size_t page = 0; page < m_pages.size(); ++page) {
        paintPage(painter, ruler, page);
    }
    QColor ink = palette().color(QPalette::Text);
    ink.setAlpha(70);
    painter.setPen(QPen(ink, 1));
    if (isAcross()) {
        painter.drawLine(QPointF(0, height() - 0.5), QPointF(width(), height() - 0.5));
    } else {
        painter.drawLine(QPointF(width() - 0.5, 0), QPointF(width() - 0.5, height()));
    }
}

void Ruler::paintPage(QPainter& painter, const RulerScale& ruler, std::size_t page) const {
    const Rect seen = m_viewport.toPage(QRectF(0, 0, length(), length()));
    const Interval range = isAcross() ? seen.x : seen.y;
    const Length begin = m_pages[page];
    const bool isLast = page + 1 == m_pages.size();
    const Length low = page == 0 ? range.low : std::max(range.low, begin);
    const Length high = isLast ? range.high + ruler.figure : m_pages[page + 1];
    // The next page's 0 needs room for itself.
    const Length clear = isLast ? high : high - ruler.figure.halfRoundedDown();
    const std::int64_t step = ruler.tick.ticks();
    const auto first = static_cast<std::int64_t>(
        std::floor(static_cast<double>((low - begin).ticks()) / static_cast<double>(step)));
    for (auto at = begin + Length::fromTicks(first * step);
         isLast ? at <= high : at < high && at <= range.high; at += ruler.tick) {
        paintStroke(painter, ruler, at, begin, at <= clear);
    }
}

void Ruler::paintStroke(QPainter& painter, const RulerScale& ruler, Length at, Length begin,
                        bool mayHaveFigure) const {
    const Length shown = at - begin;
    const auto isOn = [shown](Length level) { return shown.isMultipleOf(level); };
    const auto level = std::ranges::count_if(ruler.levels, isOn);
    const bool hasFigure = mayHaveFigure && shown.isMultipleOf(ruler.figure);
    const double reach = hasFigure ? 10 : std::min<double>(2 + 2 * double(level), 9);
    const double pixel = std::floor(toPixels(at)) + 0.5;
    QColor ink = palette().color(QPalette::Text);
    ink.setAlpha(hasFigure ? 220 : 120);
    painter.setPen(QPen(ink, 1));
    if (isAcross()) {
        painter.drawLine(QPointF(pixel, height() - reach), QPointF(pixel, height()));
    } else {
        painter.drawLine(QPointF(width() - reach, pixel), QPointF(width(), pixel));
    }
    if (hasFigure) {
        paintFigure(painter, shown, pixel);
    }
}

void Ruler::paintFigure(QPainter& painter, Length at, double pixel) const {
    painter.save();
    painter.setPen(palette().color(QPalette::Text));
    const QString text = QString::fromStdString(figureText(at, m_scale));
    const double room = 60;
    if (isAcross()) {
        painter.drawText(QRectF(pixel - room / 2, 0, room, height() - 10), Qt::AlignCenter, text);
    } else {
        painter.translate((width() - 10) / 2.0, pixel);
        painter.rotate(-90);
        painter.drawText(QRectF(-room / 2, -8, room, 16), Qt::AlignCenter, text);
    }
    painter.restore();
}

void Ruler::paintEvent(QPaintEvent* event) {
    if (!m_isPictureValid || m_picture.devicePixelRatio() != devicePixelRatioF()) {
        drawPicture();
    }
    QPainter painter(this);
    const double ratio = m_picture.devicePixelRatio();
    for (const QRect& rect : event->region()) {
        painter.drawPixmap(QRectF(rect), m_picture,
                           QRectF(QPointF(rect.topLeft()) * ratio, QSizeF(rect.size()) * ratio));
    }
    if (m_extent) {
        QColor band = palette().color(QPalette::Highlight);
        band.setAlpha(70);
        painter.fillRect(extentStrip(), band);
    }
    if (m_pointer) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette().color(QPalette::Highlight));
        const double end = isAcross() ? height() : width();
        QPolygonF mark{{*m_pointer - 4, end - 6}, {*m_pointer + 4, end - 6}, {*m_pointer, end}};
        if (!isAcross()) {
            for (QPointF& corner : mark) {
                corner = corner.transposed();
            }
        }
        painter.drawPolygon(mark);
    }
}

}  // namespace matwright::app
