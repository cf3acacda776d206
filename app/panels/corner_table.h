// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractTableModel>
#include <QWidget>
#include <vector>

#include "core/measure/length_text.h"

class QPushButton;
class QTableView;

namespace matwright::app {

// The corners of one polygon as two columns of lengths from the box's left and top edge.
class CornerModel final : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;
    const std::vector<Point>& corners() const { return m_corners; }
    // Emits no cornersTyped.
    void showCorners(const std::vector<Point>& corners, Scale scale);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    // Never changes the corners by itself: emits what they would be, or what is wrong.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  signals:
    void cornersTyped(const std::vector<matwright::Point>& corners);
    void textRefused(const QString& sentence);

  private:
    std::vector<Point> m_corners;
    Scale m_scale = Scale::SixteenthInch;
};

// A small table to move corners by typing, with buttons to add and remove one.
class CornerTable final : public QWidget {
    Q_OBJECT

  public:
    explicit CornerTable(QWidget* parent = nullptr);
    void showCorners(const std::vector<Point>& corners, Scale scale);
    QTableView* view() const { return m_view; }

  signals:
    // What the corners shall be; the owner shows them again when it took them.
    void cornersTyped(const std::vector<matwright::Point>& corners);
    void textRefused(const QString& sentence);

  private:
    void addCorner();
    void removeCorner();

    CornerModel* m_model;
    QTableView* m_view;
    QPushButton* m_add;
    QPushButton* m_remove;
};

}  // namespace matwright::app
