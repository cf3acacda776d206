// SPDX-License-Identifier: MIT
#include "app/library/wall_view.h"

#include <QFile>
#include <QScrollBar>
#include <algorithm>
#include <utility>

namespace matwright::app {
namespace {

constexpr int edge = 10;  // free ground around the cells
constexpr int gap = 6;
constexpr int firstSide = 148;

}  // namespace

WallView::WallView(WallModel& model, Thumbnails& thumbnails, QWidget* parent)
    : QAbstractItemView(parent),
      m_model(model),
      m_thumbnails(thumbnails),
      m_cell(font(), firstSide) {
    setModel(&model);
    setSelectionMode(ExtendedSelection);
    setDragEnabled(true);
    setAcceptDrops(true);
    setMouseTracking(true);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Sketches"));
    m_asking.setSingleShot(true);
    m_asking.setInterval(0);
    connect(&m_asking, &QTimer::timeout, this, &WallView::askForThumbnails);
    connect(&thumbnails, &Thumbnails::ready, this, &WallView::showReady);
    connect(&model, &WallModel::aboutToShowOthers, this, &WallView::rememberPlace);
    connect(&model, &WallModel::showsOthers, this, &WallView::findPlaceAgain);
    connect(&model, &WallModel::showsSameAgain, this, [this] {
        viewport()->update();
        m_asking.start();
        emit selectionShown();
    });
}

void WallView::setLibrary(const QString& folder) {
    m_library = QFile::encodeName(folder).toStdString();
}

void WallView::setPictureSide(int side) {
    if (side == m_cell.pictureSide()) {
        return;
    }
    rememberPlace();
    m_cell = WallCell(font(), side);
    updateGeometries();
    findPlaceAgain();
}

int WallView::columns() const {
    const int room = viewport()->width() - 2 * edge + gap;
    return std::max(1, room / (m_cell.size().width() + gap));
}

int WallView::lines() const {
    return (m_model.rowCount() + columns() - 1) / columns();
}

int WallView::verticalOffset() const {
    return verticalScrollBar()->value();
}

QRect WallView::cellRect(int row) const {
    const int count = columns();
    const QSize cell = m_cell.size();
    // What room is left over goes between the columns, so that the wall fills the width.
    const int used = 2 * edge + count * (cell.width() + gap) - gap;
    const int spare = std::max(0, viewport()->width() - used) / (count + 1);
    const int x = edge + spare + (row % count) * (cell.width() + gap + spare);
    const int y = edge + (row / count) * (cell.height() + gap) - verticalOffset();
    return {QPoint(x, y), cell};
}

QRect WallView::visualRect(const QModelIndex& index) const {
    return index.isValid() ? cellRect(index.row()) : QRect();
}

int WallView::nearestRow(QPoint point) const {
    const int count = columns();
    const int pitch = m_cell.size().height() + gap;
    const int y = point.y() + verticalOffset() - edge;
    const int line = std::clamp(y < 0 ? 0 : y / pitch, 0, std::max(0, lines() - 1));
    int column = 0;
    for (int i = 1; i < count; ++i) {
        if (point.x() >= cellRect(i).left()) {
            column = i;
        }
    }
    return std::min(line * count + column, m_model.rowCount() - 1);
}

std::optional<int> WallView::rowAt(QPoint point) const {
    const int row = nearestRow(point);
    return row >= 0 && cellRect(row).contains(point) ? std::optional(row) : std::nullopt;
}

QModelIndex WallView::indexAt(const QPoint& point) const {
    const auto row = rowAt(point);
    return row ? m_model.index(*row) : QModelIndex();
}

std::pair<int, int> WallView::rowsIn(const QRect& rect) const {
    const int pitch = m_cell.size().height() + gap;
    const int top = rect.top() + verticalOffset() - edge;
    const int bottom = rect.bottom() + verticalOffset() - edge;
    const int first = std::max(0, top) / pitch * columns();
    const int last = bottom < 0 ? 0 : (bottom / pitch + 1) * columns();
    return {std::min(first, m_model.rowCount()), std::min(last, m_model.rowCount())};
}

void WallView::updateGeometries() {
    const int pitch = m_cell.size().height() + gap;
    const int height = lines() == 0 ? 0 : lines() * pitch - gap + 2 * edge;
    verticalScrollBar()->setSingleStep(pitch / 3);
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setRange(0, std::max(0, height - viewport()->height()));
    QAbstractItemView::updateGeometries();
    m_asking.start();
}

void WallView::scrollTo(const QModelIndex& index, ScrollHint hint) {
    if (!index.isValid()) {
        return;
    }
    const QRect cell = cellRect(index.row()).adjusted(0, -edge, 0, edge);
    const int room = viewport()->height();
    int by = 0;
    if (hint == PositionAtTop || (hint == EnsureVisible && cell.top() < 0)) {
        by = cell.top();
    } else if (hint == PositionAtBottom || (hint == EnsureVisible && cell.bottom() >= room)) {
        by = std::min(cell.bottom() + 1 - room, cell.top());
    } else if (hint == PositionAtCenter) {
        by = cell.center().y() - room / 2;
    }
    verticalScrollBar()->setValue(verticalOffset() + by);
}

void WallView::scrollContentsBy(int /*dx*/, int dy) {
    m_goesUp = dy > 0;
    if (std::abs(dy) < viewport()->height() && m_band.isNull()) {
        viewport()->scroll(0, dy);
    } else {
        viewport()->update();
    }
    m_hovered = -1;
    m_asking.start();
}

int WallView::pictureSidePixels() const {
    return qRound(m_cell.pictureSide() * devicePixelRatioF());
}

WantedThumbnail WallView::wantedOf(int row) const {
    return {m_model.content(row), m_library + '/' + m_model.path(row), pictureSidePixels()};
}

void WallView::askForThumbnails() {
    if (!isVisible()) {
        return;
    }
    const QRect sight = viewport()->rect();
    const auto [first, last] = rowsIn(sight);
    std::vector<WantedThumbnail> wanted;
    for (int row = first; row < last; ++row) {
        wanted.push_back(wantedOf(row));
    }
    // Then what comes into sight next.
    const int ahead = last - first;
    for (int i = 0; i < ahead; ++i) {
        const int row = m_goesUp ? first - 1 - i : last + i;
        if (row >= 0 && row < m_model.rowCount()) {
            wanted.push_back(wantedOf(row));
        }
    }
    // What is in sight, what comes next and what one may come back to.
    const qint64 side = pictureSidePixels();
    m_thumbnails.needMemory(side * side * 4 * 3 * ahead);
    m_thumbnails.want(std::move(wanted));
    if (isComplete()) {
        emit complete();
    }
}

bool WallView::isComplete() const {
    const auto [first, last] = rowsIn(viewport()->rect());
    for (int row = first; row < last; ++row) {
        const ContentKey content = m_model.content(row);
        if (m_thumbnails.find(content, pictureSidePixels()).isNull() &&
            !m_thumbnails.hasFailed(content)) {
            return false;
        }
    }
    return true;
}

void WallView::showReady(const std::vector<ContentKey>& contents) {
    const auto [first, last] = rowsIn(viewport()->rect());
    for (int row = first; row < last; ++row) {
        if (std::ranges::find(contents, m_model.content(row)) != contents.end()) {
            viewport()->update(cellRect(row));
        }
    }
    if (isComplete()) {
        emit complete();
    }
}

void WallView::rememberPlace() {
    m_isSwapping = true;
    const auto [first, last] =
        rowsIn(viewport()->rect().adjusted(0, m_cell.size().height() / 2, 0, 0));
    // Who is at the top stays there, whatever comes before.
    m_anchor = first < last && verticalOffset() > 0
                   ? Anchor{m_model.path(first), cellRect(first).top()}
                   : Anchor();
    m_currentPath = currentIndex().isValid() ? m_model.path(currentIndex().row()) : std::string();
    m_selected = selectedPaths();
}

void WallView::findPlaceAgain() {
    updateGeometries();
    std::vector<int> rows;
    for (const std::string& path : m_selected) {
        if (const auto row = m_model.rowOf(path)) {
            rows.push_back(*row);
        }
    }
    std::ranges::sort(rows);
    selectRows(rows);
    if (const auto row = m_model.rowOf(m_currentPath)) {
        selectionModel()->setCurrentIndex(m_model.index(*row), QItemSelectionModel::NoUpdate);
    }
    if (const auto row = m_model.rowOf(m_anchor.path); row && !m_anchor.path.empty()) {
        verticalScrollBar()->setValue(verticalOffset() + cellRect(*row).top() - m_anchor.below);
    }
    m_isSwapping = false;
    viewport()->update();
    m_asking.start();
    emit selectionShown();
}

}  // namespace matwright::app
