// SPDX-License-Identifier: MIT
#include "app/crop/crop_frame.h"

#include <algorithm>

namespace matwright::app {

namespace {

// Room around the print, so that what lies outside can be seen and the handle reached.
constexpr double roomShare = 0.12;
constexpr double leastRoom = 44;

QRectF around(QPointF middle, Size size, double pixelsPerTick) {
    const QSizeF shown(static_cast<double>(size.width.ticks()) * pixelsPerTick,
                       static_cast<double>(size.height.ticks()) * pixelsPerTick);
    return {middle - QPointF(shown.width(), shown.height()) / 2, shown};
}

}  // namespace

Size windowSize(const CropSubject& subject, Length border) {
    return {subject.trim.width - border * 2, subject.trim.height - border * 2};
}

CropFrame CropFrame::in(QSizeF view, const CropSubject& subject, Length border) {
    const double room = std::max(leastRoom, roomShare * std::min(view.width(), view.height()));
    const auto scaleFor = [room](double side, Length length) {
        return std::max(16.0, side - 2 * room) / static_cast<double>(length.ticks());
    };
    CropFrame frame;
    frame.pixelsPerTick = std::min(scaleFor(view.width(), subject.print.width),
                                   scaleFor(view.height(), subject.print.height));
    const QPointF middle(view.width() / 2, view.height() / 2);
    frame.print = around(middle, subject.print, frame.pixelsPerTick);
    frame.trim = around(middle, subject.trim, frame.pixelsPerTick);
    frame.window = around(middle, windowSize(subject, border), frame.pixelsPerTick);
    return frame;
}

Point CropFrame::toPaper(QPointF by) const {
    return {Length::roundedFromTicks(by.x() / pixelsPerTick),
            Length::roundedFromTicks(by.y() / pixelsPerTick)};
}

QTransform photoToView(const Crop& crop, const CropSubject& subject, Length border,
                       const CropFrame& frame) {
    const CropWindow shown = windowIn(crop, subject.upright, windowSize(subject, border));
    const double scale = frame.window.width() / shown.width;
    QTransform transform;
    transform.translate(frame.window.center().x(), frame.window.center().y());
    transform.rotateRadians(shown.radians);
    transform.scale(scale, scale);
    transform.translate(-shown.centreX, -shown.centreY);
    return transform;
}

}  // namespace matwright::app
