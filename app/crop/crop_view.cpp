// SPDX-License-Identifier: MIT
#include "app/crop/crop_view.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "app/editing/burst.h"
#include "app/editing/session.h"

namespace matwright::app {

namespace {

constexpr double handleGap = 26;        // from the print's right edge to the handle
constexpr int mostStraighten = 45'000;  // millidegrees
constexpr int surroundingsPauseMs = 25;

// -180,000 .. 179,999
int signedMillidegrees(Angle angle) {
    const int value = angle.toMillidegrees();
    return value >= 180'000 ? value - 360'000 : value;
}

Angle withinReach(int millidegrees) {
    return Angle::millidegrees(std::clamp(millidegrees, -mostStraighten, mostStraighten));
}

}  // namespace

CropView::CropView(const CropSubject& subject, QWidget* parent)
    : QWidget(parent), m_subject(subject) {
    setAttribute(Qt::WA_OpaquePaintEvent);
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(320, 280);
    setAccessibleName(tr("Photo in its frame"));
    setAccessibleDescription(
        tr("Arrow keys move the photo, plus and minus zoom, square brackets straighten, Home "
           "starts again."));
    m_notice = tr("Fetching the photo…");
    m_surroundings.setSingleShot(true);
    m_surroundings.setInterval(surroundingsPauseMs);
    connect(&m_surroundings, &QTimer::timeout, this, &CropView::moveSurroundings);
}

void CropView::setCopy(const QImage& copy) {
    m_tile.setCopy(copy, m_subject.upright);
    update();
}

void CropView::setTone(const std::optional<ToneMap>& map) {
    if (m_tile.setTone(map)) {
        update();
    }
}

void CropView::showCrop(const Crop& crop, Length border) {
    setCrop(crop, border);
}

// Where the photo only moved, the frame is painted at once, and the faded photo around it a few
// milliseconds later, together with the steps that come until then.
void CropView::setCrop(const Crop& crop, Length border) {
    Crop moved = m_crop;
    moved.centreX = crop.centreX;
    moved.centreY = crop.centreY;
    const QRect before = photoArea();
    const bool onlyMoved = moved == crop && border == m_border && !isShowingFinal();
    m_crop = crop;
    m_border = border;
    if (!onlyMoved) {
        update();
        return;
    }
    // Less the pixel that the frame's dark edge lies on.
    update(frame().window.toRect().adjusted(1, 1, -1, -1));
    m_stale |= before | photoArea();
    if (!m_surroundings.isActive()) {
        m_surroundings.start();
    }
}

void CropView::moveSurroundings() {
    update(std::exchange(m_stale, {}));
}

QRect CropView::photoArea() const {
    const PixelSize turned = turnedSize(m_crop, m_subject.upright);
    const QRectF photo = photoToView(m_crop, m_subject, m_border, frame())
                             .mapRect(QRectF(0, 0, turned.width, turned.height));
    return photo.toAlignedRect().adjusted(-2, -2, 2, 2) & rect();
}

void CropView::setLines(Lines lines) {
    m_lines = lines;
    update();
}

void CropView::setNotice(const QString& sentence) {
    m_notice = sentence;
    update();
}

void CropView::showFinal(const QImage& print) {
    m_final = print;
    m_final.setDevicePixelRatio(devicePixelRatioF());
    m_finalShift = {};
    cancelDrag();
    update();
}

QPoint CropView::finalOrigin() const {
    const QSize view = size() * devicePixelRatioF();
    const auto origin = [](int room, int length, double shift) {
        const int middle = (room - length) / 2;
        // A print that is larger than the view never leaves it.
        return length <= room
                   ? middle
                   : std::clamp(middle + static_cast<int>(std::lround(shift)), room - length, 0);
    };
    return {origin(view.width(), m_final.width(), m_finalShift.x() * devicePixelRatioF()),
            origin(view.height(), m_final.height(), m_finalShift.y() * devicePixelRatioF())};
}

CropFrame CropView::frame() const {
    return CropFrame::in(size(), m_subject, m_border);
}

// On a circle about the frame's middle, so that it follows the photo's turn.
QPointF CropView::handleAt() const {
    const QRectF print = frame().print;
    const double radius = print.width() / 2 + handleGap;
    const double turn = signedMillidegrees(m_crop.straighten) / 1000.0 * std::numbers::pi / 180;
    return print.center() + QPointF(std::cos(turn), std::sin(turn)) * radius;
}

void CropView::tell(const Crop& crop, const QString& label, int gesture) {
    setCrop(crop, m_border);
    emit cropped(crop, label, gesture);
}

int CropView::burst(Burst kind) {
    if (m_burst != kind || !m_sinceStep.isValid() || m_sinceStep.elapsed() > burstPauseMs) {
        m_gesture = Session::newGesture();
    }
    m_burst = kind;
    m_sinceStep.start();
    return m_gesture;
}

void CropView::moveBy(Point paper) {
    tell(dragged(m_crop, m_subject.upright, window(), paper), tr("Move photo"), burst(Burst::Move));
}

void CropView::zoomBy(double factor) {
    zoomAbout(factor, frame().window.center());
}

void CropView::zoomAbout(double factor, QPointF at) {
    tell(zoomedAbout(m_crop, m_subject.upright, window(), factor, frame().fromMiddle(at)),
         tr("Zoom photo"), burst(Burst::Zoom));
}

void CropView::turnBy(int millidegrees) {
    const Angle angle = withinReach(signedMillidegrees(m_crop.straighten) + millidegrees);
    tell(straightened(m_crop, m_subject.upright, window(), angle), tr("Straighten photo"),
         burst(Burst::Turn));
}

void CropView::startAgain() {
    m_burst = Burst::None;
    tell(startingCrop(m_subject.upright, window()), tr("Start the crop again"), 0);
}

void CropView::turnRight() {
    m_burst = Burst::None;
    tell(turnedRight(m_crop, m_subject.upright, window()), tr("Turn photo right"), 0);
}

void CropView::turnLeft() {
    m_burst = Burst::None;
    Crop crop = m_crop;
    for (int i = 0; i < 3; ++i) {
        crop = turnedRight(crop, m_subject.upright, window());
    }
    tell(crop, tr("Turn photo left"), 0);
}

double CropView::angleAt(QPointF at) const {
    const QPointF off = at - frame().print.center();
    return std::atan2(off.y(), off.x());
}

void CropView::dragTo(QPointF at) {
    if (m_drag == Drag::Photo) {
        tell(dragged(m_start, m_subject.upright, window(), frame().toPaper(at - m_press)),
             tr("Move photo"), m_gesture);
    } else if (m_drag == Drag::Handle) {
        const double turn = (angleAt(at) - angleAt(m_press)) * 180 / std::numbers::pi;
        const double degrees = std::remainder(turn, 360);
        const int start = signedMillidegrees(m_start.straighten);
        // To a tenth of a degree: what a hand can aim at.
        const int aimed = static_cast<int>(std::lround((start / 1000.0 + degrees) * 10)) * 100;
        tell(straightened(m_start, m_subject.upright, window(), withinReach(aimed)),
             tr("Straighten photo"), m_gesture);
    } else if (m_drag == Drag::Final) {
        m_finalShift = m_pressShift + (at - m_press);
        update();
    }
}

bool CropView::cancelDrag() {
    const Drag drag = std::exchange(m_drag, Drag::None);
    if (drag == Drag::Photo || drag == Drag::Handle) {
        tell(m_start, {}, m_gesture);
    } else if (drag == Drag::Final) {
        m_finalShift = m_pressShift;
        update();
    }
    updateCursor(mapFromGlobal(QCursor::pos()));
    return drag != Drag::None;
}

}  // namespace matwright::app
