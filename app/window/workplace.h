// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "app/editing/session.h"
#include "app/panels/finish_typing.h"
#include "app/settings/settings.h"
#include "app/window/questions.h"

namespace matwright::app {

// What the window's actions work on. The referred-to parts outlive the actions.
struct Workplace {
    Session& session;
    SettingsStore& settings;
    Questions& questions;
    // Shows one sentence in the status bar.
    std::function<void(const QString& sentence)> say;

    // Performs the edit; says what is wrong where it cannot be done.
    void perform(const Edit& edit, const QString& label) const;
    void performAndSelectAdded(const PageEdit& edit, const QString& label) const;
};

}  // namespace matwright::app
