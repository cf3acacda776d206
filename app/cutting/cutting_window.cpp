// SPDX-License-Identifier: MIT
#include "app/cutting/cutting_window.h"

#include <QAction>
#include <QComboBox>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>
#include <utility>

#include "app/cutting/cutting_side.h"
#include "app/cutting/page_papers.h"
#include "app/cutting/plan_panel.h"
#include "app/files/paths.h"
#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/settings/settings.h"

namespace matwright::app {

namespace {

constexpr int sideWidth = 392;
constexpr int pauseMs = 150;
constexpr int tickMs = 50;
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
      m_store(PapersStore::open(m_file)),
      m_run(new CuttingRun(this)),
      m_side(new CuttingSide(choiceIn(settings), settings.value().scale, session.undoStack())),
      m_panel(new PlanPanel),
      m_problem(new TintedLabel(Tint::Wrong)),
      m_news(new QLabel),
      m_progress(new QProgressBar),
      m_stop(new QPushButton(tr("Stop l&ooking"))),
      m_putBack(new QPushButton(tr("Put the papers &back"))),
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
    listen();
    addKeys();
    if (!m_store) {
        complain(shownText(m_store.error()));
    }
    readPapers();
    refresh();
}

CuttingWindow::~CuttingWindow() = default;

QWidget* CuttingWindow::makeNotice() {
    auto* notice = new QWidget;
    auto* column = new QVBoxLayout(notice);
    column->setContentsMargins({});
    m_problem->hide();
    column->addWidget(m_problem);
    auto* row = new QHBoxLayout;
    m_news->setTextFormat(Qt::PlainText);
    m_news->setWordWrap(true);
    row->addWidget(m_news, 1);
    m_progress->setFormat(tr("Looking for a better plan…"));
    m_progress->setFixedWidth(260);
    m_progress->setAccessibleName(tr("Looking for a better plan"));
    for (QWidget* widget : {static_cast<QWidget*>(m_progress), static_cast<QWidget*>(m_stop)}) {
        QSizePolicy policy = widget->sizePolicy();
        policy.setRetainSizeWhenHidden(true);
        widget->setSizePolicy(policy);
        widget->setMinimumHeight(controlHeight);
        widget->hide();
    }
    for (QPushButton* button : {m_putBack, m_stop}) {
        button->setAutoDefault(false);
        settle(button);
    }
    m_putBack->hide();
    row->addWidget(m_putBack);
    row->addWidget(m_progress);
    row->addWidget(m_stop);
    column->addLayout(row);
    return notice;
}

QPushButton* CuttingWindow::addButton(QHBoxLayout* row, const QString& text,
                                      void (CuttingWindow::*pressed)()) {
    auto* button = new QPushButton(text);
    button->setAutoDefault(false);
    button->setMinimumHeight(controlHeight + 4);
    connect(button, &QPushButton::clicked, this, pressed);
    row->addWidget(button);
    return button;
}

QWidget* CuttingWindow::makeFoot() {
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins({});
    addButton(row, tr("Papers on &hand…"), &CuttingWindow::showPapers);
    row->addStretch(1);
    m_paper->addItems({tr("Letter"), tr("A4")});
    m_paper->setCurrentIndex(m_side->choice().onA4 ? 1 : 0);
    m_paper->setAccessibleName(tr("Paper the plan is printed on"));
    m_paper->setToolTip(m_paper->accessibleName());
    settle(m_paper);
    m_paper->setMinimumHeight(controlHeight + 4);
    row->addWidget(m_paper);
    m_print = addButton(row, tr("&Print…"), &CuttingWindow::print);
    m_savePdf = addButton(row, tr("&Save PDF…"), &CuttingWindow::savePdf);
    m_saveSvg = addButton(row, tr("Save this sheet as S&VG…"), &CuttingWindow::saveSvg);
    auto* close = new QPushButton(tr("Close"));
    for (QPushButton* button : {close, m_cutIt}) {
        button->setAutoDefault(false);
        button->setMinimumHeight(controlHeight + 4);
        row->addWidget(button);
    }
    m_cutIt->setToolTip(
        tr("The sheets of this plan come off the papers on hand, and what is left goes back"));
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_cutIt, &QPushButton::clicked, this, &CuttingWindow::cutIt);
    return foot;
}

void CuttingWindow::listen() {
    connect(&m_soon, &QTimer::timeout, this, &CuttingWindow::startLooking);
    connect(&m_tick, &QTimer::timeout, this, &CuttingWindow::showElapsed);
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
    connect(m_side, &CuttingSide::fillAsked, this,
            [this](const QString& paper) { changed(fillPapers(m_session, m_pieces, paper)); });
    connect(&m_side->table(), &PieceTable::paperNamed, this, [this](int row, const QString& paper) {
        changed(namePaper(m_session, m_pieces[static_cast<std::size_t>(row)], paper));
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

void CuttingWindow::readPapers() {
    if (!m_store) {
        return;
    }
    m_version = m_store->version().value_or(-1);
    Result<std::vector<PaperOnHand>> papers = m_store->list();
    if (!papers) {
        return complain(shownText(papers.error()));
    }
    m_onHand = std::move(*papers);
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
    m_cut.reset();
    m_putBack->hide();
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
    if (m_soon.isActive() || m_cut) {
        return;  // of what was there before, or better than what is cut already
    }
    m_plan = found;
    m_isCurrent = true;
    if (!*found) {
        m_panel->setPlan({}, {});
        complain(shownText(found->error()));
    } else {
        m_problem->hide();
        m_panel->setPlan(found, instead());
    }
    showButtons();
}

void CuttingWindow::showEnd() {
    m_tick.stop();
    m_progress->hide();
    m_stop->hide();
    if (plan() && plan()->cancelled && m_isCurrent && !m_cut) {
        say(tr("Stopped; this is the best plan so far."));
    }
    showButtons();
}

// Only a search that lasts is shown.
void CuttingWindow::showElapsed() {
    const int whole = m_side->choice().seconds * 1000;
    m_progress->setRange(0, whole);
    m_progress->setValue(static_cast<int>(std::min<qint64>(m_since.elapsed(), whole)));
    const bool lasts = m_since.elapsed() > qint64{2} * pauseMs;
    m_progress->setVisible(lasts);
    m_stop->setVisible(lasts);
}

void CuttingWindow::showButtons() {
    const bool hasSheets = plan() && !plan()->sheets.empty() && m_isCurrent;
    for (QPushButton* button : {m_print, m_savePdf, m_saveSvg}) {
        button->setEnabled(hasSheets);
    }
    m_cutIt->setEnabled(hasSheets && m_store && !m_cut);
    m_cutIt->setDefault(m_cutIt->isEnabled());
}

QString CuttingWindow::instead() const {
    if (m_pieces.empty()) {
        return tr("There is nothing to cut yet.");
    }
    if (!plan()->notCut.empty()) {
        return tr(
            "No sheet on hand is large enough. Add papers on hand, or allow sheets to be "
            "bought.");
    }
    return tr("Name a paper for the pieces on the left.\nThe plan then comes by itself.");
}

QString CuttingWindow::pageName() const {
    QString name = QString::fromStdString(m_session.sketch().name);
    if (!name.isEmpty()) {
        return name;
    }
    return m_suggestedName.isEmpty() ? tr("this page") : QFileInfo(m_suggestedName).fileName();
}

bool CuttingWindow::event(QEvent* event) {
    if (event->type() == QEvent::WindowActivate && m_store) {
        const Result<std::int64_t> version = m_store->version();
        if (version && *version != m_version && !m_cut) {
            readPapers();
            refresh();
        }
    }
    return QDialog::event(event);
}

}  // namespace matwright::app
