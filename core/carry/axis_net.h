// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "core/carry/axis_task.h"
#include "core/carry/line_sets.h"
#include "core/carry/springs.h"

namespace matwright::carry {

// Line 0 is the page's origin, then two lines a piece: the ends of its trim.
inline std::size_t lineOf(std::size_t piece, End end) {
    return 1 + 2 * piece + (end == End::High ? 1 : 0);
}

// The constraints of one axis as springs between sets of lines.
class AxisNet {
  public:
    explicit AxisNet(const AxisTask& task);

    // Joins the lines that relations hold together, and the ends of what is fixed or firm.
    void joinRelated();
    // Joins the ends of a piece, so that it keeps its wished length. False where that contradicts.
    bool makeRigid(std::size_t piece);

    // Gives up the middles and equal gaps that cannot be had with equal photos staying equal.
    void preferEqualPhotos();
    // The springs with photos as stiff as said. Equal photos stay equal to the tick where
    // `equalPhotos` says so.
    Springs springs(double photoWeight, bool equalPhotos) const;
    // Where a line is when its sets are at these places.
    double placeOf(std::size_t line, const std::vector<double>& places) const;
    // Where it was before.
    Length sourceOf(std::size_t line) const;
    std::size_t setOf(std::size_t line) const { return m_sets.setOf(line); }
    Length offsetOf(std::size_t line) const { return m_sets.offsetOf(line); }
    std::size_t lineCount() const { return 1 + 2 * m_task.before.size(); }

  private:
    // A line that springs hang on: an outermost edge of a piece, or a line of the page.
    struct Hook {
        Length source;
        std::size_t line = 0;
        Length shift;  // from the line to the hook, on the new page
        std::size_t piece = 0;
        bool ofPage = false;
        End end = End::Low;
    };

    Interval outer(std::size_t piece) const;
    bool facing(std::size_t a, std::size_t b) const;
    void require(const Relation& relation);
    void addEqualPhotos(Springs& springs) const;
    bool requireEquation(Springs& springs, const Relation& relation) const;
    void addEquations(Springs& springs) const;
    void addSizes(Springs& springs, double photoWeight) const;
    void addGaps(Springs& springs) const;
    void addGap(Springs& springs, const Hook& low, const Hook& high) const;
    void addPageBounds(Springs& springs) const;
    void addCorners(Springs& springs) const;
    std::vector<Hook> pageHooks() const;
    Hook hookOf(std::size_t piece, End end) const;
    Stretch stretch(std::size_t a, std::size_t b, Length shift) const;

    const AxisTask& m_task;
    LineSets m_sets;
    std::vector<Hook> m_pageHooks;
    std::vector<const Relation*> m_equations;  // in the order they are taken
};

}  // namespace matwright::carry
