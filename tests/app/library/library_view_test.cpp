// SPDX-License-Identifier: MIT
#include <QLineEdit>
#include <set>

#include "core/carry/turned_sketch.h"
#include "tests/app/library/library_fixture.h"

namespace matwright::app {
namespace {

TEST_F(LibraryTest, ShowsWhatIsInTheFolderAndItsSubFolders) {
    putThree();
    EXPECT_EQ(view().headline(), QStringLiteral("3 sketches"));
    EXPECT_EQ(entry("winter/Snow.sketch.svg").facts.photos, 4);
}

TEST_F(LibraryTest, FindsByTypedWordsAndSaysHowManyOfAll) {
    putThree();
    view();
    QTest::keyClick(&view().wall(), Qt::Key_G);
    QTest::keyClicks(&view().filters().words(), QStringLiteral("ard"));
    EXPECT_EQ(view().filters().words().text(), QStringLiteral("gard"));
    EXPECT_EQ(found(), 1u);
    EXPECT_EQ(view().headline(), QStringLiteral("1 of 3 sketches"));
    QTest::keyClick(&view().filters().words(), Qt::Key_Escape);
    EXPECT_EQ(found(), 3u);
    EXPECT_EQ(host.shownPages, 0);
    QTest::keyClick(&view().filters().words(), Qt::Key_Escape);
    EXPECT_EQ(host.shownPages, 1);
}

TEST_F(LibraryTest, NamesTheFilterToLeaveOutWhereNothingIsFoundAndLeavesItOut) {
    putThree();
    Query query;
    query.words = "snow";
    query.photos = PhotoCountFilter{9, false};
    view().finder().setQuery(query);
    EXPECT_TRUE(view().notice().isVisible());
    EXPECT_TRUE(view().notice().text().contains(QStringLiteral("9 photos")))
        << view().notice().text().toStdString();
    view().notice().offers().at(0)->click();
    EXPECT_EQ(found(), 1u);
    EXPECT_EQ(view().finder().query().words, "snow");
    EXPECT_FALSE(view().notice().isVisible());
}

TEST_F(LibraryTest, ShowsByItselfWhatOthersPutIntoTheFolder) {
    putThree();
    view();
    put("Later.sketch.svg", sketchOf("Later", 3));
    EXPECT_TRUE(waitForCount(4));
    QFile::remove(inLibrary("Beach.sketch.svg"));
    EXPECT_TRUE(waitForCount(3));
}

TEST_F(LibraryTest, ShowsAtOnceWhatOthersPutIntoANewEmptySubFolder) {
    putThree();
    view();
    QDir().mkpath(inLibrary("empty"));
    // Until the new folder was seen; nothing changes on the wall by it.
    QTest::qWait(1'500);
    put("empty/Later.sketch.svg", sketchOf("Later", 3));
    EXPECT_TRUE(waitForCount(4));
}

TEST_F(LibraryTest, FindsSketchesWithoutPhotosToo) {
    putThree();
    put("Words.sketch.svg", sketchOf("Words", 0));
    view();
    view().filters().photoChoice(0).click();
    EXPECT_EQ(found(), 1u);
    view().filters().photoChoice(2).click();
    EXPECT_EQ(view().finder().query().photos, (PhotoCountFilter{2, false}));
    EXPECT_EQ(found(), 1u);
}

TEST_F(LibraryTest, KeepsTheSelectionWhenOthersComeAndGo) {
    putThree();
    view();
    select({"Garden.sketch.svg", "winter/Snow.sketch.svg"});
    put("Apples.sketch.svg", sketchOf("Apples", 3));
    ASSERT_TRUE(waitForCount(4));
    const std::vector<std::string> expected{"Garden.sketch.svg", "winter/Snow.sketch.svg"};
    EXPECT_EQ(view().wall().selectedPaths(), expected);
}

TEST_F(LibraryTest, StartsAPageAndCountsTheUse) {
    putThree();
    view();
    select({"Garden.sketch.svg"});
    view().actions().startPage->trigger();
    ASSERT_TRUE(waitFor([this] { return host.started.size() == 1; }));
    EXPECT_EQ(host.started[0].name, "Garden, page");
    EXPECT_EQ(host.started[0].pieces, sketchOf("Garden", 2).pieces);
    EXPECT_TRUE(waitFor([this] { return entry("Garden.sketch.svg").labels.useCount == 1; }));
}

TEST_F(LibraryTest, CountsNoUseWhereThePersonKeepsWhatIsOpen) {
    putThree();
    host.mayLeave = false;
    view();
    select({"Garden.sketch.svg"});
    view().actions().startPage->trigger();
    select({"Beach.sketch.svg"});
    view().actions().favourite->trigger();  // comes after it
    ASSERT_TRUE(waitFor([this] { return entry("Beach.sketch.svg").labels.favourite; }));
    EXPECT_EQ(entry("Garden.sketch.svg").labels.useCount, 0);
}

TEST_F(LibraryTest, StartsTurnedAndCarriedPages) {
    putThree();
    view();
    select({"Garden.sketch.svg"});
    view().actions().mirrorLeftRight->trigger();
    ASSERT_TRUE(waitFor([this] { return host.started.size() == 1; }));
    const auto mirrored = turned(sketchOf("Garden", 2), WholeTurn::MirroredLeftRight);
    EXPECT_EQ(host.started[0].pieces, mirrored->pieces);
    asks.carryAnswer = Size{Length::inches(8), Length::inches(8)};
    view().actions().carryOver->trigger();
    ASSERT_TRUE(waitFor([this] { return host.started.size() == 2; }));
    EXPECT_EQ(host.started[1].page.size, *asks.carryAnswer);
}

TEST_F(LibraryTest, OpensTheFileItself) {
    putThree();
    view();
    select({"winter/Snow.sketch.svg"});
    view().actions().open->trigger();
    EXPECT_EQ(host.opened, QStringList{inLibrary("winter/Snow.sketch.svg")});
}

TEST_F(LibraryTest, GivesEveryCommandOfTheMenuALetterOfItsOwn) {
    putThree();
    std::set<QString> letters;
    for (const QAction* command : view().actions().inMenu()) {
        if (!command->isSeparator()) {
            const QString letter = QKeySequence::mnemonic(command->text()).toString();
            EXPECT_FALSE(letter.isEmpty()) << command->text().toStdString();
            EXPECT_TRUE(letters.insert(letter).second) << command->text().toStdString();
        }
    }
    EXPECT_GT(letters.size(), 15u);
}

TEST_F(LibraryTest, NamesAFileThatCannotBeReadOnce) {
    putThree();
    QFile broken(inLibrary("Broken.sketch.svg"));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("<svg");
    broken.close();
    EXPECT_EQ(view().problemsButton().text(), QStringLiteral("1 file could not be read"));
    view().problemsButton().click();
    ASSERT_EQ(asks.told.size(), 1);
    EXPECT_EQ(asks.told[0].count(QStringLiteral("Broken")), 1);
    EXPECT_EQ(view().finder().holdings()->size(), 3u);
}

TEST_F(LibraryTest, SaysThatAChosenFolderIsNotThereAndShowsItWhenItComesBack) {
    EXPECT_TRUE(view().notice().text().contains(QStringLiteral("not there")));
    EXPECT_FALSE(QFile::exists(library()));
    putThree();
    EXPECT_TRUE(waitForCount(3));
}

TEST_F(LibraryTest, GoesToAnotherFolderThatIsChosen) {
    putThree();
    view();
    DiskFileStore store;
    QDir().mkpath(at("other"));
    ASSERT_TRUE(saveSketch(store, toPath(at("other/New.sketch.svg")), sketchOf("New", 5)));
    asks.libraryAnswer = at("other");
    view().actions().chooseFolder->trigger();
    EXPECT_TRUE(waitForCount(1));
    EXPECT_EQ(view().folder(), at("other"));
    EXPECT_EQ(m_settings->value().libraryFolder, at("other"));
}

TEST_F(LibraryTest, GathersThoseAlike) {
    putThree();
    put("Mirrored.sketch.svg", *turned(sketchOf("Mirrored", 2), WholeTurn::MirroredLeftRight));
    view();
    select({"Garden.sketch.svg"});
    ASSERT_TRUE(view().actions().showFamily->isEnabled());
    view().actions().showFamily->trigger();
    EXPECT_EQ(found(), 2u);
    select({"Mirrored.sketch.svg"});
    // Others come meanwhile: it is still the same family.
    put("Alone.sketch.svg", sketchOf("Alone", 3));
    ASSERT_TRUE(waitForCount(5));
    EXPECT_EQ(found(), 2u);
}

}  // namespace
}  // namespace matwright::app
