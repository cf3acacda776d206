// SPDX-License-Identifier: MIT
#include "tests/app/canvas/canvas_fixture.h"

#include <QApplication>
#include <QMouseEvent>
#include <QTest>

namespace matwright::app {

CanvasFixture::CanvasFixture() {
    settings = std::make_unique<SettingsStore>(folder.filePath("settings.ini"));
    Settings value;
    value.screenPpi = 96;
    settings->set(value);
    canvas = std::make_unique<Canvas>(session, *settings);
    canvas->resize(900, 860);
    canvas->show();
    EXPECT_TRUE(QTest::qWaitForWindowExposed(canvas.get()));
    canvas->activateWindow();
    page().setFocus();
}

CanvasFixture::~CanvasFixture() = default;

PieceId CanvasFixture::lay(Piece piece) {
    Sketch after = sketch();
    const PieceId id = nextId(after);
    EXPECT_TRUE(apply(after, addPieces(after, std::span(&piece, 1))));
    session.reset(after);
    return id;
}

PieceId CanvasFixture::layBlock(Point place, Size size) {
    Piece piece;
    piece.place = place;
    piece.size = size;
    return lay(piece);
}

PieceId CanvasFixture::laySlot(Point place, Size size, int mats) {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.place = place;
    piece.size = size;
    piece.printSize = size;
    for (int i = 0; i < mats; ++i) {
        piece.mats.push_back({inches(0, 1, 8), {}, ""});
    }
    return lay(piece);
}

QPointF CanvasFixture::middleOf(PieceId id) {
    return at(trimBounds(piece(id)).centreRoundedDown());
}

namespace {

void send(QWidget& widget, QEvent::Type type, QPointF at, Qt::MouseButton button,
          Qt::MouseButtons buttons, Qt::KeyboardModifiers modifiers) {
    QMouseEvent event(type, at, widget.mapToGlobal(at), button, buttons, modifiers);
    QApplication::sendEvent(&widget, &event);
}

}  // namespace

void CanvasFixture::press(QPointF view, Qt::KeyboardModifiers modifiers, Qt::MouseButton button) {
    send(page(), QEvent::MouseButtonPress, view, button, button, modifiers);
}

void CanvasFixture::moveTo(QPointF view, Qt::KeyboardModifiers modifiers,
                           Qt::MouseButtons buttons) {
    send(page(), QEvent::MouseMove, view, Qt::NoButton, buttons, modifiers);
}

void CanvasFixture::release(QPointF view, Qt::KeyboardModifiers modifiers, Qt::MouseButton button) {
    send(page(), QEvent::MouseButtonRelease, view, button, Qt::NoButton, modifiers);
}

void CanvasFixture::click(QPointF view, Qt::KeyboardModifiers modifiers) {
    hover(view);
    press(view, modifiers);
    release(view, modifiers);
}

void CanvasFixture::drag(QPointF from, QPointF to, Qt::KeyboardModifiers modifiers) {
    hover(from);
    press(from, modifiers);
    for (const double part : {0.3, 0.7, 1.0}) {
        moveTo(from + (to - from) * part, modifiers);
    }
    release(to, modifiers);
}

void CanvasFixture::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QTest::keyClick(&page(), key, modifiers);
}

void CanvasFixture::setSnap(bool on) {
    Settings value = settings->value();
    value.snapOn = on;
    settings->set(value);
}

void CanvasFixture::setScale(Scale scale) {
    Settings value = settings->value();
    value.scale = scale;
    settings->set(value);
}

}  // namespace matwright::app
