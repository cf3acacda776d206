// SPDX-License-Identifier: MIT
#include "core/library/parallel_reading.h"

#include <algorithm>
#include <atomic>
#include <mutex>
#include <thread>
#include <utility>

namespace matwright {

namespace {

class Reading {
  public:
    Reading(const std::filesystem::path& library, std::span<const ReadJob> jobs,
            std::stop_token stop)
        : m_library(library), m_jobs(jobs), m_stop(std::move(stop)) {}

    // False where nothing is left to read.
    bool readOne() {
        const std::size_t i = m_next.fetch_add(1);
        if (i >= m_jobs.size() || m_stop.stop_requested()) {
            return false;
        }
        const ReadJob& job = m_jobs[i];
        ReadResult result{job.file, readForIndex(m_store, m_library, *job.file, job.known)};
        const std::scoped_lock lock(m_mutex);
        m_results.push_back(std::move(result));
        return true;
    }

    std::vector<ReadResult> taken() {
        const std::scoped_lock lock(m_mutex);
        return std::exchange(m_results, {});
    }

  private:
    const std::filesystem::path& m_library;
    std::span<const ReadJob> m_jobs;
    std::stop_token m_stop;
    DiskFileStore m_store;  // has no state
    std::atomic<std::size_t> m_next = 0;
    std::mutex m_mutex;
    std::vector<ReadResult> m_results;
};

}  // namespace

void readInParallel(const std::filesystem::path& library, std::span<const ReadJob> jobs,
                    int threads, const std::stop_token& stop,
                    const std::function<void(std::vector<ReadResult>)>& collect) {
    // A thread costs more than the few files it would read.
    constexpr std::size_t worthAThread = 16;
    const auto others =
        std::min(static_cast<std::size_t>(std::max(threads, 1)) - 1, jobs.size() / worthAThread);
    Reading reading(library, jobs, stop);
    {
        std::vector<std::jthread> readers;
        readers.reserve(others);
        for (std::size_t i = 0; i < others; ++i) {
            readers.emplace_back([&reading] {
                while (reading.readOne()) {
                }
            });
        }
        while (reading.readOne()) {
            collect(reading.taken());
        }
    }
    collect(reading.taken());
}

}  // namespace matwright
