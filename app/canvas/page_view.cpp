// SPDX-License-Identifier: MIT
#include "app/canvas/page_view.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QDropEvent>
#include <QScreen>
#include <algorithm>
#include <utility>

#include "app/canvas/accessible_page.h"
#include "app/canvas/tools/select_tool.h"
#include "app/photos/photo_access.h"
#include "core/outline/outline.h"

namespace matwright::app {

namespace {

constexpr double smallestZoom = 0.05;
constexpr double largestZoom = 32;
constexpr double keptInView = 64;  // pixels of the page that cannot be scrolled away
constexpr double fitPadding = 28;

// The order of the pieces that the change did not touch.
std::vector<PieceId> without(const std::vector<PieceId>& order, const std::set<PieceId>& touched) {
    std::vector<PieceId> rest;
    std::ranges::copy_if(order, std::back_inserter(rest),
                         [&touched](PieceId id) { return !touched.contains(id); });
    return rest;
}

}  // namespace

PageView::PageView(Session& session, SettingsStore& settings, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_settings(settings),
      m_slotPictures(session),
      m_dress{&session.work(), &session.sketch().page, &m_slotPictures},
      m_layers(palette(), labelStyleFor(font(), settings.value().scale)),
      m_tool(std::make_unique<SelectTool>(dragHost())),
      m_keys(*this) {
    installPageAccessibility();  // before anything asks for the page's interface
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAcceptDrops(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setMinimumSize(120, 120);
    setAccessibleName(tr("Page"));
    setAccessibleDescription(
        tr("Tab goes from piece to piece, the arrow keys move the selected piece or, where none is "
           "selected, scroll."));
    m_layers.setDress(m_dress);
    m_pictures.setDress(m_dress);
    connect(&m_slotPictures, &SlotPictures::slotsReady, this, &PageView::mend);
    connect(&m_slotPictures, &SlotPictures::papersReady, this, [this] {
        m_layers.invalidate();
        m_pictures.clear();
        update();
    });
    connect(&session, &Session::changed, this, &PageView::onSessionChanged);
    connect(&settings, &SettingsStore::changed, this, [this] {
        setLabels();
        refreshOverlay();
        update();
        emit viewChanged();
    });
    connect(&m_edgeTimer, &QTimer::timeout, this, &PageView::scrollAtEdge);
    forgetBounds();
}

PageView::~PageView() = default;

void PageView::forgetBounds() {
    m_bounds.clear();
    m_content = surface(m_session.sketch().page);
    for (const auto& [id, piece] : m_session.sketch().pieces) {
        m_bounds.emplace(id, reachOf(piece));
        m_content = m_content.united(outermostBounds(piece));
    }
    m_order = m_session.sketch().order;
}

// ---- photos

void PageView::showPhotos(PhotoAccess& access, SlotPictures::StandIn standIn) {
    m_slotPictures.useStandIns(std::move(standIn));
    m_slotPictures.useService(access.ifOpen());
    connect(&access, &PhotoAccess::opened, this, [this](PhotoService* service) {
        m_slotPictures.useService(service);
        m_layers.invalidate();
        update();
    });
    m_layers.invalidate();
    update();
}

void PageView::mend(const std::vector<PieceId>& ids) {
    for (const PieceId id : ids) {
        if (const Piece* piece = matwright::find(m_session.sketch(), id)) {
            const QRect touched = paintedRect(*piece, m_viewport);
            m_layers.invalidate(touched);
            update(touched);
        }
    }
    m_pictures.clear();
}

// Photos that look otherwise, in their slots or because they were evened out, and papers.
void PageView::onPhotosChanged(const Change& change) {
    if (change.has(Change::Papers)) {
        m_layers.invalidate();
        update();
    }
    std::vector<PieceId> ids(change.pieces.begin(), change.pieces.end());
    for (const auto& [slot, placement] : m_session.work().placements) {
        if (change.photos.contains(placement.photo)) {
            ids.push_back(slot);
        }
    }
    mend(ids);
    if (const auto slot = m_tool->slotInHand();
        slot &&
        (change.kinds == Change::Everything || !m_session.work().placements.contains(*slot))) {
        cancelDrag();
        emit toolDone();
    }
}

// ---- the sketch has changed

void PageView::onSessionChanged(const Change& change) {
    const bool isOtherwise = change.has(Change::Pieces) || change.has(Change::Page);
    if (!m_isPerforming && (isOtherwise || change.has(Change::Placements))) {
        cancelDrag();  // what it started from is gone
    }
    if (isOtherwise) {
        if (change.kinds == Change::Everything) {
            m_hovered = {};
            m_layers.invalidate();
            forgetBounds();
            fitPage();
        } else if (change.has(Change::Page)) {
            m_layers.invalidate();
            forgetBounds();
            if (m_followsFit) {
                fitPage();
            }
        } else {
            onPiecesChanged(change);
        }
        update();
        emit viewChanged();
    }
    if (change.has(Change::Photos) || change.has(Change::Placements) ||
        change.has(Change::Papers)) {
        onPhotosChanged(change);
    }
    refreshOverlay();
    emit extentChanged();
    announceChange(*this, change);
}

void PageView::onPiecesChanged(const Change& change) {
    const Sketch& sketch = m_session.sketch();
    const bool reordered = change.pieces.empty() ||
                           without(m_order, change.pieces) != without(sketch.order, change.pieces);
    if (reordered) {
        m_layers.invalidate();
    }
    for (const PieceId id : change.pieces) {
        if (const auto before = m_bounds.find(id); before != m_bounds.end()) {
            m_layers.invalidate(paintedRect(before->second, m_viewport));
        }
        if (const Piece* piece = matwright::find(sketch, id)) {
            m_layers.invalidate(paintedRect(*piece, m_viewport));
        }
    }
    mendNumbers();
    forgetBounds();
}

// A piece taken from the middle gives all those above it another number.
void PageView::mendNumbers() {
    const std::vector<PieceId>& order = m_session.sketch().order;
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (i >= m_order.size() || m_order[i] != order[i]) {
            m_layers.invalidate(paintedRect(m_session.sketch().pieces.at(order[i]), m_viewport));
        }
    }
}

void PageView::setLabels() {
    m_layers.setLabels(labelStyleFor(font(), scale()));
    m_pictures.clear();
}

// ---- zoom and scroll

double PageView::screenPixelsPerInch() const {
    if (m_settings.value().screenPpi > 0) {
        return m_settings.value().screenPpi;
    }
    // Qt divides the system's figure by the device pixel ratio already.
    const double said = screen() ? screen()->physicalDotsPerInch() : 0;
    return said >= minScreenPpi && said <= maxScreenPpi ? said : 96;
}

double PageView::zoom() const {
    return m_viewport.pixelsPerInch() / screenPixelsPerInch();
}

QRectF PageView::originRange() const {
    const QRectF content = Viewport(m_viewport.pixelsPerTick(), {}).toView(m_content);
    const QPointF low(keptInView - content.right(), keptInView - content.bottom());
    const QPointF high(width() - keptInView - content.left(),
                       height() - keptInView - content.top());
    return QRectF(low, QPointF(std::max(low.x(), high.x()), std::max(low.y(), high.y())));
}

QRectF PageView::scrollRange() const {
    const QRectF content = Viewport(m_viewport.pixelsPerTick(), {})
                               .toView(m_content)
                               .adjusted(-fitPadding, -fitPadding, fitPadding, fitPadding);
    const QPointF now = m_viewport.origin();
    const QPointF low(std::min(now.x(), width() - content.right()),
                      std::min(now.y(), height() - content.bottom()));
    const QPointF high(std::max(now.x(), -content.left()), std::max(now.y(), -content.top()));
    const bool fitsAcross = content.width() <= width();
    const bool fitsDown = content.height() <= height();
    return QRectF(QPointF(fitsAcross ? now.x() : low.x(), fitsDown ? now.y() : low.y()),
                  QPointF(fitsAcross ? now.x() : high.x(), fitsDown ? now.y() : high.y()));
}

void PageView::scrollBy(QPointF by) {
    const QRectF range = scrollRange();
    const QPointF wanted = m_viewport.origin() + by;
    const QPointF origin(std::clamp(wanted.x(), range.left(), range.right()),
                         std::clamp(wanted.y(), range.top(), range.bottom()));
    if (origin != m_viewport.origin()) {
        setViewport({m_viewport.pixelsPerTick(), origin});
    }
}

void PageView::setViewport(const Viewport& viewport) {
    m_followsFit = false;
    applyViewport(viewport);
}

void PageView::applyViewport(const Viewport& wanted) {
    const Viewport before = m_viewport;
    m_viewport = wanted;
    const QRectF range = originRange();
    const QPointF origin(std::clamp(wanted.origin().x(), range.left(), range.right()),
                         std::clamp(wanted.origin().y(), range.top(), range.bottom()));
    m_viewport = Viewport(wanted.pixelsPerTick(), origin).aligned(devicePixelRatioF());
    if (m_viewport == before) {
        return;
    }
    if (isDragging() || m_drop) {
        updateDrag(pointerAt(m_pointer.view, m_pointer.modifiers));
    }
    refreshOverlay();
    update();
    emit viewChanged();
}

void PageView::zoomTo(double zoom, QPointF anchor) {
    const double limited = std::clamp(zoom, smallestZoom, largestZoom);
    const double perTick =
        limited * screenPixelsPerInch() / static_cast<double>(Length::ticksPerInch);
    setViewport(m_viewport.zoomedTo(perTick, anchor));
}

void PageView::fitArea(const Rect& area) {
    const Viewport fitted = Viewport::fitting(area, size(), fitPadding);
    const double perTick = screenPixelsPerInch() / static_cast<double>(Length::ticksPerInch);
    const double limited =
        std::clamp(fitted.pixelsPerTick(), smallestZoom * perTick, largestZoom * perTick);
    setViewport(fitted.zoomedTo(limited, viewRect().center()));
}

void PageView::fitPage() {
    fitArea(surface(m_session.sketch().page));
    m_followsFit = true;
}

void PageView::reveal(const Rect& area) {
    const QRectF box = m_viewport.toView(area).adjusted(-24, -24, 24, 24);
    const auto shift = [](double low, double high, double end) {
        if (high - low > end) {
            return end / 2 - (low + high) / 2;
        }
        return low < 0 ? -low : std::min(0.0, end - high);
    };
    const QPointF by(shift(box.left(), box.right(), width()),
                     shift(box.top(), box.bottom(), height()));
    if (!by.isNull()) {
        setViewport(m_viewport.scrolled(by));
    }
}

void PageView::revealPiece(PieceId id) {
    if (const Piece* piece = matwright::find(m_session.sketch(), id)) {
        m_session.select({id});
        reveal(outermostBounds(*piece));
    }
}

void PageView::resizeEvent(QResizeEvent*) {
    if (m_followsFit) {
        fitPage();
    } else {
        applyViewport(m_viewport);
    }
    refreshOverlay();
    emit viewChanged();
}

void PageView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange) {
        m_layers.setPalette(palette());
    }
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        setLabels();
        refreshOverlay();
        update();
    }
    QWidget::changeEvent(event);
}

}  // namespace matwright::app
