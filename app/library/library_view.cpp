// SPDX-License-Identifier: MIT
#include "app/library/library_view.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLocale>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <chrono>
#include <utility>

#include "app/panels/tint.h"

using namespace std::chrono_literals;

namespace matwright::app {
namespace {

constexpr std::array pictureSides = {112, 148, 184, 224, 288};
constexpr int usualSize = 1;
// How long the first pictures may take before the folder is looked at all the same.
constexpr std::chrono::milliseconds patience(1'500);
const QString sizeKey = QStringLiteral("library-picture-size");

QToolButton* quietButton(const QString& text) {
    auto* button = new QToolButton;
    button->setText(text);
    button->setMinimumHeight(28);
    button->setFocusPolicy(Qt::StrongFocus);
    return button;
}

}  // namespace

LibraryView::LibraryView(LibraryHost& host, SettingsStore& settings, LibraryAsks& asks,
                         LibraryPlaces places, QWidget* parent)
    : QWidget(parent),
      m_host(host),
      m_settings(settings),
      m_asks(asks),
      m_places(std::move(places)),
      m_thumbnails(m_places.cacheFolder + QStringLiteral("/thumbnails")),
      m_model(m_finder),
      m_actions(new LibraryActions(*this)),
      m_filters(new FilterPanel(m_finder)),
      m_wall(new WallView(m_model, m_thumbnails)),
      m_notice(new WallNotice),
      m_details(new DetailsPanel(*m_actions)),
      m_stack(new QStackedWidget),
      m_count(new QLabel),
      m_progress(new TintedLabel(Tint::Quiet)),
      m_order(new QComboBox),
      m_size(new QSlider(Qt::Horizontal)),
      m_news(new QLabel),
      m_undo(quietButton(tr("Undo"))),
      m_stop(quietButton(tr("Stop"))),
      m_problems(quietButton({})) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(m_filters);
    layout->addWidget(makeMiddle(), 1);
    layout->addWidget(m_details);
    setTabOrder(m_filters, m_wall);
    connectParts();
    connectCommands();
    takeFolderOfSettings();
}

LibraryView::~LibraryView() {
    m_details->finishNote();
}

QWidget* LibraryView::makeHeader() {
    auto* header = new QWidget;
    auto* row = new QHBoxLayout(header);
    row->setContentsMargins(10, 8, 10, 8);
    row->setSpacing(8);
    auto* back = quietButton(tr("← Back to the page"));
    connect(back, &QToolButton::clicked, this, [this] { m_host.showPage(); });
    row->addWidget(back);
    QFont strong = m_count->font();
    strong.setWeight(QFont::DemiBold);
    m_count->setFont(strong);
    row->addWidget(m_count);
    m_progress->setWordWrap(false);
    row->addWidget(m_progress);
    row->addStretch(1);
    m_order->addItems({tr("By name"), tr("Last used first"), tr("Most used first"),
                       tr("Newest first")});  // as SearchOrder
    m_order->setMinimumHeight(28);
    m_order->setAccessibleName(tr("Order"));
    row->addWidget(m_order);
    m_size->setRange(0, static_cast<int>(pictureSides.size()) - 1);
    m_size->setPageStep(1);
    m_size->setFixedWidth(110);
    m_size->setMinimumHeight(28);
    m_size->setAccessibleName(tr("Size of the pictures"));
    m_size->setToolTip(m_size->accessibleName());
    row->addWidget(m_size);
    return header;
}

QWidget* LibraryView::makeMiddle() {
    auto* middle = new QWidget;
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins({});
    column->setSpacing(0);
    column->addWidget(makeHeader());
    m_wall->setFrameShape(QFrame::NoFrame);
    m_stack->addWidget(m_wall);
    m_stack->addWidget(m_notice);
    column->addWidget(m_stack, 1);
    column->addWidget(makeFoot());
    return middle;
}

QWidget* LibraryView::makeFoot() {
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(10, 4, 10, 4);
    m_news->setTextFormat(Qt::PlainText);
    row->addWidget(m_news);
    row->addWidget(m_undo);
    row->addWidget(m_stop);
    row->addStretch(1);
    row->addWidget(m_problems);
    m_undo->hide();
    m_stop->hide();
    m_stop->setToolTip(tr("Stop adding sketches; those that are added stay"));
    m_problems->hide();
    m_problems->setAutoRaise(true);
    return foot;
}

void LibraryView::connectParts() {
    connect(&m_finder, &Finder::changed, this, &LibraryView::showFound);
    connect(m_filters, &FilterPanel::wallWanted, this, [this] {
        if (m_model.rowCount() > 0 && !m_wall->currentIndex().isValid()) {
            m_wall->setCurrentIndex(m_model.index(0));
        }
        m_wall->setFocus();
    });
    connect(m_wall, &WallView::typed, m_filters, &FilterPanel::beginTyping);
    connect(m_wall, &WallView::selectionShown, this, &LibraryView::showSelection);
    connect(m_wall, &WallView::activated, m_actions->startPage, &QAction::trigger);
    connect(m_wall, &WallView::familyWanted, this, [this](int row) {
        m_wall->setCurrentIndex(m_model.index(row));
        m_actions->showFamily->trigger();
    });
    connect(m_wall, &WallView::filesDropped, this, [this](const QList<QUrl>& urls) {
        QStringList paths;
        for (const QUrl& url : urls) {
            if (url.isLocalFile()) {
                paths << url.toLocalFile();
            }
        }
        m_work->import(paths, m_finder.holdings());
    });
    connect(&m_thumbnails, &Thumbnails::ready, this, [this](const auto& contents) {
        const auto rows = m_wall->selectedRows();
        if (rows.size() == 1 &&
            std::ranges::find(contents, m_model.content(rows.front())) != contents.end()) {
            showSelection();
        }
    });
    connect(m_wall, &WallView::complete, this, [this] {
        if (m_model.rowCount() > 0) {
            prepare();
        }
    });
    connect(m_order, &QComboBox::activated, this, [this](int order) {
        Query query = m_finder.query();
        query.order = static_cast<SearchOrder>(order);
        m_finder.setQuery(std::move(query));
    });
    connect(m_size, &QSlider::valueChanged, this, [this](int value) {
        m_wall->setPictureSide(pictureSides.at(static_cast<std::size_t>(value)));
        m_settings.setWindowState(sizeKey, QByteArray::number(value));
    });
    const QByteArray kept = m_settings.windowState(sizeKey);
    m_size->setValue(kept.isEmpty() ? usualSize : kept.toInt());
    connect(m_details, &DetailsPanel::labelsChanged, this,
            [this](const std::vector<std::string>& sketches, const auto& change) {
                m_work->changeLabels(sketches, change, {});
            });
    connect(&m_settings, &SettingsStore::changed, this, &LibraryView::takeFolderOfSettings);
    connect(m_undo, &QToolButton::clicked, this, [this] {
        m_undo->hide();
        m_news->clear();
        if (m_undoing) {
            m_undoing();
        }
    });
    connect(m_stop, &QToolButton::clicked, this, [this] { m_work->stopImports(); });
    connect(m_problems, &QToolButton::clicked, m_actions->showProblems, &QAction::trigger);
}

void LibraryView::takeFolderOfSettings() {
    const QString chosen = m_settings.value().libraryFolder;
    const QString folder = chosen.isEmpty() ? m_places.standardFolder : chosen;
    if (folder != m_folder) {
        openLibrary(folder);
    }
}

void LibraryView::openLibrary(const QString& folder) {
    m_details->finishNote();
    m_folder = folder;
    m_isKnown = false;
    m_problemLines.clear();
    m_finder.setHoldings(Holdings::of({}));
    m_wall->setLibrary(folder);
    m_model.setLibrary(folder);
    m_work = std::make_unique<LibraryWork>(folder);
    m_indexing = std::make_unique<Indexing>(folder, m_places.cacheFolder);
    connectWork();
    m_indexing->remember();
    // What is remembered is on the wall first; only then the disk is looked at. A library that is
    // not there yet has nothing to remember.
    m_isPrepared = false;
    QTimer::singleShot(QFileInfo::exists(folder) ? patience : 0ms, m_work.get(),
                       [this] { prepare(); });
}

void LibraryView::prepare() {
    if (!std::exchange(m_isPrepared, true)) {
        m_work->prepare(m_folder == m_places.standardFolder);
    }
}

void LibraryView::connectWork() {
    connect(m_indexing.get(), &Indexing::found, this, [this](auto holdings) {
        m_finder.setHoldings(std::move(holdings));
        selectArrived({});
        if (m_finder.holdings()->size() == 0) {
            prepare();
        }
    });
    connect(m_indexing.get(), &Indexing::progressed, this, [this](const IndexProgress& progress) {
        const QLocale locale;
        m_progress->setText(
            progress.toRead > 20
                ? tr("Reading %1 of %2…")
                      .arg(locale.toString(static_cast<qulonglong>(progress.read)),
                           locale.toString(static_cast<qulonglong>(progress.toRead)))
                : QString());
    });
    connect(m_indexing.get(), &Indexing::looked, this,
            [this](const auto& update) { showLook(*update); });
    connect(m_work.get(), &LibraryWork::prepared, this, [this](bool isNew) {
        if (isNew) {
            firstUse();
        }
        m_indexing->keepWatch();
        m_indexing->refresh();
    });
    connect(m_work.get(), &LibraryWork::changed, m_indexing.get(), &Indexing::refresh);
    connect(m_work.get(), &LibraryWork::said, this,
            [this](const QString& sentence) { tellNews(sentence); });
    connect(m_work.get(), &LibraryWork::failed, this,
            [this](const QString& headline, const QString& sentences) {
                m_asks.tell(headline, sentences);
            });
    connect(m_work.get(), &LibraryWork::arrived, this, &LibraryView::selectArrived);
    connect(m_work.get(), &LibraryWork::trashed, this, [this](int count) {
        tellNews(count == 1 ? tr("1 sketch moved to the trash.")
                            : tr("%1 sketches moved to the trash.").arg(count),
                 [this] { m_work->restoreTrashed(); });
    });
    connect(m_work.get(), &LibraryWork::moved, this, &LibraryView::tellMoved);
    connect(m_work.get(), &LibraryWork::importing, this, [this](int files) {
        tellNews(tr("Adding sketches… %1 files so far.").arg(QLocale().toString(files)));
        m_stop->show();
    });
    connect(m_work.get(), &LibraryWork::imported, this, &LibraryView::tellImported);
}

}  // namespace matwright::app
