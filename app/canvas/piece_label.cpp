// SPDX-License-Identifier: MIT
#include "app/canvas/piece_label.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

#include "app/rendering/paint.h"
#include "core/outline/outline.h"
#include "core/picture/picture.h"

namespace matwright::app {

namespace {

constexpr int smallestFont = 12;      // pixels
constexpr double inset = 4;           // from the piece's edge
constexpr double padding = 3;         // beside the words
constexpr double shortestName = 40;   // pixels left for a shortened name
constexpr double narrowestGlyph = 3;  // pixels; no text of n characters is narrower than n of these
constexpr int backingAlpha = 205;

// The piece's box in a frame turned by at most 45 degrees, its centre the origin.
struct Frame {
    QTransform toView;
    QRectF box;
};

Frame frameOf(const Piece& piece, const Viewport& viewport) {
    const QRectF flat = viewport.toView(trimBox(piece));
    const double degrees = piece.rotation.toDegrees();
    const double quarters = std::round(degrees / 90);
    QSizeF size = flat.size();
    if (static_cast<int>(quarters) % 2 != 0) {
        size.transpose();
    }
    Frame frame;
    frame.toView.translate(flat.center().x(), flat.center().y());
    frame.toView.rotate(degrees - 90 * quarters);
    frame.box = {QPointF(-size.width() / 2, -size.height() / 2), size};
    return frame;
}

// Where words may stand in one shape: `rect` for words of `size`, or nothing.
class Places {
  public:
    Places(const Piece& piece, const Frame& frame, const Viewport& viewport) : m_box(frame.box) {
        if (const auto* rounded = std::get_if<RoundedRectangleShape>(&piece.shape)) {
            // What a round corner takes from the diagonal.
            const double radius =
                std::min(static_cast<double>(rounded->radius.ticks()) * viewport.pixelsPerTick(),
                         std::min(m_box.width(), m_box.height()) / 2);
            m_inset += radius * (1 - std::sqrt(0.5));
        } else if (!std::holds_alternative<RectangleShape>(piece.shape)) {
            m_outline = (viewport.transform() * frame.toView.inverted())
                            .map(toPainterPath(trimOutline(piece)));
        }
    }
    bool isCentred() const { return m_outline.has_value(); }
    QSizeF room() const { return {m_box.width() - 2 * m_inset, m_box.height() - 2 * m_inset}; }
    std::optional<QRectF> placeFor(QSizeF size) const {
        if (size.width() > room().width() || size.height() > room().height()) {
            return std::nullopt;
        }
        if (!m_outline) {
            return QRectF({m_box.left() + m_inset, m_box.bottom() - m_inset - size.height()}, size);
        }
        for (const double down : {0.9, 0.82, 0.74, 0.66}) {
            const QRectF rect(
                {-size.width() / 2, m_box.top() + m_box.height() * down - size.height()}, size);
            if (m_outline->contains(rect)) {
                return rect;
            }
        }
        return std::nullopt;
    }

  private:
    QRectF m_box;
    double m_inset = inset;
    std::optional<QPainterPath> m_outline;
};

QString withDot(const QString& before, const QString& after) {
    return before + QStringLiteral(" \u00B7 ") + after;
}

// All that may be said, the best first. `across` pixels are there for a line.
std::vector<QStringList> wordings(const Piece& piece, std::size_t pieceNumber, Scale scale,
                                  const QFontMetricsF& metrics, double across) {
    const QString number = QString::number(pieceNumber);
    const QString size =
        QString::fromStdString(sizeText(piece.printSize.value_or(piece.size), scale));
    std::vector<QStringList> all;
    if (!piece.name.empty()) {
        const QString named = withDot(number, QString::fromStdString(piece.name));
        all.push_back({named, size});
        all.push_back({withDot(named, size)});
        if (across >= shortestName) {
            all.push_back({metrics.elidedText(named, Qt::ElideRight, across), size});
        }
    }
    for (const QString& line : {withDot(number, size), size, number}) {
        all.push_back({line});
    }
    return all;
}

// Nothing where a line is longer than `across`.
std::optional<QSizeF> sizeOf(const QStringList& lines, const QFontMetricsF& metrics,
                             double across) {
    double widest = 0;
    for (const QString& line : lines) {
        if (static_cast<double>(line.size()) * narrowestGlyph > across) {
            return std::nullopt;  // no need to measure it
        }
        widest = std::max(widest, metrics.horizontalAdvance(line));
    }
    if (widest > across) {
        return std::nullopt;
    }
    return QSizeF(std::ceil(widest) + 2 * padding,
                  std::ceil(metrics.height()) * static_cast<double>(lines.size()));
}

}  // namespace

LabelStyle labelStyleFor(QFont font, Scale scale) {
    font.setPixelSize(std::max(smallestFont, QFontInfo(font).pixelSize()));
    return {font, scale};
}

std::optional<PieceLabel> PieceLabel::of(const Piece& piece, std::size_t number,
                                         const Viewport& viewport, const LabelStyle& style) {
    const Frame frame = frameOf(piece, viewport);
    const double least = smallestFont + 2 * inset;
    if (frame.box.width() < least || frame.box.height() < least) {
        return std::nullopt;
    }
    const Places places(piece, frame, viewport);
    const QFontMetricsF metrics(style.font);
    const double across = places.room().width() - 2 * padding;
    for (const QStringList& lines : wordings(piece, number, style.scale, metrics, across)) {
        const auto size = sizeOf(lines, metrics, across);
        const auto rect = size ? places.placeFor(*size) : std::nullopt;
        if (rect) {
            const Colour fill = lookOf(piece.kind).fill;
            const QColor backing(fill.red, fill.green, fill.blue, backingAlpha);
            return PieceLabel{lines, frame.toView, *rect, places.isCentred(), backing, style.font};
        }
    }
    return std::nullopt;
}

void PieceLabel::paint(QPainter& painter) const {
    painter.save();
    painter.setTransform(frame, true);
    QRectF sharp = rect;
    if (frame.type() <= QTransform::TxTranslate) {
        // Upright words stand on whole pixels.
        const QPointF corner = rect.topLeft() + QPointF(frame.dx(), frame.dy());
        sharp.translate(std::round(corner.x()) - corner.x(), std::round(corner.y()) - corner.y());
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(backing);
    painter.drawRoundedRect(sharp, 3, 3);
    painter.setPen(labelInk);
    painter.setFont(font);
    const double height = sharp.height() / static_cast<double>(lines.size());
    QRectF line(sharp.left() + padding, sharp.top(), sharp.width() - 2 * padding + 1, height);
    const int sideways = isCentred ? Qt::AlignHCenter : Qt::AlignLeft;
    for (const QString& text : lines) {
        painter.drawText(line, sideways | Qt::AlignVCenter | Qt::TextSingleLine, text);
        line.translate(0, height);
    }
    painter.restore();
}

}  // namespace matwright::app
