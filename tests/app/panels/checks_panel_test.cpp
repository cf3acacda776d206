// SPDX-License-Identifier: MIT
#include "app/panels/checks_panel.h"

#include <QLabel>
#include <QListWidget>
#include <QSignalSpy>

#include "tests/app/panels/panel_bench.h"

namespace matwright::app {
namespace {

class ChecksPanelTest : public PanelBench {
  protected:
    ChecksPanelTest()
        : panel(session, settings),
          counts(&panel, &ChecksPanel::countChanged),
          reveals(&panel, &ChecksPanel::revealRequested) {
        show(panel, {400, 300});
        list = panel.findChild<QListWidget*>();
    }
    // Waits for fresh findings; false when none come.
    bool settled() { return counts.wait(5000); }
    void fillWithOneOffThePage() {
        fill({photoSlot(inchSize(3, 4), {inches(2), inches(2)}),
              photoSlot(inchSize(4, 6), {inches(11), inches(2)})});
    }
    void clickRow(int row) {
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                          list->visualItemRect(list->item(row)).center());
    }

    ChecksPanel panel;
    QSignalSpy counts;
    QSignalSpy reveals;
    QListWidget* list;
};

TEST_F(ChecksPanelTest, SaysThatThereIsNothingToMend) {
    ASSERT_TRUE(settled());
    EXPECT_EQ(counts.last().first().toInt(), 0);
    EXPECT_NE(labelled<QLabel>(panel, "Nothing to mend."), nullptr);
    EXPECT_FALSE(list->isVisible());
}

TEST_F(ChecksPanelTest, ListsWhatIsToMend) {
    fillWithOneOffThePage();
    ASSERT_TRUE(settled());
    ASSERT_GT(panel.findings().size(), 0U);
    EXPECT_EQ(counts.last().first().toInt(), list->count());
    EXPECT_EQ(list->item(0)->text().toStdString(), panel.findings()[0].sentence);
    EXPECT_EQ(labelled<QLabel>(panel, "Nothing to mend."), nullptr);
    EXPECT_GE(list->visualItemRect(list->item(0)).height(), 24);
}

TEST_F(ChecksPanelTest, TellsOfAPrintThatWillNotLookSharp) {
    fill({photoSlot(inchSize(3, 4), {inches(2), inches(2)})});
    ASSERT_TRUE(settled());
    ASSERT_TRUE(panel.findings().empty());
    Photo small;
    small.path = "/photos/pier.jpg";
    small.upright = {240, 320};  // 80 pixels an inch
    ASSERT_TRUE(session.perform(addPhotos(session.work(), {&small, 1}), {}));
    const PieceId slot = session.sketch().order.front();
    ASSERT_TRUE(session.perform(placePhoto(session.making(), slot, PhotoId{1}), {}));
    ASSERT_TRUE(settled());
    ASSERT_EQ(panel.findings().size(), 1U);
    EXPECT_EQ(panel.findings()[0].kind, CheckKind::CoarsePrint);
    clickRow(0);
    EXPECT_EQ(session.onlySelected(), slot);
}

TEST_F(ChecksPanelTest, ShowsWholeSentencesInANarrowPanel) {
    panel.resize(220, 300);
    fillWithOneOffThePage();
    ASSERT_TRUE(settled());
    ASSERT_GT(list->count(), 0);
    const QFontMetrics metrics = list->fontMetrics();
    for (int row = 0; row < list->count(); ++row) {
        const QRect cell = list->visualItemRect(list->item(row));
        const QRect text =
            metrics.boundingRect({0, 0, cell.width() - list->iconSize().width() - 8, 10000},
                                 Qt::TextWordWrap, list->item(row)->text());
        EXPECT_GE(cell.height(), text.height()) << row;
        EXPECT_LE(cell.right(), list->viewport()->width());
    }
}

TEST_F(ChecksPanelTest, AClickSelectsThePieceAndAsksToShowIt) {
    fillWithOneOffThePage();
    ASSERT_TRUE(settled());
    ASSERT_GT(list->count(), 0);
    clickRow(0);
    EXPECT_EQ(session.selection(), (Session::Selection{PieceId{2}}));
    ASSERT_EQ(reveals.count(), 1);
    EXPECT_EQ(reveals[0][0].value<PieceId>(), PieceId{2});
}

TEST_F(ChecksPanelTest, EnterDoesTheSame) {
    fillWithOneOffThePage();
    ASSERT_TRUE(settled());
    list->setFocus();
    list->setCurrentRow(0);
    QTest::keyClick(list, Qt::Key_Return);
    EXPECT_EQ(session.selection(), (Session::Selection{PieceId{2}}));
    EXPECT_EQ(reveals.count(), 1);
}

TEST_F(ChecksPanelTest, FollowsUndo) {
    ASSERT_TRUE(settled());
    ASSERT_TRUE(session.perform(
        addPieces(session.sketch(),
                  std::vector<Piece>{photoSlot(inchSize(4, 6), {inches(11), Length()})}),
        QStringLiteral("Add")));
    ASSERT_TRUE(settled());
    EXPECT_GT(counts.last().first().toInt(), 0);
    session.undoStack().undo();
    ASSERT_TRUE(settled());
    EXPECT_EQ(counts.last().first().toInt(), 0);
}

TEST_F(ChecksPanelTest, ManyChangesInARowAreCheckedOnceTheyRest) {
    ASSERT_TRUE(settled());
    counts.clear();
    for (int i = 1; i <= 20; ++i) {
        fill(std::vector<Piece>(static_cast<std::size_t>(i),
                                photoSlot(inchSize(4, 6), {inches(11), Length()})));
    }
    ASSERT_TRUE(settled());
    EXPECT_EQ(counts.count(), 1);
    std::set<PieceId> told;
    for (const CheckFinding& finding : panel.findings()) {
        told.insert(finding.pieces.begin(), finding.pieces.end());
    }
    EXPECT_EQ(told.size(), 20U) << "the latest sketch counts";
}

TEST_F(ChecksPanelTest, AChangeDuringARunMakesItsResultCountForNothing) {
    ASSERT_TRUE(settled());
    std::vector<Piece> many;
    for (int i = 0; i < 400; ++i) {
        many.push_back(photoSlot(inchSize(4, 6), {inches(i % 11), inches(i % 7)}));
    }
    fill(many);
    QTest::qWait(ChecksPanel::restMs + 20);  // the run is on its way, or just done
    counts.clear();
    fill({});
    ASSERT_TRUE(settled());
    EXPECT_EQ(counts.first().first().toInt(), 0);
    EXPECT_FALSE(counts.wait(ChecksPanel::restMs * 3)) << "no older result comes after the latest";
}

TEST_F(ChecksPanelTest, SelectingAsksForNoNewCheck) {
    fillWithOneOffThePage();
    ASSERT_TRUE(settled());
    session.selectAll();
    EXPECT_FALSE(counts.wait(ChecksPanel::restMs * 3));
}

}  // namespace
}  // namespace matwright::app
