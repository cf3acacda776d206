// SPDX-License-Identifier: MIT
#include "app/photos/reading/job_queue.h"

#include <sys/resource.h>

#include <algorithm>
#include <utility>

namespace matwright::app {

namespace {

// On Linux this holds for the calling thread alone.
void stepBack() {
    setpriority(PRIO_PROCESS, 0, 10);
}

}  // namespace

JobQueue::JobQueue(int threads) {
    for (int i = 0; i < threads; ++i) {
        m_threads.emplace_back([this](const std::stop_token& ended) { run(ended); });
    }
}

JobQueue::~JobQueue() {
    {
        const std::scoped_lock lock(m_mutex);
        m_waiting.clear();
        for (Running* running : m_running) {
            running->stop.request_stop();
        }
    }
    for (std::jthread& thread : m_threads) {
        thread.request_stop();
    }
    m_threads.clear();
}

bool JobQueue::add(Urgency urgency, const std::string& key, Work work, bool first) {
    {
        const std::scoped_lock lock(m_mutex);
        std::deque<Job>& jobs = m_waiting[urgency];
        if (std::ranges::find(jobs, key, &Job::key) != jobs.end()) {
            return false;
        }
        jobs.insert(first ? jobs.begin() : jobs.end(), Job{key, std::move(work)});
    }
    m_added.notify_one();
    return true;
}

void JobQueue::drop(Urgency urgency) {
    const std::scoped_lock lock(m_mutex);
    m_waiting[urgency].clear();
    for (Running* running : m_running) {
        if (running->urgency == urgency) {
            running->stop.request_stop();
        }
    }
}

std::vector<std::string> JobQueue::dropWaiting(Urgency urgency) {
    const std::scoped_lock lock(m_mutex);
    std::vector<std::string> keys;
    for (Job& job : std::exchange(m_waiting[urgency], {})) {
        keys.push_back(std::move(job.key));
    }
    return keys;
}

std::size_t JobQueue::count(Urgency urgency) const {
    const std::scoped_lock lock(m_mutex);
    const auto waiting = m_waiting.find(urgency);
    const auto running = std::ranges::count(m_running, urgency, &Running::urgency);
    return (waiting == m_waiting.end() ? 0 : waiting->second.size()) +
           static_cast<std::size_t>(running);
}

bool JobQueue::isIdle() const {
    const std::scoped_lock lock(m_mutex);
    return m_running.empty() &&
           std::ranges::all_of(m_waiting, [](const auto& entry) { return entry.second.empty(); });
}

std::deque<JobQueue::Job>* JobQueue::mostUrgent(Urgency& urgency) {
    for (auto& [how, jobs] : m_waiting) {
        if (!jobs.empty()) {
            urgency = how;
            return &jobs;
        }
    }
    return nullptr;
}

void JobQueue::run(const std::stop_token& ended) {
    stepBack();
    std::unique_lock lock(m_mutex);
    while (!ended.stop_requested()) {
        Running running{};
        std::deque<Job>* jobs = mostUrgent(running.urgency);
        if (!jobs) {
            m_added.wait(lock, ended, [this] {
                Urgency ignored{};
                return mostUrgent(ignored) != nullptr;
            });
            continue;
        }
        const Job job = std::move(jobs->front());
        jobs->pop_front();
        m_running.push_back(&running);
        lock.unlock();
        job.work(running.stop.get_token());
        lock.lock();
        std::erase(m_running, &running);
    }
}

}  // namespace matwright::app
