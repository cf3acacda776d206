// SPDX-License-Identifier: MIT
#include "app/window/library_place.h"

#include <QDir>
#include <QDockWidget>
#include <QMenuBar>
#include <QTest>

#include "core/sketchfile/sketch_file.h"
#include "tests/app/window/window_fixture.h"

namespace matwright::app {
namespace {

class LibraryPlaceTest : public WindowTest {
  protected:
    LibraryPlaceTest() {
        qputenv("XDG_CACHE_HOME", inFolder("cache").toLocal8Bit());
        Settings chosen = settings.value();
        chosen.libraryFolder = inFolder("library");
        settings.set(chosen);
        QDir().mkpath(chosen.libraryFolder);
        window.resize(1200, 800);
        window.show();
        QCoreApplication::processEvents();
    }
    ~LibraryPlaceTest() override { qunsetenv("XDG_CACHE_HOME"); }

    QStringList shownMenus() const {
        QStringList names;
        for (const QAction* menu : window.menuBar()->actions()) {
            if (menu->isVisible()) {
                names << QString(menu->text()).remove(u'&');
            }
        }
        return names;
    }
    QList<bool> shownDocks() const {
        QList<bool> shown;
        for (const QDockWidget* dock : window.findChildren<QDockWidget*>()) {
            shown << dock->isVisibleTo(&window);
        }
        return shown;
    }
};

TEST_F(LibraryPlaceTest, PutsThePagesPartsAwayAndBringsThemBackAsTheyWere) {
    window.findChild<QDockWidget*>(QStringLiteral("tray"))->hide();
    QCoreApplication::processEvents();
    const QList<bool> docks = shownDocks();
    const QStringList menus = shownMenus();
    trigger("Library");
    ASSERT_NE(window.library().view(), nullptr);
    EXPECT_TRUE(window.library().view()->isVisible());
    EXPECT_FALSE(shownDocks().contains(true));
    EXPECT_EQ(shownMenus(), (QStringList{QStringLiteral("File"), QStringLiteral("View"),
                                         QStringLiteral("Library"), QStringLiteral("Help")}));
    window.library().showPage();
    QCoreApplication::processEvents();
    EXPECT_FALSE(window.library().view()->isVisible());
    EXPECT_EQ(shownDocks(), docks);
    EXPECT_EQ(shownMenus(), menus);
}

TEST_F(LibraryPlaceTest, LeavesTheWindowAsLargeAsItWas) {
    window.resize(1200, 700);
    QCoreApplication::processEvents();
    const QSize before = window.size();
    for (int round = 0; round < 2; ++round) {
        trigger("Library");
        QCoreApplication::processEvents();
        EXPECT_EQ(window.size(), before);
        window.library().showPage();
        QCoreApplication::processEvents();
        EXPECT_EQ(window.size(), before);
    }
}

TEST_F(LibraryPlaceTest, ChangesNothingOnThePageByItsKeys) {
    add({block(1, 1)});
    trigger("Library");
    window.activateWindow();
    QTest::keyClick(window.library().view(), Qt::Key_Delete);
    QTest::keyClick(window.library().view(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(sketch().pieces.size(), 1u);
}

TEST_F(LibraryPlaceTest, StartsAPageOnlyWhenTheOpenWorkMayGo) {
    add({block(1, 1)});
    trigger("Library");
    Sketch page = blankSketch();
    page.name = "Garden, page";
    EXPECT_FALSE(window.library().startPage(page));  // cancelled
    EXPECT_TRUE(window.library().isShown());
    EXPECT_EQ(sketch().pieces.size(), 1u);
    questions.unsavedAnswer = Questions::UnsavedChoice::DontSave;
    EXPECT_TRUE(window.library().startPage(page));
    EXPECT_FALSE(window.library().isShown());
    EXPECT_EQ(sketch(), page);
    EXPECT_TRUE(work.document.path().isEmpty());
    EXPECT_TRUE(window.isWindowModified());
}

TEST_F(LibraryPlaceTest, ShowsThePageWhenAFileIsOpenedFromWherever) {
    Sketch saved = blankSketch();
    saved.name = "Saved";
    ASSERT_TRUE(saveSketch(files, inFolder("saved.sketch.svg").toStdString(), saved));
    trigger("Library");
    ASSERT_TRUE(window.library().openSketch(inFolder("saved.sketch.svg")));
    EXPECT_FALSE(window.library().isShown());
    trigger("Library");
    ASSERT_TRUE(window.files().open(inFolder("saved.sketch.svg")));
    EXPECT_FALSE(window.library().isShown());
}

TEST_F(LibraryPlaceTest, SaysWhereItsPartIsMissingAndStaysOnThePage) {
    MainWindow bare(work, settings, questions, inFolder("no parts"));
    bare.library().show->trigger();
    EXPECT_FALSE(bare.library().isShown());
    EXPECT_EQ(bare.library().view(), nullptr);
    EXPECT_TRUE(questions.wasAsked(QStringLiteral("tell The library cannot be shown: ")));
}

}  // namespace
}  // namespace matwright::app
