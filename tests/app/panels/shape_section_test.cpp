// SPDX-License-Identifier: MIT
#include <QLabel>
#include <QTableView>

#include "tests/app/panels/piece_panel_bench.h"

namespace matwright::app {
namespace {

TEST_F(PiecePanelTest, ChangesTheShapeAndItsRadius) {
    fill({block(inchSize(4, 2))});
    select({1});
    choose("Shape", QStringLiteral("Rounded corners"));
    type(length("Corner radius"), "1/4");
    EXPECT_EQ(piece(1).shape, Shape(RoundedRectangleShape{inches(0, 1, 4)}));
    choose("Shape", QStringLiteral("Circle or oval"));
    EXPECT_EQ(piece(1).shape, Shape(OvalShape{}));
    EXPECT_EQ(length("Corner radius"), nullptr);
}

class PolygonPanelTest : public PiecePanelTest {
  protected:
    PolygonPanelTest() {
        fill({block(inchSize(4, 2))});
        select({1});
        choose("Shape", QStringLiteral("Polygon"));
        table = control<QTableView>(panel, "Corners");
    }
    std::vector<Point> corners() const { return std::get<PolygonShape>(piece(1).shape).corners; }
    void set(int row, int column, const char* text) {
        table->model()->setData(table->model()->index(row, column), QLatin1String(text));
    }
    QTableView* table;
};

TEST_F(PolygonPanelTest, MovesACornerByTyping) {
    ASSERT_EQ(corners().size(), 6U);
    set(0, 0, "1/2");
    EXPECT_EQ(corners()[0], (Point{inches(0, 1, 2), Length()}));
}

TEST_F(PolygonPanelTest, AddsAndRemovesCorners) {
    table->setCurrentIndex(table->model()->index(0, 0));
    click("Add corner");
    ASSERT_EQ(corners().size(), 7U) << "halfway on a straight side is a corner too";
    table->setCurrentIndex(table->model()->index(1, 0));
    click("Remove corner");
    EXPECT_EQ(corners().size(), 6U);
}

TEST_F(PolygonPanelTest, SaysWhyACornerIsRefusedAndKeepsThePolygon) {
    const std::vector<Point> before = corners();
    for (const char* text : {"5", "abc"}) {  // outside the box; no length
        set(0, 0, text);
        EXPECT_EQ(corners(), before) << text;
        bool told = false;
        for (const QLabel* label : panel.findChildren<QLabel*>()) {
            told |= label->isVisible() &&
                    (label->text().contains(QStringLiteral("corner")) ||
                     label->text().contains(QStringLiteral("abc"))) &&
                    label->text().endsWith(QLatin1Char('.'));
        }
        EXPECT_TRUE(told) << text;
    }
}

}  // namespace
}  // namespace matwright::app
