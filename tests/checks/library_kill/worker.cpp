// SPDX-License-Identifier: MIT
#include "tests/checks/library_kill/worker.h"

#include <fmt/format.h>

#include <chrono>
#include <thread>

#include "core/library/index.h"
#include "core/library/keeping.h"
#include "core/library/label_store.h"
#include "core/library/saving.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/checks/library_kill/outsider.h"

namespace matwright::check {

namespace {

// A sketch in an open window: saved some operations later, when others may have changed the file.
struct OpenSketch {
    std::filesystem::path path;
    std::optional<ContentKey> content;
    int version = 0;
};

class Worker {
  public:
    Worker(const Place& place, test::Random random) : m_place(place), m_random(random) {}

    void step() {
        struct Choice {
            std::uint64_t share;
            void (Worker::*act)();
        };
        static constexpr Choice choices[] = {
            {20, &Worker::open},     {35, &Worker::save},  {14, &Worker::rename},
            {6, &Worker::trash},     {5, &Worker::copy},   {10, &Worker::tag},
            {15, &Worker::outsider}, {5, &Worker::moveIt}, {2, &Worker::index}};
        std::uint64_t drawn = test::below(m_random, 112);
        for (const Choice& choice : choices) {
            if (drawn < choice.share) {
                (this->*choice.act)();
                return;
            }
            drawn -= choice.share;
        }
    }

  private:
    void open() {
        constexpr std::size_t mostOpen = 4;
        const std::string sketch =
            test::below(m_random, 6) == 0 ? "" : anySketch(m_place, m_random);
        const auto bytes = m_store.read(m_place.library / sketch, maxSketchFileBytes);
        if (m_open.size() >= mostOpen) {
            m_open.erase(m_open.begin());
        }
        if (bytes && versionOf(*bytes)) {
            m_open.push_back({m_place.library / sketch, contentKeyOf(*bytes), *versionOf(*bytes)});
        } else {
            const auto name = fmt::format("new {}{}", test::below(m_random, 20), sketchFileSuffix);
            m_open.push_back({m_place.library / name, std::nullopt, 0});
        }
    }

    void save() {
        if (m_open.empty()) {
            open();
        }
        OpenSketch& sketch = m_open[test::below(m_random, m_open.size())];
        const int version = m_place.newVersion();
        m_place.journal.write({Deed::TrySave, version, sketch.version, ""});
        const auto saved = saveKeepingBoth(m_store, sketch.path, sketch.content,
                                           versionSketch(version, "a sketch"));
        if (!saved) {
            // Its folder is not there any more: nothing was promised.
            m_place.journal.write({Deed::Failed, 0, 0, saved.error().text()});
            return;
        }
        // What goes beside or to a place that was left has something to say.
        m_place.journal.write({Deed::DidSave, version, saved->said.empty() ? 0 : 1, ""});
        if (saved->keptBoth) {
            m_place.journal.write({Deed::KeptBoth, version, 0, ""});
        }
        sketch = {saved->path, saved->content, version};
    }

    // Sketches that others just took away are no failure.
    template <typename T>
    void tell(const Result<T>& done) {
        const bool isGone = !done && done.error().code == ErrorCode::NotFound;
        m_place.journal.write(done || isGone
                                  ? JournalLine{Deed::DidOther, 0, 0, ""}
                                  : JournalLine{Deed::Failed, 0, 0, done.error().text()});
    }

    void rename() {
        const auto name = fmt::format("name {}", test::below(m_random, 30));
        tell(renameSketch(m_store, m_place.library, anySketch(m_place, m_random), name));
    }
    void copy() {
        const std::string folder = test::below(m_random, 2) == 0 ? "" : "sub";
        tell(copySketch(m_store, m_place.library, anySketch(m_place, m_random), folder));
    }
    void trash() {
        const auto trashed =
            trashSketch(m_place.library, anySketch(m_place, m_random), m_place.trash);
        tell(trashed);
        if (trashed && test::below(m_random, 3) == 0) {
            tell(untrashSketch(m_place.library, *trashed));
        }
    }
    void tag() {
        const int number = m_place.newVersion();
        const auto changed = changeLabels(
            m_store, m_place.library, anySketch(m_place, m_random),
            [&](Labels& labels) { labels.tags.push_back(fmt::format("tag {}", number)); });
        tell(changed);
        if (changed) {
            m_place.journal.write({Deed::DidTag, number, 0, ""});
        }
    }
    void outsider() { writeAsOutsider(m_place, m_random); }
    void moveIt() { moveAsOutsider(m_place, m_random); }
    void index() { LibraryIndex(m_place.library, m_place.cache).update(); }

    const Place& m_place;
    test::Random m_random;
    DiskFileStore m_store;
    std::vector<OpenSketch> m_open;
};

}  // namespace

void work(const Place& place, test::Random random, int operations) {
    Worker worker(place, random);
    while (place.shared->begun++ < operations) {
        worker.step();
        std::this_thread::sleep_for(std::chrono::microseconds(200));
    }
}

}  // namespace matwright::check
