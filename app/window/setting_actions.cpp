// SPDX-License-Identifier: MIT
#include "app/window/setting_actions.h"

#include <QActionGroup>
#include <utility>

#include "app/window/new_action.h"

namespace matwright::app {

SettingActions::SettingActions(Workplace workplace, QObject* parent)
    : QObject(parent), m_workplace(std::move(workplace)) {
    snapOn = addToggle(
        {tr("S&napping"),
         tr("Let pieces snap into place while they are dragged"),
         QKeySequence(Qt::Key_F9),
         {},
         {}},
        [](const Settings& s) { return s.snapOn; }, [](Settings& s, bool on) { s.snapOn = on; });
    rulers = addToggle(
        {tr("&Rulers"),
         tr("Show the rulers along the page"),
         QKeySequence(Qt::CTRL | Qt::Key_R),
         {},
         {}},
        [](const Settings& s) { return s.rulersShown; },
        [](Settings& s, bool on) { s.rulersShown = on; });
    connect(&m_workplace.settings, &SettingsStore::changed, this, &SettingActions::showSettings);
}

void SettingActions::addTo(QMenu& menu) {
    fillScaleMenu(*menu.addMenu(tr("&Units and scale")));
    fillTrimmerMenu(*menu.addMenu(tr("Paper tri&mmer")));
    menu.addSeparator();
    menu.addAction(snapOn);
    fillSnapMenu(*menu.addMenu(tr("Snap t&o")));
    fillGridMenu(*menu.addMenu(tr("&Grid step")));
    menu.addSeparator();
    menu.addAction(rulers);
    fillThemeMenu(*menu.addMenu(tr("T&heme")));
    showSettings();
}

QAction* SettingActions::addToggle(const ActionLook& look, Read read, Write write) {
    QAction* action = newAction(this, look);
    action->setCheckable(true);
    connect(action, &QAction::triggered, this, [this, write = std::move(write)](bool on) {
        Settings settings = m_workplace.settings.value();
        write(settings, on);
        m_workplace.settings.set(std::move(settings));
        showSettings();  // a radio item that was on already stays on
    });
    m_entries.push_back({action, std::move(read)});
    return action;
}

void SettingActions::addToChoices(QMenu& menu, QAction* action) {
    auto* group = menu.findChild<QActionGroup*>(QString(), Qt::FindDirectChildrenOnly);
    if (!group) {
        group = new QActionGroup(&menu);  // exclusive, so they are shown as radio items
    }
    group->addAction(action);
    menu.addAction(action);
}

template <typename T>
void SettingActions::addChoice(QMenu& menu, const QString& text, T Settings::* field, T value) {
    addToChoices(menu, addToggle(
                           {text, {}, {}, {}, {}},
                           [field, value](const Settings& s) { return s.*field == value; },
                           [field, value](Settings& s, bool) { s.*field = value; }));
}

void SettingActions::addScale(QMenu& menu, const QString& text, Scale scale) {
    addToChoices(
        menu, addToggle(
                  {text, {}, {}, {}, {}}, [scale](const Settings& s) { return s.scale == scale; },
                  [scale](Settings& s, bool) { s = withScale(std::move(s), scale); }));
}

void SettingActions::fillScaleMenu(QMenu& menu) {
    addScale(menu, tr("Inches to 1/&8"), Scale::EighthInch);
    addScale(menu, tr("Inches to &1/16"), Scale::SixteenthInch);
    addScale(menu, tr("Inches to 1/&32"), Scale::ThirtySecondInch);
    menu.addSeparator();
    addScale(menu, tr("Whole &millimetres"), Scale::WholeMillimetre);
    addScale(menu, tr("&Half millimetres"), Scale::HalfMillimetre);
}

void SettingActions::fillTrimmerMenu(QMenu& menu) {
    addChoice(menu, tr("Scale of 1/&8 in"), &Settings::trimmerStep, Length::inches(0, 1, 8));
    addChoice(menu, tr("Scale of &1/16 in"), &Settings::trimmerStep, Length::inches(0, 1, 16));
    addChoice(menu, tr("Scale of 1/&32 in"), &Settings::trimmerStep, Length::inches(0, 1, 32));
    addChoice(menu, tr("Scale of 1 &mm"), &Settings::trimmerStep, Length::millimetres(1));
}

void SettingActions::fillSnapMenu(QMenu& menu) {
    const auto rule = [&](const QString& text, bool SnapSettings::* field) {
        menu.addAction(addToggle(
            {text, {}, {}, {}, {}}, [field](const Settings& s) { return s.snap.*field; },
            [field](Settings& s, bool on) { s.snap.*field = on; }));
    };
    rule(tr("Page &edges"), &SnapSettings::pageEdges);
    rule(tr("&Margins"), &SnapSettings::margins);
    rule(tr("Page &centre lines"), &SnapSettings::pageCentres);
    rule(tr("&Thirds of the page"), &SnapSettings::thirds);
    rule(tr("&Grid"), &SnapSettings::grid);
    menu.addSeparator();
    rule(tr("Edges of &neighbours"), &SnapSettings::neighbourEdges);
    rule(tr("Centres &of neighbours"), &SnapSettings::neighbourCentres);
    rule(tr("The g&utter"), &SnapSettings::gutter);
    rule(tr("E&qual gaps"), &SnapSettings::equalGaps);
    rule(tr("E&dges of mats"), &SnapSettings::matEdges);
}

void SettingActions::addGridStep(QMenu& menu, const QString& text, Length step) {
    addToChoices(menu, addToggle(
                           {text, {}, {}, {}, {}},
                           [step](const Settings& s) { return s.snap.gridStep == step; },
                           [step](Settings& s, bool) { s.snap.gridStep = step; }));
}

void SettingActions::fillGridMenu(QMenu& menu) {
    addGridStep(menu, tr("1/&8 in"), Length::inches(0, 1, 8));
    addGridStep(menu, tr("1/&4 in"), Length::inches(0, 1, 4));
    addGridStep(menu, tr("1/&2 in"), Length::inches(0, 1, 2));
    addGridStep(menu, tr("&1 in"), Length::inches(1));
    menu.addSeparator();
    addGridStep(menu, tr("&5 mm"), Length::millimetres(5));
    addGridStep(menu, tr("10 &mm"), Length::millimetres(10));
}

void SettingActions::fillThemeMenu(QMenu& menu) {
    addChoice(menu, tr("Like the &system"), &Settings::theme, Settings::Theme::System);
    addChoice(menu, tr("&Light"), &Settings::theme, Settings::Theme::Light);
    addChoice(menu, tr("&Dark"), &Settings::theme, Settings::Theme::Dark);
}

void SettingActions::showSettings() {
    for (const Entry& entry : m_entries) {
        entry.action->setChecked(entry.read(m_workplace.settings.value()));
    }
}

}  // namespace matwright::app
