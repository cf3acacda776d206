// SPDX-License-Identifier: MIT
#include "app/printplan/size_test_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPrinter>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/length_field.h"
#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/printing/sheet_printer.h"
#include "app/printplan/queue_job.h"
#include "app/rendering/paint.h"
#include "app/settings/settings.h"

namespace matwright::app {

namespace {

constexpr QSize testPicturePlace(280, 380);

void addStepButton(QHBoxLayout* row, QPushButton* button) {
    button->setMinimumHeight(controlHeight + 2);
    button->setAutoDefault(false);
    button->setMinimumWidth(button->sizeHint().width() + 20);
    row->addWidget(button);
}

}  // namespace

SizeTestDialog::SizeTestDialog(PrintingStore& store, SettingsStore& settings, PlanAsks asks,
                               PrinterId printer, PrinterPaperId paper, QWidget* parent)
    : QDialog(parent),
      m_store(store),
      m_settings(settings),
      m_asks(std::move(asks)),
      m_printer(new QComboBox),
      m_paper(new QComboBox),
      m_picture(new QLabel),
      m_asCheck(new QCheckBox(tr("&Corrected, to see that it is right now"))),
      m_ruler(new Section(tr("2. Measure it with a ruler"))),
      m_across(new LengthField(tr("What your ruler says from A to B"))),
      m_down(new LengthField(tr("What your ruler says from C to D"))),
      m_wished(new TintedLabel(Tint::Quiet)),
      m_state(new QLabel),
      m_problem(new TintedLabel(Tint::Wrong)),
      m_news(new TintedLabel(Tint::Quiet)),
      m_print(new PrimaryButton(tr("&Print test sheet…"))),
      m_save(new QPushButton(tr("Save P&DF…"))),
      m_keep(new QPushButton(tr("&Keep what I measured"))),
      m_remove(new QPushButton(tr("&Remove the correction"))) {
    setWindowTitle(tr("Size test"));
    load();
    for (const Printer& each : m_printers) {
        m_printer->addItem(QString::fromStdString(each.name),
                           QVariant::fromValue<qlonglong>(each.id.value));
    }
    auto* column = new QVBoxLayout(this);
    auto* row = new QHBoxLayout;
    row->setSpacing(18);
    m_picture->setFixedSize(testPicturePlace);
    m_picture->setAlignment(Qt::AlignCenter);
    m_picture->setAccessibleName(tr("The test sheet"));
    row->addWidget(m_picture);
    row->addWidget(makeSteps(), 1);
    column->addLayout(row, 1);
    column->addWidget(makeFoot());
    m_printer->setCurrentIndex(
        std::max(0, m_printer->findData(QVariant::fromValue<qlonglong>(printer.value))));
    showPapers();
    m_paper->setCurrentIndex(
        std::max(0, m_paper->findData(QVariant::fromValue<qlonglong>(paper.value))));
    showTest();
    connect(m_printer, &QComboBox::currentIndexChanged, this, &SizeTestDialog::showPapers);
    connect(m_paper, &QComboBox::currentIndexChanged, this, &SizeTestDialog::showTest);
    connect(m_asCheck, &QCheckBox::toggled, this, &SizeTestDialog::showTest);
    resize(760, 560);
    m_print->setFocus();
}

QWidget* SizeTestDialog::makeSteps() {
    auto* steps = new QWidget;
    auto* column = new QVBoxLayout(steps);
    column->setContentsMargins({});
    column->addWidget(makeChoice());
    column->addWidget(makeSheetStep());
    column->addWidget(makeRulerStep());
    m_state->setWordWrap(true);
    QFont strong = m_state->font();
    strong.setBold(true);
    m_state->setFont(strong);
    column->addSpacing(10);
    column->addWidget(m_state);
    column->addStretch(1);
    return steps;
}

QWidget* SizeTestDialog::makeChoice() {
    auto* choice = new Section({});
    m_printer->setMinimumContentsLength(18);
    m_paper->setMinimumContentsLength(18);
    choice->addRow(tr("Pr&inter"), m_printer);
    choice->addRow(tr("P&aper"), m_paper);
    return choice;
}

QWidget* SizeTestDialog::makeSheetStep() {
    auto* step = new Section(tr("1. Print this sheet"));
    step->addWide(new TintedLabel(
        Tint::Quiet, tr("At actual size, on the paper itself, with the settings you use for "
                        "photos.")));
    settle(m_asCheck);
    step->addWide(m_asCheck);
    auto* buttons = new QWidget;
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins({});
    addStepButton(row, m_print);
    addStepButton(row, m_save);
    row->addStretch(1);
    step->addWide(buttons);
    connect(m_print, &QPushButton::clicked, this, &SizeTestDialog::print);
    connect(m_save, &QPushButton::clicked, this, &SizeTestDialog::savePdf);
    return step;
}

QWidget* SizeTestDialog::makeRulerStep() {
    m_ruler->addWide(m_wished);
    for (LengthField* field : {m_across, m_down}) {
        field->setScale(m_settings.value().scale);
        field->setRange(Length::inches(0, 1, 4), largestPhotoPaperSide);
    }
    m_ruler->addRow(tr("A to &B, across"), m_across);
    m_ruler->addRow(tr("C t&o D, down"), m_down);
    auto* buttons = new QWidget;
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins({});
    addStepButton(row, m_keep);
    addStepButton(row, m_remove);
    row->addStretch(1);
    m_ruler->addWide(buttons);
    connect(m_keep, &QPushButton::clicked, this, &SizeTestDialog::keep);
    connect(m_remove, &QPushButton::clicked, this, &SizeTestDialog::removeCorrection);
    return m_ruler;
}

QWidget* SizeTestDialog::makeFoot() {
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins({});
    auto* words = new QVBoxLayout;
    words->addWidget(m_problem);
    words->addWidget(m_news);
    m_problem->hide();
    m_news->hide();
    row->addLayout(words, 1);
    auto* close = new QPushButton(tr("C&lose"));
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    addStepButton(row, close);
    return foot;
}

void SizeTestDialog::load() {
    auto printers = m_store.printers();
    if (printers) {
        m_printers = std::move(*printers);
    } else {
        say(QString::fromStdString(printers.error().text()));
    }
}

const Printer& SizeTestDialog::chosenPrinter() const {
    static const Printer none;
    const Printer* printer =
        matwright::find(m_printers, PrinterId{m_printer->currentData().toLongLong()});
    return printer ? *printer : none;
}

const PrinterPaper* SizeTestDialog::chosenPaper() const {
    return matwright::find(chosenPrinter(), PrinterPaperId{m_paper->currentData().toLongLong()});
}

Borders SizeTestDialog::borders() const {
    const PrinterPaper* paper = chosenPaper();
    return paper && paper->borderless ? Borders::Without : Borders::With;
}

TestSheet SizeTestDialog::sheet() const {
    const PrinterPaper& paper = *chosenPaper();
    return testSheet(chosenPrinter(), paper, borders(),
                     m_asCheck->isChecked() ? paper.correction() : std::nullopt);
}

void SizeTestDialog::showPapers() {
    m_paper->clear();
    for (const PrinterPaper& paper : chosenPrinter().papers) {
        m_paper->addItem(QString::fromStdString(paperText(paper)),
                         QVariant::fromValue<qlonglong>(paper.id.value));
    }
    showTest();
}

void SizeTestDialog::showTest() {
    const PrinterPaper* paper = chosenPaper();
    const bool corrected = paper && paper->correction();
    for (QWidget* widget : {static_cast<QWidget*>(m_print), static_cast<QWidget*>(m_save),
                            static_cast<QWidget*>(m_ruler)}) {
        widget->setEnabled(paper);
    }
    m_asCheck->setVisible(corrected);
    m_asCheck->setChecked(corrected && m_asCheck->isChecked());
    m_remove->setVisible(corrected);
    if (!paper) {
        m_picture->clear();
        m_state->setText(tr("This printer has no papers yet; add one in the window before."));
        return;
    }
    const TestSheet test = sheet();
    const double ppi = std::min(testPicturePlace.width() / test.drawing.size.width.toInches(),
                                testPicturePlace.height() / test.drawing.size.height.toInches());
    const double ratio = devicePixelRatioF();
    QPixmap picture = QPixmap::fromImage(imageOf(test.drawing, ppi * ratio * 0.98));
    picture.setDevicePixelRatio(ratio);
    m_picture->setPixmap(picture);
    const Scale scale = m_settings.value().scale;
    m_wished->setText(tr("A and B should be %1 apart, C and D %2. Type what the ruler says, such "
                         "as 3 1/16 or 77.5 mm.")
                          .arg(QString::fromStdString(lengthText(test.marks.width, scale)),
                               QString::fromStdString(lengthText(test.marks.height, scale))));
    const auto& kept = paper->correction();
    m_across->setValue(kept ? kept->across.measured : test.marks.width);
    m_down->setValue(kept ? kept->down.measured : test.marks.height);
    // What is printed as a check is to be right, and is no measure of the printer.
    m_across->setEnabled(!m_asCheck->isChecked());
    m_down->setEnabled(!m_asCheck->isChecked());
    m_keep->setEnabled(!m_asCheck->isChecked());
    m_state->setText(
        kept ? QString::fromStdString(correctionText(paper->size, paper->borderless, *kept))
             : tr("Not measured yet: sheets are sent as they are."));
}

void SizeTestDialog::print() {
    const TestSheet test = sheet();
    const PrinterPaper& paper = *chosenPaper();
    const QueueJob job = askForJob(
        this, m_asks,
        {QString::fromStdString(chosenPrinter().queue), QString::fromStdString(paper.name),
         paper.size, paper.borderless, 1, tr("Print the test sheet")});
    if (!job.printer) {
        return say(job.problem);
    }
    const bool painted = paintOn(*job.printer, {{test.drawing, paper.size, std::nullopt, {}}});
    if (!painted || !isThere(m_asks, *job.printer)) {
        return say(
            tr("The printer could not be started. Look at its queue, or save a PDF and "
               "print that at actual size."));
    }
    say({}, sentText(*job.printer) + tr(" Measure it when it is dry."));
    m_across->setFocus();
}

void SizeTestDialog::savePdf() {
    const TestSheet test = sheet();
    QString path = m_asks.fileName(
        this, tr("Save the test sheet"),
        QDir::home().filePath(
            tr("Test sheet %1.pdf").arg(QString::fromStdString(chosenPrinter().name))),
        tr("PDF files (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    path += path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive) ? QString()
                                                                       : QStringLiteral(".pdf");
    const auto pdf = pdfBytes({{test.drawing, chosenPaper()->size, std::nullopt, {}}},
                              QString::fromStdString(test.drawing.title));
    if (!pdf) {
        return say(QString::fromStdString(pdf.error().text()));
    }
    const auto written = m_asks.files->replace(
        path.toStdString(), {pdf->constData(), static_cast<std::size_t>(pdf->size())});
    if (!written) {
        return say(QString::fromStdString(written.error().text()));
    }
    say({}, tr("Saved %1. Print it at actual size.").arg(QFileInfo(path).fileName()));
}

void SizeTestDialog::keep() {
    m_across->commitTyped();
    m_down->commitTyped();
    const PrinterPaper* paper = chosenPaper();
    if (!paper || m_across->hasError() || m_down->hasError()) {
        return;
    }
    const auto correction = correctionOf(testMarks(*paper, borders()),
                                         {m_across->value(), m_down->value()}, m_asks.today());
    if (!correction) {
        return say(QString::fromStdString(correction.error().sentence));
    }
    keepCorrection(*correction);
}

void SizeTestDialog::removeCorrection() {
    keepCorrection(std::nullopt);
}

void SizeTestDialog::keepCorrection(const std::optional<Correction>& correction) {
    const PrinterPaper* paper = chosenPaper();
    if (!paper) {
        return;
    }
    const auto kept = m_store.keep(paper->id, paper->borderless, correction);
    if (!kept) {
        return say(QString::fromStdString(kept.error().text()));
    }
    load();
    showTest();
    say({}, correction ? tr("Kept: sheets are corrected from now on.")
                       : tr("Removed: sheets are sent as they are."));
}

void SizeTestDialog::say(const QString& problem, const QString& news) {
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    m_news->setText(news);
    m_news->setVisible(!news.isEmpty());
}

QString SizeTestDialog::result() const {
    return m_state->text();
}

QString SizeTestDialog::problem() const {
    return m_problem->text();
}

}  // namespace matwright::app
