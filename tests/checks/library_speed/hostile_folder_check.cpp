// SPDX-License-Identifier: MIT
// A library folder with everything in it that goes wrong: 1,000 broken sketches, names with line
// breaks, of 255 bytes and of no text at all, links in circles, a folder and a file that may not be
// read, a file of 2 GB, a pipe, and a folder that vanishes while it is read. Prints what was found,
// and ends with 1 unless all 200 good sketches are there, each problem is named once, and nothing
// else is.
#include <sys/stat.h>

#include <algorithm>
#include <cstdio>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/library/index.h"
#include "core/library/search.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/support/generated_library.h"
#include "tests/support/temporary_folder.h"

namespace {

using namespace matwright;
namespace fs = std::filesystem;

constexpr std::uint64_t seed = 666;
constexpr std::size_t goodSketches = 200;
constexpr std::size_t brokenSketches = 1'000;

std::string brokenBytes(test::Random& random, std::size_t i) {
    std::string bytes = writeSketch(test::generatedSketch(seed, i));
    switch (i % 5) {
        case 0:
            return bytes.substr(0, test::below(random, bytes.size()));
        case 1:
            return std::string(test::below(random, 5'000), static_cast<char>(i));
        case 2:
            bytes[test::below(random, bytes.size() / 2)] = '<';
            bytes += '<';
            return bytes;
        case 3:
            return "<svg xmlns=\"http://www.w3.org/2000/svg\"/>";
        default:
            return bytes + bytes;
    }
}

class HostileFolder {
  public:
    HostileFolder() {
        test::setPermissions(m_place.path(), 0755);
        test::writeGeneratedLibrary(library(), seed, goodSketches - m_oddNames.size());
        const std::string good = writeSketch(test::generatedSketch(seed, 0));
        for (const std::string& name : m_oddNames) {
            test::writeFile(library() / name, good);
        }
        addBroken();
        addLinks();
        addForbidden(good);
        test::writeFile(library() / "huge.sketch.svg", good);
        fs::resize_file(library() / "huge.sketch.svg", std::uintmax_t{2} << 30);
        m_expected.insert("huge.sketch.svg");
        (void)::mkfifo((library() / "pipe.sketch.svg").c_str(), 0600);
        m_expected.insert("pipe.sketch.svg");
        addVanishing();
    }
    ~HostileFolder() { test::setPermissions(library() / "shut", 0755); }
    HostileFolder(const HostileFolder&) = delete;
    HostileFolder& operator=(const HostileFolder&) = delete;

    fs::path library() const { return m_place / "library"; }
    fs::path cache() const { return m_place / "cache"; }
    const std::set<std::string>& expectedProblems() const { return m_expected; }

    void vanish() const { fs::remove_all(library() / "vanishing"); }

  private:
    // Anybody may take it away.
    void addVanishing() {
        const fs::path deep = library() / "vanishing/deep";
        fs::create_directories(deep);
        const std::string good = writeSketch(test::generatedSketch(seed, 1));
        for (int i = 0; i < 1'000; ++i) {
            test::writeFile(deep / (std::to_string(i) + ".sketch.svg"), good);
        }
        for (const fs::path& open : {library(), deep.parent_path(), deep}) {
            fs::permissions(open, fs::perms::all);
        }
    }
    void addBroken() {
        test::Random random(seed);
        fs::create_directories(library() / "broken");
        for (std::size_t i = 0; i < brokenSketches; ++i) {
            const std::string path = "broken/" + std::to_string(i) + ".sketch.svg";
            test::writeFile(library() / path, brokenBytes(random, i));
            m_expected.insert(path);
        }
    }
    void addLinks() {
        fs::create_directory_symlink(library(), library() / "family/circle");
        fs::create_directory_symlink("..", library() / "travel/up");
        fs::create_symlink("self.sketch.svg", library() / "self.sketch.svg");
        fs::create_symlink("nothing", library() / "dead.sketch.svg");
        m_expected.insert({"family/circle", "travel/up", "self.sketch.svg", "dead.sketch.svg"});
    }
    void addForbidden(const std::string& good) {
        fs::create_directory(library() / "shut");
        test::writeFile(library() / "shut/hidden.sketch.svg", good);
        test::setPermissions(library() / "shut", 0);
        test::writeFile(library() / "secret.sketch.svg", good);
        test::setPermissions(library() / "secret.sketch.svg", 0);
        m_expected.insert({"shut", "secret.sketch.svg"});
    }

    const std::vector<std::string> m_oddNames = {
        "two\nlines.sketch.svg", "\x1b[31mred\a.sketch.svg", "no text \xff\xfe.sketch.svg",
        "'; DROP TABLE sketch; --.sketch.svg", std::string(244, 'n') + ".sketch.svg"};
    test::TemporaryFolder m_place;
    std::set<std::string> m_expected;
};

bool isPrintable(const std::string& text) {
    return std::ranges::none_of(text, [](char c) { return static_cast<unsigned char>(c) < 0x20; });
}

// How many of the expected were not named exactly once, or were named though not expected.
std::size_t wrongProblems(const HostileFolder& folder, const IndexUpdate& update) {
    std::map<std::string, int> named;
    std::size_t wrong = 0;
    for (const LibraryProblem& problem : update.problems) {
        ++named[problem.path];
        const bool isFine = folder.expectedProblems().contains(problem.path) &&
                            !problem.sentence.empty() && isPrintable(problem.text());
        wrong += isFine ? 0 : 1;
        if (!isFine) {
            std::printf("  not expected: %s\n", problem.text().c_str());
        }
    }
    for (const std::string& path : folder.expectedProblems()) {
        wrong += named[path] == 1 ? 0 : 1;
        if (named[path] != 1) {
            std::printf("  named %d times: %s\n", named[path], path.c_str());
        }
    }
    return wrong;
}

bool passes(const char* what, const HostileFolder& folder, const IndexUpdate& update) {
    const std::size_t wrong = wrongProblems(folder, update);
    std::printf("%s: %zu good sketches of %zu, %zu problems of %zu named, %zu wrongly, %.2f s\n",
                what, update.holdings->size(), goodSketches, update.problems.size(),
                folder.expectedProblems().size(), wrong, update.seconds);
    return wrong == 0 && update.holdings->size() == goodSketches && update.indexTrouble.empty() &&
           search(*update.holdings, {}).indices.size() == goodSketches;
}

// Once files of it were found already.
IndexUpdate updateWhileAFolderVanishes(const HostileFolder& folder, LibraryIndex& index) {
    IndexOptions options;
    options.threads = 2;
    options.progress = [&](const IndexProgress&) { folder.vanish(); };
    return index.update(options);
}

}  // namespace

int main() {
    const HostileFolder folder;
    fs::create_directory(folder.cache());
    fs::permissions(folder.cache(), fs::perms::all);
    // Permissions do not bind an administrator.
    const test::WithoutPrivileges plain;
    LibraryIndex index(folder.library(), folder.cache());
    bool good = passes("a folder vanishes", folder, updateWhileAFolderVanishes(folder, index));
    good = passes("again", folder, index.update()) && good;
    good = passes("in a new program", folder,
                  LibraryIndex(folder.library(), folder.cache()).update()) &&
           good;
    return good ? 0 : 1;
}
