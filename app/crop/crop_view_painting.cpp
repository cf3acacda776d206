// SPDX-License-Identifier: MIT
// What CropView shows: the photo, the paper around the window, lines, the handle, captions.
#include <QPaintEvent>
#include <QPainter>
#include <QPainterPath>
#include <QtMath>
#include <cmath>

#include "app/crop/crop_view.h"
#include "app/settings/palettes.h"
#include "core/measure/length_text.h"

namespace matwright::app {

namespace {

constexpr double goldenShare = 0.381966;  // 1 - 1/phi: the smaller part of the golden section
constexpr QColor frameInk(255, 255, 255);
constexpr QColor frameHalo(0, 0, 0, 150);
constexpr QColor hatchInk(60, 60, 60, 120);
constexpr QColor cutPaper(250, 250, 248, 175);
constexpr QColor captionFill(24, 26, 28, 205);
constexpr double arcReach = 12;  // degrees each way of the arc that the handle stands on

QColor aroundColour(const QPalette& palette) {
    return isDark(palette) ? QColor(30, 30, 31) : QColor(214, 212, 208);
}

// A line that can be seen on any photo: light on a dark halo, on pixel centres.
void strokeSeen(QPainter& painter, const QRectF& rect, Qt::PenStyle style) {
    const QRectF sharp = QRectF(rect.toRect()).adjusted(-0.5, -0.5, 0.5, 0.5);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(frameHalo, 3));
    painter.drawRect(sharp);
    painter.setPen(QPen(frameInk, 1, style));
    painter.drawRect(sharp);
}

// A line of `length` whole pixels across: light on a dark halo. Put down as a picture it costs a
// small part of what a stroke costs, or an upright filled rectangle, which Qt hands to other
// threads.
QPixmap lineSeen(int length) {
    QPixmap line(length, 3);
    line.fill(QColor(0, 0, 0, 55));
    QPainter(&line).fillRect(0, 1, length, 1, QColor(255, 255, 255, 165));
    return line;
}

void caption(QPainter& painter, const QRectF& view, QPointF middle, const QString& text) {
    const QFontMetricsF metrics(painter.font());
    QRectF box(0, 0, metrics.horizontalAdvance(text) + 16, metrics.height() + 6);
    box.moveCenter(middle);
    box.moveLeft(std::max(4.0, std::min(box.left(), view.right() - box.width() - 4)));
    box.moveTop(std::max(4.0, std::min(box.top(), view.bottom() - box.height() - 4)));
    painter.setPen(Qt::NoPen);
    painter.setBrush(captionFill);
    painter.drawRoundedRect(box, 4, 4);
    painter.setPen(Qt::white);
    painter.drawText(box, Qt::AlignCenter, text);
}

QString sizeWords(Size size) {
    return QString::fromStdString(naturalSizeText(size));
}

}  // namespace

void CropView::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    if (isShowingFinal()) {
        paintFinal(painter);
        return;
    }
    const CropFrame now = frame();
    paintPhoto(painter, now, event->region());
    if (m_tile.hasCopy()) {
        paintLines(painter, now.window);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    paintPaper(painter, now, event->region());
    if (m_tile.hasCopy()) {
        paintHandle(painter, now, event->region());
    }
    if (now.window.toRect().contains(event->region().boundingRect())) {
        return;  // a photo that is moved: captions and focus frame stand outside
    }
    paintCaptions(painter, now);
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void CropView::paintPhoto(QPainter& painter, const CropFrame& frame, const QRegion& area) {
    if (!m_tile.hasCopy()) {
        paintNotice(painter, frame);
        return;
    }
    m_tile.setAround(aroundColour(palette()));
    m_tile.prepare(photoToView(m_crop, m_subject, m_border, frame), m_crop.quarterTurns, size(),
                   devicePixelRatioF());
    const QRect window = frame.window.toRect();
    m_tile.paintFaded(painter, area - window);
    m_tile.paint(painter, window);
}

void CropView::paintNotice(QPainter& painter, const CropFrame& frame) const {
    painter.fillRect(rect(), aroundColour(palette()));
    painter.fillRect(frame.window, palette().color(QPalette::Base));
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(frame.window.adjusted(12, 12, -12, -12), Qt::AlignCenter | Qt::TextWordWrap,
                     m_notice);
}

// The white border inside the trim, and what the trimmer takes away outside of it.
void CropView::paintPaper(QPainter& painter, const CropFrame& frame, const QRegion& area) const {
    const QRegion trim(frame.trim.toRect());
    const QRegion white = trim - frame.window.toRect();
    for (const QRect& part : white) {
        painter.fillRect(part, Qt::white);
    }
    const QRegion cut = QRegion(frame.print.toRect()) - trim;
    for (const QRect& part : cut) {
        painter.fillRect(part, cutPaper);
        painter.fillRect(part, QBrush(hatchInk, Qt::BDiagPattern));
    }
    if (!cut.isEmpty()) {
        strokeSeen(painter, frame.print, Qt::DashLine);
    }
    if (area.intersects(QRegion(frame.trim.toRect().adjusted(-2, -2, 2, 2)) -
                        frame.trim.toRect().adjusted(1, 1, -1, -1))) {
        strokeSeen(painter, frame.trim, Qt::SolidLine);
    }
}

void CropView::paintLines(QPainter& painter, const QRectF& window) {
    if (m_lines == Lines::None) {
        return;
    }
    const QRect inside = window.toRect();
    if (m_levelLine.width() != inside.width() || m_uprightLine.height() != inside.height()) {
        m_levelLine = lineSeen(inside.width());
        m_uprightLine = lineSeen(inside.height()).transformed(QTransform().rotate(90));
    }
    const double share = m_lines == Lines::Thirds ? 1.0 / 3 : goldenShare;
    for (const double at : {share, 1 - share}) {
        const int x = static_cast<int>(std::floor(window.left() + window.width() * at));
        const int y = static_cast<int>(std::floor(window.top() + window.height() * at));
        painter.drawPixmap(x - 1, inside.top(), m_uprightLine);
        painter.drawPixmap(inside.left(), y - 1, m_levelLine);
    }
}

void CropView::paintHandle(QPainter& painter, const CropFrame& frame, const QRegion& area) const {
    if (frame.print.toRect().contains(area.boundingRect())) {
        return;  // it stands outside
    }
    const QPointF middle = frame.print.center();
    const QPointF at = handleAt();
    const double radius = QLineF(middle, at).length();
    const QRectF circle(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius);
    painter.setBrush(Qt::NoBrush);
    for (const auto& [colour, width] : {std::pair{frameHalo, 3.0}, {frameInk, 1.0}}) {
        painter.setPen(QPen(colour, width));
        painter.drawArc(circle, qRound(-arcReach * 16), qRound(2 * arcReach * 16));
    }
    const bool isHeld = m_drag == Drag::Handle;
    painter.setPen(QPen(frameInk, 2));
    painter.setBrush(isHeld ? palette().color(QPalette::Highlight).darker(120)
                            : palette().color(QPalette::Highlight));
    painter.drawEllipse(at, 9, 9);
    if (isHeld) {
        caption(painter, rect(), at + QPointF(0, -26),
                QString::fromStdString(turnText(m_crop.straighten)));
    }
}

void CropView::paintCaptions(QPainter& painter, const CropFrame& frame) const {
    const bool isTrimmed = m_subject.print != m_subject.trim;
    const double middle = frame.print.center().x();
    if (!isTrimmed) {
        caption(painter, rect(), {middle, frame.print.top() - 18},
                tr("%1 print").arg(sizeWords(m_subject.print)));
        return;
    }
    caption(
        painter, rect(), {middle, frame.print.top() - 18},
        tr("%1 print, trimmed to %2").arg(sizeWords(m_subject.print), sizeWords(m_subject.trim)));
    caption(painter, rect(), {middle, frame.print.bottom() + 18},
            tr("Hatched: the paper trimmer takes this off"));
}

void CropView::paintFinal(QPainter& painter) const {
    painter.fillRect(rect(), aroundColour(palette()));
    const double ratio = devicePixelRatioF();
    const QPointF at = QPointF(finalOrigin()) / ratio;
    painter.drawImage(at, m_final);
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2));
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

}  // namespace matwright::app
