// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>
#include <functional>
#include <optional>

#include "app/canvas/drags/drag.h"

namespace matwright::app {

// Something that is let go over a photo slot; the slot under the pointer lights up, and the status
// line says what letting go there does.
class SlotDrag : public Drag {
  public:
    using Drag::Drag;
    void update(const Pointer& now) final;
    Qt::CursorShape cursor() const override { return Qt::DragCopyCursor; }

  protected:
    // Whether the slot may be aimed at.
    virtual bool takes(PieceId) const { return true; }
    // What letting go over this slot would do; nothing: over none.
    virtual QString sentenceFor(std::optional<PieceId> slot) const = 0;
    std::optional<PieceId> slot() const { return m_slot; }

  private:
    std::optional<PieceId> m_slot;
};

// A photo that comes from the tray.
class PhotoDrop final : public SlotDrag {
  public:
    PhotoDrop(DragHost& host, PhotoId photo) : SlotDrag(host), m_photo(photo) {}
    void finish() override;

  private:
    QString sentenceFor(std::optional<PieceId> slot) const override;

    PhotoId m_photo;
};

// Files from elsewhere; `drop` gets them and the slot they are let go over, or no slot.
class FileDrop final : public SlotDrag {
  public:
    using Take = std::function<void(const QStringList&, std::optional<PieceId>)>;
    FileDrop(DragHost& host, QStringList files, Take take);
    void finish() override { m_take(m_files, slot()); }

  private:
    QString sentenceFor(std::optional<PieceId> slot) const override;

    QStringList m_files;
    Take m_take;
};

// The photo of a slot on its way to another one: two photos change places.
class PhotoMoveDrag final : public SlotDrag {
  public:
    PhotoMoveDrag(DragHost& host, PieceId from) : SlotDrag(host), m_from(from) {}
    void finish() override;
    Qt::CursorShape cursor() const override { return Qt::DragMoveCursor; }

  private:
    bool takes(PieceId slot) const override { return slot != m_from; }
    QString sentenceFor(std::optional<PieceId> slot) const override;

    PieceId m_from;
};

}  // namespace matwright::app
