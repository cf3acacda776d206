// SPDX-License-Identifier: MIT
#include "app/panels/page_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/panels/length_field.h"
#include "app/panels/margins_section.h"
#include "app/panels/text_field.h"
#include "core/measure/catalogue.h"
#include "core/sketch/soundness.h"

namespace matwright::app {

namespace {

QString pageName(const NamedSize& known) {
    return QString::fromUtf8(known.name.data(), static_cast<int>(known.name.size()));
}

}  // namespace

PagePanel::PagePanel(Session& session, SettingsStore& settings, QWidget* parent)
    : QWidget(parent), m_session(session), m_settings(settings) {
    setAccessibleName(tr("Page"));
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(12, 4, 12, 12);
    layout->setSpacing(6);
    m_margins = new MarginsSection;
    for (Section* section : {buildSize(), static_cast<Section*>(m_margins), buildWords()}) {
        layout->addWidget(section);
    }
    layout->addStretch(1);
    addScrolled(this, content);
    connect(m_margins, &MarginsSection::pageChanged, this,
            [this](const QString& label, int gesture, const PageSetup& after, LengthField* field) {
                change(label, gesture, after, m_margins, field);
            });
    connect(&session, &Session::changed, this, [this](const Change& what) {
        if (what.kinds == Change::Everything) {
            forgetWishes();
        }
        if (what.has(Change::Page)) {
            refreshPage();
        }
        if (what.has(Change::Texts)) {
            refreshWords();
        }
    });
    const auto takeScale = [this] {
        for (LengthField* field : findChildren<LengthField*>()) {
            field->setScale(m_settings.value().scale);
        }
        offerMillimetres();
    };
    connect(&settings, &SettingsStore::changed, this, takeScale);
    takeScale();
    refreshPage();
    refreshWords();
}

Section* PagePanel::buildSize() {
    auto* section = m_sizeSection = new Section(tr("Page"));
    m_size = new QComboBox;
    for (const NamedSize& known : pageSizes()) {
        m_size->addItem(pageName(known));
    }
    m_size->addItem(tr("Custom…"));
    m_size->setMaxVisibleItems(20);
    section->addRow(tr("Page si&ze"), m_size);
    m_width = addLength(section, tr("&Width"), smallestPageSide, largestPageSide,
                        [](PageSetup& p, Length to) { p.size.width = to; });
    m_height = addLength(section, tr("Height"), smallestPageSide, largestPageSide,
                         [](PageSetup& p, Length to) { p.size.height = to; });
    m_toMillimetres = new QPushButton(tr("Show millimetres"));
    m_toMillimetres->setToolTip(tr("This page is made in millimetres: show all figures so."));
    settle(m_toMillimetres);
    section->addBelow(m_toMillimetres);
    connect(m_toMillimetres, &QPushButton::clicked, this,
            [this] { m_settings.set(withScale(m_settings.value(), Scale::WholeMillimetre)); });
    m_double = new QCheckBox(tr("Double page"));
    m_double->setToolTip(tr("Two facing pages planned as one."));
    settle(m_double);
    section->addBelow(m_double);
    m_fold = addLength(section, tr("Fold gap"), Length(), Length::inches(10),
                       [](PageSetup& p, Length to) { p.foldGap = to; });
    connect(m_size, &QComboBox::activated, this, &PagePanel::sizeChosen);
    connect(m_double, &QCheckBox::clicked, this, [this](bool on) {
        PageSetup after = m_session.sketch().page;
        after.doublePage = on;
        after.foldGap = Length();
        change(on ? tr("Make a double page") : tr("Make a single page"), 0, after, m_sizeSection);
    });
    return section;
}

Section* PagePanel::buildWords() {
    auto* section = new Section(tr("Sketch"));
    m_name = new TextField;
    m_note = new NoteField;
    section->addRow(tr("Name"), m_name);
    section->addRow(tr("N&ote"), m_note);
    connect(m_name, &TextField::typed, this, [this](const QString&, int gesture) {
        changeWords(tr("Change the sketch's name"), gesture);
    });
    connect(m_note, &NoteField::typed, this, [this](const QString&, int gesture) {
        changeWords(tr("Change the sketch's note"), gesture);
    });
    return section;
}

LengthField* PagePanel::addLength(Section* section, const QString& label, Length low, Length high,
                                  const Set& set) {
    auto* field = new LengthField;
    field->setRange(low, high);
    section->addRow(label, field);
    connect(field, &LengthField::valueChanged, this, [=, this](Length to, int gesture) {
        PageSetup after = m_session.sketch().page;
        set(after, to);
        change(tr("Change page"), gesture, after, section, field);
    });
    return field;
}

void PagePanel::change(const QString& label, int gesture, const PageSetup& after, Section* section,
                       LengthField* field) {
    if (after == m_session.sketch().page) {
        return;
    }
    const auto done = m_session.perform(changePage(after), label, gesture);
    if (!done) {
        refreshPage();
        const QString sentence = QString::fromStdString(done.error().sentence);
        field ? field->showError(sentence) : section->complain(sentence);
    }
}

void PagePanel::changeWords(const QString& label, int gesture) {
    Edit edit;
    edit.texts = SketchTexts{savableText(m_name->text(), false).toStdString(),
                             savableText(m_note->toPlainText(), true).toStdString()};
    (void)m_session.perform(edit, label, gesture);  // savable texts are always taken
}

void PagePanel::sizeChosen(int index) {
    const auto known = pageSizes();
    m_customAsked = index >= static_cast<int>(known.size());
    if (m_customAsked) {
        refreshSize(m_session.sketch().page);
        m_width->setFocus(Qt::OtherFocusReason);
        return;
    }
    PageSetup after = m_session.sketch().page;
    after.size = known[static_cast<std::size_t>(index)].size;
    change(tr("Change page size"), 0, after, m_sizeSection);
    refreshSize(m_session.sketch().page);
}

void PagePanel::forgetWishes() {
    m_customAsked = false;
    m_margins->forgetWishes();
    for (LengthField* field : findChildren<LengthField*>()) {
        field->discardTyped();
    }
}

void PagePanel::refreshPage() {
    const PageSetup& page = m_session.sketch().page;
    m_sizeSection->complain({});
    m_margins->complain({});
    refreshSize(page);
    m_double->setChecked(page.doublePage);
    m_sizeSection->setRowShown(m_fold, page.doublePage);
    m_fold->setValue(page.foldGap);
    m_margins->showPage(page);
}

void PagePanel::refreshSize(const PageSetup& page) {
    const NamedSize* known = pageSizeOf(page.size);
    const auto index = known ? static_cast<int>(known - pageSizes().data()) : m_size->count() - 1;
    const bool custom = !known || m_customAsked;
    const QSignalBlocker quiet(m_size);
    m_size->setCurrentIndex(custom ? m_size->count() - 1 : index);
    m_width->setValue(page.size.width);
    m_height->setValue(page.size.height);
    m_sizeSection->setRowShown(m_width, custom);
    m_sizeSection->setRowShown(m_height, custom);
    offerMillimetres();
}

// Choosing A4 leaves the person's inches alone; the other units are one click away.
void PagePanel::offerMillimetres() {
    const NamedSize* known = pageSizeOf(m_session.sketch().page.size);
    const bool isMetric = known && known->id.starts_with("a4");
    const bool inInches = unitOf(m_settings.value().scale) == Unit::Inch;
    m_sizeSection->setRowShown(m_toMillimetres, isMetric && inInches);
}

void PagePanel::refreshWords() {
    m_name->showText(QString::fromStdString(m_session.sketch().name));
    m_note->showText(QString::fromStdString(m_session.sketch().note));
}

}  // namespace matwright::app
