// SPDX-License-Identifier: MIT
#include "app/panels/tray_delegate.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/panels/tray_view.h"
#include "app/rendering/paint.h"
#include "core/picture/picture.h"

namespace matwright::app {

namespace {

constexpr int padding = 6;
// Three columns of the smaller pictures fit in a panel of 280 px.
constexpr int leastCellWidth = 80;

// Photo slots of about the same size share a cell height, so that captions in a row line up.
int cellHeightFor(const Piece& piece, int pictureHeight, double pixelsPerInch) {
    if (piece.kind != PieceKind::PhotoSlot) {
        return pictureHeight;
    }
    const double longest = std::max(piece.size.width, piece.size.height).toInches();
    for (const double tier : {4.0, 6.0, 8.0, 10.0}) {
        if (longest <= tier) {
            return static_cast<int>(std::ceil(tier * pixelsPerInch));
        }
    }
    return pictureHeight;
}

QSize picturedSize(Size size, double pixelsPerInch) {
    return {static_cast<int>(std::ceil(size.width.toInches() * pixelsPerInch)),
            static_cast<int>(std::ceil(size.height.toInches() * pixelsPerInch))};
}

const Piece& pieceAt(const QModelIndex& index) {
    return static_cast<const TrayModel*>(index.model())->at(index).piece;
}

void paintCell(QPainter* painter, const QStyleOptionViewItem& option) {
    const bool focused = option.state & QStyle::State_HasFocus;
    const bool hovered = option.state & QStyle::State_MouseOver;
    if (!focused && !hovered) {
        return;
    }
    QColor fill = option.palette.color(QPalette::Highlight);
    fill.setAlphaF(focused ? 0.28F : 0.12F);
    painter->setBrush(fill);
    painter->setPen(focused ? QPen(option.palette.color(QPalette::Highlight), 2) : Qt::NoPen);
    painter->drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -1), 4, 4);
}

}  // namespace

QPixmap picturedPiece(const Piece& piece, double pixelsPerInch, double devicePixelRatio) {
    const Rect all = outermostBox(piece);
    const QSize size = picturedSize(all.size(), pixelsPerInch) + QSize(2, 2);
    QPixmap picture(size * devicePixelRatio);
    picture.setDevicePixelRatio(devicePixelRatio);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(1, 1);
    const double scale = pixelsPerInch / static_cast<double>(Length::ticksPerInch);
    painter.scale(scale, scale);
    painter.translate(static_cast<double>(-all.left().ticks()),
                      static_cast<double>(-all.top().ticks()));
    for (const DrawingItem& item : pieceItems(piece, false)) {
        paintItem(painter, item);
    }
    return picture;
}

TrayDelegate::TrayDelegate(double pixelsPerInch, QObject* parent)
    : QStyledItemDelegate(parent), m_pixelsPerInch(pixelsPerInch) {}

void TrayDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    paintCell(painter, option);
    const QRect inner = option.rect.adjusted(padding, padding, -padding, -padding);
    const int textHeight = option.fontMetrics.height();
    const QPixmap picture =
        picturedPiece(pieceAt(index), m_pixelsPerInch, painter->device()->devicePixelRatioF());
    const QSizeF shown = picture.deviceIndependentSize();
    painter->drawPixmap(QPointF(inner.center().x() + 0.5 - shown.width() / 2,
                                inner.bottom() - textHeight - 4 - shown.height()),
                        picture);
    painter->setPen(option.palette.color(QPalette::WindowText));
    painter->drawText(inner.adjusted(-padding, 0, padding, 0), Qt::AlignHCenter | Qt::AlignBottom,
                      index.data(Qt::DisplayRole).toString());
    painter->restore();
}

QSize TrayDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Piece& piece = pieceAt(index);
    const QSize picture = picturedSize(piece.size, m_pixelsPerInch);
    const int text = option.fontMetrics.horizontalAdvance(index.data().toString());
    return {std::max({picture.width() + 2 + 2 * padding, text + 4, leastCellWidth}),
            cellHeightFor(piece, picture.height(), m_pixelsPerInch) + 6 +
                option.fontMetrics.height() + 2 * padding};
}

}  // namespace matwright::app
