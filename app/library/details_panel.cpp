// SPDX-License-Identifier: MIT
#include "app/library/details_panel.h"

#include <QEvent>
#include <QGridLayout>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "app/library/action_button.h"
#include "app/library/entry_words.h"
#include "app/panels/tint.h"

namespace matwright::app {
namespace {

constexpr int detailsWidth = 300;
constexpr int detailsPictureHeight = 236;
constexpr int noteHeight = 64;

QLabel* heading(const QString& text) {
    auto* label = new QLabel(text);
    QFont strong = label->font();
    strong.setWeight(QFont::DemiBold);
    label->setFont(strong);
    return label;
}

QStringList asTexts(const std::vector<std::string>& texts) {
    QStringList list;
    for (const std::string& text : texts) {
        list << asText(text);
    }
    return list;
}

QString factLines(const LibraryEntry& entry) {
    QStringList lines{pageWords(entry.facts), photoWords(entry.facts.photos)};
    if (const QString prints = printNeedWords(entry.facts.prints); !prints.isEmpty()) {
        lines << DetailsPanel::tr("Prints: %1").arg(prints);
    }
    QStringList room;
    if (entry.facts.titles > 0) {
        room << DetailsPanel::tr("title");
    }
    if (entry.facts.journalings > 0) {
        room << DetailsPanel::tr("journaling");
    }
    if (!room.isEmpty()) {
        lines << DetailsPanel::tr("Room for %1").arg(room.join(DetailsPanel::tr(" and ")));
    }
    if (const auto folder = folderOf(entry.path); !folder.empty()) {
        lines << DetailsPanel::tr("In the folder %1").arg(shownPath(folder));
    }
    return lines.join(u'\n');
}

}  // namespace

DetailsPanel::DetailsPanel(const LibraryActions& actions, QWidget* parent)
    : QWidget(parent),
      m_hint(new TintedLabel(Tint::Quiet, tr("Select a sketch to see more of it and to start a "
                                             "page from it."))),
      m_picture(new PagePicture(detailsPictureHeight)),
      m_name(new QLabel),
      m_facts(new QLabel),
      m_sketchNote(new TintedLabel(Tint::Quiet)),
      m_favourite(new QCheckBox(tr("Favourite"))),
      m_tags(new TagField),
      m_noteLabel(heading(tr("Your note"))),
      m_note(new QPlainTextEdit),
      m_use(new TintedLabel(Tint::Quiet)) {
    setFixedWidth(detailsWidth);
    m_content = makeContent();
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 10, 0, 0);
    m_hint->setContentsMargins(12, 12, 12, 12);
    m_hint->setAlignment(Qt::AlignTop);
    auto* scrolled = new QScrollArea;
    scrolled->setWidgetResizable(true);
    scrolled->setFrameShape(QFrame::NoFrame);
    scrolled->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scrolled->setFocusPolicy(Qt::NoFocus);
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(10, 0, 10, 10);
    column->addWidget(m_hint);
    column->addWidget(m_content);
    column->addStretch(1);
    scrolled->setWidget(inside);
    layout->addWidget(scrolled, 1);
    layout->addWidget(makeButtons(actions));
    show({});
}

QWidget* DetailsPanel::makeContent() {
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins({});
    layout->setSpacing(6);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.2);
    large.setWeight(QFont::DemiBold);
    m_name->setFont(large);
    for (QLabel* label : {m_name, m_facts}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    m_sketchNote->setTextFormat(Qt::PlainText);
    m_favourite->setMinimumHeight(28);
    m_note->setFixedHeight(noteHeight);
    m_note->setTabChangesFocus(true);
    m_note->setAccessibleName(tr("Your note"));
    m_note->setPlaceholderText(tr("Only for you, beside the sketch"));
    m_note->installEventFilter(this);
    connect(m_favourite, &QCheckBox::clicked, this, [this](bool on) {
        m_favourite->setTristate(false);
        emit labelsChanged(m_shown, [on](Labels& labels) { labels.favourite = on; });
    });
    connect(m_tags, &TagField::added, this, [this](const QString& t) { changeTags(t, true); });
    connect(m_tags, &TagField::removed, this, [this](const QString& t) { changeTags(t, false); });
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_picture, m_name, m_facts, m_sketchNote, m_favourite,
                                         heading(tr("Tags")), m_tags, m_noteLabel, m_note, m_use}) {
        layout->addWidget(widget);
    }
    m_forOne = {m_picture, m_noteLabel, m_note, m_use};
    return content;
}

QWidget* DetailsPanel::makeButtons(const LibraryActions& actions) {
    auto* buttons = new QWidget;
    auto* grid = new QGridLayout(buttons);
    grid->setContentsMargins(10, 6, 10, 10);
    grid->setSpacing(4);
    using enum ActionButton::Weight;
    auto* start = new ActionButton(*actions.startPage, Primary);
    grid->addWidget(start, 0, 0, 1, 2);
    m_forOne.push_back(start);
    const auto add = [&](QAction* action, int row, int column) {
        auto* button = new ActionButton(*action, Ordinary);
        grid->addWidget(button, row, column);
        return button;
    };
    m_forOne.push_back(add(actions.open, 1, 0));
    m_forOne.push_back(add(actions.carryOver, 1, 1));
    m_forOne.push_back(add(actions.turnOrMirror, 2, 0));
    m_forSeveral.push_back(add(actions.exportZip, 3, 0));
    m_forSeveral.push_back(add(actions.contactSheet, 3, 1));
    auto* more = add(actions.more, 2, 1);
    m_forOne.push_back(more);
    m_forSeveral.push_back(more);
    return buttons;
}

void DetailsPanel::show(const std::vector<LibraryEntry>& entries) {
    std::vector<std::string> paths;
    paths.reserve(entries.size());
    for (const LibraryEntry& entry : entries) {
        paths.push_back(entry.path);
    }
    if (paths != m_shown) {
        finishNote();
        m_tags->typed().clear();
    }
    const bool isSame = paths == m_shown;
    m_shown = std::move(paths);
    m_hint->setVisible(entries.empty());
    m_content->setVisible(!entries.empty());
    // One that serves both is shown by whichever comes last, so hide first.
    for (auto* list : {&m_forOne, &m_forSeveral}) {
        for (QWidget* widget : *list) {
            const bool isOne = entries.size() == 1 && std::ranges::count(m_forOne, widget) > 0;
            const bool isSeveral =
                entries.size() > 1 && std::ranges::count(m_forSeveral, widget) > 0;
            widget->setVisible(isOne || isSeveral);
        }
    }
    if (entries.size() == 1) {
        if (!(isSame && m_note->hasFocus())) {
            m_noteAsKept = asText(entries.front().labels.note);
            m_note->setPlainText(m_noteAsKept);
        }
        showOne(entries.front());
    } else if (entries.size() > 1) {
        showSeveral(entries);
    }
}

void DetailsPanel::showOne(const LibraryEntry& entry) {
    m_name->setText(asText(shownName(entry)));
    m_facts->setText(factLines(entry));
    m_sketchNote->setText(asText(entry.facts.note));
    m_sketchNote->setVisible(!entry.facts.note.empty());
    m_favourite->setTristate(false);
    m_favourite->setChecked(entry.labels.favourite);
    m_tags->setTags(asTexts(entry.labels.tags));
    m_use->setText(useWords(entry.labels));
    m_picture->setAccessibleName(spokenEntry(entry, 0));
}

void DetailsPanel::showSeveral(const std::vector<LibraryEntry>& entries) {
    m_name->setText(tr("%1 sketches").arg(entries.size()));
    m_facts->setText(tr("A tag you add goes to all of them; the tags below are those they share."));
    m_sketchNote->hide();
    std::vector<std::string> shared = entries.front().labels.tags;
    std::size_t favourites = 0;
    for (const LibraryEntry& entry : entries) {
        std::erase_if(shared, [&](const std::string& tag) {
            return !std::ranges::binary_search(entry.labels.tags, tag);
        });
        favourites += entry.labels.favourite ? 1 : 0;
    }
    m_tags->setTags(asTexts(shared));
    m_favourite->setTristate(favourites > 0 && favourites < entries.size());
    m_favourite->setCheckState(favourites == 0                ? Qt::Unchecked
                               : favourites == entries.size() ? Qt::Checked
                                                              : Qt::PartiallyChecked);
}

void DetailsPanel::changeTags(const QString& tag, bool add) {
    emit labelsChanged(m_shown, [text = tag.toStdString(), add](Labels& labels) {
        std::erase(labels.tags, text);
        if (add) {
            labels.tags.push_back(text);
        }
    });
}

void DetailsPanel::finishNote() {
    const QString note = m_note->toPlainText();
    if (m_shown.size() != 1 || note == m_noteAsKept) {
        return;
    }
    m_noteAsKept = note;
    emit labelsChanged(m_shown,
                       [text = note.toStdString()](Labels& labels) { labels.note = text; });
}

bool DetailsPanel::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_note && (event->type() == QEvent::FocusOut || event->type() == QEvent::Hide)) {
        finishNote();
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace matwright::app
