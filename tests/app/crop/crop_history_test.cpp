// SPDX-License-Identifier: MIT
#include "app/crop/crop_history.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

CropState zoomed(int zoom) {
    CropState state;
    state.crop.zoom = zoom * Crop::one;
    return state;
}

TEST(CropHistory, StepsOfOneGestureAreOneStep) {
    CropHistory history(zoomed(1));
    history.take(zoomed(2), "Zoom", 7);
    history.take(zoomed(3), "Zoom", 7);
    history.take(zoomed(4), "Zoom", 8);
    ASSERT_EQ(history.done().size(), 2u);
    EXPECT_EQ(history.done()[0].state, zoomed(3));
    history.undo();
    EXPECT_EQ(history.now(), zoomed(3));
    history.undo();
    EXPECT_EQ(history.now(), zoomed(1));
    EXPECT_FALSE(history.canUndo());
    history.redo();
    history.redo();
    EXPECT_EQ(history.now(), zoomed(4));
}

TEST(CropHistory, GestureThatComesBackToItsStartIsNoStep) {
    CropHistory history(zoomed(1));
    history.take(zoomed(2), "Zoom", 7);
    history.take(zoomed(1), "Zoom", 7);
    EXPECT_TRUE(history.done().empty());
    history.take(zoomed(2), "Zoom", 8);
    history.take(zoomed(5), "Zoom", 9);
    history.take(zoomed(2), "Zoom", 9);
    EXPECT_EQ(history.done().size(), 1u);
    EXPECT_EQ(history.now(), zoomed(2));
}

TEST(CropHistory, StepsWithoutAGestureNeverJoin) {
    CropHistory history(zoomed(1));
    history.take(zoomed(2), "Zoom");
    history.take(zoomed(3), "Zoom");
    EXPECT_EQ(history.done().size(), 2u);
}

TEST(CropHistory, EqualStateIsNoStep) {
    CropHistory history(zoomed(1));
    history.take(zoomed(1), "Zoom");
    EXPECT_FALSE(history.canUndo());
}

TEST(CropHistory, NewStepAfterUndoTakesTheWayForwardAway) {
    CropHistory history(zoomed(1));
    history.take(zoomed(2), "Zoom");
    history.undo();
    EXPECT_EQ(history.redoLabel(), "Zoom");
    history.take(zoomed(3), "Turn");
    EXPECT_FALSE(history.canRedo());
    EXPECT_EQ(history.undoLabel(), "Turn");
}

}  // namespace
}  // namespace matwright::app
