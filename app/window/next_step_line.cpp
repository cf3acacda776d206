// SPDX-License-Identifier: MIT
#include "app/window/next_step_line.h"

#include <algorithm>

namespace matwright::app {
namespace {

bool isPhotoSlot(const std::pair<const PieceId, Piece>& entry) {
    return entry.second.kind == PieceKind::PhotoSlot;
}

}  // namespace

NextStepLine::NextStepLine(Session& session) : m_session(session) {
    setAccessibleName(tr("Next step"));
    setMargin(6);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
    setWordWrap(true);
    connect(&session, &Session::changed, this, &NextStepLine::showStep);
    showStep();
}

void NextStepLine::showStep() {
    const Sketch& sketch = m_session.sketch();
    if (sketch.pieces.empty()) {  // the page itself says how to begin
        setText(tr("A blank page. For another size choose New, or the Page tab on the right."));
    } else if (std::ranges::none_of(sketch.pieces, isPhotoSlot)) {
        setText(tr("Now a photo slot: drag one from the tray onto the page."));
    } else if (!m_session.work().placements.empty()) {
        setText(
            tr("Double-click a photo to move it in its slot, Ctrl+K crops it. Prints… makes the "
               "files."));
    } else {
        setText(tr(
            "Add mats, papers and a title. When it all fits, Template… prints it true to size."));
    }
}

}  // namespace matwright::app
