// SPDX-License-Identifier: MIT
#include "core/library/saving.h"

#include <fmt/format.h>

#include "core/library/folder_lock.h"
#include "core/library/label_moves.h"
#include "core/library/leftovers.h"
#include "core/library/names.h"
#include "core/library/printable.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

// Pages in the making carry small pictures, so they may be larger than sketches.
constexpr std::size_t largestFile = 2 * maxSketchFileBytes;

enum class How { Replaced, HeldAlready, Made, MadeBeside, HeldBeside };

struct Outcome {
    How how;
    fs::path path;
};

// One save; the lock is held around all of it.
class KeepingSave {
  public:
    KeepingSave(FileStore& store, const fs::path& path, std::optional<ContentKey> openedFrom,
                std::string_view bytes)
        : m_store(store), m_path(path), m_openedFrom(openedFrom), m_bytes(bytes) {}

    Result<Outcome> perform() {
        // Each round another program made or removed the file at the very moment.
        constexpr int rounds = 3;
        for (int round = 0; round < rounds; ++round) {
            const auto held = m_store.read(m_path, largestFile);
            if (held && *held == m_bytes) {
                return Outcome{How::HeldAlready, m_path};
            }
            const bool isThere = held || held.error().code != ErrorCode::NotFound;
            if (isThere && (!held || !m_openedFrom)) {
                break;
            }
            auto done = isThere ? replaceKnown() : m_store.create(m_path, m_bytes);
            if (done && *done) {
                return Outcome{isThere ? How::Replaced : How::Made, m_path};
            }
            if (done && isThere) {
                break;
            }
            if (!done && done.error().code != ErrorCode::NotFound) {
                return std::unexpected(std::move(done.error()));
            }
        }
        return saveBeside();
    }

  private:
    // False where the file holds anything unknown.
    Result<bool> replaceKnown() {
        return m_store.replaceIf(
            m_path, largestFile,
            [&](std::string_view bytes) { return contentKeyOf(bytes) == *m_openedFrom; }, m_bytes);
    }

    Result<Outcome> saveBeside() {
        const std::string name = m_path.filename().string();
        const std::string_view stem = stemOf(name);
        const std::string_view suffix = documentSuffixOf(name);
        for (int number = 2;; ++number) {
            const fs::path beside = m_path.parent_path() / numberedFileName(stem, number, suffix);
            const auto made = m_store.create(beside, m_bytes);
            if (!made) {
                return std::unexpected(made.error());
            }
            if (*made) {
                return Outcome{How::MadeBeside, beside};
            }
            const auto held = m_store.read(beside, largestFile);
            if (held && *held == m_bytes) {
                return Outcome{How::HeldBeside, beside};
            }
        }
    }

    FileStore& m_store;
    const fs::path& m_path;
    std::optional<ContentKey> m_openedFrom;
    std::string_view m_bytes;
};

std::string sentenceFor(const Outcome& outcome, bool wasOpened) {
    if (outcome.how == How::Made && wasOpened) {
        return "The file was not there any more: somebody has moved, renamed or removed it. Your "
               "work is saved at its old place.";
    }
    if (outcome.how != How::MadeBeside && outcome.how != How::HeldBeside) {
        return "";
    }
    const std::string name = outcome.path.filename().string();
    const char* kind = documentSuffixOf(name) == sketchFileSuffix ? "sketch" : "page";
    return fmt::format("{} Both are kept: yours is now \u201C{}\u201D.",
                       wasOpened ? fmt::format("Somebody else has changed this {} meanwhile.", kind)
                                 : fmt::format("There is another {} of this name.", kind),
                       printablePath(stemOf(name)));
}

std::string inLibrary(const fs::path& path, const fs::path& library) {
    std::error_code ignored;
    return fs::absolute(path, ignored).lexically_normal().lexically_relative(library).string();
}

std::string labelsFollow(FileStore& store, const fs::path& library, const fs::path& path,
                         std::optional<ContentKey> openedFrom, const Outcome& outcome,
                         ContentKey content) {
    const std::string now = inLibrary(outcome.path, library);
    switch (outcome.how) {
        case How::HeldAlready:
        case How::HeldBeside:
            return "";
        case How::MadeBeside:
            if (openedFrom) {
                return labelsAfterCopy(store, library, inLibrary(path, library), now, content);
            }
            return labelsAfterSave(store, library, now, std::nullopt, content);
        case How::Replaced:
        case How::Made:
            return labelsAfterSave(store, library, now, openedFrom, content);
    }
    return "";
}

}  // namespace

Result<SavedSketch> saveKeepingBoth(FileStore& store, const fs::path& path,
                                    std::optional<ContentKey> openedFrom, std::string_view bytes) {
    const fs::path folder = path.has_parent_path() ? path.parent_path() : fs::path(".");
    const auto lock = FolderLock::take(folder);
    if (!lock) {
        return std::unexpected(lock.error());
    }
    rescueIn(folder);
    const auto outcome = KeepingSave(store, path, openedFrom, bytes).perform();
    if (!outcome) {
        return std::unexpected(outcome.error());
    }
    const bool isBeside = outcome->how == How::MadeBeside || outcome->how == How::HeldBeside;
    SavedSketch saved{outcome->path, contentKeyOf(bytes), isBeside,
                      sentenceFor(*outcome, openedFrom.has_value())};
    if (lock->library() && hasSketchSuffix(outcome->path.filename().string())) {
        const std::string labels =
            labelsFollow(store, *lock->library(), path, openedFrom, *outcome, saved.content);
        saved.said += (saved.said.empty() || labels.empty() ? "" : " ") + labels;
    }
    return saved;
}

Result<SavedSketch> saveKeepingBoth(FileStore& store, const fs::path& path,
                                    std::optional<ContentKey> openedFrom, const Sketch& sketch) {
    auto bytes = savableBytes(sketch);
    if (!bytes) {
        bytes.error().where = path.string();
        return std::unexpected(std::move(bytes.error()));
    }
    return saveKeepingBoth(store, path, openedFrom, *bytes);
}

}  // namespace matwright
