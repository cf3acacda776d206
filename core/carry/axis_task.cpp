// SPDX-License-Identifier: MIT
#include "core/carry/axis_task.h"

#include <algorithm>
#include <cmath>

#include "core/carry/axis_net.h"
#include "core/measure/ticks.h"

namespace matwright::carry {

namespace {

// At first photos hardly give, to find out which of them have to.
constexpr double firstPhotoWeight = 1'000;
constexpr double forcedPhotoWeight = 5;

double wishedLength(const AxisTask& task, std::size_t piece) {
    return ticksOf(task.wishes[piece].length);
}

// Photos that no relation forces to another length keep theirs exactly.
void makeUnforcedPhotosRigid(const AxisTask& task, AxisNet& net) {
    const std::vector<double> places = net.springs(firstPhotoWeight, true).settle();
    for (std::size_t i = 0; i < task.wishes.size(); ++i) {
        if (task.wishes[i].firmness != Wish::Firmness::Photo) {
            continue;
        }
        const double length =
            net.placeOf(lineOf(i, End::High), places) - net.placeOf(lineOf(i, End::Low), places);
        const double wished = wishedLength(task, i);
        if (std::abs(length - wished) <= 0.02 * wished) {
            net.makeRigid(i);
        }
    }
}

// Puts sets of lines on the trimmer's scale, one after the other.
class Rounding {
  public:
    Rounding(const AxisTask& task, const AxisNet& net, const Springs& springs,
             std::vector<double> places, Length step)
        : m_task(task),
          m_net(net),
          m_springs(springs),
          m_places(std::move(places)),
          m_step(ticksOf(step)),
          m_done(m_places.size()) {
        m_done[0] = true;
    }

    std::vector<double> rounded() {
        while (placeBesidePlaced() || placeAny()) {
        }
        m_springs.followEquations(m_places);
        for (double& place : m_places) {
            place = std::round(place);
        }
        return m_places;
    }

  private:
    double toStep(double length) const { return std::round(length / m_step) * m_step; }
    bool isOpen(std::size_t set) const { return !m_done[set] && !m_springs.isDependent(set); }

    // A piece with one end placed gets a length on the scale.
    bool placeBesidePlaced() {
        for (std::size_t i = 0; i < m_task.wishes.size(); ++i) {
            const std::size_t low = lineOf(i, End::Low);
            const std::size_t high = lineOf(i, End::High);
            const bool lowOpen = isOpen(m_net.setOf(low));
            const bool highOpen = isOpen(m_net.setOf(high));
            if ((m_done[m_net.setOf(low)] && highOpen) || (m_done[m_net.setOf(high)] && lowOpen)) {
                const double length = m_net.placeOf(high, m_places) - m_net.placeOf(low, m_places);
                const double change = toStep(length) - length;
                const std::size_t set = m_net.setOf(highOpen ? high : low);
                m_places[set] += highOpen ? change : -change;
                m_done[set] = true;
                return true;
            }
        }
        return false;
    }

    // Any other is moved by a whole number of steps.
    bool placeAny() {
        for (std::size_t line = 1; line < m_net.lineCount(); ++line) {
            const std::size_t set = m_net.setOf(line);
            if (isOpen(set)) {
                const double source = ticksOf(m_net.sourceOf(line));
                const double moved = m_net.placeOf(line, m_places) - source;
                m_places[set] += toStep(moved) - moved;
                m_done[set] = true;
                return true;
            }
        }
        return false;
    }

    const AxisTask& m_task;
    const AxisNet& m_net;
    const Springs& m_springs;
    std::vector<double> m_places;
    double m_step;
    std::vector<bool> m_done;
};

}  // namespace

std::vector<Interval> settled(const AxisTask& task) {
    AxisNet net(task);
    net.joinRelated();
    net.preferEqualPhotos();
    makeUnforcedPhotosRigid(task, net);
    net.preferEqualPhotos();
    const std::vector<double> places = net.springs(forcedPhotoWeight, true).settle();
    // Photos that share what is no multiple of the step may differ by one.
    const Springs springs = net.springs(forcedPhotoWeight, false);
    std::vector<double> rounded;
    for (const Length step : {task.step, task.step.scaledRounded(1, 2),
                              task.step.scaledRounded(1, 4), Length::fromTicks(1)}) {
        rounded = Rounding(task, net, springs, places, step).rounded();
        if (!springs.missesMore(rounded, places)) {
            break;
        }
    }
    std::vector<Interval> trims;
    for (std::size_t i = 0; i < task.wishes.size(); ++i) {
        const auto at = [&](End end) {
            return Length::fromTicks(std::llround(net.placeOf(lineOf(i, end), rounded)));
        };
        trims.push_back({at(End::Low), at(End::High)});
    }
    return trims;
}

}  // namespace matwright::carry
