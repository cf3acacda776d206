// SPDX-License-Identifier: MIT
#include "tests/checks/library_kill/outsider.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>

#include "core/sketchfile/sketch_file.h"
#include "tests/support/temporary_folder.h"

namespace matwright::check {

namespace fs = std::filesystem;

std::vector<std::string> sketchesIn(const fs::path& library) {
    std::vector<std::string> sketches;
    std::error_code failure;
    for (fs::recursive_directory_iterator it(library, failure), last; !failure && it != last;
         it.increment(failure)) {
        const std::string name = it->path().filename().string();
        if (name.starts_with('.')) {
            it.disable_recursion_pending();
        } else if (name.ends_with(sketchFileSuffix)) {
            sketches.push_back(it->path().lexically_relative(library).string());
        }
    }
    std::ranges::sort(sketches);
    return sketches;
}

std::string anySketch(const Place& place, test::Random& random) {
    const auto sketches = sketchesIn(place.library);
    return sketches.empty() ? "" : sketches[test::below(random, sketches.size())];
}

void writeAsOutsider(const Place& place, test::Random& random) {
    const std::string sketch = anySketch(place, random);
    if (sketch.empty()) {
        return;
    }
    const int version = place.newVersion();
    const fs::path file = place.library / sketch;
    const fs::path beside = file.parent_path() / fmt::format(".outsider-{}", version);
    place.journal.write({Deed::TryWrite, version, 0, ""});
    test::writeFile(beside, writeSketch(versionSketch(version, "from outside")));
    const bool isWritten =
        ::renameat2(AT_FDCWD, beside.c_str(), AT_FDCWD, file.c_str(), RENAME_EXCHANGE) == 0;
    if (isWritten) {
        const int displaced = versionOf(test::readFile(beside)).value_or(0);
        place.journal.write({Deed::DidWrite, version, displaced, ""});
    }
    ::unlink(beside.c_str());
}

void moveAsOutsider(const Place& place, test::Random& random) {
    const std::string sketch = anySketch(place, random);
    const auto number = test::below(random, 1'000);
    const fs::path folder = place.library / (number % 2 == 0 ? "" : "sub");
    const fs::path to = folder / fmt::format("moved {}{}", number, sketchFileSuffix);
    std::error_code ignored;
    fs::create_directories(folder, ignored);
    if (!sketch.empty()) {
        ::renameat2(AT_FDCWD, (place.library / sketch).c_str(), AT_FDCWD, to.c_str(),
                    RENAME_NOREPLACE);
    }
}

std::map<int, int> interruptedWrites(const fs::path& library) {
    std::map<int, int> overwritten;
    for (const auto& entry : fs::recursive_directory_iterator(library)) {
        int version = 0;
        if (std::sscanf(entry.path().filename().c_str(), ".outsider-%d", &version) != 1) {
            continue;
        }
        const auto held = versionOf(test::readFile(entry.path()));
        if (held && *held != version) {
            overwritten.emplace(version, *held);
        }
    }
    return overwritten;
}

}  // namespace matwright::check
