// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <QTest>

#include "app/window/next_step_button.h"
#include "app/window/next_step_line.h"
#include "tests/app/window/window_fixture.h"

namespace matwright::app {
namespace {

class Toolbar : public WindowTest {};

TEST_F(Toolbar, ShowsTheNextStepWholeAtEveryWidth) {
    window.show();
    NextStepButton* button = nullptr;
    for (auto* one : window.findChildren<NextStepButton*>()) {
        button = one->isVisible() ? one : button;
    }
    ASSERT_NE(button, nullptr);
    for (const int width : {640, 800, 1000, 1280, 1920}) {
        window.resize(width, 560);
        QTest::qWait(20);
        const QRect shown = button->visibleRegion().boundingRect();
        EXPECT_EQ(shown.size(), button->size()) << width;
        EXPECT_EQ(button->width(), button->sizeHint().width()) << width;
        const int right = button->mapTo(&window, button->rect().topRight()).x();
        EXPECT_GE(right, window.width() - 24) << width;
        EXPECT_LT(right, window.width()) << width;
    }
}

TEST_F(Toolbar, WritesTheNextStepInWholeWhereTheWindowIsNarrow) {
    window.resize(800, 560);
    window.show();
    QTest::qWait(20);
    auto* line = window.findChild<NextStepLine*>();
    ASSERT_NE(line, nullptr);
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return line->height() >= line->heightForWidth(line->width()); }, 2'000))
        << line->height() << " of " << line->heightForWidth(line->width());
    EXPECT_GT(line->height(), line->fontMetrics().height() * 2);
}

}  // namespace
}  // namespace matwright::app
