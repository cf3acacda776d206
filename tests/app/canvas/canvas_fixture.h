// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <memory>

#include "app/canvas/canvas.h"
#include "app/canvas/page_view.h"

namespace matwright::app {

inline Length inches(std::int64_t whole, std::int64_t numerator = 0, std::int64_t denominator = 1) {
    return Length::inches(whole, numerator, denominator);
}

// A shown canvas on a blank 12x12 page, driven by real mouse and key events at sub-pixel places.
class CanvasFixture : public testing::Test {
  protected:
    CanvasFixture();
    ~CanvasFixture() override;

    PageView& page() { return canvas->page(); }
    const Sketch& sketch() const { return session.sketch(); }
    const Piece& piece(PieceId id) const { return session.sketch().pieces.at(id); }

    // Puts the piece on top, and starts the undo stack anew.
    PieceId lay(Piece piece);
    PieceId layBlock(Point place, Size size);
    PieceId laySlot(Point place, Size size, int mats = 0);

    QPointF at(Point point) { return page().viewport().toView(point); }
    QPointF middleOf(PieceId id);
    void press(QPointF view, Qt::KeyboardModifiers modifiers = {},
               Qt::MouseButton button = Qt::LeftButton);
    void moveTo(QPointF view, Qt::KeyboardModifiers modifiers = {},
                Qt::MouseButtons buttons = Qt::LeftButton);
    void release(QPointF view, Qt::KeyboardModifiers modifiers = {},
                 Qt::MouseButton button = Qt::LeftButton);
    void hover(QPointF view) { moveTo(view, {}, Qt::NoButton); }
    void click(QPointF view, Qt::KeyboardModifiers modifiers = {});
    // Press, three moves on the way, release.
    void drag(QPointF from, QPointF to, Qt::KeyboardModifiers modifiers = {});
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {});

    void setSnap(bool on);
    void setScale(Scale scale);
    int undoSteps() { return session.undoStack().count(); }

    QTemporaryDir folder;
    Session session;
    std::unique_ptr<SettingsStore> settings;
    std::unique_ptr<Canvas> canvas;
};

}  // namespace matwright::app
