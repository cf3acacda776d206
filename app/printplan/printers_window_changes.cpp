// SPDX-License-Identifier: MIT
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <algorithm>

#include "app/panels/window_foot.h"
#include "app/printplan/paper_panel.h"
#include "app/printplan/printers_window.h"
#include "app/printplan/size_test_dialog.h"

namespace matwright::app {

namespace {

bool isMeasured(const Printer& printer) {
    return std::ranges::any_of(printer.papers, [](const PrinterPaper& paper) {
        return paper.withBorders || paper.withoutBorders;
    });
}

// Of all but one, which may be none of them.
template <typename Named>
std::vector<std::string> otherNames(const std::vector<Named>& all, std::size_t but) {
    std::vector<std::string> names;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (i != but) {
            names.push_back(all[i].name);
        }
    }
    return names;
}

// "New printer", "New printer 2", … : the first that is free.
std::string freeName(const QString& word, const std::vector<std::string>& taken) {
    for (int number = 1;; ++number) {
        const QString text = number == 1 ? word : word + QStringLiteral(" %1").arg(number);
        if (std::ranges::find(taken, text.toStdString()) == taken.end()) {
            return text.toStdString();
        }
    }
}

}  // namespace

// What was measured goes with the size it was measured at, but not without a word.
void PrintersWindow::takePaper(const PrinterPaper& paper) {
    const Printer* printer = current();
    const auto index = static_cast<std::size_t>(m_papers->currentRow());
    if (m_isAsking || !printer || index >= printer->papers.size() ||
        printer->papers[index].id != paper.id) {
        return;
    }
    const PrinterPaper before = printer->papers[index];
    const bool forgets = (before.withBorders && !paper.withBorders) ||
                         (before.withoutBorders && !paper.withoutBorders);
    if (forgets) {
        m_isAsking = true;
        const bool agreed = m_asks.confirm(
            this,
            tr("“%1” was measured at its present size. That does not hold for another size, so it "
               "is forgotten. Change the size?")
                .arg(QString::fromStdString(before.name)),
            tr("Change the size"));
        m_isAsking = false;
        if (!agreed) {
            return m_paperPanel->show(before);
        }
    }
    const bool changed = edit([&](Printer& after) {
        after.papers[index] = paper;
        if (paper.name != before.name && paper.size != before.size) {
            after.papers[index].name =
                freeName(QString::fromStdString(paper.name), otherNames(after.papers, index));
        }
    });
    if (changed && forgets) {
        m_foot->say(tr("What was measured is forgotten. Print a test sheet again."));
    }
}

void PrintersWindow::takeQueue() {
    const Printer* printer = current();
    const bool wasMeasured = printer && isMeasured(*printer);
    const QString queue = m_queue->currentData().toString();
    const bool changed = edit([&](Printer& after) { after.queue = queue.toStdString(); });
    if (changed && wasMeasured && !queue.isEmpty()) {
        m_foot->say(tr("What the test sheets measured is kept. Where “%1” is another machine, "
                       "print a test sheet on it.")
                        .arg(queue));
    }
}

void PrintersWindow::addPrinter() {
    if (!m_store || !takeTyped()) {
        return;
    }
    Printer printer;
    printer.name = freeName(tr("New printer"), otherNames(m_printers, m_printers.size()));
    const auto added = m_store->add(printer);
    m_foot->say({}, added ? QString() : QString::fromStdString(added.error().text()));
    load(added ? added->id : PrinterId{});
    m_name->setFocus();
    m_name->selectAll();
}

void PrintersWindow::removePrinter() {
    if (!m_store || !takeTyped() || !current()) {
        return;
    }
    const Printer printer = *current();  // the list may be read anew while it is asked
    const int row = m_list->currentRow();
    const QString name = QString::fromStdString(printer.name);
    if (!m_asks.confirm(
            this,
            isMeasured(printer)
                ? tr("Remove “%1” with its papers and what its test sheets measured?").arg(name)
                : tr("Remove “%1” with its papers?").arg(name),
            tr("Remove"))) {
        return;
    }
    const auto removed = m_store->remove(printer.id);
    const auto next = static_cast<std::size_t>(row) + 1;
    const auto before = static_cast<std::size_t>(std::max(0, row - 1));
    const PrinterId near = next < m_printers.size()     ? m_printers[next].id
                           : before < m_printers.size() ? m_printers[before].id
                                                        : PrinterId{};
    load(near);
    m_foot->say(removed ? tr("Removed “%1”.").arg(name) : QString(),
                removed ? QString() : QString::fromStdString(removed.error().text()));
    m_list->setFocus();
}

void PrintersWindow::addPaper() {
    if (!takeTyped() || !current()) {
        return;
    }
    Printer after = *current();
    PrinterPaper paper;
    paper.size = {Length::inches(4), Length::inches(6)};
    // Called after its size, the name follows when another size is chosen.
    paper.name = freeName(QString::fromStdString(naturalSizeText(paper.size)),
                          otherNames(after.papers, after.papers.size()));
    constexpr Length margin = Length::inches(0, 1, 8);
    paper.margin = {margin, margin, margin, margin};
    after.papers.push_back(paper);
    change(after, static_cast<int>(after.papers.size()) - 1);
    m_paperPanel->name().setFocus();
    m_paperPanel->name().selectAll();
}

void PrintersWindow::removePaper() {
    const int row = takeTyped() ? m_papers->currentRow() : -1;
    if (row < 0 || !current()) {
        return;
    }
    Printer after = *current();
    const PrinterPaper paper = after.papers[static_cast<std::size_t>(row)];
    const QString name = QString::fromStdString(paper.name);
    if (!m_asks.confirm(this,
                        paper.withBorders || paper.withoutBorders
                            ? tr("Remove “%1” with what its test sheets measured?").arg(name)
                            : tr("Remove “%1”?").arg(name),
                        tr("Remove"))) {
        return;
    }
    after.papers.erase(after.papers.begin() + row);
    if (change(after, std::max(0, row - 1))) {
        m_foot->say(tr("Removed “%1”.").arg(name));
    }
    m_papers->setFocus();
}

void PrintersWindow::testSize() {
    if (!m_store || !takeTyped() || !current() || m_papers->currentRow() < 0) {
        return;
    }
    const PrinterId id = current()->id;
    const int row = m_papers->currentRow();
    SizeTestDialog test(*m_store, m_settings, m_asks, id,
                        current()->papers[static_cast<std::size_t>(row)].id, this);
    test.exec();
    load(id, row);
}

}  // namespace matwright::app
