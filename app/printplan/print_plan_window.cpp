// SPDX-License-Identifier: MIT
#include "app/printplan/print_plan_window.h"

#include <QCloseEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QUuid>
#include <QVBoxLayout>
#include <utility>

#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/window_foot.h"
#include "app/photos/photo_service.h"
#include "app/printplan/plan_cards.h"
#include "app/printplan/plan_pages_panel.h"
#include "app/printplan/plan_prints_panel.h"
#include "app/settings/settings.h"

namespace matwright::app {

namespace {

constexpr int planSideWidth = 390;

}  // namespace

PrintPlanWindow::PrintPlanWindow(const Making& making, const QString& suggestedName,
                                 SettingsStore& settings, PhotoService* service, QWidget* parent)
    : PrintPlanWindow(making, suggestedName, settings, service, PlanAsks::ofTheSystem(), parent) {}

PrintPlanWindow::PrintPlanWindow(const Making& making, QString suggestedName,
                                 SettingsStore& settings, PhotoService* service, PlanAsks asks,
                                 QWidget* parent)
    : QDialog(parent),
      m_suggestedName(std::move(suggestedName)),
      m_settings(settings),
      m_asks(std::move(asks)),
      m_pages(new PlanPagesPanel(m_asks)),
      m_prints(new PlanPrintsPanel(service)),
      m_cards(new PlanCards(service, settings.value().scale)),
      m_bound(new QLabel),
      m_foot(new WindowFoot),
      m_openFolder(new QPushButton(tr("Open &folder"))),
      m_savePictures(new QPushButton(tr("Save pi&ctures…"))),
      m_savePdfs(new QPushButton(tr("&Save PDFs…"))),
      m_print(new PrimaryButton(tr("&Print…"))),
      m_record(new QPushButton(tr("&They are printed"))),
      m_undo(new QPushButton(tr("&Undo that"))),
      m_close(new QPushButton(tr("C&lose"))),
      m_run(new PlanRun(this)),
      m_work(new PlanWork(this)) {
    setWindowTitle(tr("Print plan"));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    QFont strong = m_bound->font();
    strong.setBold(true);
    m_bound->setFont(strong);
    m_bound->setWordWrap(true);
    column->addWidget(m_bound);
    auto* row = new QHBoxLayout;
    row->setSpacing(14);
    row->addWidget(makeSide());
    auto* middle = new QWidget;
    addScrolled(middle, m_cards);
    row->addWidget(middle, 1);
    column->addLayout(row, 1);
    buildFoot();
    column->addWidget(m_foot);
    resize((screen()->availableSize() * 0.92).boundedTo({1240, 860}));
    const QString name = QFileInfo(m_suggestedName).fileName();
    m_draft.pages.push_back(
        {{(name.isEmpty() ? tr("This page") : name).toStdString(), making}, {}, true});
    listen();
    loadStore();
    replan();
    m_print->setFocus();
}

PrintPlanWindow::~PrintPlanWindow() = default;

QWidget* PrintPlanWindow::makeSide() {
    auto* side = new QWidget;
    side->setFixedWidth(planSideWidth);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins({});
    column->addWidget(m_pages);
    column->addWidget(m_prints, 1);
    addButton(column, tr("Pr&inters and photo papers…"), this, &PrintPlanWindow::showPrinters);
    return side;
}

void PrintPlanWindow::buildFoot() {
    m_foot->add({m_openFolder, m_undo, m_record, m_savePictures, m_savePdfs, m_close, m_print});
    m_print->setMinimumWidth(96);
    m_print->setDefault(true);
    m_openFolder->hide();
    m_undo->hide();
    m_savePictures->setToolTip(tr("One JPEG a sheet, exactly its paper"));
    m_savePdfs->setToolTip(tr("One PDF for each printer, to be printed at actual size"));
    m_print->setToolTip(tr("At actual size, without scaling, corrected as the size test says"));
    m_record->setToolTip(
        tr("Prints ahead come to the prints on hand, prints on hand that were "
           "taken are used up, and papers are counted down."));
}

void PrintPlanWindow::listen() {
    connect(m_pages, &PlanPagesPanel::pagesRead, this, [this](const auto& pages) {
        for (DraftPage page : pages) {
            page.page.name = m_draft.freeName(page.page.name);
            m_draft.pages.push_back(std::move(page));
        }
        replan();
    });
    connect(m_pages, &PlanPagesPanel::printedChanged, this, [this](int page, bool isPrinted) {
        m_draft.pages[static_cast<std::size_t>(page)].isPrinted = isPrinted;
        replan();
    });
    connect(m_pages, &PlanPagesPanel::removed, this, [this](int page) {
        m_draft.removePage(static_cast<std::size_t>(page));
        replan();
    });
    connect(m_prints, &PlanPrintsPanel::wished, this,
            [this](std::size_t page, PieceId slot, const WishedPlace& place) {
                m_draft.wish(page, slot, place);
                replan();
            });
    connect(m_prints, &PlanPrintsPanel::takenOut, this, [this](std::size_t ahead) {
        m_draft.ahead.erase(m_draft.ahead.begin() + static_cast<std::ptrdiff_t>(ahead));
        replan();
    });
    connect(m_cards, &PlanCards::offerChosen, this, [this](const PrintOffer& offer) {
        m_draft.ahead.push_back(offer.print);
        replan();
    });
    connect(m_run, &PlanRun::planned, this, &PrintPlanWindow::showPlan);
    connect(m_run, &PlanRun::failed, this, [this](const Error& error) {
        m_foot->say({}, QString::fromStdString(error.text()));
        m_cards->show(nullptr, tr("These prints cannot be planned."));
        showState();
    });
    connect(m_work, &PlanWork::progressed, this, &PrintPlanWindow::showProgress);
    connect(m_work, &PlanWork::finished, this, &PrintPlanWindow::showOutcome);
    connect(m_savePdfs, &QPushButton::clicked, this, &PrintPlanWindow::savePdfs);
    connect(m_savePictures, &QPushButton::clicked, this, &PrintPlanWindow::savePictures);
    connect(m_print, &QPushButton::clicked, this, &PrintPlanWindow::choosePrinter);
    connect(m_record, &QPushButton::clicked, this, &PrintPlanWindow::record);
    connect(m_undo, &QPushButton::clicked, this, &PrintPlanWindow::undoRecord);
    connect(m_close, &QPushButton::clicked, this, &PrintPlanWindow::reject);
    connect(m_openFolder, &QPushButton::clicked, this, [this] { m_asks.show(m_folder); });
}

void PrintPlanWindow::replan() {
    m_ready.reset();
    m_isRecorded = false;
    m_once = QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    m_pages->show(m_draft.pages);
    m_prints->show(m_draft, m_printers);
    m_prints->showPlan(nullptr);
    m_cards->setAcceptsOffers(false);
    m_foot->say({});
    PlanInput input = m_draft.input(m_printers);
    input.onHand = m_onHand;
    input.printedPhotos = m_printedPhotos;
    m_run->start(std::move(input));
    showState();
}

void PrintPlanWindow::showPlan(const ReadyPlan& ready) {
    m_ready = std::make_shared<ReadyPlan>(ready);
    m_prints->showPlan(m_ready.get());
    m_cards->show(m_ready, m_ready->plan.sheets.empty() ? emptySentence() : QString());
    QStringList left = m_storeProblem.isEmpty() ? QStringList() : QStringList(m_storeProblem);
    for (const LeftOutPrint& print : m_ready->plan.leftOut) {
        left << QString::fromStdString(print.sentence);
    }
    left.removeDuplicates();
    m_foot->say({}, left.join(QLatin1Char('\n')));
    showState();
}

QString PrintPlanWindow::emptySentence() const {
    if (!m_ready->plan.leftOut.empty()) {
        return tr(
            "No paper takes these prints. Press “Printers and photo papers…” and add one "
            "that does.");
    }
    return m_ready->plan.taken.empty()
               ? tr("Nothing to print. Put photos into the slots of the page, tick a page, or add "
                    "one.")
               : tr("Nothing to print: everything is taken from the prints on hand.");
}

// What can be pressed, and the line on top.
void PrintPlanWindow::showState() {
    const bool planning = m_run->isRunning();
    const bool working = m_work->isRunning();
    const bool ready = m_ready && !planning && !working;
    const bool sheets = ready && !m_ready->plan.sheets.empty();
    m_bound->setText(planning ? tr("Planning…")
                     : m_ready && !m_ready->plan.sheets.empty()
                         ? QString::fromStdString(m_ready->plan.bound) + QLatin1Char('.')
                         : tr("No sheets."));
    if (planning) {
        m_foot->showProgress(0, 0);
    } else if (!working) {
        m_foot->hideProgress();
    }
    m_close->setText(planning || working ? tr("Cance&l") : tr("C&lose"));
    for (QPushButton* button : {m_savePdfs, m_savePictures, m_print}) {
        button->setEnabled(sheets);
    }
    m_record->setEnabled(ready && m_store && !m_isRecorded &&
                         (sheets || !m_ready->plan.taken.empty()));
    m_undo->setVisible(m_isRecorded);
    m_pages->setEnabled(!working);
    m_prints->setEnabled(!working);
    m_cards->setAcceptsOffers(ready && !m_isRecorded);
}

QString PrintPlanWindow::bound() const {
    return m_bound->text();
}

QString PrintPlanWindow::result() const {
    return m_foot->news();
}

QString PrintPlanWindow::problem() const {
    return m_foot->problem();
}

// While something is made, closing means to stop it.
void PrintPlanWindow::reject() {
    if (m_work->isRunning()) {
        m_work->cancel();
    } else if (m_run->isRunning()) {
        m_run->stop();
    } else {
        QDialog::reject();
    }
}

void PrintPlanWindow::closeEvent(QCloseEvent* event) {
    m_work->cancel();
    m_run->stop();
    QDialog::closeEvent(event);
}

}  // namespace matwright::app
