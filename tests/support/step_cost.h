// SPDX-License-Identifier: MIT
#pragma once

#include <QCoreApplication>
#include <QEvent>
#include <QWidget>
#include <algorithm>
#include <ctime>
#include <functional>
#include <vector>

// What bars of drag steps measure with: processor time to the end of the repaint.

namespace matwright::test {

// Counts what a widget really paints: the event loop may put a repaint off to a later turn.
class PaintCounter final : public QObject {
  public:
    explicit PaintCounter(QWidget& widget) { widget.installEventFilter(this); }
    int paints() const { return m_paints; }
    bool eventFilter(QObject*, QEvent* event) override {
        m_paints += event->type() == QEvent::Paint ? 1 : 0;
        return false;
    }

  private:
    int m_paints = 0;
};

inline double median(std::vector<double> values) {
    std::ranges::sort(values);
    return values[values.size() / 2];
}

// The median of `count` steps in milliseconds; each step ends when its repaint is done.
inline double medianStepMs(const PaintCounter& counter, int count,
                           const std::function<void(int)>& step) {
    std::vector<double> ms;
    for (int i = 0; i < count; ++i) {
        const int before = counter.paints();
        const std::clock_t start = std::clock();
        step(i);
        while (counter.paints() == before) {
            QCoreApplication::processEvents();
        }
        QCoreApplication::processEvents();
        ms.push_back(1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
    }
    return median(std::move(ms));
}

}  // namespace matwright::test
