// SPDX-License-Identifier: MIT
#include "app/panels/corner_table.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "app/panels/section.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

void CornerModel::showCorners(const std::vector<Point>& corners, Scale scale) {
    if (corners == m_corners && scale == m_scale) {
        return;
    }
    const bool sameCount = corners.size() == m_corners.size();
    if (!sameCount) {
        beginResetModel();
    }
    m_corners = corners;
    m_scale = scale;
    if (!sameCount) {
        endResetModel();
    } else if (!corners.empty()) {
        emit dataChanged(index(0, 0), index(rowCount() - 1, 1));
    }
}

int CornerModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_corners.size());
}

int CornerModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : 2;
}

QVariant CornerModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const Point& corner = m_corners[static_cast<std::size_t>(index.row())];
    const Length length = index.column() == 0 ? corner.x : corner.y;
    switch (role) {
        case Qt::DisplayRole:
            return QString::fromStdString(lengthText(length, m_scale));
        case Qt::EditRole:
            return QString::fromStdString(length.isMultipleOf(stepOf(m_scale))
                                              ? lengthText(length, m_scale)
                                              : exactText(length));
        case Qt::AccessibleTextRole:
            return index.column() == 0
                       ? tr("Corner %1, from left: %2")
                             .arg(index.row() + 1)
                             .arg(QString::fromStdString(lengthText(length, m_scale)))
                       : tr("Corner %1, from top: %2")
                             .arg(index.row() + 1)
                             .arg(QString::fromStdString(lengthText(length, m_scale)));
        default:
            return {};
    }
}

QVariant CornerModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) {
        return {};
    }
    if (orientation == Qt::Vertical) {
        return section + 1;
    }
    return section == 0 ? tr("From left") : tr("From top");
}

Qt::ItemFlags CornerModel::flags(const QModelIndex& index) const {
    return QAbstractTableModel::flags(index) | Qt::ItemIsEditable;
}

bool CornerModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::EditRole ||
        value.toString() == data(index, Qt::EditRole).toString()) {
        return false;
    }
    const QString typed = value.toString();
    const auto read = parseLength(typed.toStdString(), unitOf(m_scale));
    if (!read) {
        emit textRefused(tr("“%1” is not a length; type it like 3 1/2, 3.5, 89 mm or 8.9 cm.")
                             .arg(typed.left(40).trimmed()));
        return false;
    }
    std::vector<Point> after = m_corners;
    Point& corner = after[static_cast<std::size_t>(index.row())];
    (index.column() == 0 ? corner.x : corner.y) = *read;
    emit cornersTyped(after);
    return true;
}

CornerTable::CornerTable(QWidget* parent)
    : QWidget(parent),
      m_model(new CornerModel(this)),
      m_view(new QTableView(this)),
      m_add(new QPushButton(tr("Add corner"), this)),
      m_remove(new QPushButton(tr("Remove corner"), this)) {
    m_view->setModel(m_model);
    m_view->setAccessibleName(tr("Corners"));
    m_view->setSelectionMode(QAbstractItemView::SingleSelection);
    m_view->setTabKeyNavigation(false);
    m_view->setEditTriggers(QAbstractItemView::AllEditTriggers ^ QAbstractItemView::CurrentChanged);
    m_view->horizontalHeader()->setHighlightSections(false);
    m_view->verticalHeader()->setHighlightSections(false);
    m_view->horizontalHeader()->setFixedHeight(controlHeight);
    m_view->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_view->verticalHeader()->setDefaultSectionSize(controlHeight);
    m_view->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    settle(m_add);
    settle(m_remove);
    m_add->setToolTip(tr("A new corner halfway to the next one."));
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_add);
    buttons->addWidget(m_remove);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_view);
    layout->addLayout(buttons);
    connect(m_add, &QPushButton::clicked, this, &CornerTable::addCorner);
    connect(m_remove, &QPushButton::clicked, this, &CornerTable::removeCorner);
    connect(m_model, &CornerModel::cornersTyped, this, &CornerTable::cornersTyped);
    connect(m_model, &CornerModel::textRefused, this, &CornerTable::textRefused);
}

void CornerTable::showCorners(const std::vector<Point>& corners, Scale scale) {
    const QModelIndex before = m_view->currentIndex();
    m_model->showCorners(corners, scale);
    const int row = qBound(0, before.row(), m_model->rowCount() - 1);
    if (!m_view->currentIndex().isValid() && m_model->rowCount() > 0) {
        m_view->setCurrentIndex(m_model->index(row, qMax(0, before.column())));
    }
    constexpr int mostRows = 6;  // more scroll
    m_view->setFixedHeight(controlHeight * (1 + qMin(m_model->rowCount(), mostRows)) + 2);
    m_remove->setEnabled(corners.size() > 3);
    m_add->setEnabled(corners.size() < maxPolygonCorners);
}

void CornerTable::addCorner() {
    std::vector<Point> after = m_model->corners();
    if (after.empty()) {
        return;
    }
    const auto at = static_cast<std::size_t>(qMax(0, m_view->currentIndex().row()));
    const Point a = after[at];
    const Point b = after[(at + 1) % after.size()];
    const Point middle = {(a.x + b.x).halfRoundedDown(), (a.y + b.y).halfRoundedDown()};
    after.insert(after.begin() + static_cast<std::ptrdiff_t>(at) + 1, middle);
    emit cornersTyped(after);
}

void CornerTable::removeCorner() {
    std::vector<Point> after = m_model->corners();
    const int row = m_view->currentIndex().row();
    if (row < 0 || after.size() <= 3) {
        return;
    }
    after.erase(after.begin() + row);
    emit cornersTyped(after);
}

}  // namespace matwright::app
