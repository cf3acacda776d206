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

#include "app/panels/finish_typing.h"
#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/panels/window_foot.h"
#include "app/printplan/paper_panel.h"
#include "app/settings/settings.h"

namespace matwright::app {

namespace {

constexpr int printerListWidth = 220;
constexpr int papersHeight = 96;

// "Glossy 4 × 6 without borders, 12 left"
QString paperLine(const PrinterPaper& paper) {
    QString line = QString::fromStdString(paperText(paper));
    const QString size = QString::fromStdString(naturalSizeText(paper.size));
    if (!line.contains(size) &&
        !line.contains(QString::fromStdString(naturalSizeText(paper.size.turned())))) {
        line = size + QStringLiteral(": ") + line;
    }
    if (paper.atHand) {
        line += *paper.atHand == 0 ? PrintersWindow::tr(", none left: not planned with")
                                   : PrintersWindow::tr(", %1 left").arg(*paper.atHand);
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
      m_foot(new WindowFoot),
      m_corrected(new TintedLabel(Tint::Quiet)),
      m_test(new PrimaryButton(tr("Si&ze test…"))) {
    setWindowTitle(tr("Printers and photo papers"));
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    auto* row = new QHBoxLayout;
    row->setSpacing(18);
    row->addWidget(makePrinters());
    row->addWidget(makeSide(), 1);
    column->addLayout(row, 1);
    buildFoot();
    column->addWidget(m_foot);
    resize((screen()->availableSize() * 0.9).boundedTo({820, 760}));
    auto store = PrintingStore::open(m_asks.store, unitOf(settings.value().scale));
    if (store) {
        m_store.emplace(std::move(*store));
    } else {
        m_foot->say({}, QString::fromStdString(store.error().text()));
    }
    load();
    // Asking the print system may take a moment; the window is there first.
    QTimer::singleShot(0, this, [this] {
        m_queueNames = m_asks.queues();
        showQueues();
    });
    m_list->setFocus();
}

// A field that loses the focus takes what was typed, so it does while all of the window is there.
PrintersWindow::~PrintersWindow() {
    hide();
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
    m_addPrinter = addButton(row, tr("&Add"), this, &PrintersWindow::addPrinter);
    m_addPrinter->setAccessibleName(tr("Add a printer"));
    m_removePrinter = addButton(row, tr("&Remove"), this, &PrintersWindow::removePrinter);
    m_removePrinter->setAccessibleName(tr("Remove this printer"));
    column->addLayout(row);
    connect(m_list, &QListWidget::currentRowChanged, this, [this] {
        if (!m_showing) {
            m_foot->say({});
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
    m_kind->setToolTip(tr("A print shop gets PDFs; nothing is sent to it from here."));
    m_queue->setToolTip(
        tr("Where the computer sends its sheets. Without one it is asked for when "
           "they are printed, or files are saved."));
    m_printer->addRow(tr("S&ystem printer"), m_queue);
    connect(m_name, &QLineEdit::editingFinished, this, [this] {
        edit([this](Printer& printer) { printer.name = m_name->text().trimmed().toStdString(); });
    });
    connect(m_kind, &QComboBox::activated, this, [this](int index) {
        edit([index](Printer& printer) {
            printer.kind = index == 0 ? PrinterKind::AtHome : PrinterKind::PrintShop;
        });
    });
    connect(m_queue, &QComboBox::activated, this, &PrintersWindow::takeQueue);
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
    addButton(row, tr("A&dd paper"), this, &PrintersWindow::addPaper)
        ->setAccessibleName(tr("Add a paper to this printer"));
    m_removePaper = addButton(row, tr("Remo&ve paper"), this, &PrintersWindow::removePaper);
    m_removePaper->setAccessibleName(tr("Remove this paper"));
    row->addStretch(1);
    m_printer->addWide(buttons);
    connect(m_papers, &QListWidget::currentRowChanged, this, [this] {
        if (!m_showing) {
            m_foot->say({});
            showPaper();
        }
    });
    connect(m_paperPanel, &PaperPanel::changed, this, &PrintersWindow::takePaper);
}

void PrintersWindow::buildFoot() {
    auto* close = new QPushButton(tr("C&lose"));
    connect(close, &QPushButton::clicked, this, &PrintersWindow::reject);
    connect(m_test, &QPushButton::clicked, this, &PrintersWindow::testSize);
    m_foot->add({close, m_test});
    for (QPushButton* button : {close, m_test}) {
        button->setMinimumWidth(110);
    }
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
            m_foot->say({}, QString::fromStdString(printers.error().text()));
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
        m_showing = true;
        m_papers->setCurrentRow(std::min(paper, m_papers->count() - 1));
        m_showing = false;
        showPaper();
    }
}

void PrintersWindow::showPrinter() {
    const Printer* printer = current();
    m_side->setEnabled(printer && m_store);
    m_addPrinter->setEnabled(m_store.has_value());
    m_removePrinter->setEnabled(printer);
    m_showing = true;
    m_papers->clear();
    m_name->setText(printer ? QString::fromStdString(printer->name) : QString());
    if (printer) {
        m_kind->setCurrentIndex(printer->kind == PrinterKind::AtHome ? 0 : 1);
        m_printer->setRowShown(m_queue, printer->kind == PrinterKind::AtHome);
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
    m_corrected->setText(
        paper.correction()
            ? QString::fromStdString(
                  correctionText(paper.size, paper.borderless, *paper.correction()))
            : tr("Not measured yet. A test sheet and a ruler show how true to size this printer "
                 "is on this paper."));
}

void PrintersWindow::showQueues() {
    const Printer* printer = current();
    const QString chosen = printer ? QString::fromStdString(printer->queue) : QString();
    m_queue->clear();
    m_queue->addItem(tr("None"), QString());
    for (const QString& name : m_queueNames) {
        m_queue->addItem(name, name);
    }
    if (!chosen.isEmpty() && m_queue->findData(chosen) < 0) {
        m_queue->addItem(tr("%1 (not there now)").arg(chosen), chosen);
    }
    m_queue->setCurrentIndex(m_queue->findData(chosen));
}

bool PrintersWindow::edit(const std::function<void(Printer&)>& edited) {
    const Printer* before = m_showing ? nullptr : current();
    if (!before) {
        return false;
    }
    Printer after = *before;
    edited(after);
    return after != *before && change(after, m_papers->currentRow());
}

bool PrintersWindow::change(const Printer& after, int paper) {
    const Printer* before = current();
    if (!m_store || !before) {
        return false;
    }
    const PrinterId id = before->id;
    const auto changed = m_store->change(*before, after);
    m_wasRefused = !changed;
    m_foot->say({}, changed ? QString() : QString::fromStdString(changed.error().text()));
    load(id, paper);
    return changed.has_value();
}

bool PrintersWindow::takeTyped() {
    m_wasRefused = false;
    finishTyping();
    return !m_wasRefused;
}

// Closing asks no leave of a name that was refused; the old one stays.
void PrintersWindow::done(int result) {
    takeTyped();
    QDialog::done(result);
}

QString PrintersWindow::news() const {
    return m_foot->news();
}

QString PrintersWindow::problem() const {
    return m_foot->problem();
}

}  // namespace matwright::app
