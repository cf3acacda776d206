// SPDX-License-Identifier: MIT
#include "app/canvas/marks.h"

#include <algorithm>

namespace matwright::app {

namespace {

// A figure is left out where its line is too short to be told from its neighbours.
constexpr double shortestMeasure = 6;

QLineF lineOf(Axis along, Length at, Length from, Length to, const Viewport& viewport) {
    return along == Axis::Horizontal
               ? QLineF(viewport.toView(Point{from, at}), viewport.toView(Point{to, at}))
               : QLineF(viewport.toView(Point{at, from}), viewport.toView(Point{at, to}));
}

// The part of a guide line that is in view, so that its words can stand beside it.
QPointF wordsPlace(const SnapGuide& guide, const QLineF& line, const QRectF& view) {
    if (guide.axis == Axis::Horizontal) {
        const double top = std::max(std::min(line.y1(), line.y2()), view.top());
        return {line.x1(), top + 14};
    }
    const double left = std::max(std::min(line.x1(), line.x2()), view.left());
    return {left + 40, line.y1() - 14};
}

void addSnap(Overlay& overlay, const SnapCandidate& snap, const Viewport& viewport,
             const QRectF& view) {
    bool hasWords = false;
    for (const SnapGuide& guide : snap.guides) {
        // A guide's axis says which coordinate is held: the line itself runs along the other one.
        const Axis along = guide.axis == Axis::Horizontal ? Axis::Vertical : Axis::Horizontal;
        const QLineF line = lineOf(along, guide.at, guide.from, guide.to, viewport);
        overlay.addLine(line, Overlay::Ink::Guide);
        if (!hasWords) {
            overlay.addChip(QString::fromStdString(snap.why), wordsPlace(guide, line, view),
                            Overlay::Chip::Word);
            hasWords = true;
        }
    }
    if (!hasWords && !snap.gaps.empty()) {
        const SnapGap& gap = snap.gaps.front();
        const QPointF middle = lineOf(gap.axis, gap.at, gap.from, gap.to, viewport).center();
        overlay.addChip(QString::fromStdString(snap.why), middle + QPointF(0, 22),
                        Overlay::Chip::Word);
    }
}

void addGap(Overlay& overlay, const SnapGap& gap, const Viewport& viewport, const QRectF& view,
            Scale scale) {
    const QLineF line = lineOf(gap.axis, gap.at, gap.from, gap.to, viewport);
    const QRectF box = QRectF(line.p1(), line.p2()).normalized().adjusted(-1, -1, 1, 1);
    if (line.length() < shortestMeasure || !box.intersects(view)) {
        return;
    }
    overlay.addMeasure(line);
    overlay.addChip(QString::fromStdString(figureText(gap.to - gap.from, scale)),
                    (box & view).center(), Overlay::Chip::Figure);
}

}  // namespace

void addPieceFrame(Overlay& overlay, const Piece& piece, const Viewport& viewport,
                   Overlay::Ink ink) {
    overlay.addFrame(turnedCorners(piece, outermostBox(piece), viewport), ink);
}

void addHandles(Overlay& overlay, const HandleLayout& layout) {
    overlay.addFrame(layout.frame, Overlay::Ink::Selection);
    overlay.addLine(layout.stalk, Overlay::Ink::Selection);
    for (const HandleSpot& spot : layout.spots) {
        if (spot.resize) {
            overlay.addSquareHandle(spot.at, layout.degrees);
        } else {
            overlay.addRoundHandle(spot.at);
        }
    }
}

void addMeasures(Overlay& overlay, const Preview& preview, const Viewport& viewport,
                 const QRectF& view, Scale scale) {
    if (preview.extent && !preview.readout.isEmpty()) {
        const QRectF box = viewport.toView(*preview.extent) & view;
        const QPointF below(box.center().x(), box.bottom() + 20);
        overlay.addChip(preview.readout, below, Overlay::Chip::Word);
    }
    for (const auto& snap : {preview.snap.horizontal, preview.snap.vertical}) {
        if (snap) {
            addSnap(overlay, *snap, viewport, view);
        }
    }
    for (const SnapGap& gap : preview.gaps) {
        addGap(overlay, gap, viewport, view, scale);
    }
}

}  // namespace matwright::app
