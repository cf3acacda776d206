// SPDX-License-Identifier: MIT
#include "app/canvas/canvas.h"

#include <QEvent>
#include <QGridLayout>
#include <QScrollBar>
#include <cmath>
#include <utility>

#include "app/canvas/drags/create_drag.h"
#include "app/canvas/page_view.h"
#include "app/canvas/ruler.h"
#include "app/canvas/tools/create_tool.h"
#include "app/canvas/tools/photo_tool.h"
#include "app/canvas/tools/select_tool.h"
#include "core/arrange/placing.h"

namespace matwright::app {

namespace {

constexpr double zoomStep = 1.25;

PieceKind kindOf(Canvas::Tool tool) {
    switch (tool) {
        case Canvas::Tool::Strip:
            return PieceKind::Strip;
        case Canvas::Tool::Block:
            return PieceKind::Block;
        case Canvas::Tool::Title:
            return PieceKind::Title;
        case Canvas::Tool::Journaling:
            return PieceKind::Journaling;
        case Canvas::Tool::Embellishment:
            return PieceKind::Embellishment;
        case Canvas::Tool::Select:
        case Canvas::Tool::Photo:
            break;
    }
    return PieceKind::PhotoSlot;
}

}  // namespace

Canvas::Canvas(Session& session, SettingsStore& settings, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_settings(settings),
      m_page(new PageView(session, settings, this)),
      m_across(new Ruler(Qt::Horizontal, this)),
      m_down(new Ruler(Qt::Vertical, this)),
      m_acrossBar(new QScrollBar(Qt::Horizontal, this)),
      m_downBar(new QScrollBar(Qt::Vertical, this)) {
    setAccessibleName(tr("Canvas"));
    setFocusProxy(m_page);
    layOut();
    connectPage();
    showView();
    showExtent();
}

Canvas::~Canvas() = default;

void Canvas::layOut() {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(0);
    auto* corner = new QWidget(this);
    corner->setFixedSize(Ruler::thickness(), Ruler::thickness());
    corner->setAutoFillBackground(true);
    corner->setBackgroundRole(QPalette::Base);
    grid->addWidget(corner, 0, 0);
    grid->addWidget(m_across, 0, 1);
    grid->addWidget(m_down, 1, 0);
    grid->addWidget(m_page, 1, 1);
    grid->addWidget(m_downBar, 0, 2, 2, 1);
    grid->addWidget(m_acrossBar, 2, 0, 1, 2);
    grid->setColumnStretch(1, 1);
    grid->setRowStretch(1, 1);
    const auto showRulers = [this, corner] {
        for (QWidget* widget :
             {static_cast<QWidget*>(m_across), static_cast<QWidget*>(m_down), corner}) {
            widget->setVisible(m_settings.value().rulersShown);
        }
    };
    showRulers();
    connect(&m_settings, &SettingsStore::changed, corner, showRulers);
    m_acrossBar->setAccessibleName(tr("Scroll across"));
    m_downBar->setAccessibleName(tr("Scroll down"));
    for (QScrollBar* bar : {m_acrossBar, m_downBar}) {
        bar->setSingleStep(40);
        connect(bar, &QScrollBar::valueChanged, this, &Canvas::scrollToBars);
    }
}

void Canvas::connectPage() {
    connect(m_page, &PageView::viewChanged, this, &Canvas::showView);
    connect(m_page, &PageView::extentChanged, this, &Canvas::showExtent);
    connect(m_page, &PageView::pointerMoved, this, &Canvas::pointerMoved);
    connect(m_page, &PageView::pointerInView, this, [this](std::optional<QPointF> at) {
        m_across->setPointer(at ? std::optional(at->x()) : std::nullopt);
        m_down->setPointer(at ? std::optional(at->y()) : std::nullopt);
    });
    connect(m_page, &PageView::hint, this, &Canvas::hint);
    connect(m_page, &PageView::contextMenuWanted, this, &Canvas::contextMenuWanted);
    connect(m_page, &PageView::pieceActivated, this, &Canvas::pieceActivated);
    connect(m_page, &PageView::photoActivated, this, &Canvas::workOnPhoto);
    connect(m_page, &PageView::toolDone, this, [this] { setTool(Tool::Select); });
    connect(m_page, &PageView::pieceWanted, this, [this] {
        const Piece piece = prototype();
        setTool(Tool::Select);  // first: it says what it does
        place(piece);
    });
}

void Canvas::showPhotos(PhotoAccess& access, SlotPictures::StandIn standIn) {
    m_page->showPhotos(access, std::move(standIn));
}

void Canvas::workOnPhoto(PieceId slot) {
    if (!m_session.work().placements.contains(slot)) {
        return;
    }
    setTool(Tool::Select);
    m_session.select({slot});
    // Later: a tool must not be put down while it is being asked.
    const auto leave = [this] {
        QMetaObject::invokeMethod(this, [this] { setTool(Tool::Select); }, Qt::QueuedConnection);
    };
    m_page->useTool(std::make_unique<PhotoTool>(m_page->dragHost(), slot, leave));
    m_page->setFocus();
}

Piece Canvas::prototype() const {
    return prototypeOf(kindOf(m_tool), m_drawShape);
}

void Canvas::setTool(Tool tool) {
    const bool isNew = std::exchange(m_tool, tool) != tool;
    if (tool == Tool::Select) {
        m_page->useTool(std::make_unique<SelectTool>(m_page->dragHost()));
    } else {
        m_page->useTool(std::make_unique<CreateTool>(m_page->dragHost(), prototype()));
    }
    if (isNew) {
        emit toolChanged(tool);
    }
}

void Canvas::setDrawShape(Shape prototype) {
    m_drawShape = std::move(prototype);
    if (m_tool != Tool::Select) {
        setTool(m_tool);
    }
}

double Canvas::zoom() const {
    return m_page->zoom();
}

void Canvas::setZoom(double zoom) {
    m_page->zoomTo(zoom, QRectF(m_page->rect()).center());
}

void Canvas::zoomIn() {
    setZoom(zoom() * zoomStep);
}

void Canvas::zoomOut() {
    setZoom(zoom() / zoomStep);
}

void Canvas::fitPage() {
    m_page->fitPage();
}

void Canvas::fitSelection() {
    std::optional<Rect> area;
    for (const PieceId id : m_session.selection()) {
        const Rect bounds = outermostBounds(m_session.sketch().pieces.at(id));
        area = area ? area->united(bounds) : bounds;
    }
    if (area) {
        m_page->fitArea(*area);
    } else {
        m_page->fitPage();
    }
}

void Canvas::trueSize() {
    setZoom(1);
}

void Canvas::place(Piece piece) {
    m_page->cancelDrag();
    const auto free = freePlace(m_session.sketch(), piece);
    piece.place = free.value_or(middlePlace(m_session.sketch(), piece));
    const auto done = m_session.performAndSelectAdded(
        addPieces(m_session.sketch(), std::span(&piece, 1)),
        tr("Lay down %1").arg(QString::fromStdString(displayName(piece))));
    if (!done) {
        emit hint(QString::fromStdString(done.error().text()));
        return;
    }
    m_page->reveal(outermostBounds(piece));
    emit hint(
        free ? QString()
             : tr("No free place: laid in the middle, over others. Drag it where it belongs."));
}

void Canvas::reveal(PieceId id) {
    m_page->revealPiece(id);
}

void Canvas::changeEvent(QEvent* event) {
    if (event->type() == QEvent::EnabledChange) {
        m_page->cancelDrag();
    }
    QWidget::changeEvent(event);
}

// ---- rulers and scroll bars follow the view

void Canvas::showView() {
    const Scale scale = m_settings.value().scale;
    std::vector<Length> begins;
    for (const Rect& page : pages(m_session.sketch().page)) {
        begins.push_back(page.left());
    }
    m_across->setPages(std::move(begins));
    m_across->setView(m_page->viewport(), scale);
    m_down->setView(m_page->viewport(), scale);
    const QRectF range = m_page->scrollRange();
    const QPointF origin = m_page->viewport().origin();
    m_isShowingView = true;
    const auto show = [](QScrollBar* bar, double low, double high, double value, int page) {
        bar->setPageStep(page);
        bar->setRange(static_cast<int>(std::lround(-high)), static_cast<int>(std::lround(-low)));
        bar->setValue(static_cast<int>(std::lround(-value)));
    };
    show(m_acrossBar, range.left(), range.right(), origin.x(), m_page->width());
    show(m_downBar, range.top(), range.bottom(), origin.y(), m_page->height());
    m_isShowingView = false;
    if (std::exchange(m_shownZoom, zoom()) != zoom()) {
        emit zoomChanged(zoom());
    }
}

void Canvas::showExtent() {
    const auto extent = m_page->extent();
    m_across->setExtent(extent ? std::optional(extent->x) : std::nullopt);
    m_down->setExtent(extent ? std::optional(extent->y) : std::nullopt);
}

void Canvas::scrollToBars() {
    if (!m_isShowingView) {
        const Viewport& now = m_page->viewport();
        m_page->setViewport(
            {now.pixelsPerTick(), {-double(m_acrossBar->value()), -double(m_downBar->value())}});
    }
}

}  // namespace matwright::app
