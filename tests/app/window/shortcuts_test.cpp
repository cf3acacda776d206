// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <QKeyEvent>
#include <algorithm>

#include "app/canvas/page_keys.h"
#include "app/canvas/page_view.h"
#include "app/window/help_actions.h"
#include "tests/app/window/window_fixture.h"

namespace matwright::app {
namespace {

class Shortcuts : public WindowTest {
  protected:
    QList<ShortcutLine> lines() { return shortcutsOf(*window.menuBar()); }
    QString keysOf(const char* command) {
        const auto all = lines();
        const auto at = std::ranges::find(all, QString::fromUtf8(command), &ShortcutLine::command);
        return at == all.end() ? QStringLiteral("not listed") : at->keys;
    }
    // Whether the page takes the key for itself.
    bool takes(QKeyCombination key) {
        QKeyEvent event(QEvent::KeyPress, key.key(), key.keyboardModifiers());
        QCoreApplication::sendEvent(&window.canvas().page(), &event);
        return event.isAccepted();
    }
};

TEST_F(Shortcuts, ListCommandsWithTheirKeysOrTheWayThroughTheMenus) {
    EXPECT_EQ(keysOf("File: Save"), QStringLiteral("Ctrl+S"));
    EXPECT_EQ(keysOf("View: Theme: Dark"), QStringLiteral("Alt+V, H, D"));
}

TEST_F(Shortcuts, ListUndoAndRedoUnderTheirLastingNames) {
    add({block(1, 1)});
    EXPECT_EQ(keysOf("Edit: Undo"), QStringLiteral("Ctrl+Z"));
    EXPECT_EQ(keysOf("Edit: Redo"), QStringLiteral("Ctrl+Shift+Z"));
}

TEST_F(Shortcuts, LeaveOutTheRecentFiles) {
    Settings value = settings.value();
    value.recentFiles = {inFolder("garden.sketch.svg")};
    settings.set(value);
    QCoreApplication::processEvents();
    EXPECT_EQ(keysOf("File: Open recent"), QStringLiteral("Alt+F, R"));
    for (const ShortcutLine& line : lines()) {
        EXPECT_FALSE(line.command.contains(QStringLiteral("garden")));
    }
}

TEST_F(Shortcuts, ListWhatThePageAnswersTo) {
    EXPECT_EQ(keysOf("On the page: Turn by 1 degree"), QStringLiteral("[ and ]"));
    const auto all = lines();
    EXPECT_EQ(
        std::ranges::count_if(all,
                              [](const ShortcutLine& line) {
                                  return line.command.startsWith(QStringLiteral("On the page: "));
                              }),
        pageKeys().size());
}

TEST_F(Shortcuts, OfThePageAreTakenByThePage) {
    EXPECT_FALSE(takes(Qt::Key_Q));  // none of them
    window.show();
    for (const PageKey& key : pageKeys()) {
        if (session().sketch().pieces.empty()) {
            add({block(1, 1)});
        }
        session().selectAll();
        EXPECT_TRUE(!key.example || takes(*key.example)) << key.keys.toStdString();
    }
}

}  // namespace
}  // namespace matwright::app
