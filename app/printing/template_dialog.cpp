// SPDX-License-Identifier: MIT
#include "app/printing/template_dialog.h"

#include <QAccessible>
#include <QDir>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrent>

#include "app/panels/tint.h"
#include "app/printing/choices_panel.h"
#include "app/printing/print_run.h"
#include "app/printing/sheet_preview.h"
#include "core/checks/photo_checks.h"
#include "core/drawing/svg.h"
#include "core/sketchfile/sketch_file.h"
#include "core/template/cut_lines.h"

namespace matwright::app {

namespace {

constexpr int buttonHeight = 32;
constexpr int quietHeight = 28;
constexpr int sideWidth = 340;

QLabel* wrappedLabel() {
    auto* label = new QLabel;
    label->setWordWrap(true);
    return label;
}

std::string_view bytesOf(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

}  // namespace

TemplateDialog::TemplateDialog(const Making& making, SettingsStore& settings,
                               const QString& suggestedName, QWidget* parent)
    : TemplateDialog(making, settings, suggestedName, TemplateAsks::ofTheSystem(), parent) {}

TemplateDialog::TemplateDialog(const Making& making, SettingsStore& settings, QString suggestedName,
                               TemplateAsks asks, QWidget* parent)
    : QDialog(parent),
      m_making(making),
      m_settings(settings),
      m_suggestedName(std::move(suggestedName)),
      m_asks(std::move(asks)),
      m_preview(new SheetPreview),
      m_choices(new ChoicesPanel(initialChoice(settings.value(), making.sketch))),
      m_outcome(wrappedLabel()),
      m_trueSize(wrappedLabel()),
      m_problem(new TintedLabel(Tint::Wrong)),
      m_news(new TintedLabel(Tint::Quiet)),
      m_findings(new QPushButton) {
    setWindowTitle(tr("Template"));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    auto* row = new QHBoxLayout(this);
    row->addWidget(m_preview, 1);
    row->addWidget(makeSide());
    resize(1000, 700);
    connect(m_choices, &ChoicesPanel::lookChanged, this, &TemplateDialog::redraw);
    connect(m_choices, &ChoicesPanel::paperChanged, this, [this] {
        remember();
        redraw();  // other sheets have other seams
    });
    redraw();
    lookForFindings();
}

TemplateDialog::~TemplateDialog() {
    m_stop.request_stop();
}

// On a worker: a page of many pieces takes a while, and nothing here waits for it.
void TemplateDialog::lookForFindings() {
    connect(m_findings, &QPushButton::clicked, this, [this] {
        emit checksRequested();
        reject();
    });
    connect(&m_checks, &QFutureWatcherBase::finished, this, [this] {
        const int count = static_cast<int>(m_checks.result().size());
        m_findings->setText(count == 1 ? tr("1 thing to look at: see Chec&ks")
                                       : tr("%1 things to look at: see Chec&ks").arg(count));
        m_findings->setVisible(count > 0);
    });
    const CheckSettings settings{m_settings.value().trimmerStep, m_settings.value().scale};
    m_checks.setFuture(QtConcurrent::run([making = m_making, settings, stop = m_stop.get_token()] {
        return checkMaking(making, settings, stop);
    }));
}

QWidget* TemplateDialog::makeSide() {
    auto* side = new QWidget;
    side->setFixedWidth(sideWidth);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(8, 0, 0, 0);
    auto* scroll = new QScrollArea;
    scroll->setWidget(m_choices);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    column->addWidget(scroll, 1);
    QFont strong = m_outcome->font();
    strong.setBold(true);
    m_outcome->setFont(strong);
    for (QLabel* label :
         {m_outcome, m_trueSize, static_cast<QLabel*>(m_problem), static_cast<QLabel*>(m_news)}) {
        column->addWidget(label);
    }
    m_problem->hide();
    m_news->hide();
    m_findings->setMinimumHeight(quietHeight);
    m_findings->setFlat(true);
    m_findings->setAutoDefault(false);
    m_findings->setToolTip(tr("Close the template and show the list of checks"));
    m_findings->hide();
    column->addWidget(m_findings, 0, Qt::AlignLeft);
    column->addWidget(makeButtons());
    return side;
}

QWidget* TemplateDialog::makeButtons() {
    auto* buttons = new QWidget;
    auto* grid = new QGridLayout(buttons);
    grid->setContentsMargins(0, 8, 0, 0);
    const auto add = [&](const QString& text, int row, int column, int span, auto pressed) {
        auto* button = new QPushButton(text);
        button->setMinimumHeight(buttonHeight);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, pressed);
        grid->addWidget(button, row, column, 1, span);
        return button;
    };
    m_print = add(tr("&Print…"), 0, 0, 2, &TemplateDialog::print);
    m_savePdf = add(tr("&Save PDF…"), 1, 0, 1, &TemplateDialog::savePdf);
    auto* cut = add(tr("Save cut &lines…"), 1, 1, 1, &TemplateDialog::saveCutLines);
    cut->setToolTip(tr("Closed outlines only, one group a paper, for a cutting machine"));
    auto* svg = add(tr("Sa&ve the whole page as SVG…"), 2, 0, 2, &TemplateDialog::saveSvg);
    svg->setToolTip(tr("One drawing of the page, never in parts, for a drawing program"));
    add(tr("Clos&e"), 3, 0, 2, &QDialog::reject);
    return buttons;
}

void TemplateDialog::makeDefault(QPushButton* button) {
    m_print->setDefault(button == m_print);
    m_savePdf->setDefault(button == m_savePdf);
}

void TemplateDialog::redraw() {
    m_drawing =
        templateDrawing(m_making.sketch, lookOnSheets(m_making.sketch.page, m_choices->choice()));
    layOutSheets();
}

void TemplateDialog::layOutSheets() {
    const TemplateChoice& choice = m_choices->choice();
    Result<TemplateSheets> sheets = sheetsToSave(m_drawing, m_making.sketch.page, choice);
    m_trueSize->setText(trueSizeSentence(choice));
    const bool printable = sheets && (choice.tiled || fitsWhole(m_drawing.size, choice));
    m_print->setEnabled(printable);
    m_savePdf->setEnabled(sheets.has_value());
    makeDefault(printable ? m_print : m_savePdf);
    if (!sheets) {
        m_preview->setSheets({});
        m_outcome->clear();
        say(QString::fromStdString(sheets.error().sentence));
        return;
    }
    m_outcome->setText(outcomeSentence(m_drawing, choice, *sheets));
    m_preview->setSheets(std::move(*sheets));
    say({});
}

void TemplateDialog::remember() {
    m_settings.set(remembered(m_settings.value(), m_choices->choice()));
}

QString TemplateDialog::problem() const {
    return m_problem->text();
}

QString TemplateDialog::news() const {
    return m_news->text();
}

void TemplateDialog::say(const QString& problem, const QString& news) {
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    m_news->setText(news);
    m_news->setVisible(!news.isEmpty());
    if (!problem.isEmpty() || !news.isEmpty()) {
        QAccessibleEvent alert(problem.isEmpty() ? m_news : m_problem, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
}

void TemplateDialog::savePdf() {
    const Result<TemplateSheets> sheets =
        sheetsToSave(m_drawing, m_making.sketch.page, m_choices->choice());
    if (!sheets) {
        return say(QString::fromStdString(sheets.error().sentence));
    }
    const Result<QByteArray> pdf = pdfBytes(sheets->pages, QString::fromStdString(m_drawing.title));
    if (!pdf) {
        return say(QString::fromStdString(pdf.error().sentence));
    }
    save(tr("Save the template as PDF"), tr("template"), QStringLiteral(".pdf"),
         tr("PDF files (*.pdf)"), bytesOf(*pdf), tr("Saved %1."));
}

void TemplateDialog::saveSvg() {
    const Drawing whole = templateDrawing(m_making.sketch, m_choices->choice().look);
    save(tr("Save the whole page as SVG"), tr("template"), QStringLiteral(".svg"),
         tr("SVG drawings (*.svg)"), svgText(whole), tr("Saved the whole page as %1."));
}

void TemplateDialog::saveCutLines() {
    save(tr("Save the cut lines"), tr("cut lines"), QStringLiteral(".svg"),
         tr("SVG drawings (*.svg)"), svgText(cutLineDrawing(m_making.sketch)),
         tr("Saved the cut lines as %1."));
}

void TemplateDialog::save(const QString& title, const QString& part, const QString& suffix,
                          const QString& filter, std::string_view bytes, const QString& what) {
    const QString base =
        m_suggestedName.isEmpty() ? QDir::home().filePath(tr("Page")) : m_suggestedName;
    QString name = m_asks.fileName(this, title, base + QLatin1Char(' ') + part + suffix, filter);
    if (name.isEmpty()) {
        return;
    }
    if (!name.endsWith(suffix, Qt::CaseInsensitive)) {
        name += suffix;
        if (QFileInfo::exists(name) && !m_asks.replace(this, name)) {
            return;
        }
    }
    if (name.endsWith(QLatin1StringView(sketchFileSuffix), Qt::CaseInsensitive)) {
        return say(tr("A name that ends in %1 is that of a sketch, which would be lost; give the "
                      "drawing another name.")
                       .arg(QLatin1StringView(sketchFileSuffix)));
    }
    const Result<void> written = m_asks.files->replace(name.toStdString(), bytes);
    if (!written) {
        return say(QString::fromStdString(written.error().text()));
    }
    say({}, what.arg(QFileInfo(name).fileName()));
}

void TemplateDialog::print() {
    const Result<TemplateSheets> sheets =
        sheetsToPrint(m_drawing, m_making.sketch.page, m_choices->choice());
    if (!sheets) {
        return say(QString::fromStdString(sheets.error().sentence));
    }
    if (m_asks.printers().isEmpty()) {
        makeDefault(m_savePdf);
        m_savePdf->setFocus();
        return say(
            tr("No printer is set up on this computer. Save a PDF instead and print it "
               "elsewhere, at actual size."));
    }
    const PrintOutcome outcome = runPrint(this, m_asks, *sheets, m_choices->choice(),
                                          QString::fromStdString(m_drawing.title));
    say(outcome.problem, outcome.news);
}

}  // namespace matwright::app
