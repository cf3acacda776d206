// SPDX-License-Identifier: MIT
#include "app/library/wall_cell.h"

#include <QCoreApplication>
#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/library/entry_words.h"
#include "app/library/thumbnail_drawing.h"
#include "app/settings/palettes.h"

namespace matwright::app {
namespace {

constexpr int pad = 10;
constexpr int gapAboveTexts = 8;
constexpr int chipHeight = 24;
constexpr double radius = 6;

struct CellWords {
    Q_DECLARE_TR_FUNCTIONS(WallCell)
};

QString alikeWords(int alike) {
    return CellWords::tr("+%1 alike").arg(alike);
}

// A double page first of all: where there is no room for everything, the picture shows the photos.
QString shortFacts(const SketchFacts& facts) {
    const QString photos = photoWords(facts.photos);
    return facts.doublePage
               ? CellWords::tr("%1 double · %2").arg(shortSizeWords(facts.pageSize), photos)
               : CellWords::tr("%1 · %2").arg(photos, pageWords(facts));
}

QColor mixed(const QColor& a, const QColor& b, double share) {
    const auto part = [share](float x, float y) { return static_cast<float>(x + (y - x) * share); };
    return QColor::fromRgbF(part(a.redF(), b.redF()), part(a.greenF(), b.greenF()),
                            part(a.blueF(), b.blueF()));
}

// Where a picture of the page's proportions lies in the box: in the middle, at its foot, so that a
// row of pages stands on one line.
QRect standing(const QRect& box, QSize picture) {
    return {QPoint(box.left() + (box.width() - picture.width()) / 2,
                   box.bottom() + 1 - picture.height()),
            picture};
}

}  // namespace

QPainterPath starIn(const QRectF& box) {
    QPolygonF corners;
    for (int i = 0; i < 10; ++i) {
        const double angle = std::numbers::pi * (i / 5.0 - 0.5);
        const double reach = (i % 2 == 0 ? 0.5 : 0.21) * box.width();
        corners << box.center() + QPointF(reach * std::cos(angle), reach * std::sin(angle));
    }
    QPainterPath path;
    path.addPolygon(corners);
    path.closeSubpath();
    return path;
}

void paintPageOn(QPainter& painter, const QRect& page, const QImage& picture,
                 const QPalette& palette) {
    const int strongest = isDark(palette) ? 90 : 40;
    for (int i = 3; i > 0; --i) {
        painter.fillRect(page.adjusted(-i + 1, -i + 3, i - 1, i + 1),
                         QColor(0, 0, 0, strongest / (2 * i)));
    }
    if (picture.isNull()) {
        painter.fillRect(page, isDark(palette) ? QColor(0xd9d5ce) : QColor(0xfcfbf9));
    } else {
        painter.setRenderHint(
            QPainter::SmoothPixmapTransform,
            picture.size() != page.size() * painter.device()->devicePixelRatioF());
        painter.drawImage(page, picture);
    }
    painter.setPen(edgeColour(palette));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(page.adjusted(-1, -1, 0, 0));
}

WallCell::WallCell(const QFont& font, int pictureSide)
    : m_font(font), m_nameFont(font), m_side(pictureSide) {
    m_nameFont.setWeight(QFont::DemiBold);
    m_lineHeight = std::max(QFontMetrics(m_font).height(), QFontMetrics(m_nameFont).height()) + 1;
    m_size = {m_side + 2 * pad, m_side + 2 * pad + gapAboveTexts + 3 * m_lineHeight};
}

QRect WallCell::pictureBox(const QRect& cell) const {
    return {cell.left() + pad, cell.top() + pad, m_side, m_side};
}

QRect WallCell::alikeRect(const QRect& cell, int alike) const {
    if (alike <= 0) {
        return {};
    }
    const int width = QFontMetrics(m_font).horizontalAdvance(alikeWords(alike)) + 16;
    const QRect box = pictureBox(cell);
    return {box.right() - width + 5, box.bottom() - chipHeight + 5, width, chipHeight};
}

void WallCell::paint(QPainter& painter, const QRect& cell, const CellState& state,
                     const QPalette& palette) const {
    paintGround(painter, cell, state, palette);
    paintPicture(painter, cell, state, palette);
    paintTexts(painter, cell, state, palette);
    paintAlike(painter, cell, state.alike, palette);
}

void WallCell::paintGround(QPainter& painter, const QRect& cell, const CellState& state,
                           const QPalette& palette) const {
    const QColor accent = palette.color(QPalette::Highlight);
    const QColor ground = palette.color(QPalette::Base);
    const QRectF edge = QRectF(cell).adjusted(1.5, 1.5, -1.5, -1.5);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    if (state.isSelected) {
        painter.setBrush(mixed(ground, accent, 0.16));
        painter.setPen(QPen(accent, 2));
        painter.drawRoundedRect(edge, radius, radius);
    } else if (state.isHovered) {
        painter.setBrush(mixed(ground, palette.color(QPalette::Text), 0.06));
        painter.drawRoundedRect(edge, radius, radius);
    }
    if (state.isCurrent) {
        QPen focus(palette.color(QPalette::Text), 1, Qt::CustomDashLine);
        focus.setDashPattern({3, 3});
        painter.setPen(focus);
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(edge.adjusted(3, 3, -3, -3), radius - 2, radius - 2);
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
}

void WallCell::paintPicture(QPainter& painter, const QRect& cell, const CellState& state,
                            const QPalette& palette) const {
    PageSetup page;
    page.size = state.entry.facts.pageSize;
    page.doublePage = state.entry.facts.doublePage;
    QSize size = pictureSize(page, m_side);
    if (!state.picture.isNull()) {  // which knows the fold gap too
        size = state.picture.size().scaled(m_side, m_side, Qt::KeepAspectRatio);
    }
    const QRect place = standing(pictureBox(cell), size);
    paintPageOn(painter, place, state.picture, palette);
    if (state.hasFailed) {
        painter.setPen(QColor(0x4a453e));
        painter.setFont(m_font);
        painter.drawText(place.adjusted(6, 6, -6, -6), Qt::AlignCenter | Qt::TextWordWrap,
                         CellWords::tr("No picture"));
    }
}

void WallCell::paintTexts(QPainter& painter, const QRect& cell, const CellState& state,
                          const QPalette& palette) const {
    QRect line(cell.left() + pad, cell.top() + pad + m_side + gapAboveTexts, m_side, m_lineHeight);
    QRect nameLine = line;
    if (state.entry.labels.favourite) {
        const int star = m_lineHeight - 4;
        nameLine.setRight(line.right() - star - 4);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.color(QPalette::Highlight));
        painter.drawPath(starIn(QRectF(line.right() + 1 - star, line.top() + 2, star, star)));
        painter.setRenderHint(QPainter::Antialiasing, false);
    }
    const auto write = [&](const QRect& place, const QFont& font, QPalette::ColorRole role,
                           const QString& text) {
        painter.setFont(font);
        painter.setPen(palette.color(role));
        painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                         QFontMetrics(font).elidedText(text, Qt::ElideRight, place.width()));
    };
    write(nameLine, m_nameFont, QPalette::Text, asText(shownName(state.entry)));
    line.translate(0, m_lineHeight);
    write(line, m_font, QPalette::Text, shortFacts(state.entry.facts));
    line.translate(0, m_lineHeight);
    write(line, m_font, QPalette::PlaceholderText, printNeedWords(state.entry.facts.prints));
}

void WallCell::paintAlike(QPainter& painter, const QRect& cell, int alike,
                          const QPalette& palette) const {
    if (alike <= 0) {
        return;
    }
    const QRect chip = alikeRect(cell, alike);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(edgeColour(palette));
    painter.setBrush(palette.color(QPalette::Window));
    painter.drawRoundedRect(QRectF(chip).adjusted(0.5, 0.5, -0.5, -0.5), chipHeight / 2.0,
                            chipHeight / 2.0);
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setFont(m_font);
    painter.setPen(palette.color(QPalette::WindowText));
    painter.drawText(chip, Qt::AlignCenter, alikeWords(alike));
}

}  // namespace matwright::app
