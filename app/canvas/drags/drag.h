// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>
#include <QPointF>
#include <Qt>

#include "app/canvas/preview.h"
#include "app/canvas/viewport.h"
#include "app/editing/session.h"
#include "app/settings/settings.h"

namespace matwright::app {

// The mouse at one moment, where it is in the view and on the page.
struct Pointer {
    QPointF view;
    Point page;
    Qt::KeyboardModifiers modifiers;
    bool has(Qt::KeyboardModifier modifier) const { return modifiers.testFlag(modifier); }
};

// What a drag may see and do; the page view implements it.
class DragHost {
  public:
    virtual ~DragHost() = default;
    virtual Session& session() = 0;
    virtual const Settings& settings() const = 0;
    virtual const Viewport& viewport() const = 0;
    // Replaces what was shown before.
    virtual void showPreview(Preview preview) = 0;
    virtual void scrollTo(const Viewport& viewport) = 0;
    // Performs the edit as one undo step (see Session::perform for `gesture`) and tells the user
    // where it is refused.
    virtual void perform(const Edit& edit, const QString& label, bool selectAdded,
                         int gesture = 0) = 0;
    // One line for the person.
    virtual void say(const QString& line) = 0;
};

// One press-move-release. The start is captured when it is made and every update computes from it
// anew, so nothing drifts; dropping a drag without finish() leaves everything as it was.
class Drag {
  public:
    explicit Drag(DragHost& host) : m_host(host) {}
    virtual ~Drag() = default;
    Drag(const Drag&) = delete;
    Drag& operator=(const Drag&) = delete;

    virtual void update(const Pointer& now) = 0;
    // Hands out at most one edit.
    virtual void finish() = 0;
    // Undoes what is not part of the preview (a scrolled view).
    virtual void abort() {}
    virtual Qt::CursorShape cursor() const = 0;
    // Whether the view scrolls by itself while the pointer rests at its edge.
    virtual bool scrollsAtEdges() const { return true; }

  protected:
    DragHost& host() const { return m_host; }
    const Sketch& sketch() const { return m_host.session().sketch(); }
    const Settings& settings() const { return m_host.settings(); }

  private:
    DragHost& m_host;
};

// How near the pointer must be, in view pixels, to pick something it does not quite touch.
inline constexpr double pickReach = 4;

}  // namespace matwright::app
