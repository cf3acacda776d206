// SPDX-License-Identifier: MIT
#include <QLineEdit>
#include <QListWidget>
#include <algorithm>

#include "app/printplan/paper_panel.h"
#include "app/printplan/printers_window.h"
#include "app/printplan/size_test_dialog.h"

namespace matwright::app {

namespace {

// "New printer", "New printer 2", … : the first that is free.
template <typename Range>
std::string freeName(const QString& word, const Range& named) {
    for (int number = 1;; ++number) {
        const QString text = number == 1 ? word : word + QStringLiteral(" %1").arg(number);
        if (std::ranges::none_of(
                named, [&](const auto& other) { return other.name == text.toStdString(); })) {
            return text.toStdString();
        }
    }
}

}  // namespace

void PrintersWindow::addPrinter() {
    if (!m_store) {
        return;
    }
    Printer printer;
    printer.name = freeName(tr("New printer"), m_printers);
    const auto added = m_store->add(printer);
    say(added ? QString() : QString::fromStdString(added.error().text()));
    load(added ? added->id : PrinterId{});
    m_name->setFocus();
    m_name->selectAll();
}

void PrintersWindow::removePrinter() {
    const Printer* printer = current();
    if (!printer || !m_store ||
        !m_asks.confirm(this,
                        tr("Remove “%1” with its papers and what its test sheets measured?")
                            .arg(QString::fromStdString(printer->name)),
                        tr("Remove"))) {
        return;
    }
    const auto removed = m_store->remove(printer->id);
    say(removed ? QString() : QString::fromStdString(removed.error().text()));
    load();
}

void PrintersWindow::addPaper() {
    const Printer* printer = current();
    if (!printer) {
        return;
    }
    Printer after = *printer;
    PrinterPaper paper;
    paper.name = freeName(tr("New paper"), after.papers);
    paper.size = {Length::inches(4), Length::inches(6)};
    constexpr Length margin = Length::inches(0, 1, 8);
    paper.margin = {margin, margin, margin, margin};
    after.papers.push_back(paper);
    change(after, static_cast<int>(after.papers.size()) - 1);
    m_paperPanel->name().setFocus();
    m_paperPanel->name().selectAll();
}

void PrintersWindow::removePaper() {
    const Printer* printer = current();
    const int row = m_papers->currentRow();
    if (!printer || row < 0 ||
        !m_asks.confirm(
            this,
            tr("Remove “%1” with what its test sheets measured?")
                .arg(QString::fromStdString(printer->papers[static_cast<std::size_t>(row)].name)),
            tr("Remove"))) {
        return;
    }
    Printer after = *printer;
    after.papers.erase(after.papers.begin() + row);
    change(after, std::max(0, row - 1));
}

void PrintersWindow::testSize() {
    const Printer* printer = current();
    if (!printer || !m_store || m_papers->currentRow() < 0) {
        return;
    }
    const PrinterId id = printer->id;
    const int row = m_papers->currentRow();
    SizeTestDialog test(*m_store, m_settings, m_asks, id,
                        printer->papers[static_cast<std::size_t>(row)].id, this);
    test.exec();
    load(id, row);
}

}  // namespace matwright::app
