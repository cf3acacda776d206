// SPDX-License-Identifier: MIT
#include "app/panels/window_foot.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QDialog>
#include <QLabel>
#include <QProgressBar>
#include <QTableWidget>
#include <QTest>
#include <QVBoxLayout>

#include "app/panels/list_rows.h"
#include "app/panels/section.h"

namespace matwright::app {
namespace {

class CountingWindow : public QDialog {
  public:
    CountingWindow() : foot(new WindowFoot) {
        auto* column = new QVBoxLayout(this);
        column->addWidget(foot);
        save = foot->add(QStringLiteral("&Save…"), this, &CountingWindow::press);
        foot->add({close});
    }
    void press() { ++pressed; }

    WindowFoot* foot;
    QPushButton* save = nullptr;
    QPushButton* close = new QPushButton(QStringLiteral("C&lose"));
    int pressed = 0;
};

struct Foot : testing::Test {
    Foot() {
        window.resize(700, 90);
        window.show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
    }
    QLabel* lineSaying(const QString& text) const {
        for (QLabel* label : window.foot->findChildren<QLabel*>()) {
            if (label->text() == text) {
                return label;
            }
        }
        return nullptr;
    }
    CountingWindow window;
};

TEST_F(Foot, ShowsNewsAndProblemsTogetherAndTakesThemAway) {
    window.foot->say(QStringLiteral("Saved 1 file."), QStringLiteral("One could not be read."));
    EXPECT_EQ(window.foot->news(), QStringLiteral("Saved 1 file."));
    EXPECT_EQ(window.foot->problem(), QStringLiteral("One could not be read."));
    EXPECT_TRUE(lineSaying(QStringLiteral("Saved 1 file."))->isVisible());
    const QLabel* problem = lineSaying(QStringLiteral("One could not be read."));
    EXPECT_TRUE(problem->isVisible());
    window.foot->say(QStringLiteral("Saved 2 files."));
    EXPECT_EQ(window.foot->problem(), QString());
    EXPECT_FALSE(problem->isVisible());
}

TEST_F(Foot, ShowsProgressInThePlaceOfTheNews) {
    window.foot->say(QStringLiteral("Saved 1 file."));
    const QLabel* news = lineSaying(QStringLiteral("Saved 1 file."));
    window.foot->showProgress(2, 5, QStringLiteral("2 of 5 made"));
    const auto* bar = window.foot->findChild<QProgressBar*>();
    EXPECT_TRUE(bar->isVisible());
    EXPECT_FALSE(news->isVisible());
    EXPECT_EQ(bar->value(), 2);
    EXPECT_EQ(bar->text(), QStringLiteral("2 of 5 made"));
    EXPECT_FALSE(bar->accessibleName().isEmpty());
    window.foot->hideProgress();
    EXPECT_FALSE(bar->isVisible());
    EXPECT_TRUE(news->isVisible());
}

TEST_F(Foot, ItsButtonsStandAtTheRightAndAreLargeEnough) {
    window.foot->say(QStringLiteral("Saved."));
    EXPECT_GE(window.save->height(), footControlHeight);
    EXPECT_GT(window.close->x(), window.save->x());
    EXPECT_NEAR(window.close->geometry().right(), window.foot->rect().right(), 1);
    QTest::mouseClick(window.save, Qt::LeftButton);
    EXPECT_EQ(window.pressed, 1);
}

TEST_F(Foot, EnterPressesNoButtonThatIsNotTheDefault) {
    window.close->setFocus();
    QTest::keyClick(&window, Qt::Key_Return);
    EXPECT_EQ(window.pressed, 0);
}

TEST(ListRows, AreChosenWholeAndLeftByTab) {
    QTableWidget list(2, 3);
    setUpRows(list, QStringLiteral("Prints"));
    list.setItem(0, 0, wordsItem(QStringLiteral("Beach")));
    EXPECT_EQ(list.selectionBehavior(), QAbstractItemView::SelectRows);
    EXPECT_FALSE(list.tabKeyNavigation());
    EXPECT_EQ(list.accessibleName(), QStringLiteral("Prints"));
    EXPECT_FALSE(list.item(0, 0)->flags().testFlag(Qt::ItemIsEditable));
    list.selectRow(0);
    EXPECT_EQ(list.selectionModel()->selectedRows().size(), 1);
}

}  // namespace
}  // namespace matwright::app
