// SPDX-License-Identifier: MIT
#include "app/panels/list_rows.h"

#include <QHeaderView>
#include <QTableView>
#include <QTableWidgetItem>

namespace matwright::app {

void setUpRows(QTableView& list, const QString& name) {
    list.verticalHeader()->hide();
    list.horizontalHeader()->setHighlightSections(false);
    list.horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    list.setShowGrid(false);
    list.setAlternatingRowColors(true);
    list.setSelectionBehavior(QAbstractItemView::SelectRows);
    list.setEditTriggers(QAbstractItemView::NoEditTriggers);
    list.setTabKeyNavigation(false);
    list.setAccessibleName(name);
}

QTableWidgetItem* wordsItem(const QString& text) {
    auto* item = new QTableWidgetItem(text);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    return item;
}

}  // namespace matwright::app
