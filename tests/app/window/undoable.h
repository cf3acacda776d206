// SPDX-License-Identifier: MIT
#pragma once

#include "tests/app/window/window_fixture.h"

namespace matwright::app {

// A window whose commands can be taken back.
class UndoableTest : public WindowTest {
  protected:
    // Triggers the action, expects `check` to hold and one undo step to take it back.
    template <typename Check>
    void expectUndoable(const char* name, Check check) {
        const Sketch before = sketch();
        trigger(name);
        EXPECT_TRUE(check()) << name;
        EXPECT_NE(sketch(), before) << name;
        trigger(("Undo " + session().undoStack().undoText().toStdString()).c_str());
        EXPECT_EQ(sketch(), before) << name;
    }
};

}  // namespace matwright::app
