// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <thread>

#include "tests/checks/stock_kill/stock_subject.h"

namespace matwright::test {

namespace {

using std::chrono::microseconds;

constexpr int workers = 2;

// What a worker says through its pipe: small enough to be written whole or not at all.
struct Word {
    enum class What : std::uint64_t { Begin, Made, Failed };
    What what = What::Begin;
    std::uint64_t state = 0;  // hash of the state when the change is made
};

std::uint64_t hashOf(const std::string& state) {
    return std::hash<std::string>()(state);
}

void say(int pipe, Word word) {
    if (::write(pipe, &word, sizeof word) != ssize_t{sizeof word}) {
        ::_exit(3);
    }
}

[[noreturn]] void workUntilKilled(StockSubject& subject, const std::filesystem::path& folder,
                                  int number, bool isAlone, std::uint64_t seed, int pipe) {
    Random random(seed);
    const std::unique_ptr<StockWorker> worker = subject.worker(folder, number);
    while (worker) {
        const StockWorker::Change change = worker->next(random, isAlone);
        say(pipe, {Word::What::Begin, hashOf(change.after)});
        const bool isMade = change.make();
        say(pipe, {isMade ? Word::What::Made : Word::What::Failed, hashOf(change.after)});
    }
    say(pipe, {Word::What::Failed, 0});
    ::pause();
    ::_exit(2);
}

struct RunningWorker {
    pid_t process = -1;
    int pipe = -1;
};

RunningWorker start(StockSubject& subject, const std::filesystem::path& folder, int number,
                    bool isAlone, std::uint64_t seed) {
    int ends[2] = {-1, -1};
    if (::pipe(ends) != 0) {
        return {};
    }
    const pid_t process = ::fork();
    if (process == 0) {
        ::close(ends[0]);
        workUntilKilled(subject, folder, number, isAlone, seed, ends[1]);
    }
    ::close(ends[1]);
    return {process, ends[0]};
}

// The change a worker had begun and not told as made.
struct Begun {
    bool isSo = false;
    std::uint64_t state = 0;
};

class Rounds {
  public:
    Rounds(StockSubject& subject, const std::filesystem::path& folder, std::uint64_t seed)
        : m_subject(subject), m_folder(folder), m_random(seed) {
        for (int number = 0; number < workers; ++number) {
            m_known[number] = hashNow(number);
        }
    }

    KillTally run(int kills) {
        while (m_tally.kills < kills && m_tally.faults.empty()) {
            round(m_tally.kills % 2 == 0);
        }
        return m_tally;
    }

  private:
    void round(bool isAlone) {
        std::vector<RunningWorker> running;
        for (int number = 0; number < (isAlone ? 1 : workers); ++number) {
            running.push_back(start(m_subject, m_folder, number, isAlone, m_random()));
        }
        std::this_thread::sleep_for(
            microseconds(static_cast<std::int64_t>(below(m_random, m_range))));
        for (const RunningWorker& worker : running) {
            ::kill(worker.process, SIGKILL);
        }
        for (std::size_t number = 0; number < running.size(); ++number) {
            settle(running[number], static_cast<int>(number));
        }
    }

    // Long enough that workers get to work, short enough that many kills come early.
    void adapt(int madeNow) {
        m_range = madeNow > 6 ? m_range * 9 / 10 : m_range * 21 / 20;
        m_range = std::clamp<std::uint64_t>(m_range, 3'000, 2'000'000);
    }

    void settle(const RunningWorker& worker, int number) {
        ++m_tally.kills;
        int status = 0;
        ::waitpid(worker.process, &status, 0);
        Begun begun;
        int made = 0;
        for (Word word; ::read(worker.pipe, &word, sizeof word) == ssize_t{sizeof word};) {
            if (word.what == Word::What::Begin) {
                begun = {true, word.state};
                continue;
            }
            if (word.what == Word::What::Failed) {
                fault(number, "a change failed");
            }
            m_known[number] = word.state;
            begun = {};
            ++made;
        }
        ::close(worker.pipe);
        m_tally.changes += made;
        adapt(made);
        judge(number, begun);
    }

    void judge(int number, Begun begun) {
        const std::uint64_t now = hashNow(number);
        m_tally.between += begun.isSo;
        if (begun.isSo && now == begun.state) {
            ++m_tally.kept;
        } else if (now != m_known[number]) {
            fault(number, "the store holds something else than was told");
        }
        m_known[number] = now;
    }

    std::uint64_t hashNow(int number) {
        const std::unique_ptr<StockWorker> looking = m_subject.worker(m_folder, number);
        const std::string state = looking ? looking->state() : std::string();
        if (state.empty()) {
            fault(number, "the store cannot be read");
        }
        return hashOf(state);
    }

    void fault(int number, const char* sentence) {
        m_tally.faults.push_back(
            fmt::format("kill {}, worker {}: {}", m_tally.kills, number, sentence));
    }

    StockSubject& m_subject;
    const std::filesystem::path& m_folder;
    Random m_random;
    std::uint64_t m_known[workers] = {};
    std::uint64_t m_range = 60'000;  // microseconds
    KillTally m_tally;
};

}  // namespace

KillTally killRounds(StockSubject& subject, const std::filesystem::path& folder, int kills,
                     std::uint64_t seed) {
    KillTally tally = Rounds(subject, folder, seed).run(kills);
    const std::vector<std::string> more = subject.faultsAtTheEnd(folder);
    tally.faults.insert(tally.faults.end(), more.begin(), more.end());
    return tally;
}

}  // namespace matwright::test
