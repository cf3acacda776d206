// SPDX-License-Identifier: MIT
#include "app/canvas/page_layers.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <utility>

namespace matwright::app {

namespace {

QPixmap blankLayer(QSize size, double devicePixelRatio) {
    const QSizeF device = QSizeF(size) * devicePixelRatio;
    QPixmap layer(std::max(1, static_cast<int>(std::ceil(device.width()))),
                  std::max(1, static_cast<int>(std::ceil(device.height()))));
    layer.setDevicePixelRatio(devicePixelRatio);
    return layer;
}

QRect logicalRect(const QPixmap& layer) {
    return QRectF({0, 0}, layer.deviceIndependentSize()).toAlignedRect();
}

void draw(QPainter& painter, const QPixmap& layer, const QRegion& area) {
    const double ratio = layer.devicePixelRatio();
    for (const QRect& rect : area) {
        const QRectF source(rect.x() * ratio, rect.y() * ratio, rect.width() * ratio,
                            rect.height() * ratio);
        painter.drawPixmap(QRectF(rect), layer, source);
    }
}

}  // namespace

void PageLayers::invalidate() {
    m_isValid = false;
    m_hasLiftedLayers = false;
}

void PageLayers::setPalette(const QPalette& palette) {
    m_palette = palette;
    invalidate();
}

void PageLayers::setLabels(const LabelStyle& labels) {
    if (labels != m_labels) {
        m_labels = labels;
        invalidate();
    }
}

void PageLayers::lift(std::set<PieceId> pieces) {
    if (pieces == m_lifted) {
        return;
    }
    m_lifted = std::move(pieces);
    m_hasLiftedLayers = false;
    m_under = {};
    m_runs.clear();
}

void PageLayers::prepare(const Sketch& sketch, const Viewport& viewport, QSize size,
                         double devicePixelRatio) {
    const bool fits = m_isValid && m_whole.devicePixelRatio() == devicePixelRatio &&
                      logicalRect(m_whole).size() == size &&
                      m_viewport.pixelsPerTick() == viewport.pixelsPerTick();
    if (!fits) {
        m_viewport = viewport;
        rebuildWhole(sketch, size, devicePixelRatio);
    } else if (viewport != m_viewport) {
        shiftTo(viewport);
    }
    if (!m_dirty.isEmpty()) {
        mendWhole(sketch);
    }
    if (isLifting() && !m_hasLiftedLayers) {
        buildLifted(sketch);
    }
}

void PageLayers::rebuildWhole(const Sketch& sketch, QSize size, double devicePixelRatio) {
    m_whole = blankLayer(size, devicePixelRatio);
    m_dirty = {};
    m_isValid = true;
    m_hasLiftedLayers = false;
    ++m_rebuilds;
    paintInto(m_whole, sketch, logicalRect(m_whole), [](PieceId) { return true; }, true);
}

void PageLayers::shiftTo(const Viewport& viewport) {
    const double ratio = m_whole.devicePixelRatio();
    const QPointF by = (viewport.origin() - m_viewport.origin()) * ratio;
    const QPoint pixels(static_cast<int>(std::lround(by.x())),
                        static_cast<int>(std::lround(by.y())));
    m_viewport = viewport;
    m_hasLiftedLayers = false;
    const QRegion everything = logicalRect(m_whole);
    if (std::abs(pixels.x()) >= m_whole.width() || std::abs(pixels.y()) >= m_whole.height()) {
        m_dirty = everything;
        return;
    }
    m_whole.scroll(pixels.x(), pixels.y(), m_whole.rect());
    const QRectF kept = QRectF(everything.boundingRect()).translated(by / ratio);
    // What was dirty moves along; a pixel more on each side hides the rounding of uneven ratios.
    m_dirty.translate((by / ratio).toPoint());
    QRegion mended;
    for (const QRect& rect : m_dirty) {
        mended += rect.adjusted(-1, -1, 1, 1);
    }
    m_dirty = mended + (everything - QRegion(kept.toAlignedRect().adjusted(1, 1, -1, -1)));
    m_dirty &= everything;
}

void PageLayers::mendWhole(const Sketch& sketch) {
    m_hasLiftedLayers = false;
    const QRegion area = std::exchange(m_dirty, {}) & logicalRect(m_whole);
    if (area.isEmpty()) {
        return;
    }
    ++m_mends;
    paintInto(m_whole, sketch, area, [](PieceId) { return true; }, true);
}

void PageLayers::findRuns(const Sketch& sketch) {
    m_runs.clear();
    std::size_t number = 0;
    for (const PieceId id : sketch.order) {
        ++number;
        if (!m_lifted.contains(id)) {
            if (!m_runs.empty()) {
                m_runs.back().above.insert(id);
            }
            continue;
        }
        if (m_runs.empty() || !m_runs.back().above.empty()) {
            m_runs.emplace_back();
        }
        m_runs.back().lifted.push_back(id);
        m_runs.back().numbers.push_back(number);
    }
    while (m_runs.size() > maxRuns) {
        Run lowest = std::move(m_runs[0]);
        m_runs.erase(m_runs.begin());
        Run& next = m_runs.front();
        next.lifted.insert(next.lifted.begin(), lowest.lifted.begin(), lowest.lifted.end());
        next.numbers.insert(next.numbers.begin(), lowest.numbers.begin(), lowest.numbers.end());
    }
}

void PageLayers::buildLifted(const Sketch& sketch) {
    m_hasLiftedLayers = true;
    findRuns(sketch);
    QRegion lifted;
    for (const PieceId id : m_lifted) {
        if (const Piece* piece = find(sketch, id)) {
            lifted += paintedRect(*piece, m_viewport);
        }
    }
    // What lies under is the whole page, painted anew only where a lifted piece was.
    m_under = m_whole;
    ++m_mends;
    const auto isUnder = [this](PieceId id) {
        return !m_lifted.contains(id) && std::ranges::none_of(m_runs, [id](const Run& run) {
            return run.above.contains(id);
        });
    };
    paintInto(m_under, sketch, lifted & logicalRect(m_whole), isUnder, true);
    for (Run& run : m_runs) {
        if (!run.above.empty()) {
            run.over = blankLayer(logicalRect(m_whole).size(), m_whole.devicePixelRatio());
            run.over.fill(Qt::transparent);
            paintInto(
                run.over, sketch, logicalRect(run.over),
                [&run](PieceId id) { return run.above.contains(id); }, false);
        }
    }
}

void PageLayers::paintInto(QPixmap& layer, const Sketch& sketch, const QRegion& area,
                           const PieceFilter& wanted, bool withPaper) const {
    if (area.isEmpty()) {
        return;
    }
    QPainter painter(&layer);
    painter.setClipRegion(area);
    if (withPaper) {
        paintPaper(painter, sketch.page, m_viewport, m_palette, area.boundingRect());
    }
    paintPieces(painter, sketch, m_viewport, m_labels, area, wanted, m_dress);
}

void PageLayers::drawUnder(QPainter& painter, const QRegion& area) const {
    draw(painter, isLifting() ? m_under : m_whole, area);
}

void PageLayers::drawOver(QPainter& painter, const QRegion& area, const Run& run) const {
    if (!run.over.isNull()) {
        draw(painter, run.over, area);
    }
}

}  // namespace matwright::app
