// SPDX-License-Identifier: MIT
#include "app/library/wall_view.h"

#include <QMimeData>
#include <QScrollBar>

#include "tests/app/library/library_fixture.h"

namespace matwright::app {
namespace {

// A wall of so many sketches that exist in memory only.
class WallTest : public testing::Test {
  protected:
    void show(int count) {
        std::vector<LibraryEntry> entries;
        for (int i = 0; i < count; ++i) {
            LibraryEntry entry;
            entry.path =
                QStringLiteral("%1.sketch.svg").arg(i, 5, 10, QLatin1Char('0')).toStdString();
            entry.content = contentKeyOf(entry.path);
            entry.facts.pageSize = {Length::inches(12), Length::inches(12)};
            entries.push_back(entry);
        }
        finder.setHoldings(Holdings::of(entries));
    }
    WallTest() {
        wall.resize(800, 600);
        wall.show();
    }
    int columns() {
        int count = 1;
        while (rect(count).top() == rect(0).top()) {
            ++count;
        }
        return count;
    }
    QRect rect(int row) { return wall.visualRect(model.index(row)); }
    int current() const { return wall.currentIndex().row(); }

    QTemporaryDir folder;
    Finder finder;
    WallModel model{finder};
    Thumbnails thumbnails{folder.path()};
    WallView wall{model, thumbnails};
};

TEST_F(WallTest, LaysCellsInRowsThatDoNotOverlap) {
    show(100);
    const int across = columns();
    EXPECT_GE(across, 3);
    for (int row = 0; row < 40; ++row) {
        for (int other = 0; other < row; ++other) {
            EXPECT_FALSE(rect(row).intersects(rect(other))) << row << ' ' << other;
        }
    }
    EXPECT_EQ(rect(across).left(), rect(0).left());
    EXPECT_EQ(wall.indexAt(rect(7).center()).row(), 7);
    EXPECT_FALSE(wall.indexAt(rect(0).topLeft() - QPoint(2, 2)).isValid());
}

TEST_F(WallTest, MovesWithTheKeysByColumnsAndRows) {
    show(100);
    const int across = columns();
    QTest::keyClick(&wall, Qt::Key_Home);
    EXPECT_EQ(current(), 0);
    QTest::keyClick(&wall, Qt::Key_Right);
    EXPECT_EQ(current(), 1);
    QTest::keyClick(&wall, Qt::Key_Down);
    EXPECT_EQ(current(), 1 + across);
    QTest::keyClick(&wall, Qt::Key_Up);
    QTest::keyClick(&wall, Qt::Key_Up);
    EXPECT_EQ(current(), 1);
    QTest::keyClick(&wall, Qt::Key_End);
    EXPECT_EQ(current(), 99);
    EXPECT_TRUE(wall.viewport()->rect().contains(rect(99)));
}

TEST_F(WallTest, SelectsARangeWithShiftAndSinglesWithControl) {
    show(100);
    QTest::mouseClick(wall.viewport(), Qt::LeftButton, {}, rect(1).center());
    QTest::mouseClick(wall.viewport(), Qt::LeftButton, Qt::ShiftModifier, rect(5).center());
    EXPECT_EQ(wall.selectedRows(), (std::vector<int>{1, 2, 3, 4, 5}));
    QTest::mouseClick(wall.viewport(), Qt::LeftButton, Qt::ControlModifier, rect(3).center());
    EXPECT_EQ(wall.selectedRows(), (std::vector<int>{1, 2, 4, 5}));
    QTest::keyClick(&wall, Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(wall.selectedRows().size(), 100u);
}

TEST_F(WallTest, StaysWhereItIsWhenOthersComeBefore) {
    show(1000);
    wall.verticalScrollBar()->setValue(3000);
    int seen = 0;
    while (rect(seen).top() < 0) {
        ++seen;
    }
    const std::string path = model.path(seen);
    const int y = rect(seen).top();
    std::vector<LibraryEntry> entries;
    for (std::size_t i = 0; i < 1000; ++i) {
        entries.push_back(finder.holdings()->entry(i));
    }
    for (int i = 0; i < columns() * 2; ++i) {
        entries.push_back(entries.front());
        entries.back().path = "0000000" + std::to_string(i) + ".sketch.svg";
    }
    finder.setHoldings(Holdings::of(entries));
    const auto now = model.rowOf(path);
    ASSERT_TRUE(now);
    EXPECT_NE(*now, seen);
    EXPECT_EQ(rect(*now).top(), y);
}

TEST_F(WallTest, SaysEachSketchInOneLine) {
    LibraryEntry entry;
    entry.path = "a.sketch.svg";
    entry.facts.name = "Harbour day";
    entry.facts.pageSize = {Length::inches(12), Length::inches(12)};
    entry.facts.photos = 4;
    entry.facts.uprightPhotos = 4;
    entry.labels.favourite = true;
    finder.setHoldings(Holdings::of(std::vector{entry}));
    EXPECT_EQ(model.data(model.index(0), Qt::AccessibleTextRole).toString(),
              QStringLiteral("Harbour day, 12 × 12 in, 4 photos, favourite"));
}

TEST_F(WallTest, GivesTheFilesToOtherPrograms) {
    show(3);
    model.setLibrary(QStringLiteral("/library"));
    const std::unique_ptr<QMimeData> mime(model.mimeData({model.index(1)}));
    ASSERT_EQ(mime->urls().size(), 1);
    EXPECT_EQ(mime->urls().first().toLocalFile(), QStringLiteral("/library/00001.sketch.svg"));
}

TEST_F(WallTest, BeginsASearchWithALetterAndNotWithASpace) {
    show(3);
    const QSignalSpy typed(&wall, &WallView::typed);
    QTest::keyClick(&wall, Qt::Key_Space);
    EXPECT_EQ(typed.count(), 0);
    QTest::keyClicks(&wall, QStringLiteral("b"));
    EXPECT_EQ(typed.count(), 1);
}

}  // namespace
}  // namespace matwright::app
