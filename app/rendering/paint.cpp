// SPDX-License-Identifier: MIT
#include "app/rendering/paint.h"

#include <QFont>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/rendering/colours.h"

namespace matwright::app {

namespace {

// Painting goes in points, not ticks: a PDF then holds coordinates of a size every reader takes.
constexpr double ticksPerUnit = Length::ticksPerPoint;
// Qt rounds font sizes to whole pixels; one large size, scaled down, keeps all widths true.
constexpr int fontPixels = 1000;

QPointF at(const Vertex& v, double ticks) {
    return {v.x / ticks, v.y / ticks};
}

void append(QPainterPath& to, const Path& path, double ticks) {
    to.moveTo(at(path.start, ticks));
    for (const PathSegment& s : path.segments) {
        if (s.curved) {
            to.cubicTo(at(s.control1, ticks), at(s.control2, ticks), at(s.end, ticks));
        } else {
            to.lineTo(at(s.end, ticks));
        }
    }
    if (path.closed) {
        to.closeSubpath();
    }
}

QPainterPath joined(const std::vector<Path>& paths, double ticks) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    for (const Path& p : paths) {
        append(path, p, ticks);
    }
    return path;
}

double inUnits(Length length) {
    return static_cast<double>(length.ticks()) / ticksPerUnit;
}

// A dash shorter than this many line widths reads as a grey line.
constexpr double shortestDash = 2;

// How much longer dashes must be so that they show on a line made at least `leastWidth` wide.
double dashGrowth(const std::vector<Length>& dashes, double leastWidth) {
    const double shortest = inUnits(*std::ranges::min_element(dashes));
    return shortest > 0 ? std::max(1.0, shortestDash * leastWidth / shortest) : 1.0;
}

QPen penOf(const Stroke& stroke, double leastWidth) {
    const double width = std::max(inUnits(stroke.width), leastWidth);
    QPen pen(toColor(stroke.colour), width, Qt::SolidLine, Qt::FlatCap, Qt::SvgMiterJoin);
    pen.setMiterLimit(4);
    if (!stroke.dash.empty()) {
        const double growth = dashGrowth(stroke.dash, leastWidth);
        // Qt counts dashes in pen widths and wants an even number of them; SVG repeats odd lists.
        QList<qreal> dashes;
        for (std::size_t round = 0; round < 1 + stroke.dash.size() % 2; ++round) {
            for (const Length dash : stroke.dash) {
                dashes.append(inUnits(dash) * growth / width);
            }
        }
        pen.setDashPattern(dashes);
    }
    return pen;
}

QFont fontOf(bool bold) {
    QFont font;
    font.setFamilies({QString::fromLatin1(drawingFontFamily), QStringLiteral("sans-serif")});
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(fontPixels);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setBold(bold);
    return font;
}

void paint(QPainter& painter, const PathItem& item, double leastWidth) {
    painter.setPen(item.stroke ? penOf(*item.stroke, leastWidth) : QPen(Qt::NoPen));
    painter.setBrush(item.fill ? QBrush(toColor(*item.fill)) : QBrush(Qt::NoBrush));
    painter.drawPath(joined(item.paths, ticksPerUnit));
}

void paint(QPainter& painter, const TextItem& item, double /*leastWidth*/) {
    const QFont font = fontOf(item.bold);
    const QString text = QString::fromStdString(item.text);
    double left = 0;
    if (item.anchor != TextAnchor::Start) {
        const double width = QFontMetricsF(font).horizontalAdvance(text);
        left = item.anchor == TextAnchor::Middle ? -width / 2 : -width;
    }
    const double k = static_cast<double>(item.height.ticks()) / ticksPerUnit / fontPixels;
    painter.save();
    painter.translate(at(item.at, ticksPerUnit));
    painter.rotate(item.rotation.toDegrees());
    painter.scale(k, k);
    painter.setFont(font);
    painter.setPen(toColor(item.colour));
    painter.drawText(QPointF(left, 0), text);
    painter.restore();
}

void paintInUnits(QPainter& painter, const DrawingItem& item, double leastWidth) {
    std::visit([&](const auto& one) { paint(painter, one, leastWidth); }, item);
}

void paintLayers(QPainter& painter, const Drawing& drawing, double leastWidth) {
    painter.save();
    painter.scale(ticksPerUnit, ticksPerUnit);
    for (const Layer& layer : drawing.layers) {
        for (const DrawingItem& item : layer.items) {
            paintInUnits(painter, item, leastWidth);
        }
    }
    painter.restore();
}

}  // namespace

void paintDrawing(QPainter& painter, const Drawing& drawing) {
    paintLayers(painter, drawing, 0);
}

void paintPreview(QPainter& painter, const Drawing& drawing, double leastWidth) {
    const double pixelsPerUnit =
        std::sqrt(std::abs(painter.worldTransform().determinant())) * ticksPerUnit;
    paintLayers(painter, drawing, pixelsPerUnit > 0 ? leastWidth / pixelsPerUnit : 0);
}

void paintItem(QPainter& painter, const DrawingItem& item) {
    painter.save();
    painter.scale(ticksPerUnit, ticksPerUnit);
    paintInUnits(painter, item, 0);
    painter.restore();
}

QPainterPath toPainterPath(const Path& path) {
    QPainterPath result;
    result.setFillRule(Qt::OddEvenFill);
    append(result, path, 1);
    return result;
}

QPainterPath toPainterPath(const std::vector<Path>& paths) {
    return joined(paths, 1);
}

QImage imageOf(const Drawing& drawing, double ppi) {
    const double width = std::ceil(drawing.size.width.toInches() * ppi - 1e-6);
    const double height = std::ceil(drawing.size.height.toInches() * ppi - 1e-6);
    if (!(width * height <= static_cast<double>(maxImagePixels))) {
        return {};
    }
    QImage image(std::max(1, static_cast<int>(width)), std::max(1, static_cast<int>(height)),
                 QImage::Format_RGB32);
    const int dotsPerMetre = static_cast<int>(std::lround(ppi / 0.0254));
    image.setDotsPerMeterX(dotsPerMetre);
    image.setDotsPerMeterY(dotsPerMetre);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(ppi / Length::ticksPerInch, ppi / Length::ticksPerInch);
    paintDrawing(painter, drawing);
    return image;
}

double paintedTextWidth(const std::string& text, Length height, bool bold) {
    const QFontMetricsF metrics(fontOf(bold));
    return metrics.horizontalAdvance(QString::fromStdString(text)) *
           static_cast<double>(height.ticks()) / fontPixels;
}

}  // namespace matwright::app
