// SPDX-License-Identifier: MIT
#include <QApplication>
#include <QScrollBar>
#include <QSignalSpy>
#include <QWheelEvent>

#include "tests/app/canvas/canvas_fixture.h"

namespace matwright::app {
namespace {

class PanZoomTest : public CanvasFixture {
  protected:
    void wheel(QPointF at, QPoint angle, Qt::KeyboardModifiers modifiers = {}) {
        QWheelEvent event(at, page().mapToGlobal(at), {}, angle, Qt::NoButton, modifiers,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(&page(), &event);
    }
};

TEST_F(PanZoomTest, ThePageIsFittedAtTheStartAndStaysSoThroughResizing) {
    EXPECT_TRUE(QRectF(page().rect()).contains(page().viewport().toView(surface(sketch().page))));
    const double before = canvas->zoom();
    canvas->resize(600, 560);
    EXPECT_LT(canvas->zoom(), before);
    EXPECT_TRUE(QRectF(page().rect()).contains(page().viewport().toView(surface(sketch().page))));
}

TEST_F(PanZoomTest, ZoomOneIsTrueSizeOnAMeasuredScreen) {
    Settings value = settings->value();
    value.screenPpi = 123;
    settings->set(value);
    canvas->trueSize();
    EXPECT_DOUBLE_EQ(canvas->zoom(), 1);
    EXPECT_NEAR(page().viewport().pixelsPerInch(), 123, 1e-9);
}

TEST_F(PanZoomTest, CtrlWheelZoomsAtThePointer) {
    const QPointF pointer(300.5, 222.25);
    const Point before = page().viewport().toPage(pointer);
    const double zoom = canvas->zoom();
    wheel(pointer, {0, 120}, Qt::ControlModifier);
    EXPECT_GT(canvas->zoom(), zoom);
    const QPointF after = page().viewport().toView(before);
    EXPECT_NEAR(after.x(), pointer.x(), 1);  // the origin stands on whole pixels
    EXPECT_NEAR(after.y(), pointer.y(), 1);
    wheel(pointer, {0, -120}, Qt::ControlModifier);
    EXPECT_NEAR(canvas->zoom(), zoom, 1e-9);
}

TEST_F(PanZoomTest, ZoomStaysWithinItsLimits) {
    canvas->setZoom(1000);
    EXPECT_DOUBLE_EQ(canvas->zoom(), 32);
    canvas->setZoom(0.0001);
    EXPECT_DOUBLE_EQ(canvas->zoom(), 0.05);
    canvas->fitPage();
    const double fitted = canvas->zoom();
    canvas->zoomIn();
    EXPECT_GT(canvas->zoom(), fitted);
    canvas->zoomOut();
    EXPECT_NEAR(canvas->zoom(), fitted, 1e-9);
}

TEST_F(PanZoomTest, ZoomChangesAreTold) {
    QSignalSpy changes(canvas.get(), &Canvas::zoomChanged);
    canvas->setZoom(2);
    ASSERT_EQ(changes.count(), 1);
    EXPECT_DOUBLE_EQ(changes.front().front().toDouble(), 2);
}

TEST_F(PanZoomTest, TheWheelScrollsOnlyWhatIsOutOfView) {
    const Viewport fitted = page().viewport();
    wheel({200, 200}, {0, -120});
    EXPECT_EQ(page().viewport(), fitted);
    canvas->setZoom(2);
    const QPointF before = page().viewport().origin();
    wheel({200, 200}, {0, -120});
    EXPECT_LT(page().viewport().origin().y(), before.y());
    EXPECT_EQ(page().viewport().origin().x(), before.x());
    wheel({200, 200}, {0, -120}, Qt::ShiftModifier);
    EXPECT_LT(page().viewport().origin().x(), before.x());
}

TEST_F(PanZoomTest, TheMiddleButtonAndSpaceDragThePaper) {
    canvas->setZoom(2);
    const QPointF before = page().viewport().origin();
    press({300, 300}, {}, Qt::MiddleButton);
    moveTo({340, 310}, {}, Qt::MiddleButton);
    release({340, 310}, {}, Qt::MiddleButton);
    EXPECT_EQ(page().viewport().origin(), before + QPointF(40, 10));
    QKeyEvent down(QEvent::KeyPress, Qt::Key_Space, {});
    QApplication::sendEvent(&page(), &down);
    drag({300, 300}, {280, 290});
    EXPECT_EQ(page().viewport().origin(), before + QPointF(20, 0));
    QKeyEvent up(QEvent::KeyRelease, Qt::Key_Space, {});
    QApplication::sendEvent(&page(), &up);
    EXPECT_EQ(undoSteps(), 0);
}

TEST_F(PanZoomTest, EscDuringAPanGoesBack) {
    canvas->setZoom(2);
    const Viewport before = page().viewport();
    press({300, 300}, {}, Qt::MiddleButton);
    moveTo({340, 310}, {}, Qt::MiddleButton);
    EXPECT_NE(page().viewport(), before);
    key(Qt::Key_Escape);
    EXPECT_EQ(page().viewport(), before);
}

TEST_F(PanZoomTest, AClickOfTheMiddleButtonDoesNothing) {
    const PieceId id = layBlock({inches(4), inches(4)}, {inches(2), inches(2)});
    session.select({id});
    press({300, 5}, {}, Qt::MiddleButton);
    release({300, 5}, {}, Qt::MiddleButton);
    EXPECT_EQ(session.onlySelected(), id);
}

TEST_F(PanZoomTest, ThePageCannotBeLost) {
    page().setViewport(page().viewport().scrolled({1e6, -1e6}));
    EXPECT_TRUE(QRectF(page().rect()).intersects(page().viewport().toView(surface(sketch().page))));
}

TEST_F(PanZoomTest, ScrollBarsFollowAndLead) {
    canvas->setZoom(3);
    auto* bar = canvas->findChildren<QScrollBar*>().front();
    ASSERT_EQ(bar->orientation(), Qt::Horizontal);
    EXPECT_EQ(bar->value(), qRound(-page().viewport().origin().x()));
    bar->setValue(bar->value() + 50);
    EXPECT_EQ(bar->value(), qRound(-page().viewport().origin().x()));
}

TEST_F(PanZoomTest, FittingTheSelectionFillsTheViewWithIt) {
    const PieceId id = layBlock({inches(1), inches(1)}, {inches(1), inches(1)});
    session.select({id});
    canvas->fitSelection();
    const QRectF box = page().viewport().toView(trimBounds(piece(id)));
    EXPECT_TRUE(QRectF(page().rect()).contains(box));
    EXPECT_GT(box.height(), page().height() * 0.8);
}

TEST_F(PanZoomTest, RevealSelectsAndScrollsIntoView) {
    const PieceId id = layBlock({inches(10), inches(10)}, {inches(1), inches(1)});
    canvas->setZoom(3);
    page().setViewport({page().viewport().pixelsPerTick(), {0, 0}});
    canvas->reveal(id);
    EXPECT_EQ(session.onlySelected(), id);
    EXPECT_TRUE(QRectF(page().rect()).contains(page().viewport().toView(trimBounds(piece(id)))));
    canvas->reveal(PieceId{99});  // not there: nothing happens
    EXPECT_EQ(session.onlySelected(), id);
}

}  // namespace
}  // namespace matwright::app
