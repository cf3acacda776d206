// SPDX-License-Identifier: MIT
#include "app/window/shortcuts_dialog.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QTableWidget>
#include <QVBoxLayout>

namespace matwright::app {
namespace {

QTableWidget* tableOf(const QList<ShortcutLine>& lines) {
    auto* table = new QTableWidget(static_cast<int>(lines.size()), 2);
    table->setAccessibleName(ShortcutsDialog::tr("Commands and their keys"));
    table->setHorizontalHeaderLabels({ShortcutsDialog::tr("Command"), ShortcutsDialog::tr("Keys")});
    table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table->horizontalHeader()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    table->verticalHeader()->hide();
    table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    int row = 0;
    for (const ShortcutLine& line : lines) {
        table->setItem(row, 0, new QTableWidgetItem(line.command));
        table->setItem(row++, 1, new QTableWidgetItem(line.keys));
    }
    return table;
}

}  // namespace

ShortcutsDialog::ShortcutsDialog(const QList<ShortcutLine>& lines, QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(tr("Keyboard shortcuts"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(tableOf(lines));
    layout->addWidget(buttons);
    resize(680, 560);
}

}  // namespace matwright::app
