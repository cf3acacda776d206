// SPDX-License-Identifier: MIT
#include "app/batch/open_library.h"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <system_error>
#include <thread>

#include "core/library/folder_lock.h"
#include "core/library/names.h"
#include "core/library/printable.h"
#include "core/library/saving.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

namespace {

namespace fs = std::filesystem;

// Holds an index for as long as one command runs.
class PassingCache {
  public:
    PassingCache() {
        std::error_code failure;
        std::string name = (fs::temp_directory_path(failure) / "matwright-XXXXXX").string();
        if (!failure && ::mkdtemp(name.data()) != nullptr) {
            m_folder = name;
        }
    }
    ~PassingCache() {
        if (!m_folder.empty()) {
            std::error_code ignored;
            fs::remove_all(m_folder, ignored);
        }
    }
    PassingCache(const PassingCache&) = delete;
    PassingCache& operator=(const PassingCache&) = delete;

    const fs::path& folder() const { return m_folder; }

  private:
    fs::path m_folder;
};

// What may not be looked at is there as well.
bool isThere(const fs::path& folder) {
    std::error_code ignored;
    return fs::status(folder, ignored).type() != fs::file_type::not_found;
}

IndexUpdate updated(const fs::path& folder, const fs::path& cacheFolder) {
    IndexOptions options;
    options.threads = std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
    return LibraryIndex(folder, cacheFolder).update(options);
}

// New work that a killed program left hidden. Only in a folder that is a library already; where it
// may not be written, its sketches can be looked at all the same.
void bringBackLeftovers(const fs::path& folder, BatchPorts& ports) {
    if (!isThere(folder / libraryHiddenFolder)) {
        return;
    }
    if (const auto rescued = rescueLeftovers(folder)) {
        for (const fs::path& file : *rescued) {
            complain(ports, file,
                     "This work was left hidden when a program was ended while saving it; it is a "
                     "sketch of the library again.");
        }
    }
}

}  // namespace

std::expected<fs::path, int> folderOfLibrary(const LibraryPlace& place, BatchPorts& ports) {
    fs::path folder = place.folder.value_or(ports.libraryFolder);
    if (folder.empty()) {
        return std::unexpected(
            fail(ports, WrongUse,
                 {ErrorCode::NotFound,
                  place.folder ? "The name of the library folder is empty; give one."
                               : "There is no home folder to look for your library in; name the "
                                 "library with --folder.",
                  ""}));
    }
    return folder;
}

std::expected<OpenedLibrary, int> openLibrary(const LibraryPlace& place, BatchPorts& ports) {
    const auto folder = folderOfLibrary(place, ports);
    if (!folder) {
        return std::unexpected(folder.error());
    }
    if (!place.folder && !isThere(*folder)) {
        return std::unexpected(fail(
            ports, InputRefused,
            {ErrorCode::NotFound,
             ports.libraryIsChosen
                 ? "The folder that you chose for your library is not there. Connect the drive "
                   "it is on, choose another one in the window, or name a library with "
                   "--folder."
                 : "You have no library here yet. Bring sketches in with \"matwright-batch "
                   "library import FILE\", or name another library with --folder.",
             folder->string()}));
    }
    bringBackLeftovers(*folder, ports);
    std::optional<PassingCache> passing;
    if (!place.useIndex || ports.cacheFolder.empty()) {
        passing.emplace();
    }
    IndexUpdate update = updated(*folder, passing ? passing->folder() : ports.cacheFolder);
    const auto top = std::ranges::find_if(
        update.problems, [](const LibraryProblem& problem) { return problem.path.empty(); });
    if (top != update.problems.end()) {
        return std::unexpected(
            fail(ports, InputRefused, {ErrorCode::ReadFailed, top->sentence, folder->string()}));
    }
    if (!passing && !update.indexTrouble.empty()) {
        complain(ports, {}, update.indexTrouble);
    }
    return OpenedLibrary{*folder, std::move(update.holdings), std::move(update.problems)};
}

std::expected<OpenedLibrary, int> openLibraryAloud(const LibraryPlace& place, BatchPorts& ports) {
    auto library = openLibrary(place, ports);
    if (library) {
        for (const LibraryProblem& problem : library->problems) {
            complain(ports, problem.path, problem.sentence);
        }
    }
    return library;
}

namespace {

// Below the library, '/' between folders; empty where the file is not in it.
std::string pathInside(const fs::path& folder, std::string_view file) {
    std::error_code ignored;
    const fs::path inside = fs::weakly_canonical(fs::path(file), ignored)
                                .lexically_relative(fs::weakly_canonical(folder, ignored));
    return inside.empty() || *inside.begin() == ".." ? std::string() : inside.generic_string();
}

std::optional<std::size_t> sketchAt(const OpenedLibrary& library, const std::string& path) {
    const Holdings& holdings = *library.holdings;
    for (const std::string& written : {path, path + sketchFileSuffix}) {
        if (const auto index = holdings.indexOf(written)) {
            return index;
        }
        for (std::size_t index = 0; index < holdings.size(); ++index) {
            if (printablePath(holdings.path(index)) == written) {
                return index;
            }
        }
    }
    return holdings.indexOf(pathInside(library.folder, path));
}

std::vector<std::size_t> sketchesCalled(const Holdings& holdings, std::string_view name) {
    std::vector<std::size_t> called;
    for (std::size_t index = 0; index < holdings.size(); ++index) {
        const std::string_view path = holdings.path(index);
        if (stemOf(path) == name || path.substr(path.rfind('/') + 1) == name ||
            shownName(holdings.entry(index)) == name) {
            called.push_back(index);
        }
    }
    return called;
}

}  // namespace

Result<std::size_t> sketchNamed(const OpenedLibrary& library, const std::string& named) {
    if (const auto index = sketchAt(library, named)) {
        return *index;
    }
    const std::vector<std::size_t> called = sketchesCalled(*library.holdings, named);
    if (called.size() == 1) {
        return called.front();
    }
    return std::unexpected(Error{
        ErrorCode::NotFound,
        called.empty()
            ? "The library has no such sketch. Name it as \"matwright-batch library "
              "list\" shows its path or its name."
            : fmt::format("{} sketches are called so; name one by its path, such as "
                          "{}.",
                          called.size(), printablePath(library.holdings->path(called.front()))),
        named});
}

}  // namespace matwright::app
