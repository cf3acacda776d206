// SPDX-License-Identifier: MIT
#include "app/cutting/cutting_window.h"

#include <QAction>
#include <QComboBox>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QProgressBar>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>
#include <utility>

#include "app/cutting/cutting_side.h"
#include "app/cutting/page_papers.h"
#include "app/cutting/papers_at_home.h"
#include "app/cutting/plan_output.h"
#include "app/cutting/plan_panel.h"
#include "app/files/paths.h"
#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/window_foot.h"
#include "app/settings/settings.h"

namespace matwright::app {

namespace {

constexpr int sideWidth = 392;
constexpr int pauseMs = 150;
constexpr int tickMs = 50;
constexpr int tryAgainMs = 2'000;
const QString cuttingKey = QStringLiteral("cutting");

CuttingChoice choiceIn(const SettingsStore& settings) {
    return cuttingChoiceFrom(settings.windowState(cuttingKey));
}

}  // namespace

CuttingWindow::CuttingWindow(Session& session, QString suggestedName, SettingsStore& settings,
                             std::filesystem::path file, CuttingAsks asks, QWidget* parent)
    : QDialog(parent),
      m_session(session),
      m_suggestedName(std::move(suggestedName)),
      m_settings(settings),
      m_file(std::move(file)),
      m_asks(std::move(asks)),
      m_store(PapersStore::open(m_file, windowPatience)),
      m_run(new CuttingRun(this)),
      m_side(new CuttingSide(choiceIn(settings), settings.value().scale, session.undoStack())),
      m_panel(new PlanPanel),
      m_notice(new WindowFoot),
      m_progress(new QProgressBar),
      m_stop(new QPushButton(tr("Stop l&ooking"))),
      m_putBack(new QPushButton(tr("Put the papers bac&k"))),
      m_paper(new QComboBox),
      m_cutIt(new PrimaryButton(tr("&Cut it: take off the papers"))) {
    setWindowTitle(tr("Cutting plan"));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    auto* column = new QVBoxLayout(this);
    auto* row = new QHBoxLayout;
    row->setSpacing(14);
    m_side->setFixedWidth(sideWidth);
    row->addWidget(m_side);
    row->addWidget(m_panel, 1);
    column->addLayout(row, 1);
    column->addWidget(makeNotice());
    column->addWidget(makeFoot());
    resize((screen()->availableSize() * 0.94).boundedTo({1500, 940}));
    m_soon.setSingleShot(true);
    m_soon.setInterval(pauseMs);
    m_tick.setInterval(tickMs);
    m_later.setSingleShot(true);
    m_later.setInterval(tryAgainMs);
    listen();
    addKeys();
    readPapers();
    refresh();
}

CuttingWindow::~CuttingWindow() = default;

QWidget* CuttingWindow::makeNotice() {
    m_progress->setFixedWidth(340);
    m_progress->setAccessibleName(tr("Looking for a better plan"));
    m_putBack->hide();
    m_notice->add({m_putBack});
    m_notice->addBeside(m_progress);
    m_notice->add({m_stop});
    for (QWidget* widget : {static_cast<QWidget*>(m_progress), static_cast<QWidget*>(m_stop)}) {
        QSizePolicy policy = widget->sizePolicy();
        policy.setRetainSizeWhenHidden(true);
        widget->setSizePolicy(policy);
        widget->hide();
    }
    return m_notice;
}

QWidget* CuttingWindow::makeFoot() {
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins({});
    const auto add = [&](const QString& text, void (CuttingWindow::*pressed)()) {
        QPushButton* button = addButton(row, text, this, pressed);
        button->setMinimumHeight(footControlHeight);
        return button;
    };
    add(tr("Papers on &hand…"), &CuttingWindow::showPapers);
    row->addStretch(1);
    m_paper->addItems({tr("Letter"), tr("A4")});
    m_paper->setCurrentIndex(m_side->choice().onA4 ? 1 : 0);
    m_paper->setAccessibleName(tr("Paper the plan is printed on"));
    m_paper->setToolTip(m_paper->accessibleName());
    settle(m_paper);
    m_paper->setMinimumHeight(footControlHeight);
    row->addWidget(m_paper);
    m_print = add(tr("&Print…"), &CuttingWindow::print);
    m_savePdf = add(tr("&Save PDF…"), &CuttingWindow::savePdf);
    m_saveSvg = add(tr("Save th&is sheet as SVG…"), &CuttingWindow::saveSvg);
    add(tr("C&lose"), &CuttingWindow::reject);
    addButton(row, m_cutIt)->setMinimumHeight(footControlHeight);
    connect(m_cutIt, &QPushButton::clicked, this, &CuttingWindow::cutIt);
    return foot;
}

void CuttingWindow::listen() {
    connect(&m_soon, &QTimer::timeout, this, &CuttingWindow::startLooking);
    connect(&m_tick, &QTimer::timeout, this, &CuttingWindow::showElapsed);
    connect(&m_later, &QTimer::timeout, this, &CuttingWindow::lookAtPapers);
    connect(m_run, &CuttingRun::found, this, &CuttingWindow::showFound);
    connect(m_run, &CuttingRun::ended, this, &CuttingWindow::showEnd);
    connect(m_stop, &QPushButton::clicked, m_run, &CuttingRun::cancel);
    connect(m_putBack, &QPushButton::clicked, this, &CuttingWindow::putBack);
    connect(&m_session, &Session::changed, this, [this](const Change& change) {
        if (change.has(Change::Pieces) || change.has(Change::Page) || change.has(Change::Texts) ||
            change.has(Change::Papers)) {
            refresh();
        }
    });
    connect(m_side, &CuttingSide::choiceChanged, this, [this] {
        m_settings.setWindowState(cuttingKey, bytesOf(m_side->choice()));
        refresh();
    });
    connect(m_paper, &QComboBox::activated, this, [this](int index) {
        m_side->setOnA4(index == 1);
        m_settings.setWindowState(cuttingKey, bytesOf(m_side->choice()));
    });
    connect(m_side, &CuttingSide::pagesAsked, this, &CuttingWindow::addPages);
    connect(m_side, &CuttingSide::onlyThisPageAsked, this, &CuttingWindow::onlyThisPage);
    connect(m_side, &CuttingSide::fillAsked, this, [this](const QString& paper) {
        changed(
            fillPapers(m_session, m_pieces, paper, lookFromHome(m_file, m_session.work(), paper)));
    });
    connect(&m_side->table(), &PieceTable::paperNamed, this, [this](int row, const QString& paper) {
        changed(namePaper(m_session, m_pieces[static_cast<std::size_t>(row)], paper,
                          lookFromHome(m_file, m_session.work(), paper)));
    });
    connect(&m_side->table(), &PieceTable::middleSwitched, this, [this](int row, bool used) {
        changed(useMiddle(m_session, m_pieces[static_cast<std::size_t>(row)], used));
    });
}

void CuttingWindow::addKeys() {
    const auto key = [this](QKeySequence::StandardKey keys, auto pressed) {
        auto* action = new QAction(this);
        action->setShortcut(keys);
        connect(action, &QAction::triggered, this, pressed);
        addAction(action);
    };
    key(QKeySequence::Undo, [this] { m_side->undo(); });
    key(QKeySequence::Redo, [this] { m_side->redo(); });
}

void CuttingWindow::refresh() {
    m_pages.clear();
    m_pages.push_back(
        {pageName().toStdString(), m_session.sketch(), paperColours(m_session.work())});
    m_pages.insert(m_pages.end(), m_otherPages.begin(), m_otherPages.end());
    QStringList names;
    for (const PaperPage& page : m_pages) {
        names << QString::fromStdString(page.name);
    }
    m_pieces = paperPieces(m_pages, m_side->choice().glueEdge);
    m_side->setPages(names);
    m_side->setLines(tableLines(m_pages, m_pieces, m_settings.value().scale),
                     paperChoices(m_onHand, m_pieces));
    lookAgain();
}

void CuttingWindow::lookAgain() {
    m_isCurrent = false;
    m_planProblem.clear();
    if (std::exchange(m_isCut, false) && m_complaint.isEmpty() && !m_putBack->isHidden()) {
        say(tr("This is a new plan. The papers of the one before can still be put back."));
    }
    m_soon.start();
    showButtons();
}

void CuttingWindow::startLooking() {
    m_planned = m_onHand;
    m_since.start();
    m_tick.start();
    m_run->start({m_pages, m_onHand, planOptionsOf(m_side->choice(), m_settings.value().scale)});
}

void CuttingWindow::showFound(const FoundPlan& found) {
    if (m_soon.isActive() || m_isCut) {
        return;  // of what was there before, or better than what is cut already
    }
    m_plan = found;
    m_isCurrent = true;
    if (!*found) {
        m_panel->setPlan({}, {});
        m_planProblem = shownText(found->error());
    } else {
        m_planProblem.clear();
        m_panel->setPlan(found, instead());
        tellWhetherCut();
    }
    showSaid();
    showButtons();
}

void CuttingWindow::showEnd() {
    m_tick.stop();
    m_progress->hide();
    m_stop->hide();
    if (plan() && plan()->cancelled && m_isCurrent && !m_isCut && m_complaint.isEmpty()) {
        say(tr("Stopped; this is the best plan so far."));
    }
    showButtons();
}

// Only a search that lasts is shown. The bar is the clock; its words are what the search knows.
void CuttingWindow::showElapsed() {
    const int whole = m_side->choice().seconds * 1000;
    const int elapsed = static_cast<int>(std::min<qint64>(m_since.elapsed(), whole));
    PaperProgress now = m_run->progress();
    if (plan() && m_isCurrent) {
        now.sheets = std::min(now.sheets, plan()->sheets.size());
    }
    const QString clock =
        tr("%1 of %2 s").arg(elapsed / 1000).arg(static_cast<qlonglong>(m_side->choice().seconds));
    const QString words =
        now.sheets == 0   ? tr("Looking: %1").arg(clock)
        : now.sheets == 1 ? tr("1 sheet so far: %1").arg(clock)
                          : tr("%1 sheets so far, at least %2: %3")
                                .arg(static_cast<qulonglong>(now.sheets))
                                .arg(static_cast<qulonglong>(std::max<std::size_t>(1, now.atLeast)))
                                .arg(clock);
    m_progress->setRange(0, whole);
    m_progress->setValue(elapsed);
    m_progress->setFormat(words);
    const bool lasts = m_since.elapsed() > qint64{2} * pauseMs;
    m_progress->setVisible(lasts);
    m_stop->setVisible(lasts);
}

void CuttingWindow::showButtons() {
    const bool hasSheets = plan() && !plan()->sheets.empty() && m_isCurrent;
    for (QPushButton* button : {m_print, m_savePdf, m_saveSvg}) {
        button->setEnabled(hasSheets);
    }
    m_cutIt->setEnabled(hasSheets && m_version >= 0 && !m_isCut);
    const int bought = hasSheets ? sheetsToBuy(*plan()) : 0;
    m_cutIt->setToolTip(
        bought == 0
            ? tr("The sheets of this plan come off the papers on hand, and what is left goes back")
            : tr("Also what will be left of the sheets to buy (%1) comes onto the papers on hand; "
                 "cut when they are bought")
                  .arg(bought));
}

QString CuttingWindow::instead() const {
    if (m_pieces.empty()) {
        return tr("There is nothing to cut yet.");
    }
    return plan()->notCut.empty()
               ? tr("Name a paper for the pieces on the left.\nThe plan then comes by itself.")
               : tr("Nothing can be cut yet; the reasons stand above.");
}

QString CuttingWindow::pageName() const {
    QString name = QString::fromStdString(m_session.sketch().name);
    if (!name.isEmpty()) {
        return name;
    }
    return m_suggestedName.isEmpty() ? tr("this page") : QFileInfo(m_suggestedName).fileName();
}

bool CuttingWindow::event(QEvent* event) {
    if (event->type() == QEvent::WindowActivate) {
        lookAtPapers();
    }
    return QDialog::event(event);
}

void CuttingWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) {
        return QDialog::keyPressEvent(event);
    }
    if (auto* button = qobject_cast<QPushButton*>(focusWidget())) {
        button->click();
    }
}

}  // namespace matwright::app
