// SPDX-License-Identifier: MIT
#include <QAbstractButton>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTest>
#include <map>
#include <set>

#include "app/panels/page_panel.h"
#include "tests/app/window/window_fixture.h"

namespace matwright::app {
namespace {

using Menus = WindowTest;

void collect(const QMenu& menu, std::vector<const QMenu*>& out) {
    out.push_back(&menu);
    for (const QAction* entry : menu.actions()) {
        if (entry->menu()) {
            collect(*entry->menu(), out);
        }
    }
}

std::vector<const QMenu*> allMenus(const QMenuBar& bar) {
    std::vector<const QMenu*> menus;
    for (const QAction* top : bar.actions()) {
        collect(*top->menu(), menus);
    }
    return menus;
}

QString mnemonic(const QAction& entry) {
    return QKeySequence::mnemonic(entry.text()).toString();
}

TEST_F(Menus, HaveShortcutsOfTheirOwn) {
    std::map<QString, QString> owners;
    for (const QMenu* menu : allMenus(*window.menuBar())) {
        for (const QAction* entry : menu->actions()) {
            for (const QKeySequence& keys : entry->shortcuts()) {
                const auto [at, isNew] = owners.emplace(keys.toString(), entry->text());
                EXPECT_TRUE(isNew || at->second == entry->text())
                    << keys.toString().toStdString() << " of " << entry->text().toStdString();
            }
        }
    }
    EXPECT_GT(owners.size(), 25u);
}

TEST_F(Menus, ShareNoLetterOfTheMenuBarWithThePanels) {
    window.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.findChild<PagePanel*>() != nullptr; }));
    std::set<QString> tops;
    for (const QAction* top : window.menuBar()->actions()) {
        tops.insert(mnemonic(*top));
    }
    int letters = 0;
    const auto expectFree = [&](const QString& text) {
        const QString letter = QKeySequence::mnemonic(text).toString();
        letters += letter.isEmpty() ? 0 : 1;
        EXPECT_FALSE(tops.contains(letter)) << text.toStdString();
    };
    for (const QLabel* label : window.findChildren<QLabel*>()) {
        expectFree(label->buddy() ? label->text() : QString());
    }
    for (const QAbstractButton* button : window.findChildren<QAbstractButton*>()) {
        expectFree(button->text());
    }
    EXPECT_GT(letters, 5);
}

TEST_F(Menus, CanAllBeReachedThroughTheMenusWithTheKeyboard) {
    std::set<QString> tops;
    for (const QAction* top : window.menuBar()->actions()) {
        EXPECT_TRUE(tops.insert(mnemonic(*top)).second) << top->text().toStdString();
    }
    EXPECT_FALSE(tops.contains(QString()));
    for (const QMenu* menu : allMenus(*window.menuBar())) {
        std::set<QString> seen;
        for (const QAction* entry : menu->actions()) {
            if (!entry->isSeparator()) {
                EXPECT_FALSE(mnemonic(*entry).isEmpty()) << entry->text().toStdString();
                EXPECT_TRUE(seen.insert(mnemonic(*entry)).second) << entry->text().toStdString();
            }
        }
    }
}

}  // namespace
}  // namespace matwright::app
