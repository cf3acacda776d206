// SPDX-License-Identifier: MIT
#pragma once

#include <functional>

#include "app/canvas/tools/tool.h"

namespace matwright::app {

// Works on the photo inside one slot: a drag moves it, the wheel and plus and minus zoom it, arrow
// keys move it by small steps. Enter, Esc, or a click elsewhere ends that.
class PhotoTool final : public Tool {
  public:
    // The slot has a photo; `leave` is called when the person is done.
    PhotoTool(DragHost& host, PieceId slot, std::function<void()> leave);
    std::unique_ptr<Drag> press(const Pointer& at, const HandleLayout& handles) override;
    void click(const Pointer& at) override;
    Qt::CursorShape cursor(const Pointer& at, const HandleLayout& handles) const override;
    QString hint(const Pointer& at, const HandleLayout& handles) const override;
    bool wheel(const Pointer& at, double notches) override;
    bool key(const QKeyEvent& event) override;
    std::optional<PieceId> slotInHand() const override { return m_slot; }

  private:
    bool isInside(const Pointer& at) const;
    const Placement* placement() const;
    void zoom(double factor, Point about);
    void move(Point onPaper);
    void change(const Crop& crop, const char* label, int kind);

    PieceId m_slot;
    std::function<void()> m_leave;
    int m_gesture = 0;
    int m_lastKind = 0;
    qint64 m_lastStep = 0;
};

}  // namespace matwright::app
