// SPDX-License-Identifier: MIT
#include "app/library/filter_panel.h"

#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "app/library/entry_words.h"

namespace matwright::app {
namespace {

constexpr int filtersWidth = 256;
constexpr int leastPhotoChoices = 9;  // and none
constexpr auto tiles = ChoiceGroup::Form{ChoiceButton::Form::Tile, 5, 10};
constexpr auto rows = ChoiceGroup::Form{};
constexpr auto pairs = ChoiceGroup::Form{ChoiceButton::Form::Row, 2, 12};

// Taken out where it is chosen, put in where it is not.
template <typename T>
void toggle(std::vector<T>& chosen, const T& value) {
    if (std::erase(chosen, value) == 0) {
        chosen.push_back(value);
    }
}

template <typename T>
void toggle(std::optional<T>& chosen, const T& value) {
    chosen = chosen == value ? std::nullopt : std::optional(value);
}

template <typename T>
bool has(const std::vector<T>& values, const T& value) {
    return std::ranges::find(values, value) != values.end();
}

// A sub-folder under the one above it, by its own name.
QString folderLabel(std::string_view path) {
    const auto depth = std::ranges::count(path, '/');
    const auto slash = path.rfind('/');
    const QString name = shownPath(slash == path.npos ? path : path.substr(slash + 1));
    return QStringLiteral("   ").repeated(static_cast<int>(depth)) + name;
}

}  // namespace

FilterPanel::FilterPanel(Finder& finder, QWidget* parent)
    : QWidget(parent),
      m_finder(finder),
      m_words(new QLineEdit),
      m_wholeWords(new QCheckBox(tr("Whole words only"))),
      m_orFewer(new QCheckBox(tr("or fewer"))),
      m_showAll(new QPushButton(tr("Show all again"))),
      m_photos(new ChoiceGroup(tr("Photos"), tiles)),
      m_kept(new ChoiceGroup(tr("Yours"), rows)),
      m_pages(new ChoiceGroup(tr("Pages"), pairs)),
      m_pageSizes(new ChoiceGroup(tr("Page size"), rows)),
      m_prints(new ChoiceGroup(tr("Prints it uses"), pairs)),
      m_ways(new ChoiceGroup(tr("Photos upright or lying"), rows)),
      m_room(new ChoiceGroup(tr("Room for"), pairs)),
      m_tags(new ChoiceGroup(tr("Tags"), rows)),
      m_folders(new ChoiceGroup(tr("Folder"), rows)) {
    setFixedWidth(filtersWidth);
    makeWords();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 10, 0, 0);
    auto* find = new QLabel(tr("&Find"));
    find->setBuddy(m_words);
    QFont strong = find->font();
    strong.setWeight(QFont::DemiBold);
    find->setFont(strong);
    auto* top = new QVBoxLayout;
    top->setContentsMargins(0, 0, 10, 0);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{find, m_words, m_wholeWords, m_showAll}) {
        top->addWidget(widget);
    }
    layout->addLayout(top);
    layout->addWidget(makeGroups(), 1);
    connectGroups();
    connect(&finder, &Finder::changed, this, &FilterPanel::showFound);
    showFound();
}

void FilterPanel::makeWords() {
    m_words->setPlaceholderText(tr("Name, note or tag"));
    m_words->setClearButtonEnabled(true);
    m_words->setMinimumHeight(28);
    m_words->setAccessibleName(tr("Find by words"));
    m_words->installEventFilter(this);
    m_wholeWords->setMinimumHeight(24);
    m_orFewer->setMinimumHeight(24);
    m_orFewer->setAccessibleName(tr("Photos: that many or fewer"));
    connect(m_words, &QLineEdit::textChanged, this, [this](const QString& text) {
        change([&](Query& query) { query.words = text.toStdString(); });
    });
    connect(m_wholeWords, &QCheckBox::clicked, this, [this](bool on) {
        change([&](Query& query) { query.wordMatch = on ? WordMatch::Whole : WordMatch::Part; });
    });
    connect(m_orFewer, &QCheckBox::clicked, this, [this](bool on) {
        change([&](Query& query) {
            if (query.photos) {
                query.photos->orFewer = on;
            }
        });
    });
    connect(m_showAll, &QPushButton::clicked, &m_finder, &Finder::showAll);
}

QWidget* FilterPanel::makeGroups() {
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 4, 10, 10);
    layout->setSpacing(14);
    m_photos->addBelow(m_orFewer);
    for (ChoiceGroup* group :
         {m_photos, m_kept, m_pageSizes, m_pages, m_prints, m_ways, m_room, m_tags, m_folders}) {
        layout->addWidget(group);
    }
    layout->addStretch(1);
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(content);
    area->setFocusPolicy(Qt::NoFocus);
    m_kept->setLabels({tr("★ Favourites")});
    m_pages->setLabels({tr("Single"), tr("Double")});
    m_ways->setLabels({tr("Some upright"), tr("Some lying"), tr("All upright"), tr("All lying")});
    m_room->setLabels({tr("Title"), tr("Journaling")});
    return area;
}

void FilterPanel::change(const std::function<void(Query&)>& change) {
    Query query = m_finder.query();
    change(query);
    m_finder.setQuery(std::move(query));
    showCounts();  // a choice that was clicked and stays as it was
}

void FilterPanel::connectGroups() {
    const auto on = [this](ChoiceGroup* group, auto edit) {
        connect(group, &ChoiceGroup::toggled, this, [this, edit](int choice) {
            change([&](Query& query) { edit(query, static_cast<std::size_t>(choice)); });
        });
    };
    on(m_photos, [this](Query& query, std::size_t choice) {
        toggle(query.photos, PhotoCountFilter{static_cast<int>(choice), m_orFewer->isChecked()});
    });
    on(m_kept, [](Query& query, std::size_t) { query.favourites = !query.favourites; });
    on(m_pages, [](Query& query, std::size_t choice) { toggle(query.doublePage, choice == 1); });
    on(m_pageSizes, [this](Query& query, std::size_t choice) {
        const Size size = m_labelled->pageSizes().at(choice);
        const bool was = has(query.pageSizes, size);
        query.pageSizes.clear();
        if (!was) {
            query.pageSizes.push_back(size);
        }
    });
    on(m_prints, [this](Query& query, std::size_t choice) {
        toggle(query.prints, m_labelled->printSizes().at(choice));
    });
    on(m_ways,
       [](Query& query, std::size_t choice) { toggle(query.photoWay, allPhotoWays[choice]); });
    on(m_room, [](Query& query, std::size_t choice) {
        bool& room = choice == 0 ? query.roomForTitle : query.roomForJournaling;
        room = !room;
    });
    on(m_tags, [this](Query& query, std::size_t choice) {
        toggle(query.tags, m_labelled->tags().at(choice));
    });
    on(m_folders, [this](Query& query, std::size_t choice) {
        const std::string& folder = m_labelled->folders().at(choice);
        query.folder = query.folder == folder ? std::string() : folder;
    });
}

void FilterPanel::showFound() {
    if (m_labelled != m_finder.holdings()) {
        m_labelled = m_finder.holdings();
        showLabels();
    }
    showCounts();
}

void FilterPanel::showLabels() {
    QStringList photos;
    for (int i = 0; i <= std::max(leastPhotoChoices, m_labelled->mostPhotos()); ++i) {
        photos << QString::number(i);
    }
    m_photos->setLabels(photos);
    QStringList sizes, prints, tags, folders;
    for (const Size size : m_labelled->pageSizes()) {
        sizes << pageSizeWords(size);
    }
    for (const Size size : m_labelled->printSizes()) {
        prints << printWords(size);
    }
    for (const std::string& tag : m_labelled->tags()) {
        tags << asText(tag);
    }
    for (const std::string& folder : m_labelled->folders()) {
        folders << folderLabel(folder);
    }
    m_pageSizes->setLabels(sizes);
    m_prints->setLabels(prints);
    m_tags->setLabels(tags);
    m_folders->setLabels(folders);
}

void FilterPanel::showCounts() {
    const Query& query = m_finder.query();
    const FilterCounts& counts = m_finder.found().counts;
    if (m_words->text().toStdString() != query.words) {
        m_words->setText(asText(query.words));
    }
    m_wholeWords->setChecked(query.wordMatch == WordMatch::Whole);
    if (query.photos) {
        m_orFewer->setChecked(query.photos->orFewer);
    }
    m_showAll->setEnabled(!m_finder.showsAll());
    auto photos = m_orFewer->isChecked() ? counts.photosAtMost : counts.photosExactly;
    photos.resize(static_cast<std::size_t>(m_photos->choices()),
                  m_orFewer->isChecked() && !photos.empty() ? photos.back() : 0);
    m_photos->setCounts(photos, [&](std::size_t i) {
        return query.photos && query.photos->count == static_cast<int>(i);
    });
    m_kept->setCounts({counts.favourites}, [&](std::size_t) { return query.favourites; });
    m_pages->setCounts({counts.singlePages, counts.doublePages},
                       [&](std::size_t i) { return query.doublePage == (i == 1); });
    m_pageSizes->setCounts(counts.pageSizes, [&](std::size_t i) {
        return has(query.pageSizes, m_labelled->pageSizes()[i]);
    });
    m_prints->setCounts(counts.prints, [&](std::size_t i) {
        return has(query.prints, m_labelled->printSizes()[i]);
    });
    m_ways->setCounts({std::begin(counts.photoWays), std::end(counts.photoWays)},
                      [&](std::size_t i) { return query.photoWay == allPhotoWays[i]; });
    m_room->setCounts({counts.roomForTitle, counts.roomForJournaling}, [&](std::size_t i) {
        return i == 0 ? query.roomForTitle : query.roomForJournaling;
    });
    m_tags->setCounts(counts.tags,
                      [&](std::size_t i) { return has(query.tags, m_labelled->tags()[i]); });
    m_folders->setCounts(counts.folders,
                         [&](std::size_t i) { return query.folder == m_labelled->folders()[i]; });
}

void FilterPanel::beginTyping(const QString& text) {
    m_words->setFocus(Qt::ShortcutFocusReason);
    m_words->setText(m_words->text() + text);
}

bool FilterPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_words && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Down || key->key() == Qt::Key_Return) {
            emit wallWanted();
            return true;
        }
        if (key->key() == Qt::Key_Escape && !m_words->text().isEmpty()) {
            m_words->clear();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace matwright::app
