// SPDX-License-Identifier: MIT
#include "app/cutting/papers_window.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QStackedLayout>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QVBoxLayout>
#include <utility>

#include "app/cutting/papers_model.h"
#include "app/folders/personal_folders.h"
#include "app/panels/list_rows.h"
#include "app/panels/paper_pictures.h"
#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/window_foot.h"
#include "app/settings/settings.h"

namespace matwright::app {

namespace {

constexpr int paperRowHeight = 50;
constexpr int columnGap = 14;
constexpr int wideButton = 112;  // so that longer words do not touch the edges
constexpr int laterMs = 2'000;

class RoomyCell final : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(columnGap, 0);
    }
};

}  // namespace

std::filesystem::path personalPapersFile() {
    const std::filesystem::path folder = personalDataFolder();
    return folder.empty() ? folder : folder / "papers.sqlite";
}

PapersWindow::PapersWindow(const std::filesystem::path& file, SettingsStore& settings,
                           CuttingAsks asks, QWidget* parent)
    : QDialog(parent),
      m_settings(settings),
      m_asks(std::move(asks)),
      m_file(file),
      m_store(PapersStore::open(file, windowPatience)),
      m_pictures(new PaperPictures(this)),
      m_model(new PapersModel(*m_pictures, this)),
      m_filter(new PapersFilter(this)),
      m_table(new QTableView),
      m_empty(new QLabel(tr("No papers yet.\n\nAdd the sheets and scraps you have; the cutting "
                            "plan uses them before it asks you to buy any."))),
      m_search(new QLineEdit),
      m_foot(new WindowFoot) {
    setWindowTitle(tr("Papers on hand"));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    auto* column = new QVBoxLayout(this);
    column->addWidget(makeHead());
    auto* shown = new QStackedLayout;
    shown->setStackingMode(QStackedLayout::StackAll);
    buildTable();
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_empty->setMargin(40);
    m_empty->setAttribute(Qt::WA_TransparentForMouseEvents);
    shown->addWidget(m_empty);
    shown->addWidget(m_table);
    column->addLayout(shown, 1);
    m_empty->raise();
    buildFoot();
    column->addWidget(m_foot);
    resize((screen()->availableSize() * 0.86).boundedTo({980, 660}));
    addKeys();
    m_later.setSingleShot(true);
    m_later.setInterval(laterMs);
    connect(&m_later, &QTimer::timeout, this, &PapersWindow::refresh);
    relist();
    m_add->setFocus();
}

PapersWindow::~PapersWindow() = default;

QWidget* PapersWindow::makeHead() {
    auto* head = new QWidget;
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins({});
    m_search->setPlaceholderText(tr("Search by name"));
    m_search->setAccessibleName(tr("Search by name"));
    m_search->setClearButtonEnabled(true);
    settle(m_search);
    connect(m_search, &QLineEdit::textChanged, this, [this](const QString& text) {
        m_filter->setWords(text);
        showState();
    });
    row->addWidget(m_search, 1);
    m_undo = addButton(row, tr("&Undo"), this, &PapersWindow::undo);
    m_redo = addButton(row, tr("&Redo"), this, &PapersWindow::redo);
    m_import = addButton(row, tr("&Import CSV…"), this, &PapersWindow::importCsv);
    m_export = addButton(row, tr("E&xport CSV…"), this, &PapersWindow::exportCsv);
    for (QPushButton* button : {m_import, m_export}) {
        button->setMinimumWidth(wideButton);
    }
    return head;
}

void PapersWindow::buildTable() {
    m_filter->setSourceModel(m_model);
    m_table->setModel(m_filter);
    m_table->setItemDelegate(new RoomyCell(m_table));
    setUpRows(*m_table, tr("Papers on hand"));
    m_table->verticalHeader()->setDefaultSectionSize(paperRowHeight);
    QHeaderView* columns = m_table->horizontalHeader();
    columns->setSectionResizeMode(QHeaderView::ResizeToContents);
    columns->setSectionResizeMode(PapersModel::Name, QHeaderView::Stretch);
    columns->setMinimumHeight(controlHeight);
    m_table->setIconSize(PapersModel::swatchSize);
    m_table->setSortingEnabled(true);
    m_table->sortByColumn(PapersModel::Name, Qt::AscendingOrder);
    connect(m_table, &QTableView::activated, this, &PapersWindow::askToChange);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this,
            &PapersWindow::showState);
}

void PapersWindow::buildFoot() {
    m_change = m_foot->add(tr("&Change…"), this, &PapersWindow::askToChange);
    m_remove = m_foot->add(tr("Re&move"), this, &PapersWindow::removeChosen);
    m_foot->add(tr("C&lose"), this, &PapersWindow::reject);
    m_add = new PrimaryButton(tr("&Add paper…"));
    connect(m_add, &QPushButton::clicked, this, &PapersWindow::askToAdd);
    m_add->setMinimumWidth(wideButton);
    m_foot->add({m_add});
}

void PapersWindow::addKeys() {
    const auto key = [this](const QKeySequence& keys, auto pressed) {
        auto* action = new QAction(this);
        action->setShortcut(keys);
        connect(action, &QAction::triggered, this, pressed);
        addAction(action);
    };
    key(QKeySequence::Undo, &PapersWindow::undo);
    key(Qt::CTRL | Qt::SHIFT | Qt::Key_Z, &PapersWindow::redo);
    key(Qt::CTRL | Qt::Key_Y, &PapersWindow::redo);
    key(QKeySequence::Find, [this] { m_search->setFocus(); });
    auto* removal = new QAction(m_table);
    removal->setShortcut(QKeySequence::Delete);
    removal->setShortcutContext(Qt::WidgetShortcut);
    connect(removal, &QAction::triggered, this, &PapersWindow::removeChosen);
    m_table->addAction(removal);
}

std::vector<PaperOnHand> PapersWindow::chosen() const {
    std::vector<PaperOnHand> papers;
    for (const QModelIndex& index : m_table->selectionModel()->selectedRows()) {
        papers.push_back(
            m_model->papers()[static_cast<std::size_t>(m_filter->mapToSource(index).row())]);
    }
    return papers;
}

void PapersWindow::choose(std::span<const PaperId> ids) {
    m_table->clearSelection();
    for (const PaperId id : ids) {
        const QModelIndex index = m_filter->mapFromSource(m_model->index(m_model->rowOf(id), 0));
        if (index.isValid()) {
            m_table->selectionModel()->select(
                index, QItemSelectionModel::Select | QItemSelectionModel::Rows);
            m_table->selectionModel()->setCurrentIndex(index, QItemSelectionModel::NoUpdate);
            m_table->scrollTo(index);
        }
    }
}

void PapersWindow::refresh() {
    const Result<std::int64_t> version =
        m_version >= 0 ? m_store->version() : Result<std::int64_t>(-1);
    if (version && (*version < 0 || *version != m_version)) {
        relist();
    }
}

bool PapersWindow::read() {
    if (!m_store) {
        m_store = PapersStore::open(m_file, windowPatience);
    }
    const Result<std::int64_t> version =
        m_store ? m_store->version() : std::unexpected(m_store.error());
    Result<std::vector<PaperOnHand>> papers =
        version ? m_store->list() : std::unexpected(version.error());
    if (!papers) {
        m_version = -1;
        complain(papers.error());
        // What another program does may be over in a moment.
        if (papers.error().code != ErrorCode::WrongFormat) {
            m_later.start();
        }
        return false;
    }
    if (std::exchange(m_version, *version) < 0) {
        m_foot->say(m_foot->news());
    }
    m_model->setPapers(std::move(*papers), m_settings.value().scale);
    return true;
}

void PapersWindow::relist() {
    std::vector<PaperId> ids;
    for (const PaperOnHand& paper : chosen()) {
        ids.push_back(paper.id);
    }
    if (read()) {
        choose(ids);
    }
    showUndo();
    showState();
}

void PapersWindow::showUndo() {
    const auto show = [](QPushButton* button, const std::optional<PapersChange>& change,
                         const QString& words) {
        button->setEnabled(change.has_value());
        button->setToolTip(change ? words.arg(QString::fromStdString(change->label)) : QString());
    };
    m_undoable = m_store ? m_store->undoable().value_or(std::nullopt) : std::nullopt;
    m_redoable = m_store ? m_store->redoable().value_or(std::nullopt) : std::nullopt;
    show(m_undo, m_undoable, tr("Undo: %1 (Ctrl+Z)"));
    show(m_redo, m_redoable, tr("Redo: %1 (Ctrl+Shift+Z)"));
}

void PapersWindow::showState() {
    const auto count = m_table->selectionModel()->selectedRows().size();
    const bool isEmpty = m_model->papers().empty();
    m_change->setEnabled(count == 1);
    m_remove->setEnabled(count > 0);
    m_export->setEnabled(!isEmpty);
    m_add->setEnabled(m_store.has_value());
    m_import->setEnabled(m_store.has_value());
    m_empty->setVisible(isEmpty || m_filter->rowCount() == 0);
    m_empty->setText(isEmpty ? tr("No papers yet.\n\nAdd the sheets and scraps you have; the "
                                  "cutting plan uses them before it asks you to buy any.")
                             : tr("No paper has these words in its name."));
}

// Enter presses the button that has the focus, never another one: what the table or the search did
// with it is all it does.
void PapersWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter) {
        return QDialog::keyPressEvent(event);
    }
    event->accept();
    if (auto* button = qobject_cast<QPushButton*>(focusWidget())) {
        button->click();
    }
}

// Another program may have changed the list meanwhile.
bool PapersWindow::event(QEvent* event) {
    if (event->type() == QEvent::WindowActivate) {
        refresh();
    }
    return QDialog::event(event);
}

}  // namespace matwright::app
