// SPDX-License-Identifier: MIT
#include "app/cutting/cutting_window.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QRegularExpression>
#include <map>

#include "app/cutting/sheet_picture_view.h"
#include "core/pagefile/page_file.h"
#include "tests/app/cutting/cutting_window_fixture.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

TEST_F(CuttingWindowTest, PlansWhatIsNamedAndMarksWhatNeedsAPaper) {
    stock({paper("kraft", inches(12, 12), 2), paper("dots", inches(12, 12), 2)});
    open();
    EXPECT_EQ(table().rowCount(), 3);
    EXPECT_EQ(sheets(), 2);
    EXPECT_TRUE(window->panel().words().contains("2 sheets"))
        << window->panel().words().toStdString();
    EXPECT_TRUE(window->panel().words().contains("Needs a paper"));
    EXPECT_EQ(table().paperBox(rowOfMat())->lineEdit()->placeholderText(), "needs a paper");
}

TEST_F(CuttingWindowTest, SaysWhatToBuyWhereNothingIsOnHand) {
    open();
    EXPECT_TRUE(window->panel().words().contains("To buy: 1 sheet of kraft"))
        << window->panel().words().toStdString();
}

TEST_F(CuttingWindowTest, ATypedPaperIsAnEditOfThePageAndPlansAnew) {
    stock({paper("kraft", inches(12, 12), 2), paper("dots", inches(12, 12), 2)});
    open();
    QComboBox* box = table().paperBox(rowOfMat());
    box->setFocus();
    QTest::keyClicks(box, "white");
    QTest::keyClick(box, Qt::Key_Return);
    EXPECT_EQ(session.sketch().pieces.at(slotId).mats.front().paper, "white");
    waitForPlan();
    EXPECT_EQ(sheets(), 3);
    EXPECT_FALSE(window->panel().words().contains("Needs a paper"));
    press(*window, "Undo");
    EXPECT_EQ(session.sketch(), pageToCut());
    waitForPlan();
    EXPECT_EQ(sheets(), 2);
}

TEST_F(CuttingWindowTest, GivesOnePaperToAllThatHaveNone) {
    stock({paper("kraft", inches(12, 12), 2), paper("dots", inches(12, 12), 2)});
    open();
    press(*window, "Give to all");
    EXPECT_EQ(session.sketch().pieces.at(slotId).mats.front().paper, "dots");
    EXPECT_FALSE(button(*window, "Give to all")->isVisible());
}

TEST_F(CuttingWindowTest, TheHiddenMiddleOfAMatSavesASheet) {
    // Photo and mat of the size of the sheet, and a small block that fits into its middle.
    Sketch sketch = blankSketch();
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.place = {Length::inches(1), Length::inches(1)};
    slot.size = {Length::inches(8), Length::inches(10)};
    slot.printSize = slot.size;
    slot.mats.push_back({Length::inches(1), {}, "kraft"});
    Piece block;
    block.size = inches(4, 4);
    block.paper = "kraft";
    const Piece pieces[] = {block, slot};
    ASSERT_TRUE(apply(sketch, addPieces(sketch, pieces)));
    session.reset(sketch);
    stock({paper("kraft", inches(10, 12), 5)});
    open();
    EXPECT_EQ(window->panel().words().contains("2 sheets"), true);
    const int mat = rowOf(PieceId{2});
    QTest::mouseClick(table().middleSwitch(mat), Qt::LeftButton, {}, QPoint(10, 14));
    EXPECT_TRUE(session.sketch().pieces.at(PieceId{2}).mats.front().gutted);
    waitForPlan();
    press(*window, "Cut it: take off the papers");
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 4);
}

TEST_F(CuttingWindowTest, EnterPressesTheButtonWithTheFocusAndNeverTakesOffPapers) {
    stock({paper("kraft", inches(12, 12), 2), paper("dots", inches(12, 12), 2)});
    open();
    window->panel().steps().setFocus();
    window->panel().steps().setCurrentRow(0);
    QTest::keyClick(&window->panel().steps(), Qt::Key_Return);
    QTest::keyClick(table().paperBox(rowOf(blockId))->lineEdit(), Qt::Key_Return);
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 2);
    EXPECT_TRUE(window->isVisible());
    QPushButton* close = button(*window, "Close");
    close->setFocus();
    QTest::keyClick(close, Qt::Key_Return);
    EXPECT_FALSE(window->isVisible());
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 2);
}

TEST_F(CuttingWindowTest, EveryLetterBelongsToOneControl) {
    open();
    std::map<QChar, QString> letters;
    const auto look = [&](const QString& text) {
        const auto at = text.indexOf(u'&');
        if (at >= 0) {
            const QChar letter = text[at + 1].toUpper();
            EXPECT_TRUE(letters.emplace(letter, text).second)
                << text.toStdString() << " and " << letters[letter].toStdString();
        }
    };
    for (const auto* one : window->findChildren<QAbstractButton*>()) {
        look(one->text());
    }
    for (const auto* one : window->findChildren<QLabel*>()) {
        if (one->buddy()) {
            look(one->text());
        }
    }
    EXPECT_GE(letters.size(), 15U);
}

TEST_F(CuttingWindowTest, RemarksOfThePlanAreShown) {
    open();
    EXPECT_TRUE(window->panel().words().contains("Nothing is on hand of"))
        << window->panel().words().toStdString();
    EXPECT_TRUE(window->panel().words().contains("planned without an up direction"));
}

TEST_F(CuttingWindowTest, HalfTypedPapersSurviveThatOtherRowsGo) {
    DiskFileStore files;
    ASSERT_TRUE(savePage(files, folder() / "Zoo.page.svg", {pageToCut(), {}}));
    open();
    toOpen = QString::fromStdString(folder() / "Zoo.page.svg");
    press(*window, "Add pages…");
    ASSERT_EQ(table().rowCount(), 6);
    QApplication::setActiveWindow(window.get());
    QComboBox* box = table().paperBox(rowOfMat());
    box->setFocus();
    QTest::keyClicks(box->lineEdit(), "white");
    window->onlyThisPage();  // by its key, which leaves the focus where it is
    EXPECT_EQ(table().rowCount(), 3);
    EXPECT_EQ(session.sketch().pieces.at(slotId).mats.front().paper, "white");
}

TEST_F(CuttingWindowTest, UndoByKeyInAPaperBoxIsTheWindows) {
    open();
    QApplication::setActiveWindow(window.get());
    QComboBox* box = table().paperBox(rowOfMat());
    box->setFocus();
    QTest::keyClicks(box->lineEdit(), "white");
    QTest::keyClick(box->lineEdit(), Qt::Key_Return);
    ASSERT_EQ(session.sketch().pieces.at(slotId).mats.front().paper, "white");
    QTest::keySequence(box->lineEdit(), QKeySequence(QKeySequence::Undo));
    EXPECT_EQ(session.sketch(), pageToCut());
    EXPECT_EQ(box->currentText(), "");
}

TEST_F(CuttingWindowTest, OnlyStepsTakenBackHereAreOfferedToBeDoneAgain) {
    ASSERT_TRUE(session.perform(removePieces(session.sketch(), std::span(&stripId, 1)), "Remove"));
    session.undoStack().undo();
    open();
    EXPECT_FALSE(button(*window, "Redo")->isEnabled());
    press(*window, "Give to all");
    press(*window, "Undo");
    EXPECT_TRUE(button(*window, "Redo")->isEnabled());
}

TEST_F(CuttingWindowTest, AMiddleThatCannotBeUsedIsNotOfferedAndSaysWhy) {
    Sketch sketch = pageToCut();
    sketch.pieces.at(slotId).shape = OvalShape{};
    session.reset(sketch);
    open();
    EXPECT_FALSE(table().middleSwitch(rowOfMat())->isEnabled());
    EXPECT_TRUE(table().middleSwitch(rowOfMat())->toolTip().contains("Only of a rectangle"));
}

TEST_F(CuttingWindowTest, WhatIsLeftOfSheetsToBuyIsSaid) {
    open();
    EXPECT_TRUE(button(*window, "Cut it: take off the papers")->toolTip().contains("to buy (2)"));
    press(*window, "Cut it: take off the papers");
    EXPECT_TRUE(window->news().contains("What is left of the 2 sheets to buy"))
        << window->news().toStdString();
}

TEST_F(CuttingWindowTest, TheChosenStepIsMarkedInThePicture) {
    stock({paper("kraft", inches(12, 12), 2), paper("dots", inches(12, 12), 2)});
    open();
    ASSERT_GT(window->panel().steps().count(), 0);
    EXPECT_FALSE(window->panel().picture().step());
    const QString first = window->panel().heading();
    QTest::mouseClick(
        window->panel().steps().viewport(), Qt::LeftButton, {},
        window->panel().steps().visualItemRect(window->panel().steps().item(0)).center());
    EXPECT_EQ(window->panel().picture().step(), 0U);
    QTest::keyClick(&window->panel().sheets(), Qt::Key_Right);
    EXPECT_NE(window->panel().heading(), first);
    EXPECT_FALSE(window->panel().picture().step());
}

TEST_F(CuttingWindowTest, SavesThePlanAsPdfAndOneSheetAsSvg) {
    stock({paper("kraft", inches(12, 12), 2), paper("dots", inches(12, 12), 2)});
    open();
    toSave = QString::fromStdString(folder() / "plan.pdf");
    press(*window, "Save PDF…");
    EXPECT_EQ(window->news(), "Saved plan.pdf.");
    EXPECT_EQ(test::readFile(folder() / "plan.pdf").substr(0, 5), "%PDF-");
    toSave = QString::fromStdString(folder() / "sheet");
    press(*window, "Save this sheet as SVG…");
    EXPECT_NE(test::readFile(folder() / "sheet.svg").find("width=\"304.8mm\""), std::string::npos);
}

TEST_F(CuttingWindowTest, NeverWritesOverAPage) {
    stock({paper("kraft", inches(12, 12), 2)});
    open();
    toSave = QString::fromStdString(folder() / "page.page.svg");
    press(*window, "Save this sheet as SVG…");
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_FALSE(std::filesystem::exists(folder() / "page.page.svg"));
}

TEST_F(CuttingWindowTest, SaysWhatToDoWhereThereIsNoPrinter) {
    open();
    press(*window, "Print…");
    EXPECT_TRUE(window->problem().contains("Save a PDF"));
}

TEST_F(CuttingWindowTest, PlansSeveralPagesAndLeavesTheOthersAsTheyAre) {
    stock({paper("kraft", inches(12, 12), 2), paper("dots", inches(12, 12), 2)});
    DiskFileStore files;
    ASSERT_TRUE(savePage(files, folder() / "Zoo.page.svg", {pageToCut(), {}}));
    open();
    toOpen = QString::fromStdString(folder() / "Zoo.page.svg");
    press(*window, "Add pages…");
    waitForPlan();
    EXPECT_EQ(table().rowCount(), 6);
    EXPECT_FALSE(table().paperBox(5)->isEnabled());
    EXPECT_TRUE(window->news().contains("chosen where those pages are open"));
    EXPECT_EQ(table().lines()[5].name.count("Zoo"), 1) << table().lines()[5].name.toStdString();
    EXPECT_EQ(sheets(), 2);  // two strips on one sheet, two blocks on the other
    press(*window, "Only this page");
    EXPECT_EQ(table().rowCount(), 3);
}

TEST_F(CuttingWindowTest, PiecesThatWereCutBeforeAreToldAmongThoseOfMorePages) {
    stock({paper("kraft", inches(12, 12), 5), paper("dots", inches(12, 12), 5)});
    DiskFileStore files;
    Sketch zoo = blankSketch();
    ASSERT_TRUE(apply(zoo, addPieces(zoo, std::vector{pageToCut().pieces.at(stripId)})));
    ASSERT_TRUE(savePage(files, folder() / "Zoo.page.svg", {zoo, {}}));
    open();
    press(*window, "Cut it: take off the papers");
    toOpen = QString::fromStdString(folder() / "Zoo.page.svg");
    press(*window, "Add pages…");
    waitForPlan();
    EXPECT_TRUE(window->news().contains("Of the 4 pieces 2 were cut before"))
        << window->news().toStdString();
}

TEST_F(CuttingWindowTest, APageIsPlannedOnceHoweverOftenItIsAdded) {
    DiskFileStore files;
    ASSERT_TRUE(savePage(files, folder() / "Zoo.page.svg", {pageToCut(), {}}));
    ASSERT_TRUE(savePage(files, folder() / "own.page.svg", {pageToCut(), {}}));
    std::filesystem::create_symlink(folder() / "Zoo.page.svg", folder() / "Link.page.svg");
    window = std::make_unique<CuttingWindow>(session, QString::fromStdString(folder() / "own"),
                                             settings, file(), asks);
    window->show();
    for (const char* name : {"Zoo.page.svg", "Zoo.page.svg", "Link.page.svg", "own.page.svg"}) {
        toOpen = QString::fromStdString(folder() / name);
        press(*window, "Add pages…");
        EXPECT_EQ(table().rowCount(), 6) << name;
    }
    EXPECT_EQ(window->problem(), "own is in this plan already and was not added again.");
    press(*window, "Only this page");
    toOpen = QString::fromStdString(folder() / "Zoo.page.svg");
    press(*window, "Add pages…");
    EXPECT_EQ(table().rowCount(), 6);
    EXPECT_EQ(window->problem(), "");
}

TEST_F(CuttingWindowTest, APageThatCannotBeReadIsASentence) {
    test::writeFile(folder() / "broken.page.svg", "nothing");
    open();
    toOpen = QString::fromStdString(folder() / "broken.page.svg");
    press(*window, "Add pages…");
    waitForPlan();
    EXPECT_TRUE(window->problem().contains("broken.page.svg"));
}

TEST_F(CuttingWindowTest, APageWithoutPapersSaysWhatToAdd) {
    session.reset(blankSketch());
    open();
    EXPECT_TRUE(window->panel().words().contains("nothing to cut"));
    EXPECT_FALSE(button(*window, "Cut it: take off the papers")->isEnabled());
    EXPECT_FALSE(button(*window, "Save PDF…")->isEnabled());
}

TEST_F(CuttingWindowTest, OptionsAreRememberedAndPlanAnew) {
    open();
    auto* buy = window->findChild<QCheckBox*>(QString(), Qt::FindChildrenRecursively);
    for (QCheckBox* box : window->findChildren<QCheckBox*>()) {
        buy = box->text().contains("12 × 12") ? box : buy;
    }
    QTest::mouseClick(buy, Qt::LeftButton, {}, QPoint(10, 14));
    waitForPlan();
    EXPECT_TRUE(window->panel().words().contains("Not cut"));
    window.reset();
    open();
    EXPECT_FALSE(window->side().choice().mayBuy);
}

TEST_F(CuttingWindowTest, ALongSearchShowsItsPlanAtOnceAndCanBeStopped) {
    std::vector<Piece> blocks;
    for (int i = 0; i < 240; ++i) {
        Piece block;
        block.size = {Length::inches(1 + i % 5, i * 7 % 16, 16),
                      Length::inches(2 + i % 3, i * 11 % 16, 16)};
        block.paper = "red";
        blocks.push_back(block);
    }
    Sketch sketch = blankSketch();
    ASSERT_TRUE(apply(sketch, addPieces(sketch, blocks)));
    session.reset(sketch);
    CuttingChoice patient;
    patient.seconds = mostSeconds;
    settings.setWindowState("cutting", bytesOf(patient));
    window = std::make_unique<CuttingWindow>(session, QString(), settings, file(), asks);
    window->show();
    QPushButton* stop = button(*window, "Stop looking");
    ASSERT_TRUE(QTest::qWaitFor([&] { return stop->isVisible() && sheets() > 0; }, 60'000))
        << window->panel().words().toStdString();
    EXPECT_TRUE(button(*window, "Cut it: take off the papers")->isEnabled());
    QString words;
    for (const auto* bar : window->findChildren<QProgressBar*>()) {
        words += bar->isVisible() ? bar->text() : QString();
    }
    static const QRegularExpression known("^\\d+ sheets so far, at least \\d+: \\d+ of 60 s$");
    EXPECT_TRUE(known.match(words).hasMatch()) << words.toStdString();
    QTest::mouseClick(stop, Qt::LeftButton);
    waitForPlan();
    EXPECT_TRUE(window->news().contains("Stopped")) << window->news().toStdString();
    EXPECT_FALSE(stop->isVisible());
    EXPECT_GT(sheets(), 0);
}

TEST_F(CuttingWindowTest, EveryControlIsNamedAndLargeEnough) {
    stock({paper("kraft", inches(12, 12), 2)});
    open();
    for (QWidget* control : window->findChildren<QWidget*>()) {
        const bool isControl = qobject_cast<QPushButton*>(control) ||
                               qobject_cast<QComboBox*>(control) ||
                               qobject_cast<QCheckBox*>(control);
        if (isControl && control->isVisible()) {
            EXPECT_GE(control->height(), 24) << control->accessibleName().toStdString();
            const auto* words = qobject_cast<QAbstractButton*>(control);
            EXPECT_FALSE(control->accessibleName().isEmpty() &&
                         (!words || words->text().isEmpty()));
        }
    }
    EXPECT_LE(window->minimumSizeHint().width(), 1240);
    EXPECT_LE(window->minimumSizeHint().height(), 740);
}

}  // namespace
}  // namespace matwright::app
