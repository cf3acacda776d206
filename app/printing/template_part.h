// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QtPlugin>
#include <functional>

#include "core/making/making.h"

class QDialog;
class QWidget;

namespace matwright::app {

class SettingsStore;

// What the part "template" is to the program that opens it: nothing of app/printing is linked.
class TemplatePart {
  public:
    virtual ~TemplatePart() = default;

    // A template window for a copy of the page, not yet shown, owned by `parent`. The settings
    // outlive it. `suggestedName` is a path without a suffix, or empty. `showChecks` is called when
    // the person wants to see the list of checks.
    virtual QDialog* makeWindow(const Making& making, SettingsStore& settings,
                                const QString& suggestedName, std::function<void()> showChecks,
                                QWidget* parent) = 0;

  protected:
    TemplatePart() = default;
    Q_DISABLE_COPY_MOVE(TemplatePart)
};

}  // namespace matwright::app

Q_DECLARE_INTERFACE(matwright::app::TemplatePart, "org.matwright.TemplatePart")
