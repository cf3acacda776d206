// SPDX-License-Identifier: MIT
#pragma once

#include <QPixmap>
#include <QRegion>
#include <set>
#include <utility>
#include <vector>

#include "app/canvas/page_painter.h"

class QPainter;

namespace matwright::app {

// Cached pictures of the sketch in the size of the view, so that hovering, selecting, scrolling and
// dragging cost the same with two pieces and with two thousand.
//
// The whole page is one layer, mended only where something changed. While pieces are being dragged
// others stand in for it: what lies under all of them, and what lies over each run of them that is
// not parted by a still piece. All are device pixels.
class PageLayers {
  public:
    // Lifted pieces with nothing still between them, bottom to top; numbers as their labels have
    // them.
    struct Run {
        std::vector<PieceId> lifted;
        std::vector<std::size_t> numbers;
        std::set<PieceId> above;  // the still pieces over it, up to the next run
        QPixmap over;             // null where there are none
    };

    PageLayers(QPalette palette, LabelStyle labels)
        : m_palette(std::move(palette)), m_labels(std::move(labels)) {}

    // Everything has to be painted anew at the next prepare().
    void invalidate();
    // This part of the view has to.
    void invalidate(const QRegion& area) { m_dirty += area; }
    void setPalette(const QPalette& palette);
    void setLabels(const LabelStyle& labels);
    const LabelStyle& labels() const { return m_labels; }
    // What it refers to may change at any time; what looks otherwise then has to be invalidated.
    void setDress(const PageDress& dress) { m_dress = dress; }

    // Pieces that are not part of the still picture from now on; an empty set ends that.
    void lift(std::set<PieceId> pieces);
    bool isLifting() const { return !m_lifted.empty(); }

    // Makes the layers fit the view: paints what is missing or dirty, shifts what was scrolled.
    // `size` in logical pixels.
    void prepare(const Sketch& sketch, const Viewport& viewport, QSize size,
                 double devicePixelRatio);

    void drawUnder(QPainter& painter, const QRegion& area) const;
    // What is lifted, bottom run first, as of the last prepare(). At most maxRuns: the lowest ones
    // are taken together, and the still pieces between those count as under.
    const std::vector<Run>& runs() const { return m_runs; }
    static constexpr std::size_t maxRuns = 5;
    void drawOver(QPainter& painter, const QRegion& area, const Run& run) const;

    // How often a layer was painted from nothing, and how many times in part: for tests that a drag
    // paints neither.
    int rebuilds() const { return m_rebuilds; }
    int mends() const { return m_mends; }

  private:
    void rebuildWhole(const Sketch& sketch, QSize size, double devicePixelRatio);
    void shiftTo(const Viewport& viewport);
    void mendWhole(const Sketch& sketch);
    void findRuns(const Sketch& sketch);
    void buildLifted(const Sketch& sketch);
    void paintInto(QPixmap& layer, const Sketch& sketch, const QRegion& area,
                   const PieceFilter& wanted, bool withPaper) const;

    QPalette m_palette;
    LabelStyle m_labels;
    PageDress m_dress;
    QPixmap m_whole;
    QPixmap m_under;
    std::vector<Run> m_runs;
    Viewport m_viewport;
    QRegion m_dirty;
    std::set<PieceId> m_lifted;
    bool m_isValid = false;
    bool m_hasLiftedLayers = false;
    int m_rebuilds = 0;
    int m_mends = 0;
};

}  // namespace matwright::app
