// SPDX-License-Identifier: MIT
#include "core/prints/on_all_cores.h"

#include <gtest/gtest.h>
#include <sys/resource.h>
#include <unistd.h>

#include <atomic>
#include <fstream>
#include <memory>
#include <new>
#include <vector>

#include "core/prints/rendering.h"
#include "core/prints/within_memory.h"
#include "tests/core/prints/print_probe.h"
#include "tests/support/busy_photo.h"

namespace matwright {

namespace {

// Lets this process have only so many bytes more of addresses.
class LittleMemory {
  public:
    explicit LittleMemory(rlim_t more) {
        getrlimit(RLIMIT_AS, &m_before);
        std::size_t pages = 0;
        std::ifstream("/proc/self/statm") >> pages;
        const rlimit limit{pages * static_cast<rlim_t>(sysconf(_SC_PAGESIZE)) + more,
                           m_before.rlim_max};
        setrlimit(RLIMIT_AS, &limit);
    }
    ~LittleMemory() { setrlimit(RLIMIT_AS, &m_before); }
    LittleMemory(const LittleMemory&) = delete;
    LittleMemory& operator=(const LittleMemory&) = delete;

  private:
    rlimit m_before{};
};

constexpr bool isSanitized =
#ifdef __SANITIZE_ADDRESS__
    true;
#else
    false;
#endif

TEST(OnAllCores, DoesEveryWorkOnce) {
    for (const unsigned workers : {0U, 1U, 3U, 50U}) {
        std::vector<std::atomic<int>> done(20);
        ASSERT_TRUE(onAllCores(done.size(), [&](std::size_t i) { ++done[i]; }, workers));
        for (const auto& times : done) {
            EXPECT_EQ(times, 1);
        }
    }
    EXPECT_TRUE(onAllCores(0, [](std::size_t) { FAIL(); }));
}

TEST(OnAllCores, TurnsWhatIsThrownIntoASentenceAndDoesTheOthers) {
    std::atomic<int> done = 0;
    const Result<void> outcome = onAllCores(
        10,
        [&](std::size_t i) {
            if (i == 3) {
                throw std::bad_alloc();
            }
            ++done;
        },
        2);
    EXPECT_EQ(done, 9);
    ASSERT_FALSE(outcome);
    EXPECT_EQ(outcome.error().code, ErrorCode::TooLarge);
    EXPECT_NE(outcome.error().sentence.find("memory"), std::string::npos);
}

TEST(OnAllCores, GoesOnWithFewerThreadsWhereNoMoreCanBeStarted) {
    if (isSanitized) {
        GTEST_SKIP() << "SKIPPED: sanitizers want all addresses";
    }
    // A thread's stack takes some megabytes of addresses: a few fit, sixty do not.
    std::atomic<int> done = 0;
    const LittleMemory little(rlim_t{64} << 20U);
    EXPECT_TRUE(onAllCores(60, [&](std::size_t) { ++done; }, 60));
    EXPECT_EQ(done, 60);
}

TEST(LargePrint, SaysThatMemoryIsShort) {
    if (isSanitized) {
        GTEST_SKIP() << "SKIPPED: sanitizers want all addresses";
    }
    const test::TemporaryFolder place;
    Photo photo;
    photo.path = test::writeBusyPhoto(place / "photo.jpg", {600, 600}, 5);
    // A small picture on white paper of 1,100 megabytes.
    Print print = test::plainPrint({Length::inches(16), Length::inches(16)});
    print.window = {Length::inches(0, 1, 2), Length::inches(0, 1, 2)};
    print.trim = Rect::at({}, print.window);
    PrintOptions options;
    options.ppi = 1200;
    ASSERT_TRUE(renderPrint(test::plainPrint(print.window), photo, {}));  // the library is ready
    const LittleMemory little(rlim_t{500} << 20U);
    const auto rendered = renderPrint(print, photo, options);
    ASSERT_FALSE(rendered);
    EXPECT_EQ(rendered.error().code, ErrorCode::TooLarge);
    EXPECT_NE(rendered.error().sentence.find("memory"), std::string::npos);
}

}  // namespace

}  // namespace matwright
