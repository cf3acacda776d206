// SPDX-License-Identifier: MIT
#include "app/printplan/print_plan_window.h"

#include <QAccessible>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>
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
                                 const QString& file, SettingsStore& settings,
                                 PhotoService* service, QWidget* parent)
    : PrintPlanWindow(making, suggestedName, file, settings, service, PlanAsks::ofTheSystem(),
                      parent) {}

PrintPlanWindow::PrintPlanWindow(const Making& making, QString suggestedName, const QString& file,
                                 SettingsStore& settings, PhotoService* service, PlanAsks asks,
                                 QWidget* parent)
    : QDialog(parent),
      m_suggestedName(std::move(suggestedName)),
      m_settings(settings),
      m_asks(std::move(asks)),
      m_store(new PlanStore(m_asks.store, unitOf(settings.value().scale), this)),
      m_pages(new PlanPagesPanel(m_asks)),
      m_prints(new PlanPrintsPanel(service)),
      m_cards(new PlanCards(service, settings.value().scale)),
      m_bound(new QLabel),
      m_foot(new WindowFoot),
      m_openFolder(new QPushButton(tr("Open &folder"))),
      m_saveCuts(new QPushButton(tr("Cutting st&eps…"))),
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
    QScrollArea* scrolled = addScrolled(middle, m_cards);
    scrolled->setFocusPolicy(Qt::StrongFocus);  // its keys scroll
    scrolled->setAccessibleName(tr("Sheets of the plan"));
    row->addWidget(middle, 1);
    column->addLayout(row, 1);
    buildFoot();
    column->addWidget(m_foot);
    resize((screen()->availableSize() * 0.92).boundedTo({1240, 860}));
    const QString shown = QFileInfo(m_suggestedName).fileName();
    const std::string name = !file.isEmpty()   ? planNameOf(file)
                             : shown.isEmpty() ? tr("This page").toStdString()
                                               : shown.toStdString();
    m_draft.pages.push_back({{name, making}, file, true});
    m_pages->beginIn(QFileInfo(file.isEmpty() ? m_suggestedName : file).absolutePath());
    listen();
    listenToPages();
    m_focus = m_print;
    m_close->setFocus();
    m_store->read();
    replan();
}

PrintPlanWindow::~PrintPlanWindow() = default;

QWidget* PrintPlanWindow::makeSide() {
    auto* side = new QWidget;
    side->setFixedWidth(planSideWidth);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins({});
    column->addWidget(m_pages);
    column->addWidget(m_prints, 1);
    m_printers =
        addButton(column, tr("Pr&inters and photo papers…"), this, &PrintPlanWindow::showPrinters);
    return side;
}

void PrintPlanWindow::buildFoot() {
    m_foot->add(
        {m_openFolder, m_undo, m_record, m_saveCuts, m_savePictures, m_savePdfs, m_close, m_print});
    m_print->setMinimumWidth(96);
    m_print->setDefault(true);
    m_openFolder->hide();
    m_undo->hide();
    m_saveCuts->setToolTip(
        tr("A PDF to take to the table: every sheet with its cuts, step by "
           "step"));
    m_savePictures->setToolTip(tr("One JPEG a sheet, exactly its paper"));
    m_savePdfs->setToolTip(tr("One PDF for each printer, to be printed at actual size"));
    m_print->setToolTip(tr("At actual size, without scaling, corrected as the size test says"));
    m_record->setToolTip(
        tr("For the sheets you printed from here, or all of them where you saved files: prints "
           "ahead come to the prints on hand, prints on hand that were taken are used up, and "
           "papers are counted down."));
    m_undo->setToolTip(tr("Takes back what was recorded as printed last"));
}

void PrintPlanWindow::listen() {
    connect(m_store, &PlanStore::wasRead, this, &PrintPlanWindow::storeRead);
    connect(m_run, &PlanRun::planned, this, &PrintPlanWindow::showPlan);
    connect(m_run, &PlanRun::failed, this, &PrintPlanWindow::showFailure);
    connect(m_work, &PlanWork::progressed, this, &PrintPlanWindow::showProgress);
    connect(m_work, &PlanWork::finished, this, &PrintPlanWindow::showOutcome);
    connect(m_savePdfs, &QPushButton::clicked, this, &PrintPlanWindow::savePdfs);
    connect(m_saveCuts, &QPushButton::clicked, this, &PrintPlanWindow::saveCuts);
    connect(m_savePictures, &QPushButton::clicked, this, &PrintPlanWindow::savePictures);
    connect(m_print, &QPushButton::clicked, this, &PrintPlanWindow::choosePrinter);
    connect(m_record, &QPushButton::clicked, this, &PrintPlanWindow::record);
    connect(m_undo, &QPushButton::clicked, this, &PrintPlanWindow::undoRecord);
    connect(m_close, &QPushButton::clicked, this, &PrintPlanWindow::reject);
    connect(new QShortcut(QKeySequence::Undo, this), &QShortcut::activated, this,
            &PrintPlanWindow::undoRecord);
    connect(m_openFolder, &QPushButton::clicked, this, [this] { m_asks.show(m_folder); });
}

void PrintPlanWindow::listenToPages() {
    connect(m_pages, &PlanPagesPanel::pagesRead, this, &PrintPlanWindow::takePages);
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
}

// While something is made, the plan stays as it is.
void PrintPlanWindow::takePages(const std::vector<DraftPage>& pages) {
    if (m_work->isRunning()) {
        m_arrived.insert(m_arrived.end(), pages.begin(), pages.end());
        return;
    }
    addPages(pages, {}, {});
}

void PrintPlanWindow::addPages(const std::vector<DraftPage>& pages, const QString& news,
                               const QString& problem) {
    for (DraftPage page : pages) {
        page.page.name = m_draft.freeName(page.page.name);
        m_draft.pages.push_back(std::move(page));
    }
    replan(news, problem);
}

void PrintPlanWindow::replan(const QString& news, const QString& problem) {
    m_ready.reset();
    m_news = news;
    m_warning = problem;
    if (m_isStale) {
        for (const AheadPrint& made : std::exchange(m_madeAhead, {})) {
            if (const auto at = std::ranges::find(m_draft.ahead, made); at != m_draft.ahead.end()) {
                m_draft.ahead.erase(at);
            }
        }
        m_store->read();
    }
    m_pages->show(m_draft.pages);
    m_prints->show(m_draft, m_store->known().printers);
    m_prints->showPlan(nullptr);
    m_cards->setAcceptsOffers(false);
    m_foot->say({});
    m_isStale = false;
    if (m_store->isReading()) {
        m_run->stop();
    } else {
        m_run->start(m_draft.input(m_store->known(), m_before.value_or(PrintOnHandId{})));
    }
    showState();
}

void PrintPlanWindow::storeRead(bool differs) {
    if (!m_before) {
        m_before.emplace();
        for (const PrintOnHand& print : m_store->known().used) {
            m_before = std::max(*m_before, print.id);
        }
    }
    if (differs || !m_ready) {
        replan(m_news, m_warning);
    } else {
        showState();
    }
}

void PrintPlanWindow::showPlan(const std::shared_ptr<const ReadyPlan>& ready) {
    if (m_store->isReading()) {
        return;  // of what is known no longer
    }
    m_ready = ready;
    m_prints->showPlan(m_ready.get());
    m_cards->show(m_ready, m_ready->plan.sheets.empty() ? emptySentence() : QString());
    QStringList problems{m_store->problem(), m_warning};
    for (const LeftOutPrint& print : m_ready->plan.leftOut) {
        problems << QString::fromStdString(print.sentence);
    }
    problems.removeAll(QString());
    problems.removeDuplicates();
    m_foot->say(m_news, problems.join(QLatin1Char('\n')));
    showState();
    QAccessibleEvent told(m_bound, QAccessible::Alert);
    QAccessible::updateAccessibility(&told);
}

void PrintPlanWindow::showFailure(const Error& error) {
    if (m_store->isReading()) {
        return;
    }
    QStringList problems{m_store->problem(), QString::fromStdString(error.text())};
    problems.removeAll(QString());
    m_foot->say(m_news, problems.join(QLatin1Char('\n')));
    m_cards->show(nullptr, tr("These prints cannot be planned."));
    showState();
}

QString PrintPlanWindow::emptySentence() const {
    if (!m_ready->plan.leftOut.empty()) {
        return tr(
            "No paper takes these prints. Press “Printers and photo papers…” and add one "
            "that does.");
    }
    if (!m_ready->plan.taken.empty()) {
        return tr("Nothing to print: everything is taken from the prints on hand.");
    }
    return m_ready->plan.there.empty()
               ? tr("Nothing to print. Put photos into the slots of the page, tick a page, or add "
                    "one.")
               : tr("Nothing to print: it was all printed before.");
}

QString PrintPlanWindow::boundText() const {
    if (m_store->isReading()) {
        return tr("Looking at your printers and prints…");
    }
    if (m_run->isRunning()) {
        return tr("Planning…");
    }
    return m_ready && !m_ready->plan.sheets.empty()
               ? QString::fromStdString(m_ready->plan.bound) + QLatin1Char('.')
               : tr("No sheets.");
}

// What can be pressed, and the line on top.
void PrintPlanWindow::showState() {
    const QPointer<QWidget> focus = focusWidget();
    m_bound->setText(boundText());
    if (isPlanning()) {
        m_foot->showProgress(0, 0);
    } else if (!isWorking()) {
        m_foot->hideProgress();
    }
    showButtons();
    settleFocus(focus);
}

void PrintPlanWindow::showButtons() {
    const bool working = isWorking();
    const bool ready = m_ready && !isPlanning() && !working;
    const bool isStoppable = m_run->isRunning() || working;
    m_close->setText(m_isStopping ? tr("Stopping…") : isStoppable ? tr("Cance&l") : tr("C&lose"));
    m_close->setEnabled(!m_isStopping);
    for (QPushButton* button : {m_saveCuts, m_savePdfs, m_savePictures, m_print}) {
        button->setEnabled(ready && !m_ready->plan.sheets.empty());
    }
    m_record->setEnabled(canRecord());
    m_undo->setVisible(m_recorded.has_value());
    m_undo->setEnabled(ready);
    m_printers->setEnabled(!working && !m_store->isReading());
    m_pages->setEnabled(!working);
    m_prints->setEnabled(!working);
    m_cards->setAcceptsOffers(ready && !m_sheets.hasRecorded(m_ready));
}

// Where what has the focus goes grey, it would wander on; it is given back afterwards.
void PrintPlanWindow::settleFocus(const QPointer<QWidget>& before) {
    if (before && before != m_close && !before->isEnabled()) {
        m_focus = before;
        m_close->setFocus();
    } else if (!focusWidget() && m_close->isEnabled()) {
        m_close->setFocus();
    }
    if (m_focus && m_focus->isEnabled() && focusWidget() == m_close) {
        std::exchange(m_focus, nullptr)->setFocus();
    }
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
        m_isStopping = true;
        m_work->cancel();
        showState();
    } else if (m_run->isRunning()) {
        m_run->stop();
    } else if (askBeforeClosing()) {
        QDialog::reject();
    }
}

}  // namespace matwright::app
