// SPDX-License-Identifier: MIT
#pragma once

#include <QPixmap>
#include <QStyledItemDelegate>

#include "core/sketch/piece.h"

namespace matwright::app {

// A picture of the piece at a scale (mats and turn left out of account), as it looks on the page.
QPixmap picturedPiece(const Piece& piece, double pixelsPerInch, double devicePixelRatio);

// Draws a ready-made piece: its picture, and its caption beneath.
class TrayDelegate final : public QStyledItemDelegate {
    Q_OBJECT

  public:
    explicit TrayDelegate(double pixelsPerInch, QObject* parent = nullptr);
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

  private:
    double m_pixelsPerInch;
};

}  // namespace matwright::app
