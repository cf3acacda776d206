// SPDX-License-Identifier: MIT
#include "app/cutting/papers_window.h"

#include <QSpinBox>

#include "core/database/sqlite_database.h"
#include "tests/app/cutting/papers_window_fixture.h"

#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

class PapersWindowTest : public PapersWindowFixture {};

TEST_F(PapersWindowTest, SaysWhatToDoWhereThereIsNoPaperYet) {
    open();
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(button(*window, "Add paper…")->isEnabled());
    EXPECT_FALSE(button(*window, "Change…")->isEnabled());
    EXPECT_FALSE(button(*window, "Remove")->isEnabled());
    EXPECT_FALSE(button(*window, "Undo")->isEnabled());
    EXPECT_FALSE(button(*window, "Export CSV…")->isEnabled());
    const QImage shown = window->grab().toImage();
    const QRect list(window->table().mapTo(window.get(), QPoint()), window->table().size());
    const QRgb paper = shown.pixel(list.center() + QPoint(0, list.height() / 3));
    bool hasWords = false;
    for (int x = list.left() + 30; x < list.right() - 30 && !hasWords; ++x) {
        for (int y = list.center().y() - 40; y < list.center().y() + 40; ++y) {
            hasWords = hasWords || shown.pixel(x, y) != paper;
        }
    }
    EXPECT_TRUE(hasWords) << "the list is bare";
}

TEST_F(PapersWindowTest, ChangesTheChosenPaper) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12), 5)));
    open();
    chooseRow(0);
    inDialog([](PaperDialog& dialog) {
        dialog.findChild<QSpinBox*>()->setValue(4);
        press(dialog, "OK");
    });
    press(*window, "Change…");
    EXPECT_EQ(cell(0, PapersModel::Count), "4");
    EXPECT_EQ(store().list()->front().count, 4);
}

TEST_F(PapersWindowTest, UndoesAndBringsBackByButtonAndKey) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    chooseRow(0);
    QTest::keyClick(&window->table(), Qt::Key_Delete);
    EXPECT_EQ(rows(), 0);
    press(*window, "Undo");
    EXPECT_EQ(rows(), 1);
    QTest::keySequence(window.get(), QKeySequence(QKeySequence::Redo));
    EXPECT_EQ(rows(), 0);
    QTest::keySequence(window.get(), QKeySequence(QKeySequence::Undo));
    EXPECT_EQ(rows(), 1);
}

TEST_F(PapersWindowTest, EnterOnARowOpensChangeAndNothingAfterIt) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    chooseRow(0);
    EXPECT_EQ(dialogsOf(*window, [this] { QTest::keyClick(&window->table(), Qt::Key_Return); }), 1);
    EXPECT_TRUE(window->isVisible());
}

TEST_F(PapersWindowTest, EnterPressesTheButtonWithTheFocusAndNoOther) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    button(*window, "Undo")->setFocus();
    EXPECT_EQ(
        dialogsOf(*window, [this] { QTest::keyClick(window->focusWidget(), Qt::Key_Return); }), 0);
    EXPECT_EQ(rows(), 0);
    search()->setFocus();
    EXPECT_EQ(
        dialogsOf(*window, [this] { QTest::keyClick(window->focusWidget(), Qt::Key_Return); }), 0);
    button(*window, "Add paper…")->setFocus();
    EXPECT_EQ(dialogsOf(*window, [this] { QTest::keyClick(window->focusWidget(), Qt::Key_Enter); }),
              1);
    button(*window, "Close")->setFocus();
    EXPECT_EQ(
        dialogsOf(*window, [this] { QTest::keyClick(window->focusWidget(), Qt::Key_Return); }), 0);
    EXPECT_FALSE(window->isVisible());
}

TEST_F(PapersWindowTest, KeepsTheChosenRowsWhenTheListIsReadAgain) {
    const PaperOnHand papers[] = {paper("a", inches(12, 12)), paper("b", inches(12, 12)),
                                  paper("c", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    window->table().selectAll();
    ASSERT_TRUE(store().add(paper("d", inches(12, 12))));
    QEvent front(QEvent::WindowActivate);
    QCoreApplication::sendEvent(window.get(), &front);
    EXPECT_EQ(rows(), 4);
    EXPECT_EQ(window->table().selectionModel()->selectedRows().size(), 3);
    press(*window, "Remove");
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(cell(0, PapersModel::Name), "d");
}

TEST_F(PapersWindowTest, ChoosesTheNextRowAfterRemovalAndWhatComesBack) {
    const PaperOnHand papers[] = {paper("a", inches(12, 12)), paper("b", inches(12, 12)),
                                  paper("c", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    const auto chosen = [this] {
        QStringList names;
        for (const QModelIndex& row : window->table().selectionModel()->selectedRows()) {
            names << row.data().toString();
        }
        return names;
    };
    chooseRow(1);
    press(*window, "Remove");
    EXPECT_EQ(chosen(), QStringList{"c"});
    press(*window, "Remove");
    EXPECT_EQ(chosen(), QStringList{"a"});
    press(*window, "Undo");
    EXPECT_EQ(chosen(), QStringList{"c"});
    QTest::keySequence(window.get(), QKeySequence(Qt::CTRL | Qt::Key_Y));
    EXPECT_EQ(rows(), 1);
}

TEST_F(PapersWindowTest, KeepsTheChosenRowWhenAKeyTakesBackAChange) {
    const PaperOnHand papers[] = {paper("a", inches(12, 12)), paper("b", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    ASSERT_TRUE(store().add(paper("c", inches(12, 12))));
    open();
    chooseRow(0);
    QTest::keyPress(window.get(), Qt::Key_Control, Qt::ControlModifier);
    QTest::keySequence(window.get(), QKeySequence(QKeySequence::Undo));
    QTest::keyRelease(window.get(), Qt::Key_Control);
    ASSERT_EQ(rows(), 2);
    const QModelIndexList chosen = window->table().selectionModel()->selectedRows();
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(cell(chosen.front().row(), PapersModel::Name), "a");
}

TEST_F(PapersWindowTest, ChoosesEveryPaperThatWasImported) {
    test::writeFile(folder() / "new.csv",
                    "Name,Width,Height\r\nred,12 in,12 in\r\nblue,12 in,12 in\r\n");
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    toOpen = QString::fromStdString(folder() / "new.csv");
    press(*window, "Import CSV…");
    EXPECT_EQ(rows(), 3);
    EXPECT_EQ(window->table().selectionModel()->selectedRows().size(), 2);
}

TEST_F(PapersWindowTest, TakesBackOnlyTheChangeThatItsButtonNames) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    ASSERT_TRUE(store().add(paper("vellum", inches(12, 12))));
    window->undo();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_EQ(rows(), 2);
    EXPECT_TRUE(button(*window, "Undo")->toolTip().contains("vellum"));
    window->undo();
    EXPECT_EQ(rows(), 1);
    ASSERT_TRUE(store().undo());
    window->redo();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_EQ(rows(), 0);
}

TEST_F(PapersWindowTest, FindsByWordsInAnyOrder) {
    const PaperOnHand papers[] = {paper("blue dots", inches(12, 12)),
                                  paper("blue cardstock", inches(12, 12)),
                                  paper("kraft", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    QTest::keyClicks(search(), "DOTS blue");
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(cell(0, PapersModel::Name), "blue dots");
}

TEST_F(PapersWindowTest, SortsSizesByTheirArea) {
    const PaperOnHand papers[] = {paper("a", inches(12, 12)), paper("b", inches(9, 9)),
                                  paper("c", inches(4, 6))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    window->table().sortByColumn(PapersModel::PaperSize, Qt::AscendingOrder);
    EXPECT_EQ(cell(0, PapersModel::Name), "c");
    EXPECT_EQ(cell(1, PapersModel::Name), "b");
    EXPECT_EQ(cell(2, PapersModel::Name), "a");
}

TEST_F(PapersWindowTest, ExportsATableThatCanBeImportedAgain) {
    ASSERT_TRUE(store().add(paper("dots, \"blue\"", inches(12, 12), 2)));
    open();
    toSave = QString::fromStdString(folder() / "papers");
    press(*window, "Export CSV…");
    toOpen = toSave + ".csv";
    toImport = ImportChoice::All;
    press(*window, "Import CSV…");
    EXPECT_EQ(window->problem(), "");
    ASSERT_EQ(rows(), 2);
    EXPECT_EQ(cell(0, PapersModel::Name), cell(1, PapersModel::Name));
    press(*window, "Undo");
    EXPECT_EQ(rows(), 1);
}

TEST_F(PapersWindowTest, ATableOfWhatIsThereAlreadyDoesNotDoubleTheList) {
    const PaperOnHand papers[] = {paper("dots", inches(12, 12), 2), paper("kraft", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    toSave = QString::fromStdString(folder() / "papers.csv");
    press(*window, "Export CSV…");
    toOpen = toSave;
    press(*window, "Import CSV…");
    EXPECT_EQ(rows(), 2);
    EXPECT_EQ(asked, QStringList{"Everything in papers.csv is on the list already (2)."});
    std::string table = test::readFile(folder() / "papers.csv");
    test::writeFile(folder() / "papers.csv", table + "plum,12,12,3,,,,,,,\r\n");
    toImport = ImportChoice::OnlyNew;
    press(*window, "Import CSV…");
    EXPECT_EQ(asked.back(),
              "Of the papers in papers.csv there are 2 on the list already and 1 new.");
    EXPECT_EQ(rows(), 3);
    EXPECT_EQ(window->news(), "Imported 1 paper from papers.csv.");
    press(*window, "Undo");
    EXPECT_EQ(rows(), 2);
}

TEST_F(PapersWindowTest, AListThatAnotherProgramHoldsIsASentenceAndReadLater) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    auto holding = std::make_unique<Holding>(file());
    open();
    EXPECT_TRUE(window->problem().contains("Another program is busy"))
        << window->problem().toStdString();
    EXPECT_FALSE(button(*window, "Add paper…")->isEnabled());
    holding.reset();
    ASSERT_TRUE(QTest::qWaitFor([this] { return rows() == 1; }, 20'000));
    EXPECT_EQ(window->problem(), "");
    EXPECT_TRUE(button(*window, "Add paper…")->isEnabled());
}

TEST_F(PapersWindowTest, NamesTheLineOfATableThatCannotBeRead) {
    test::writeFile(folder() / "broken.csv", "Name,Width,Height\r\nkraft,12 in,tall\r\n");
    open();
    toOpen = QString::fromStdString(folder() / "broken.csv");
    press(*window, "Import CSV…");
    EXPECT_TRUE(window->problem().contains("2")) << window->problem().toStdString();
    EXPECT_EQ(rows(), 0);
}

TEST_F(PapersWindowTest, NamesTheFileOfATableThatCannotBeReadOrIsEmpty) {
    test::writeFile(folder() / "broken.csv", "Name,Width\r\nkraft,12 in\r\n");
    test::writeFile(folder() / "bare.csv", "Name,Width,Height\r\n");
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    ASSERT_TRUE(store().undo());
    open();
    toOpen = QString::fromStdString(folder() / "broken.csv");
    press(*window, "Import CSV…");
    EXPECT_TRUE(window->problem().contains("broken.csv")) << window->problem().toStdString();
    toOpen = QString::fromStdString(folder() / "bare.csv");
    press(*window, "Import CSV…");
    EXPECT_EQ(window->problem(), "");
    EXPECT_EQ(window->news(), "There are no papers in bare.csv.");
    EXPECT_TRUE(button(*window, "Redo")->isEnabled());
    EXPECT_FALSE(button(*window, "Undo")->isEnabled());
}

TEST_F(PapersWindowTest, TriesAgainAListThatCouldNotBeRead) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    SqliteDatabase raw(file(), 1'000);
    ASSERT_EQ(raw.run("UPDATE paper SET width=0"), 0);
    open();
    EXPECT_FALSE(window->problem().isEmpty());
    ASSERT_EQ(raw.run("UPDATE paper SET width=height"), 0);
    QEvent front(QEvent::WindowActivate);
    QCoreApplication::sendEvent(window.get(), &front);
    EXPECT_EQ(rows(), 1);
    EXPECT_EQ(window->problem(), "");
}

TEST_F(PapersWindowTest, ShowsWhatAnotherProgramChangedWhenItComesToTheFront) {
    open();
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    QEvent front(QEvent::WindowActivate);
    QCoreApplication::sendEvent(window.get(), &front);
    EXPECT_EQ(rows(), 1);
}

TEST_F(PapersWindowTest, SaysThatTheListCannotBeOpenedAndOffersNothingThen) {
    test::writeFile(file(), "this is no database, and long enough to be looked at");
    open();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_FALSE(button(*window, "Add paper…")->isEnabled());
}

}  // namespace
}  // namespace matwright::app
