// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <cstdint>
#include <stop_token>

namespace matwright::sheets {

// What a search may still do. Steps are counted by what was done, never by the clock, so two runs
// that are ended by the step limit are equal; the clock and the stop token only end a run early.
class Work {
  public:
    using Clock = std::chrono::steady_clock;

    Work(std::uint64_t steps, Clock::time_point deadline, std::stop_token stop = {})
        : m_limit(steps), m_deadline(deadline), m_stop(std::move(stop)) {}

    // False once the work is over.
    bool spend(std::uint64_t steps = 1) {
        m_spent += steps;
        if (m_spent >= m_nextLook) {
            look();
        }
        return !m_over;
    }
    bool over() const { return m_over; }
    bool stoppedByClock() const { return m_byClock; }
    bool cancelled() const { return m_cancelled; }
    std::uint64_t spent() const { return m_spent; }

    // Lets the search go on after a share of the limit, given in steps spent in all.
    void setLimit(std::uint64_t steps) {
        m_limit = steps;
        m_over = m_byClock || m_cancelled || m_spent >= m_limit;
    }
    std::uint64_t limit() const { return m_limit; }

  private:
    void look() {
        constexpr std::uint64_t stepsBetweenLooks = 4096;
        m_nextLook = m_spent + stepsBetweenLooks;
        m_cancelled = m_cancelled || m_stop.stop_requested();
        m_byClock = m_byClock || Clock::now() >= m_deadline;
        m_over = m_byClock || m_cancelled || m_spent >= m_limit;
        if (!m_over && m_limit - m_spent < stepsBetweenLooks) {
            m_nextLook = m_limit;
        }
    }

    std::uint64_t m_limit;
    Clock::time_point m_deadline;
    std::stop_token m_stop;
    std::uint64_t m_spent = 0;
    std::uint64_t m_nextLook = 0;
    bool m_over = false;
    bool m_byClock = false;
    bool m_cancelled = false;
};

}  // namespace matwright::sheets
