// SPDX-License-Identifier: MIT
#pragma once

#include <QStyledItemDelegate>

namespace matwright::app {

// Draws a photo of the tray: its small picture with its marks, its name, and the largest print it
// is good for. All cells are of one size.
class PhotoTrayDelegate final : public QStyledItemDelegate {
    Q_OBJECT

  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

// "up to 8 × 10", "small": what fits into a cell.
QString shortPrintText(int widthPixels, int heightPixels);

}  // namespace matwright::app
