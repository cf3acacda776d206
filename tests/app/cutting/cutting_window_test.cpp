// SPDX-License-Identifier: MIT
#include "app/cutting/cutting_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>

#include "app/cutting/cutting_side.h"
#include "app/cutting/plan_panel.h"
#include "app/cutting/sheet_picture_view.h"
#include "core/pagefile/page_file.h"
#include "tests/app/cutting/cutting_fixture.h"
#include "tests/app/cutting/cutting_page.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

class CuttingWindowTest : public CuttingFixture {
  protected:
    CuttingWindowTest() { session.reset(pageToCut()); }
    void stock(std::vector<PaperOnHand> papers) { ASSERT_TRUE(store().add(papers, "Add")); }
    void open() {
        window = std::make_unique<CuttingWindow>(session, QString(), settings, file(), asks);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        waitForPlan();
    }
    void waitForPlan() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !window->isLooking(); }, 60'000));
        QCoreApplication::processEvents();
    }
    PieceTable& table() { return window->side().table(); }
    int rowOf(PieceId piece) {
        const auto& lines = table().lines();
        for (std::size_t row = 0; row < lines.size(); ++row) {
            if (lines[row].isOwn && lines[row].piece.piece == piece) {
                return static_cast<int>(row);
            }
        }
        return -1;
    }
    int rowOfMat() { return rowOf(slotId); }
    int sheets() { return window->panel().sheets().count(); }
    int onHand(const std::string& name, PaperKind kind) {
        int count = 0;
        const auto papers = store().list();
        for (const PaperOnHand& paper : *papers) {
            count += paper.name == name && paper.kind == kind ? paper.count : 0;
        }
        return count;
    }

    Session session;
    std::unique_ptr<CuttingWindow> window;
};

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

TEST_F(CuttingWindowTest, CuttingTakesSheetsOffPutsScrapsBackAndCanBeTakenBack) {
    stock({paper("kraft", inches(12, 12), 2), paper("dots", inches(12, 12), 2)});
    open();
    press(*window, "Cut it: take off the papers");
    EXPECT_EQ(window->problem(), "");
    EXPECT_TRUE(window->news().contains("2 sheets are off the list"))
        << window->news().toStdString();
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 1);
    EXPECT_GE(onHand("kraft", PaperKind::Scrap), 1);
    EXPECT_FALSE(button(*window, "Cut it: take off the papers")->isEnabled());
    press(*window, "Put the papers back");
    EXPECT_EQ(onHand("kraft", PaperKind::WholeSheet), 2);
    EXPECT_EQ(onHand("kraft", PaperKind::Scrap), 0);
    waitForPlan();
    EXPECT_TRUE(button(*window, "Cut it: take off the papers")->isEnabled());
}

TEST_F(CuttingWindowTest, NothingIsCutWhereAnotherProgramWasQuicker) {
    stock({paper("kraft", inches(12, 12), 1), paper("dots", inches(12, 12), 2)});
    open();
    const auto papers = *store().list();
    for (const PaperOnHand& one : papers) {
        if (one.name == "kraft") {
            ASSERT_TRUE(store().remove(std::span(&one, 1)));
        }
    }
    press(*window, "Cut it: take off the papers");
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_EQ(onHand("dots", PaperKind::WholeSheet), 2);
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
    EXPECT_EQ(sheets(), 2);  // two strips on one sheet, two blocks on the other
    press(*window, "Only this page");
    EXPECT_EQ(table().rowCount(), 3);
}

TEST_F(CuttingWindowTest, APageThatCannotBeReadIsASentence) {
    test::writeFile(folder() / "broken.page.svg", "nothing");
    open();
    toOpen = QString::fromStdString(folder() / "broken.page.svg");
    press(*window, "Add pages…");
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
