// SPDX-License-Identifier: MIT
// What a person keeps, moves, brings in and takes out in the view.
#include <QLineEdit>

#include "tests/app/library/library_fixture.h"

namespace matwright::app {
namespace {

TEST_F(LibraryTest, TagsAndMarksAllThatAreSelected) {
    putThree();
    view();
    select({"Beach.sketch.svg", "Garden.sketch.svg"});
    QLineEdit& typed = view().details().tags().typed();
    QTest::keyClicks(&typed, QStringLiteral("sun"));
    QTest::keyClick(&typed, Qt::Key_Return);
    view().actions().favourite->trigger();
    EXPECT_TRUE(waitFor([this] {
        return entry("Beach.sketch.svg").labels.favourite &&
               entry("Garden.sketch.svg").labels.tags == std::vector<std::string>{"sun"};
    }));
    EXPECT_TRUE(entry("winter/Snow.sketch.svg").labels.tags.empty());
    EXPECT_EQ(view().details().tags().tags(), QStringList{QStringLiteral("sun")});
}

TEST_F(LibraryTest, RenamesAndSelectsTheRenamed) {
    putThree();
    view();
    select({"Garden.sketch.svg"});
    asks.nameAnswer = QStringLiteral("Roses");
    view().actions().rename->trigger();
    ASSERT_TRUE(waitFor([this] { return QFile::exists(inLibrary("Roses.sketch.svg")); }));
    EXPECT_TRUE(waitFor([this] {
        return view().wall().selectedPaths() == std::vector<std::string>{"Roses.sketch.svg"};
    }));
    EXPECT_EQ(entry("Roses.sketch.svg").facts.name, "Roses");
}

TEST_F(LibraryTest, MovesIntoANewSubFolderAndBack) {
    putThree();
    view();
    select({"Beach.sketch.svg", "winter/Snow.sketch.svg"});
    asks.moveAnswer = QStringLiteral("2026/trips");
    view().actions().moveToFolder->trigger();
    const std::vector<std::string> there{"2026/trips/Beach.sketch.svg",
                                         "2026/trips/Snow.sketch.svg"};
    ASSERT_TRUE(waitFor([&] { return view().wall().selectedPaths() == there; }));
    EXPECT_EQ(view().news(), QStringLiteral("2 sketches are now in the folder 2026/trips."));
    view().undoButton().click();
    EXPECT_TRUE(waitFor([this] { return QFile::exists(inLibrary("winter/Snow.sketch.svg")); }));
    EXPECT_TRUE(waitFor([this] { return QFile::exists(inLibrary("Beach.sketch.svg")); }));
    ASSERT_TRUE(waitFor([this] { return view().news().contains(QStringLiteral("their folders")); }))
        << view().news().toStdString();
    EXPECT_EQ(view().finder().holdings()->size(), 3u);
}

TEST_F(LibraryTest, LeavesWhatCannotBeMovedAndSaysWhy) {
    putThree();
    view();
    select({"Beach.sketch.svg"});
    asks.moveAnswer = QStringLiteral("../outside");
    view().actions().moveToFolder->trigger();
    ASSERT_TRUE(waitFor([this] { return !asks.told.isEmpty(); }));
    EXPECT_TRUE(QFile::exists(inLibrary("Beach.sketch.svg")));
    EXPECT_FALSE(QFile::exists(at("outside")));
}

TEST_F(LibraryTest, MovesToTheTrashAndBringsBack) {
    putThree();
    view();
    select({"Beach.sketch.svg", "Garden.sketch.svg"});
    view().actions().trash->trigger();
    ASSERT_TRUE(waitForCount(1));
    EXPECT_TRUE(waitFor([this] { return view().undoButton().isVisible(); }));
    EXPECT_EQ(view().news(), QStringLiteral("2 sketches moved to the trash."));
    view().undoButton().click();
    EXPECT_TRUE(waitForCount(3));
    EXPECT_FALSE(view().undoButton().isVisible());
}

TEST_F(LibraryTest, TakesDroppedFilesAndSaysWhatWasNotUsed) {
    putThree();
    view();
    DiskFileStore store;
    ASSERT_TRUE(saveSketch(store, toPath(at("New.sketch.svg")), sketchOf("New", 5)));
    QFile broken(at("Broken.sketch.svg"));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("<svg");
    broken.close();
    emit view().wall().filesDropped(
        {QUrl::fromLocalFile(at("New.sketch.svg")), QUrl::fromLocalFile(at("Broken.sketch.svg"))});
    ASSERT_TRUE(waitForCount(4));
    EXPECT_TRUE(waitFor([this] { return !asks.told.isEmpty(); }));
    EXPECT_TRUE(asks.told.join(u' ').contains(QStringLiteral("Broken")));
    EXPECT_TRUE(QFile::exists(at("New.sketch.svg")));
    EXPECT_FALSE(QFile::exists(inLibrary("Broken.sketch.svg")));
}

TEST_F(LibraryTest, StopsALongImportAndKeepsWhatIsAdded) {
    putThree();
    view();
    constexpr int many = 3'000;
    DiskFileStore store;
    QDir().mkpath(at("many"));
    for (int i = 0; i < many; ++i) {
        // Other content each, or all but the first would be there already.
        Sketch sketch = sketchOf("One of many", 1);
        sketch.note = std::to_string(i);
        ASSERT_TRUE(store.replace(toPath(at("many")) / (std::to_string(i) + ".sketch.svg"),
                                  writeSketch(sketch)));
    }
    asks.folderAnswer = at("many");
    view().actions().addFolder->trigger();
    ASSERT_TRUE(waitFor([this] { return view().stopButton().isVisible(); }));
    view().stopButton().click();
    ASSERT_TRUE(waitFor([this] { return view().news().startsWith(QStringLiteral("Stopped")); }))
        << view().news().toStdString();
    EXPECT_FALSE(view().stopButton().isVisible());
    const auto added = QDir(inLibrary("many")).entryList(QDir::Files).size();
    EXPECT_GT(added, 0);
    EXPECT_LT(added, many);
    EXPECT_TRUE(view().undoButton().isVisible());
    // The next import is not stopped too.
    asks.filesAnswer = {at("many/7.sketch.svg"), at("many/2999.sketch.svg")};
    view().actions().addFiles->trigger();
    EXPECT_TRUE(waitFor([this] { return !view().news().startsWith(QStringLiteral("Stopped")); }));
}

TEST_F(LibraryTest, ShowsACopyAsTheSecondOfItsName) {
    putThree();
    put("b17.sketch.svg", sketchOf("Harbour", 3));
    view();
    select({"b17.sketch.svg"});
    view().actions().makeCopy->trigger();
    ASSERT_TRUE(waitForCount(5));
    EXPECT_EQ(shownName(entry("b17 (2).sketch.svg")), "Harbour (2)");
}

TEST_F(LibraryTest, ExportsAZipAndAContactSheet) {
    putThree();
    view();
    select({"Beach.sketch.svg", "Garden.sketch.svg"});
    asks.fileAnswer = at("out.zip");
    view().actions().exportZip->trigger();
    EXPECT_TRUE(waitFor([this] { return view().news().contains(QStringLiteral("out.zip")); }));
    EXPECT_TRUE(QFile::exists(at("out.zip")));
    asks.fileAnswer = at("out.pdf");
    view().actions().contactSheet->trigger();
    ASSERT_TRUE(waitFor([this] { return view().news().contains(QStringLiteral("out.pdf")); }));
    QFile pdf(at("out.pdf"));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF"));
}

TEST_F(LibraryTest, MakesTheStandardFolderAndPutsTheStartersInUndoably) {
    m_isStandard = true;
    m_starters = at("starters");
    ASSERT_TRUE(QDir().mkpath(m_starters));
    DiskFileStore store;
    ASSERT_TRUE(saveSketch(store, toPath(at("starters/One.sketch.svg")), sketchOf("One", 1)));
    ASSERT_TRUE(waitForCount(1));
    EXPECT_TRUE(QFile::exists(at("standard/Starters/One.sketch.svg")));
    ASSERT_TRUE(waitFor([this] { return view().undoButton().isVisible(); }));
    view().undoButton().click();
    ASSERT_TRUE(waitForCount(0));
    EXPECT_TRUE(view().notice().text().contains(QStringLiteral("No sketches here yet")));
}

}  // namespace
}  // namespace matwright::app
