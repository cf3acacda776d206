// SPDX-License-Identifier: MIT
#include "app/printplan/printers_window.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScreen>
#include <QTimer>
#include <algorithm>
#include <utility>

#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/printplan/paper_panel.h"
#include "app/settings/settings.h"

namespace matwright::app {

namespace {

constexpr int printerListWidth = 220;
constexpr int papersHeight = 116;

// "Glossy 4 × 6 without borders, 12 left"
QString paperLine(const PrinterPaper& paper) {
    QString line = QString::fromStdString(paperText(paper));
    if (paper.atHand) {
        line += PrintersWindow::tr(", %1 left").arg(*paper.atHand);
    }
    return paper.correction() ? line + PrintersWindow::tr(", corrected") : line;
}

}  // namespace

PrintersWindow::PrintersWindow(SettingsStore& settings, QWidget* parent)
    : PrintersWindow(settings, PlanAsks::ofTheSystem(), parent) {}

PrintersWindow::PrintersWindow(SettingsStore& settings, PlanAsks asks, QWidget* parent)
    : QDialog(parent),
      m_settings(settings),
      m_asks(std::move(asks)),
      m_list(new QListWidget),
      m_printer(new Section(tr("This printer"))),
      m_name(new QLineEdit),
      m_kind(new QComboBox),
      m_queue(new QComboBox),
      m_papers(new QListWidget),
      m_paperPanel(new PaperPanel(settings.value().scale)),
      m_problem(new TintedLabel(Tint::Wrong)),
      m_corrected(new TintedLabel(Tint::Quiet)),
      m_test(new PrimaryButton(tr("Size &test…"))) {
    setWindowTitle(tr("Printers and photo papers"));
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    auto* row = new QHBoxLayout;
    row->setSpacing(18);
    row->addWidget(makePrinters());
    row->addWidget(makeSide(), 1);
    column->addLayout(row, 1);
    column->addWidget(makeFoot());
    resize((screen()->availableSize() * 0.9).boundedTo({820, 760}));
    auto store = PrintingStore::open(m_asks.store, unitOf(settings.value().scale));
    if (store) {
        m_store.emplace(std::move(*store));
    } else {
        say(QString::fromStdString(store.error().text()));
    }
    load();
    // Asking the print system may take a moment; the window is there first.
    QTimer::singleShot(0, this, [this] {
        m_queueNames = m_asks.queues();
        showQueues();
    });
    m_list->setFocus();
}

QPushButton* PrintersWindow::addButton(QBoxLayout* row, const QString& text, const QString& name,
                                       void (PrintersWindow::*pressed)()) {
    auto* button = new QPushButton(text);
    button->setAccessibleName(name);
    button->setMinimumHeight(controlHeight);
    button->setAutoDefault(false);
    button->setEnabled(false);
    connect(button, &QPushButton::clicked, this, pressed);
    row->addWidget(button);
    return button;
}

QWidget* PrintersWindow::makePrinters() {
    auto* panel = new QWidget;
    panel->setFixedWidth(printerListWidth);
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins({});
    auto* heading = new QLabel(tr("Pr&inters"));
    heading->setBuddy(m_list);
    column->addWidget(heading);
    m_list->setAccessibleName(tr("Printers"));
    column->addWidget(m_list, 1);
    auto* row = new QHBoxLayout;
    addButton(row, tr("&Add"), tr("Add a printer"), &PrintersWindow::addPrinter)->setEnabled(true);
    m_removePrinter =
        addButton(row, tr("&Remove"), tr("Remove this printer"), &PrintersWindow::removePrinter);
    column->addLayout(row);
    connect(m_list, &QListWidget::currentRowChanged, this, [this] {
        if (!m_showing) {
            showPrinter();
        }
    });
    return panel;
}

QWidget* PrintersWindow::makeSide() {
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 8, 0);
    addPrinterFields();
    column->addWidget(m_printer);
    addPapers();
    column->addWidget(m_paperPanel);
    column->addWidget(m_corrected);
    column->addStretch(1);
    auto* side = new QWidget;
    addScrolled(side, content);
    m_side = content;
    return side;
}

void PrintersWindow::addPrinterFields() {
    m_name->setAccessibleName(tr("Name of the printer"));
    m_printer->addRow(tr("&Name"), m_name);
    m_kind->addItems({tr("Stands at home"), tr("A print shop")});
    m_printer->addRow(tr("&Kind"), m_kind);
    m_queue->setMinimumContentsLength(16);
    m_queue->setToolTip(tr("Where the computer sends its sheets. Without one, files are saved."));
    m_printer->addRow(tr("S&ystem printer"), m_queue);
    connect(m_name, &QLineEdit::editingFinished, this, [this] {
        edit([this](Printer& printer) { printer.name = m_name->text().trimmed().toStdString(); });
    });
    connect(m_kind, &QComboBox::activated, this, [this](int index) {
        edit([index](Printer& printer) {
            printer.kind = index == 0 ? PrinterKind::AtHome : PrinterKind::PrintShop;
        });
    });
    connect(m_queue, &QComboBox::activated, this, [this] {
        edit([this](Printer& printer) {
            printer.queue = m_queue->currentData().toString().toStdString();
        });
    });
}

void PrintersWindow::addPapers() {
    m_papers->setAccessibleName(tr("Papers of this printer"));
    m_papers->setFixedHeight(papersHeight);
    auto* heading = new QLabel(tr("Pap&ers it takes"));
    heading->setBuddy(m_papers);
    m_printer->addWide(heading);
    m_printer->addWide(m_papers);
    auto* buttons = new QWidget;
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins({});
    addButton(row, tr("Add paper"), tr("Add a paper to this printer"), &PrintersWindow::addPaper)
        ->setEnabled(true);
    m_removePaper =
        addButton(row, tr("Remove paper"), tr("Remove this paper"), &PrintersWindow::removePaper);
    row->addStretch(1);
    m_printer->addWide(buttons);
    connect(m_papers, &QListWidget::currentRowChanged, this, [this] {
        if (!m_showing) {
            showPaper();
        }
    });
    connect(m_paperPanel, &PaperPanel::changed, this, [this](const PrinterPaper& paper) {
        edit([&](Printer& printer) {
            const auto index = static_cast<std::size_t>(m_papers->currentRow());
            if (index < printer.papers.size()) {
                printer.papers[index] = paper;
            }
        });
    });
}

QWidget* PrintersWindow::makeFoot() {
    auto* foot = new QWidget;
    auto* column = new QVBoxLayout(foot);
    column->setContentsMargins({});
    m_problem->hide();
    column->addWidget(m_problem);
    auto* row = new QHBoxLayout;
    auto* hint = new TintedLabel(
        Tint::Quiet, tr("A test sheet and a ruler show how true to size a printer is."));
    row->addWidget(hint, 1);
    auto* close = new QPushButton(tr("C&lose"));
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_test, &QPushButton::clicked, this, &PrintersWindow::testSize);
    for (QPushButton* button : {close, m_test}) {
        button->setMinimumHeight(controlHeight + 4);
        button->setMinimumWidth(110);
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    column->addLayout(row);
    return foot;
}

const Printer* PrintersWindow::current() const {
    const auto row = static_cast<std::size_t>(m_list->currentRow());
    return row < m_printers.size() ? &m_printers[row] : nullptr;
}

// The printer of that id is chosen, else the first.
void PrintersWindow::load(PrinterId printer, int paper) {
    if (m_store) {
        auto printers = m_store->printers();
        if (printers) {
            m_printers = std::move(*printers);
        } else {
            say(QString::fromStdString(printers.error().text()));
        }
    }
    m_showing = true;
    m_list->clear();
    int row = m_printers.empty() ? -1 : 0;
    for (const Printer& each : m_printers) {
        row = each.id == printer ? m_list->count() : row;
        m_list->addItem(QString::fromStdString(each.name));
    }
    m_list->setCurrentRow(row);
    m_showing = false;
    showPrinter();
    if (paper > 0) {
        m_papers->setCurrentRow(std::min(paper, m_papers->count() - 1));
    }
}

void PrintersWindow::showPrinter() {
    const Printer* printer = current();
    m_side->setEnabled(printer && m_store);
    m_removePrinter->setEnabled(printer);
    m_showing = true;
    m_papers->clear();
    m_name->setText(printer ? QString::fromStdString(printer->name) : QString());
    if (printer) {
        m_kind->setCurrentIndex(printer->kind == PrinterKind::AtHome ? 0 : 1);
        for (const PrinterPaper& paper : printer->papers) {
            m_papers->addItem(paperLine(paper));
        }
        m_papers->setCurrentRow(printer->papers.empty() ? -1 : 0);
    }
    m_showing = false;
    showQueues();
    showPaper();
}

void PrintersWindow::showPaper() {
    const Printer* printer = current();
    const auto row = static_cast<std::size_t>(m_papers->currentRow());
    const bool shows = printer && row < printer->papers.size();
    m_paperPanel->setVisible(shows);
    m_removePaper->setEnabled(shows);
    m_test->setEnabled(shows);
    m_corrected->clear();
    if (!shows) {
        m_corrected->setText(printer ? tr("Add the papers that this printer takes.")
                                     : tr("Add a printer, or a print shop."));
        return;
    }
    const PrinterPaper& paper = printer->papers[row];
    m_paperPanel->show(paper);
    if (paper.correction()) {
        m_corrected->setText(QString::fromStdString(
            correctionText(paper.size, paper.borderless, *paper.correction())));
    }
}

void PrintersWindow::showQueues() {
    const Printer* printer = current();
    const QString chosen = printer ? QString::fromStdString(printer->queue) : QString();
    m_queue->clear();
    m_queue->addItem(tr("None: save files"), QString());
    for (const QString& name : m_queueNames) {
        m_queue->addItem(name, name);
    }
    if (m_queue->findData(chosen) < 0) {
        m_queue->addItem(tr("%1 (not there now)").arg(chosen), chosen);
    }
    m_queue->setCurrentIndex(m_queue->findData(chosen));
}

template <typename Change>
void PrintersWindow::edit(Change edited) {
    if (const Printer* before = m_showing ? nullptr : current()) {
        Printer after = *before;
        edited(after);
        if (after != *before) {
            change(after, m_papers->currentRow());
        }
    }
}

void PrintersWindow::change(const Printer& after, int paper) {
    const Printer* before = current();
    if (!m_store || !before) {
        return;
    }
    const PrinterId id = before->id;
    const auto changed = m_store->change(*before, after);
    say(changed ? QString() : QString::fromStdString(changed.error().text()));
    load(id, paper);
}

void PrintersWindow::say(const QString& problem) {
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
}

QString PrintersWindow::problem() const {
    return m_problem->text();
}

}  // namespace matwright::app
