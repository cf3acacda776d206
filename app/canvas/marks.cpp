// SPDX-License-Identifier: MIT
#include "app/canvas/marks.h"

#include <algorithm>
#include <cmath>

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

// Where a chip of about this size stands clear of its measure: on a long line, beside a short one.
QPointF chipPlace(const QLineF& line, const QRectF& view, QSizeF chip) {
    const QRectF seen = QRectF(line.p1(), line.p2()).normalized().adjusted(-1, -1, 1, 1) & view;
    const bool isLevel = std::abs(line.dx()) > std::abs(line.dy());
    if (isLevel && line.length() < chip.width() + 12) {
        return seen.center() + QPointF(0, chip.height() / 2 + 8);
    }
    if (!isLevel && line.length() < chip.height() + 12) {
        return seen.center() + QPointF(chip.width() / 2 + 10, 0);
    }
    return seen.center();
}

void addGuides(Overlay& overlay, const SnapCandidate& snap, const Viewport& viewport) {
    for (const SnapGuide& guide : snap.guides) {
        // A guide's axis says which coordinate is held: the line itself runs along the other one.
        const Axis along = guide.axis == Axis::Horizontal ? Axis::Vertical : Axis::Horizontal;
        overlay.addLine(lineOf(along, guide.at, guide.from, guide.to, viewport),
                        Overlay::Ink::Guide);
    }
}

// The words stand at the measured gap where there is one, else beside the guide line.
void addWords(Overlay& overlay, const SnapCandidate& snap, const Viewport& viewport,
              const QRectF& view) {
    const QString words = QString::fromStdString(snap.why);
    if (!snap.gaps.empty()) {
        const SnapGap& gap = snap.gaps.front();
        const QLineF line = lineOf(gap.axis, gap.at, gap.from, gap.to, viewport);
        overlay.addChip(words, chipPlace(line, view, {90, 20}), Overlay::Chip::Word);
    } else if (!snap.guides.empty()) {
        const SnapGuide& guide = snap.guides.front();
        const Axis along = guide.axis == Axis::Horizontal ? Axis::Vertical : Axis::Horizontal;
        const QLineF line = lineOf(along, guide.at, guide.from, guide.to, viewport);
        overlay.addChip(words, wordsPlace(guide, line, view), Overlay::Chip::Word);
    }
}

bool isNamed(const SnapGap& gap, const SnapResult& snap) {
    const auto names = [&gap](const std::optional<SnapCandidate>& candidate) {
        if (!candidate || candidate->gaps.empty()) {
            return false;
        }
        const SnapGap& named = candidate->gaps.front();
        return named.axis == gap.axis && named.from == gap.from && named.to == gap.to;
    };
    return names(snap.horizontal) || names(snap.vertical);
}

void addGap(Overlay& overlay, const SnapGap& gap, const Viewport& viewport, const QRectF& view,
            const QString& figure) {
    const QLineF line = lineOf(gap.axis, gap.at, gap.from, gap.to, viewport);
    const QRectF box = QRectF(line.p1(), line.p2()).normalized().adjusted(-1, -1, 1, 1);
    if (line.length() < shortestMeasure || !box.intersects(view)) {
        return;
    }
    overlay.addMeasure(line);
    if (!figure.isEmpty()) {
        overlay.addChip(figure, chipPlace(line, view, {30, 17}), Overlay::Chip::Figure);
    }
}

}  // namespace

void addPieceFrame(Overlay& overlay, const Piece& piece, const Viewport& viewport,
                   Overlay::Ink ink) {
    overlay.addFrame(turnedCorners(piece, outermostBox(piece), viewport), ink);
}

void addHandles(Overlay& overlay, const HandleLayout& layout) {
    // Several pieces have frames of their own; what holds them together is drawn lightly.
    overlay.addFrame(layout.frame,
                     layout.spots.size() > 1 ? Overlay::Ink::Selection : Overlay::Ink::Band);
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
    // First come, best placed: the words of the snap, the readout, then the figures of the gaps.
    for (const auto& snap : {preview.snap.horizontal, preview.snap.vertical}) {
        if (snap) {
            addGuides(overlay, *snap, viewport);
            addWords(overlay, *snap, viewport, view);
        }
    }
    if (preview.extent && !preview.readout.isEmpty()) {
        const QRectF box = viewport.toView(*preview.extent) & view;
        overlay.addChip(preview.readout, {box.left() + 60, box.bottom() + 22}, Overlay::Chip::Word);
    }
    for (const SnapGap& gap : preview.gaps) {
        const QString figure = isNamed(gap, preview.snap)
                                   ? QString()
                                   : QString::fromStdString(figureText(gap.to - gap.from, scale));
        addGap(overlay, gap, viewport, view, figure);
    }
}

}  // namespace matwright::app
