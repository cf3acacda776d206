// SPDX-License-Identifier: MIT
#pragma once

#include "core/measure/length.h"

namespace matwright {

// Page coordinates: origin at the top left corner of the page, x to the right, y down.
struct Point {
    Length x;
    Length y;
    friend constexpr bool operator==(const Point&, const Point&) = default;
    friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
};

struct Size {
    Length width;
    Length height;
    friend constexpr bool operator==(const Size&, const Size&) = default;
    constexpr Size turned() const { return {height, width}; }
    constexpr bool isPositive() const { return width.isPositive() && height.isPositive(); }
    constexpr bool isUpright() const { return height > width; }
    // Whether `other` fits in this size as it lies, equal sizes included.
    constexpr bool contains(Size other) const {
        return other.width <= width && other.height <= height;
    }
};

// A closed stretch [low, high] of one axis; low <= high. A single point is a valid interval.
struct Interval {
    Length low;
    Length high;
    friend constexpr bool operator==(const Interval&, const Interval&) = default;
    constexpr Length length() const { return high - low; }
    constexpr Length centreRoundedDown() const { return low + length().halfRoundedDown(); }
    // Boundary included.
    constexpr bool contains(Length v) const { return low <= v && v <= high; }
    constexpr bool contains(Interval o) const { return low <= o.low && o.high <= high; }
    // Boundary excluded.
    constexpr bool interiorContains(Length v) const { return low < v && v < high; }
    // Touching counts for `intersects`, not for `interiorIntersects`.
    constexpr bool intersects(Interval o) const { return low <= o.high && o.low <= high; }
    constexpr bool interiorIntersects(Interval o) const { return low < o.high && o.low < high; }
    constexpr Interval united(Interval o) const {
        return {low < o.low ? low : o.low, high > o.high ? high : o.high};
    }
    constexpr Interval moved(Length by) const { return {low + by, high + by}; }
    // Grown by `by` at both ends; a negative `by` must leave low <= high.
    constexpr Interval expanded(Length by) const { return {low - by, high + by}; }
};

// An upright rectangle: one interval an axis, edges included.
struct Rect {
    Interval x;
    Interval y;
    friend constexpr bool operator==(const Rect&, const Rect&) = default;
    static constexpr Rect at(Point topLeft, Size size) {
        return {{topLeft.x, topLeft.x + size.width}, {topLeft.y, topLeft.y + size.height}};
    }
    // The smallest rectangle with both points on its boundary, in any order.
    static Rect spanning(Point a, Point b);
    constexpr Length left() const { return x.low; }
    constexpr Length right() const { return x.high; }
    constexpr Length top() const { return y.low; }
    constexpr Length bottom() const { return y.high; }
    constexpr Point topLeft() const { return {x.low, y.low}; }
    constexpr Point bottomRight() const { return {x.high, y.high}; }
    constexpr Size size() const { return {x.length(), y.length()}; }
    constexpr Point centreRoundedDown() const {
        return {x.centreRoundedDown(), y.centreRoundedDown()};
    }
    constexpr bool contains(Point p) const { return x.contains(p.x) && y.contains(p.y); }
    constexpr bool contains(const Rect& o) const { return x.contains(o.x) && y.contains(o.y); }
    constexpr bool intersects(const Rect& o) const {
        return x.intersects(o.x) && y.intersects(o.y);
    }
    constexpr bool interiorIntersects(const Rect& o) const {
        return x.interiorIntersects(o.x) && y.interiorIntersects(o.y);
    }
    constexpr Rect united(const Rect& o) const { return {x.united(o.x), y.united(o.y)}; }
    constexpr Rect moved(Point by) const { return {x.moved(by.x), y.moved(by.y)}; }
    constexpr Rect expanded(Length by) const { return {x.expanded(by), y.expanded(by)}; }
};

}  // namespace matwright
