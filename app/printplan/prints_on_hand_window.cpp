// SPDX-License-Identifier: MIT
#include "app/printplan/prints_on_hand_window.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/photos/photo_service.h"
#include "app/printplan/print_picture.h"
#include "app/settings/settings.h"

namespace matwright::app {

namespace {

constexpr int handPictureSide = 64;
enum HandColumn { HandPicture, HandName, HandSize, HandState, HandWhen, HandColumns };

QString stateText(const PrintOnHand& print) {
    switch (print.state) {
        case PrintState::OnHand:
            return PrintsOnHandWindow::tr("on hand");
        case PrintState::Used:
            return PrintsOnHandWindow::tr("used for “%1”").arg(QString::fromStdString(print.page));
        case PrintState::Wasted:
            return PrintsOnHandWindow::tr("thrown away");
    }
    return {};
}

QTableWidgetItem* handItem(const QString& text) {
    auto* item = new QTableWidgetItem(text);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    return item;
}

// The print and as much of its photo as a picture needs; the file's place is not known.
QPixmap pictureOf(PhotoService* service, const PrintLook& look) {
    Photo photo;
    photo.content = look.photo;
    photo.tone = look.tone;
    Print print;
    print.paper = look.paper;
    print.trim = look.trim;
    print.border = look.border;
    print.crop = look.crop;
    print.window = look.window;
    print.from = look.from;
    print.to = look.to;
    return printIcon(service, photo, print, handPictureSide);
}

}  // namespace

PrintsOnHandWindow::PrintsOnHandWindow(SettingsStore& settings, PhotoService* service,
                                       QWidget* parent)
    : PrintsOnHandWindow(settings, service, PlanAsks::ofTheSystem(), parent) {}

PrintsOnHandWindow::PrintsOnHandWindow(SettingsStore& settings, PhotoService* service,
                                       PlanAsks asks, QWidget* parent)
    : QDialog(parent),
      m_settings(settings),
      m_service(service),
      m_asks(std::move(asks)),
      m_summary(new QLabel),
      m_shown(new QComboBox),
      m_list(new QTableWidget),
      m_empty(new QLabel),
      m_page(new QLineEdit),
      m_problem(new TintedLabel(Tint::Wrong)),
      m_use(new PrimaryButton(tr("&Used"))),
      m_back(new QPushButton(tr("Put &back"))),
      m_waste(new QPushButton(tr("&Thrown away"))),
      m_undo(new QPushButton(tr("U&ndo"))) {
    setWindowTitle(tr("Prints on hand"));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    column->addWidget(makeHead());
    column->addWidget(makeList(), 1);
    column->addWidget(makeFoot());
    resize((screen()->availableSize() * 0.86).boundedTo({860, 600}));
    auto store = PrintingStore::open(m_asks.store, unitOf(settings.value().scale));
    if (store) {
        m_store.emplace(std::move(*store));
    } else {
        say(QString::fromStdString(store.error().text()));
    }
    if (m_service) {
        connect(m_service, &PhotoService::thumbnailReady, this, &PrintsOnHandWindow::showPictures);
    }
    connect(m_shown, &QComboBox::currentIndexChanged, this, &PrintsOnHandWindow::load);
    connect(m_list, &QTableWidget::itemSelectionChanged, this, &PrintsOnHandWindow::showEnabled);
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
    m_list->setColumnCount(HandColumns);
    m_list->setHorizontalHeaderLabels(
        {QString(), tr("Photo"), tr("Size"), tr("State"), tr("Since")});
    m_list->verticalHeader()->hide();
    m_list->verticalHeader()->setDefaultSectionSize(handPictureSide + 10);
    m_list->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_list->horizontalHeader()->setSectionResizeMode(HandPicture, QHeaderView::Fixed);
    m_list->horizontalHeader()->setHighlightSections(false);
    m_list->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_list->setColumnWidth(HandPicture, handPictureSide + 16);
    m_list->setIconSize({handPictureSide, handPictureSide});
    m_list->setShowGrid(false);
    m_list->setAlternatingRowColors(true);
    m_list->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_list->setTabKeyNavigation(false);
    m_list->setAccessibleName(tr("Prints"));
    column->addWidget(m_list, 1);
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignCenter);
    column->addWidget(m_empty, 1);
    return place;
}

QWidget* PrintsOnHandWindow::makeFoot() {
    auto* foot = new QWidget;
    auto* column = new QVBoxLayout(foot);
    column->setContentsMargins({});
    m_problem->hide();
    column->addWidget(m_problem);
    auto* row = new QHBoxLayout;
    auto* label = new QLabel(tr("&For the page"));
    label->setBuddy(m_page);
    m_page->setMinimumHeight(controlHeight);
    m_page->setPlaceholderText(tr("which page, if you like"));
    m_page->setAccessibleName(tr("The page that takes the print"));
    row->addWidget(label);
    row->addWidget(m_page, 1);
    auto* close = new QPushButton(tr("C&lose"));
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_use, &QPushButton::clicked, this, &PrintsOnHandWindow::use);
    connect(m_back, &QPushButton::clicked, this, &PrintsOnHandWindow::putBack);
    connect(m_waste, &QPushButton::clicked, this, &PrintsOnHandWindow::throwAway);
    connect(m_undo, &QPushButton::clicked, this, &PrintsOnHandWindow::undo);
    m_undo->setShortcut(QKeySequence::Undo);
    for (QPushButton* button : {m_use, m_back, m_waste, m_undo, close}) {
        button->setMinimumHeight(controlHeight + 4);
        button->setMinimumWidth(84);
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    column->addLayout(row);
    return foot;
}

void PrintsOnHandWindow::load() {
    m_prints.clear();
    if (m_store) {
        constexpr std::array states{PrintState::OnHand, PrintState::Used, PrintState::Wasted};
        const auto index = static_cast<std::size_t>(m_shown->currentIndex());
        auto prints = index < states.size() ? m_store->prints(states[index]) : m_store->prints();
        if (prints) {
            m_prints = std::move(*prints);
            std::ranges::reverse(m_prints);  // the latest is looked for most
        } else {
            say(QString::fromStdString(prints.error().text()));
        }
    }
    m_list->setRowCount(static_cast<int>(m_prints.size()));
    for (std::size_t i = 0; i < m_prints.size(); ++i) {
        fillRow(static_cast<int>(i), m_prints[i]);
    }
    const auto count = m_prints.size();
    m_summary->setText(count == 1 ? tr("1 print") : tr("%1 prints").arg(count));
    m_list->setVisible(count > 0);
    m_empty->setVisible(count == 0);
    m_empty->setText(
        m_shown->currentIndex() == 0
            ? tr("No prints on hand. They come here when you fill the room that is left on a sheet "
                 "in the print plan, and press “They are printed”.")
            : tr("No such prints."));
    showPictures();
    showEnabled();
}

void PrintsOnHandWindow::fillRow(int row, const PrintOnHand& print) {
    m_list->setItem(row, HandPicture, handItem({}));
    m_list->setItem(row, HandName, handItem(QString::fromStdString(print.photoName)));
    m_list->setItem(row, HandSize,
                    handItem(QString::fromStdString(naturalSizeText(print.look.paper))));
    m_list->setItem(row, HandState, handItem(stateText(print)));
    m_list->setItem(row, HandWhen, handItem(QString::fromStdString(print.when)));
}

void PrintsOnHandWindow::showPictures() {
    for (int row = 0; row < m_list->rowCount(); ++row) {
        const QPixmap picture = pictureOf(m_service, m_prints[static_cast<std::size_t>(row)].look);
        if (!picture.isNull()) {
            m_list->item(row, HandPicture)->setIcon(QIcon(picture));
        }
    }
}

std::vector<PrintOnHand> PrintsOnHandWindow::chosen() const {
    std::vector<PrintOnHand> prints;
    for (const QModelIndex& index : m_list->selectionModel()->selectedRows()) {
        prints.push_back(m_prints[static_cast<std::size_t>(index.row())]);
    }
    return prints;
}

void PrintsOnHandWindow::showEnabled() {
    const auto prints = chosen();
    const bool some = !prints.empty();
    const bool onHand = some && std::ranges::all_of(prints, [](const PrintOnHand& print) {
                            return print.state == PrintState::OnHand;
                        });
    const bool gone = some && std::ranges::none_of(prints, [](const PrintOnHand& print) {
                          return print.state == PrintState::OnHand;
                      });
    m_use->setEnabled(onHand);
    m_waste->setEnabled(onHand);
    m_back->setEnabled(gone);
    const auto changes = m_store ? m_store->changes(1) : Result<std::vector<PrintingChange>>{};
    const bool undoable = changes && !changes->empty();
    m_undo->setEnabled(undoable);
    m_undo->setToolTip(undoable ? tr("Takes back: %1, %2")
                                      .arg(QString::fromStdString(changes->front().what),
                                           QString::fromStdString(changes->front().when))
                                : QString());
}

void PrintsOnHandWindow::change(const std::function<Result<void>(PrintOnHandId)>& act) {
    say({});
    for (const PrintOnHand& print : chosen()) {
        const auto done = act(print.id);
        if (!done) {
            say(QString::fromStdString(done.error().text()));
            break;
        }
    }
    load();
}

void PrintsOnHandWindow::use() {
    const QString typed = m_page->text().trimmed();
    const std::string page = (typed.isEmpty() ? tr("a page") : typed).toStdString();
    change([&](PrintOnHandId print) -> Result<void> {
        if (const auto done = m_store->take(print, page, m_asks.today()); !done) {
            return std::unexpected(done.error());
        }
        return {};
    });
}

void PrintsOnHandWindow::putBack() {
    change([&](PrintOnHandId print) -> Result<void> {
        if (const auto done = m_store->putBack(print, m_asks.today()); !done) {
            return std::unexpected(done.error());
        }
        return {};
    });
}

void PrintsOnHandWindow::throwAway() {
    change([&](PrintOnHandId print) -> Result<void> {
        if (const auto done = m_store->waste(print, m_asks.today()); !done) {
            return std::unexpected(done.error());
        }
        return {};
    });
}

void PrintsOnHandWindow::undo() {
    if (!m_store) {
        return;
    }
    const auto undone = m_store->undo();
    say(undone ? QString() : QString::fromStdString(undone.error().text()));
    load();
}

void PrintsOnHandWindow::say(const QString& problem) {
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
}

QString PrintsOnHandWindow::summary() const {
    return m_summary->text();
}

QString PrintsOnHandWindow::problem() const {
    return m_problem->text();
}

}  // namespace matwright::app
