// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QMenu>
#include <QObject>
#include <functional>
#include <vector>

#include "app/window/workplace.h"

namespace matwright::app {

// The choices in the View menu that live in the settings: units and scale, the trimmer's scale,
// snapping with each of its rules, the grid step, rulers and the theme. Every action shows what
// the settings say, whoever changed them.
class SettingActions final : public QObject {
    Q_OBJECT

  public:
    SettingActions(Workplace workplace, QObject* parent);

    void addTo(QMenu& menu);

    QAction* snapOn = nullptr;
    QAction* rulers = nullptr;

  private:
    using Read = std::function<bool(const Settings&)>;
    using Write = std::function<void(Settings&, bool)>;
    // A choice with a tick mark.
    QAction* addToggle(const struct ActionLook& look, Read read, Write write);
    static void addToChoices(QMenu& menu, QAction* action);
    // One of several values of a field, as a radio item of `menu`.
    template <typename T>
    void addChoice(QMenu& menu, const QString& text, T Settings::* field, T value);
    void addGridStep(QMenu& menu, const QString& text, Length step);
    void addScale(QMenu& menu, const QString& text, Scale scale);
    void fillScaleMenu(QMenu& menu);
    void fillTrimmerMenu(QMenu& menu);
    void fillSnapMenu(QMenu& menu);
    void fillGridMenu(QMenu& menu);
    void fillThemeMenu(QMenu& menu);
    void showSettings();

    struct Entry {
        QAction* action;
        Read read;
    };
    Workplace m_workplace;
    std::vector<Entry> m_entries;
};

}  // namespace matwright::app
