// SPDX-License-Identifier: MIT
#include "app/printplan/size_test_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPrinter>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/length_field.h"
#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/panels/window_foot.h"
#include "app/printing/sheet_printer.h"
#include "app/printplan/queue_job.h"
#include "app/rendering/paint.h"
#include "app/settings/settings.h"
#include "core/library/file_stem.h"
#include "core/library/names.h"

namespace matwright::app {

namespace {

constexpr QSize testPicturePlace(280, 380);

// "3.06 in", "77.7 mm": fields round to what can be cut, a correction does not.
QString asTyped(Length length, Unit unit) {
    const bool isMetric = unit == Unit::Millimetre;
    return QString::number(isMetric ? length.toMillimetres() : length.toInches(), 'g', 5) +
           (isMetric ? QStringLiteral(" mm") : QStringLiteral(" in"));
}

void addStepButton(QHBoxLayout* row, QPushButton* button) {
    button->setMinimumWidth(button->sizeHint().width() + 20);
    addButton(row, button);
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
      m_how(new TintedLabel(Tint::Quiet)),
      m_asCheck(new QCheckBox(tr("&Corrected, to see that it is right now"))),
      m_ruler(new Section(tr("2. Measure it with a ruler"))),
      m_across(new LengthField(tr("What your ruler says from A to B"))),
      m_down(new LengthField(tr("What your ruler says from C to D"))),
      m_wished(new TintedLabel(Tint::Quiet)),
      m_state(new QLabel),
      m_foot(new WindowFoot),
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
    m_foot->add(tr("C&lose"), this, &SizeTestDialog::reject);
    column->addWidget(m_foot);
    m_printer->setCurrentIndex(
        std::max(0, m_printer->findData(QVariant::fromValue<qlonglong>(printer.value))));
    showPapers();
    m_paper->setCurrentIndex(
        std::max(0, m_paper->findData(QVariant::fromValue<qlonglong>(paper.value))));
    showTest();
    connect(m_printer, &QComboBox::currentIndexChanged, this, &SizeTestDialog::showPapers);
    connect(m_paper, &QComboBox::currentIndexChanged, this, [this] {
        m_foot->say({});
        showTest();
    });
    connect(m_asCheck, &QCheckBox::toggled, this, &SizeTestDialog::showTest);
    resize((screen()->availableSize() * 0.9).boundedTo({800, 640}));
    m_print->setFocus();
}

QWidget* SizeTestDialog::makeSteps() {
    auto* steps = new QWidget;
    auto* column = new QVBoxLayout(steps);
    column->setContentsMargins(0, 0, 8, 0);
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
    auto* place = new QWidget;
    addScrolled(place, steps);  // steps and words come and go
    return place;
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
    step->addWide(m_how);
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
    for (LengthField* field : {m_across, m_down}) {
        connect(field->lineEdit(), &QLineEdit::textEdited, this,
                [this] { m_keep->setEnabled(true); });
        connect(field, &LengthField::valueChanged, this, [this] { m_keep->setEnabled(true); });
    }
    connect(m_keep, &QPushButton::clicked, this, &SizeTestDialog::keep);
    connect(m_remove, &QPushButton::clicked, this, &SizeTestDialog::removeCorrection);
    return m_ruler;
}

void SizeTestDialog::load() {
    auto printers = m_store.printers();
    if (printers) {
        m_printers = std::move(*printers);
    } else {
        complain(printers.error());
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
    const bool isShop = chosenPrinter().kind == PrinterKind::PrintShop;
    m_print->setVisible(!isShop);
    m_how->setText(isShop ? tr("Save the sheet and have it printed at actual size, on the paper "
                               "itself, as the shop prints your photos.")
                          : tr("At actual size, on the paper itself, with the settings you use "
                               "for photos. Each paper of a printer is measured by itself."));
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
    // Corrected or not: how far apart the marks are to come out on paper.
    const Size marks = testMarks(*paper, borders());
    const bool isCheck = m_asCheck->isChecked();
    m_wished->setText((isCheck ? tr("A and B should be %1 apart now, C and D %2. If they are not, "
                                    "take the tick away, print the sheet anew and measure that.")
                               : tr("A and B should be %1 apart, C and D %2. Type what the ruler "
                                    "says, such as 3 1/16 or 77.5 mm."))
                          .arg(QString::fromStdString(lengthText(marks.width, scale)),
                               QString::fromStdString(lengthText(marks.height, scale))));
    const auto& kept = paper->correction();
    m_across->setValue(kept ? kept->across.measured : marks.width);
    m_down->setValue(kept ? kept->down.measured : marks.height);
    // What is printed as a check is to be right, and is no measure of the printer.
    m_across->setEnabled(!isCheck);
    m_down->setEnabled(!isCheck);
    m_keep->setEnabled(false);  // until something was measured
    m_state->setText(
        kept ? QString::fromStdString(correctionText(paper->size, paper->borderless, *kept)) +
                   tr(" Measured: %1 and %2, on %3.")
                       .arg(asTyped(kept->across.measured, unitOf(scale)),
                            asTyped(kept->down.measured, unitOf(scale)),
                            QLocale().toString(
                                QDate::fromString(QString::fromStdString(kept->date), Qt::ISODate),
                                QLocale::ShortFormat))
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
        return m_foot->say(job.news, job.problem);
    }
    const bool painted = paintOn(*job.printer, {{test.drawing, paper.size, std::nullopt, {}}});
    if (!painted || !isThere(m_asks, *job.printer)) {
        return m_foot->say(
            {}, tr("The printer could not be started. Look at its queue, or save a PDF and "
                   "print that at actual size."));
    }
    const QString own = QString::fromStdString(chosenPrinter().queue);
    const bool isOther = job.printer->outputFormat() == QPrinter::NativeFormat && !own.isEmpty() &&
                         job.printer->printerName() != own;
    m_foot->say(sentText(*job.printer) + tr(" Measure it when it is dry.") +
                (isOther ? tr(" Sheets of “%1” go to “%2”: what you keep here is for that one.")
                               .arg(QString::fromStdString(chosenPrinter().name), own)
                         : QString()));
    m_across->setFocus();
}

QString SizeTestDialog::suggestedFile() const {
    const QString title = tr("Test sheet %1, %2")
                              .arg(QString::fromStdString(chosenPrinter().name),
                                   QString::fromStdString(chosenPaper()->name)) +
                          (m_asCheck->isChecked() ? tr(", corrected") : QString());
    return QDir::home().filePath(
        QString::fromStdString(numberedFileName(stemOfTitle(title.toStdString()), 1, ".pdf")));
}

void SizeTestDialog::savePdf() {
    const TestSheet test = sheet();
    const QString path =
        m_asks.fileName(this, tr("Save the test sheet"), suggestedFile(), tr("PDF files (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    const auto pdf = pdfBytes({{test.drawing, chosenPaper()->size, std::nullopt, {}}},
                              QString::fromStdString(test.drawing.title));
    if (!pdf) {
        return complain(pdf.error());
    }
    const auto written = m_asks.files->replace(
        path.toStdString(), {pdf->constData(), static_cast<std::size_t>(pdf->size())});
    if (!written) {
        return complain(written.error());
    }
    m_foot->say(tr("Saved %1. Print it at actual size.").arg(QFileInfo(path).fileName()));
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
        return m_foot->say({}, QString::fromStdString(correction.error().sentence));
    }
    keepCorrection(*correction);
}

void SizeTestDialog::removeCorrection() {
    const PrinterPaper* paper = chosenPaper();
    if (paper && paper->correction() &&
        m_asks.confirm(this,
                       tr("Forget what was measured on “%1” (%2)? Its sheets are sent as they are "
                          "then.")
                           .arg(QString::fromStdString(paper->name),
                                QString::fromStdString(paper->correction()->date)),
                       tr("Forget it"))) {
        keepCorrection(std::nullopt);
    }
}

void SizeTestDialog::keepCorrection(const std::optional<Correction>& correction) {
    const PrinterPaper* paper = chosenPaper();
    if (!paper) {
        return;
    }
    const auto kept = m_store.keep(paper->id, paper->borderless, correction);
    if (!kept) {
        return complain(kept.error());
    }
    load();
    showTest();
    m_foot->say(correction ? tr("Kept: sheets are corrected from now on.")
                           : tr("Removed: sheets are sent as they are."));
}

void SizeTestDialog::complain(const Error& error) {
    m_foot->say({}, QString::fromStdString(error.text()));
}

QString SizeTestDialog::result() const {
    return m_state->text();
}

QString SizeTestDialog::news() const {
    return m_foot->news();
}

QString SizeTestDialog::problem() const {
    return m_foot->problem();
}

}  // namespace matwright::app
