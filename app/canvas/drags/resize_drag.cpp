// SPDX-License-Identifier: MIT
#include "app/canvas/drags/resize_drag.h"

#include <utility>

#include "app/canvas/handles.h"

namespace matwright::app {

namespace {

// The pull needed along one axis so that `side` becomes a multiple of `step`.
Length onScale(Length side, Length pull, int direction, const Pull& how) {
    if (direction == 0 || !how.step) {
        return pull;
    }
    const std::int64_t sides = how.options.fromCentre ? 2 : 1;
    const Length grown = side + pull * (direction * sides);
    const Length wanted = grown.roundedTo(*how.step);
    return (wanted - side).scaledRounded(direction, sides);
}

// The turn moves the centre of a piece whose one side stays; the flat result is laid so that the
// side that stayed flat also stays turned.
Point placeAfterTurn(const Piece& start, const Piece& flat) {
    const Point half{flat.size.width - start.size.width, flat.size.height - start.size.height};
    const Point moved{(flat.place.x - start.place.x) * 2 + half.x,
                      (flat.place.y - start.place.y) * 2 + half.y};
    const Point turned = alongAxes(moved, -start.rotation);
    return {start.place.x + (turned.x - half.x).halfRoundedDown(),
            start.place.y + (turned.y - half.y).halfRoundedDown()};
}

}  // namespace

Point alongAxes(Point by, Angle rotation) {
    const double c = rotation.cosine();
    const double s = rotation.sine();
    const auto x = static_cast<double>(by.x.ticks());
    const auto y = static_cast<double>(by.y.ticks());
    return {Length::roundedFromTicks(x * c + y * s), Length::roundedFromTicks(y * c - x * s)};
}

Piece pulledAlong(const Pull& pull, Point along) {
    const QPointF direction = pullOf(pull.handle);
    const Size size = pull.start.size;
    along.x = onScale(size.width, along.x, static_cast<int>(direction.x()), pull);
    along.y = onScale(size.height, along.y, static_cast<int>(direction.y()), pull);
    if (pull.options.keepRatio && direction.x() != 0 && direction.y() != 0) {
        const int sign = direction.x() == direction.y() ? 1 : -1;
        const Length byWidth =
            along.x.scaledRounded(size.height.ticks(), size.width.ticks()) * sign;
        along.y = byWidth;
    }
    Piece flat = pull.start;
    flat.rotation = Angle();
    Piece result = resizedBy(flat, pull.handle, along, pull.options);
    result.rotation = pull.start.rotation;
    result.place = placeAfterTurn(pull.start, result);
    return result;
}

ResizeDrag::ResizeDrag(DragHost& host, PieceId id, Handle handle, const Pointer& start)
    : Drag(host),
      m_id(id),
      m_start(host.session().sketch().pieces.at(id)),
      m_handle(handle),
      m_press(start),
      m_snapping(host, host.session().sketch(), std::span(&m_id, 1)),
      m_now(m_start) {}

Qt::CursorShape ResizeDrag::cursor() const {
    return cursorOf(m_handle, m_start.rotation.toDegrees());
}

bool ResizeDrag::leadsAcross() const {
    const bool widthLeads = pullOf(m_handle).x() != 0;
    const bool liesAcross = m_start.rotation.toMillidegrees() % 180'000 == 0;
    return widthLeads == liesAcross;
}

SnapEdges ResizeDrag::movingEdges() const {
    const QPointF pull = pullOf(m_handle);
    const double x = pull.x() * m_start.rotation.cosine() - pull.y() * m_start.rotation.sine();
    const double y = pull.x() * m_start.rotation.sine() + pull.y() * m_start.rotation.cosine();
    return {x < 0, x > 0, y < 0, y > 0};
}

void ResizeDrag::update(const Pointer& now) {
    Pull pull{m_start, m_handle, {}, {}};
    pull.options.keepRatio = now.has(Qt::ShiftModifier);
    pull.options.fromCentre = now.has(Qt::ControlModifier);
    Point by = now.page - m_press.page;
    Preview preview;
    const Piece free = pulledAlong(pull, alongAxes(by, m_start.rotation));
    if (m_start.rotation.isQuarterTurn()) {
        preview.snap = m_snapping.at({trimBounds(free), outermostBounds(free)}, movingEdges(), now);
    }
    if (pull.options.keepRatio) {
        (leadsAcross() ? preview.snap.vertical : preview.snap.horizontal).reset();
    }
    if (m_snapping.isOn(now)) {
        pull.step = m_snapping.step();
    }
    m_now = pulledAlong(pull, alongAxes(by, m_start.rotation));
    if (preview.snap.horizontal || preview.snap.vertical) {
        // What is snapped is exact; an axis without a snap keeps what the scale made of it.
        Pull exact = pull;
        exact.step.reset();
        const Rect scaled = trimBounds(m_now);
        const Rect plain = trimBounds(free);
        const SnapEdges edges = movingEdges();
        const Length scaleX =
            edges.left ? scaled.left() - plain.left() : scaled.right() - plain.right();
        const Length scaleY =
            edges.top ? scaled.top() - plain.top() : scaled.bottom() - plain.bottom();
        by.x += preview.snap.horizontal ? preview.snap.horizontal->by : scaleX;
        by.y += preview.snap.vertical ? preview.snap.vertical->by : scaleY;
        m_now = pulledAlong(exact, alongAxes(by, m_start.rotation));
    }
    const Rect bounds = trimBounds(m_now);
    preview.changed.emplace(m_id, m_now);
    preview.gaps = m_snapping.gaps(outermostBounds(m_now), preview.snap);
    preview.readout = sizeReadout(m_now.size, settings().scale);
    preview.extent = bounds;
    host().showPreview(std::move(preview));
}

void ResizeDrag::finish() {
    host().perform(m_now == m_start ? Edit{} : changePiece(m_id, m_now),
                   QCoreApplication::translate("Canvas", "Resize %1")
                       .arg(QString::fromStdString(displayName(m_start))),
                   false);
}

}  // namespace matwright::app
