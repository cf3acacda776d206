// SPDX-License-Identifier: MIT
#pragma once

#include <condition_variable>
#include <cstddef>
#include <deque>
#include <functional>
#include <map>
#include <mutex>
#include <stop_token>
#include <string>
#include <thread>
#include <vector>

namespace matwright::app {

// Work on a few threads, the most urgent first; within one urgency the first come is the first
// done. The threads step back behind the window's. Calls may come from any thread.
class JobQueue {
  public:
    enum class Urgency { Large, Page, Tone, Visible, LookAt, State, Search, Background };
    // Gives up soon after its token asks it to.
    using Work = std::function<void(std::stop_token)>;

    explicit JobQueue(int threads);
    // Drops what waits, and waits for what runs.
    ~JobQueue();

    // A job of the same urgency and key that still waits is not added again: false. `first`: before
    // those of its urgency that wait already.
    bool add(Urgency urgency, const std::string& key, Work work, bool first = false);
    // What waits is gone, what runs is told to stop.
    void drop(Urgency urgency);
    // Only what waits; gives its keys.
    std::vector<std::string> dropWaiting(Urgency urgency);
    // Waiting and running.
    std::size_t count(Urgency urgency) const;
    bool isIdle() const;

  private:
    struct Job {
        std::string key;
        Work work;
    };
    struct Running {
        Urgency urgency;
        std::stop_source stop;
    };
    void run(const std::stop_token& ended);
    std::deque<Job>* mostUrgent(Urgency& urgency);

    mutable std::mutex m_mutex;
    std::condition_variable_any m_added;
    std::map<Urgency, std::deque<Job>> m_waiting;
    std::vector<Running*> m_running;
    std::vector<std::jthread> m_threads;  // last: ends first
};

}  // namespace matwright::app
