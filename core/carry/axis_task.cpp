// SPDX-License-Identifier: MIT
#include "core/carry/axis_task.h"

#include <algorithm>
#include <cmath>
#include <utility>

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

    // Where the piece's other end follows by an equation (it is centred, say), a whole number of
    // steps need not give a length on the scale: how much further that is.
    double shiftForFollower(std::size_t line) const {
        const std::size_t set = m_net.setOf(line);
        const std::size_t other = m_net.setOf(line % 2 == 1 ? line + 1 : line - 1);
        if (!m_springs.isDependent(other)) {
            return 0;
        }
        const auto lengthAt = [&](double shift) {
            std::vector<double> places = m_places;
            places[set] += shift;
            m_springs.followEquations(places);
            const std::size_t low = line % 2 == 1 ? line : line - 1;
            return m_net.placeOf(low + 1, places) - m_net.placeOf(low, places);
        };
        const double length = lengthAt(0);
        const double gain = (lengthAt(m_step) - length) / m_step;
        return std::abs(gain) < 0.5 ? 0 : (toStep(length) - length) / gain;
    }

    // Any other is moved by a whole number of steps.
    bool placeAny() {
        for (std::size_t line = 1; line < m_net.lineCount(); ++line) {
            const std::size_t set = m_net.setOf(line);
            if (isOpen(set)) {
                const double source = ticksOf(m_net.sourceOf(line));
                const double moved = m_net.placeOf(line, m_places) - source;
                m_places[set] += toStep(moved) - moved;
                m_places[set] += shiftForFollower(line);
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
    constexpr double hardly = 2;
    const std::pair<Length, double> tries[] = {{task.step, hardly},
                                               {task.step, hardly + ticksOf(task.mayBeShort)},
                                               {task.step.scaledRounded(1, 2), hardly},
                                               {task.step.scaledRounded(1, 4), hardly},
                                               {Length::fromTicks(1), hardly}};
    for (const auto& [step, forgiven] : tries) {
        rounded = Rounding(task, net, springs, places, step).rounded();
        if (!springs.missesMore(rounded, places, forgiven)) {
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
