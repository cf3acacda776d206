// SPDX-License-Identifier: MIT
#include "app/printplan/prints_on_hand_window.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QScreen>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "app/panels/list_rows.h"
#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/window_foot.h"
#include "app/printplan/prints_on_hand_model.h"
#include "app/settings/settings.h"

namespace matwright::app {

PrintsOnHandWindow::PrintsOnHandWindow(SettingsStore& settings, PhotoService* service,
                                       QWidget* parent)
    : PrintsOnHandWindow(settings, service, PlanAsks::ofTheSystem(), parent) {}

PrintsOnHandWindow::PrintsOnHandWindow(SettingsStore& settings, PhotoService* service,
                                       PlanAsks asks, QWidget* parent)
    : QDialog(parent),
      m_asks(std::move(asks)),
      m_prints(new PrintsOnHandModel(service, this)),
      m_summary(new QLabel),
      m_shown(new QComboBox),
      m_list(new QTableView),
      m_empty(new QLabel),
      m_page(new QLineEdit),
      m_foot(new WindowFoot),
      m_use(new PrimaryButton(tr("&Used"))) {
    setWindowTitle(tr("Prints on hand"));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(makeHead());
    column->addWidget(makeList(), 1);
    column->addWidget(makeActs());
    buildFoot();
    column->addWidget(m_foot);
    resize((screen()->availableSize() * 0.86).boundedTo({860, 600}));
    auto store = PrintingStore::open(m_asks.store, unitOf(settings.value().scale));
    if (store) {
        m_store.emplace(std::move(*store));
    } else {
        m_foot->say({}, QString::fromStdString(store.error().text()));
    }
    connect(m_shown, &QComboBox::currentIndexChanged, this, &PrintsOnHandWindow::load);
    connect(m_list->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &PrintsOnHandWindow::showEnabled);
    load();
    m_list->setFocus();
}

QWidget* PrintsOnHandWindow::makeHead() {
    auto* head = new QWidget;
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins({});
    QFont strong = m_summary->font();
    strong.setBold(true);
    m_summary->setFont(strong);
    row->addWidget(m_summary, 1);
    auto* label = new QLabel(tr("&Show"));
    label->setBuddy(m_shown);
    row->addWidget(label);
    m_shown->addItems({tr("On hand"), tr("Used"), tr("Thrown away"), tr("All")});
    m_shown->setMinimumHeight(controlHeight);
    m_shown->setAccessibleName(tr("Which prints are shown"));
    row->addWidget(m_shown);
    return head;
}

QWidget* PrintsOnHandWindow::makeList() {
    auto* place = new QWidget;
    auto* column = new QVBoxLayout(place);
    column->setContentsMargins({});
    m_list->setModel(m_prints);
    setUpRows(*m_list, tr("Prints"));
    m_list->verticalHeader()->setDefaultSectionSize(PrintsOnHandModel::pictureSide + 10);
    m_list->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_list->horizontalHeader()->setSectionResizeMode(PrintsOnHandModel::Picture,
                                                     QHeaderView::Fixed);
    m_list->setColumnWidth(PrintsOnHandModel::Picture, PrintsOnHandModel::pictureSide + 16);
    m_list->setIconSize({PrintsOnHandModel::pictureSide, PrintsOnHandModel::pictureSide});
    column->addWidget(m_list, 1);
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignCenter);
    column->addWidget(m_empty, 1);
    return place;
}

// What can become of the chosen prints.
QWidget* PrintsOnHandWindow::makeActs() {
    auto* acts = new QWidget;
    auto* row = new QHBoxLayout(acts);
    row->setContentsMargins({});
    auto* label = new QLabel(tr("&For the page"));
    label->setBuddy(m_page);
    m_page->setMinimumHeight(controlHeight);
    m_page->setPlaceholderText(tr("which page, if you like"));
    m_page->setAccessibleName(tr("The page that takes the print"));
    row->addWidget(label);
    row->addWidget(m_page, 1);
    addButton(row, m_use);
    connect(m_use, &QPushButton::clicked, this, &PrintsOnHandWindow::use);
    m_waste = addButton(row, tr("&Thrown away"), this, &PrintsOnHandWindow::throwAway);
    m_back = addButton(row, tr("Put &back"), this, &PrintsOnHandWindow::putBack);
    m_use->setToolTip(tr("They are glued on a page now."));
    m_waste->setToolTip(tr("They are spoiled; the print plan has them printed again."));
    m_back->setToolTip(tr("They are on hand after all."));
    for (QPushButton* button : {m_use, m_waste, m_back}) {
        button->setMinimumWidth(84);
    }
    return acts;
}

void PrintsOnHandWindow::buildFoot() {
    m_undo = m_foot->add(tr("U&ndo"), this, &PrintsOnHandWindow::undo);
    m_undo->setShortcut(QKeySequence::Undo);
    auto* close = m_foot->add(tr("C&lose"), this, &PrintsOnHandWindow::reject);
    for (QPushButton* button : {m_undo, close}) {
        button->setMinimumWidth(84);
    }
}

void PrintsOnHandWindow::readPrints() {
    constexpr std::array states{PrintState::OnHand, PrintState::Used, PrintState::Wasted};
    const auto index = static_cast<std::size_t>(m_shown->currentIndex());
    auto prints = index < states.size() ? m_store->prints(states[index]) : m_store->prints();
    if (!prints) {
        m_foot->say({}, QString::fromStdString(prints.error().text()));
        prints.emplace();
    }
    std::ranges::reverse(*prints);  // the latest is looked for most
    m_prints->setPrints(std::move(*prints));
}

// What was chosen stays so where it is still listed; nothing else takes its place.
void PrintsOnHandWindow::load() {
    const auto before = chosen();
    if (m_store) {
        readPrints();
    }
    choose(before);
    const int count = m_prints->rowCount();
    m_summary->setText(count == 1 ? tr("1 print") : tr("%1 prints").arg(count));
    m_list->setVisible(count > 0);
    m_empty->setVisible(count == 0);
    const QString empty[] = {
        tr("No prints on hand. They come here when you fill the room that is left on a sheet in "
           "the print plan, and press “They are printed”."),
        tr("No print is used for a page."), tr("No print was thrown away."),
        tr("No prints yet. They are listed when you press “They are printed” in the print plan.")};
    m_empty->setText(empty[m_shown->currentIndex()]);
    showUndo();
    showEnabled();
}

void PrintsOnHandWindow::choose(const std::set<PrintOnHandId>& prints) {
    QItemSelection selection;
    for (int row = 0; row < m_prints->rowCount(); ++row) {
        if (prints.contains(m_prints->prints()[static_cast<std::size_t>(row)].id)) {
            selection.select(m_prints->index(row, 0),
                             m_prints->index(row, PrintsOnHandModel::Columns - 1));
        }
    }
    m_list->selectionModel()->select(selection, QItemSelectionModel::ClearAndSelect);
}

std::set<PrintOnHandId> PrintsOnHandWindow::chosen() const {
    std::set<PrintOnHandId> prints;
    for (const QModelIndex& index : m_list->selectionModel()->selectedRows()) {
        prints.insert(m_prints->prints()[static_cast<std::size_t>(index.row())].id);
    }
    return prints;
}

void PrintsOnHandWindow::showUndo() {
    const auto changes = m_store ? m_store->changes(1) : Result<std::vector<PrintingChange>>{};
    m_undoable = changes && !changes->empty() ? std::optional(changes->front()) : std::nullopt;
    m_undo->setEnabled(m_undoable.has_value());
    m_undo->setText(m_undoable ? tr("U&ndo: %1").arg(QString::fromStdString(m_undoable->what))
                               : tr("U&ndo"));
    m_undo->setToolTip(m_undoable ? tr("Takes back: %1, %2")
                                        .arg(QString::fromStdString(m_undoable->what),
                                             QString::fromStdString(m_undoable->when))
                                  : QString());
}

void PrintsOnHandWindow::showEnabled() {
    bool some = false;
    bool onHand = true;  // all of them
    bool used = true;    // or on hand
    bool gone = true;
    for (const QModelIndex& index : m_list->selectionModel()->selectedRows()) {
        const PrintState state = m_prints->prints()[static_cast<std::size_t>(index.row())].state;
        some = true;
        onHand = onHand && state == PrintState::OnHand;
        used = used && state != PrintState::Wasted;
        gone = gone && state != PrintState::OnHand;
    }
    m_use->setEnabled(some && onHand);
    m_waste->setEnabled(some && used);
    m_back->setEnabled(some && gone);
}

// The focus does not stay on a button that has gone grey.
void PrintsOnHandWindow::tell(const Result<std::int64_t>& done, const QString& news) {
    if (done) {
        m_own.insert(*done);
    }
    m_foot->say(done ? news : QString(),
                done ? QString() : QString::fromStdString(done.error().text()));
    load();
    QWidget* next = m_shown;
    if (m_list->isVisibleTo(this)) {
        next = m_list;
    }
    next->setFocus();
}

void PrintsOnHandWindow::use() {
    const auto prints = chosen();
    if (!m_store || prints.empty()) {
        return;
    }
    const QString typed = m_page->text().trimmed();
    const QString page = typed.isEmpty() ? tr("a page") : typed;
    tell(m_store->take(prints, page.toStdString(), m_asks.today()),
         prints.size() == 1 ? tr("1 print is used for “%1” now.").arg(page)
                            : tr("%1 prints are used for “%2” now.").arg(prints.size()).arg(page));
    m_page->clear();
}

void PrintsOnHandWindow::putBack() {
    const auto prints = chosen();
    if (m_store && !prints.empty()) {
        tell(m_store->putBack(prints, m_asks.today()),
             prints.size() == 1 ? tr("1 print is on hand again.")
                                : tr("%1 prints are on hand again.").arg(prints.size()));
    }
}

void PrintsOnHandWindow::throwAway() {
    const auto prints = chosen();
    if (m_store && !prints.empty()) {
        tell(m_store->waste(prints, m_asks.today()),
             prints.size() == 1 ? tr("1 print is thrown away.")
                                : tr("%1 prints are thrown away.").arg(prints.size()));
    }
}

// Only what the button said: another program's later change stays.
void PrintsOnHandWindow::undo() {
    if (!m_store || !m_undoable) {
        return;
    }
    const QString what = QString::fromStdString(m_undoable->what);
    if (!m_own.contains(m_undoable->number) &&
        !m_asks.confirm(this,
                        tr("Take back “%1” of %2? It was not done in this window just now.")
                            .arg(what, QString::fromStdString(m_undoable->when)),
                        tr("Take back"))) {
        return;
    }
    const auto undone = m_store->undo(m_undoable->number);
    tell(undone ? Result<std::int64_t>(undone->number) : std::unexpected(undone.error()),
         tr("Taken back: %1.").arg(what));
}

QString PrintsOnHandWindow::summary() const {
    return m_summary->text();
}

QString PrintsOnHandWindow::news() const {
    return m_foot->news();
}

QString PrintsOnHandWindow::problem() const {
    return m_foot->problem();
}

}  // namespace matwright::app
