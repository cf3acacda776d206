// SPDX-License-Identifier: MIT
#include "app/window/workplace.h"

#include "app/files/paths.h"

namespace matwright::app {

void Workplace::perform(const Edit& edit, const QString& label) const {
    if (const auto done = session.perform(edit, label); !done) {
        say(shownText(done.error()));
    }
}

void Workplace::performAndSelectAdded(const PageEdit& edit, const QString& label) const {
    if (const auto done = session.performAndSelectAdded(edit, label); !done) {
        say(shownText(done.error()));
    }
}

}  // namespace matwright::app
