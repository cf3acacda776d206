// SPDX-License-Identifier: MIT
#include "core/library/keeping.h"

#include <fmt/format.h>

#include <cerrno>
#include <system_error>

#include "core/library/folder_lock.h"
#include "core/library/label_moves.h"
#include "core/library/label_store.h"
#include "core/library/leftovers.h"
#include "core/library/names.h"
#include "core/library/printable.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

Result<FolderLock> lockedLibrary(const fs::path& library) {
    if (auto made = makeLibrary(library); !made) {
        return std::unexpected(std::move(made.error()));
    }
    return FolderLock::take(library);
}

std::string pathInLibrary(const fs::path& library, const fs::path& file) {
    return file.lexically_relative(library).string();
}

Error notMoved(int number, const fs::path& path) {
    if (number == ENOENT) {
        return {ErrorCode::NotFound,
                "The sketch is not there any more; somebody may have moved or renamed it. Look "
                "for it in the library.",
                path.string()};
    }
    const char* reason =
        number == EACCES || number == EPERM || number == EROFS
            ? "you are not allowed to change this folder. Change its permissions, or use another "
              "folder."
        : number == EXDEV ? "the folders lie on different disks. Make a copy there instead."
        : number == ENOSPC || number == EDQUOT
            ? "there is no room left on the disk. Free some space and try again."
            : nullptr;
    return {ErrorCode::WriteFailed,
            reason != nullptr ? fmt::format("The sketch was not moved: {}", reason)
                              : fmt::format("The sketch was not moved: the system refused it ({}). "
                                            "Try again, or use another folder.",
                                            std::generic_category().message(number)),
            path.string()};
}

Result<void> madeFolder(const fs::path& folder) {
    std::error_code failure;
    fs::create_directories(folder, failure);
    return failure ? std::unexpected(notMoved(failure.value(), folder)) : Result<void>();
}

void addSentence(std::string& said, const std::string& more) {
    said += (said.empty() || more.empty() ? "" : " ") + more;
}

std::string tellNumber(const fs::path& file, std::string_view wishedStem) {
    const std::string name = file.filename().string();
    return stemOf(name) == wishedStem
               ? ""
               : fmt::format(
                     "Another file has this name already, so this one is called \u201C{}\u201D.",
                     printablePath(stemOf(name)));
}

// What keeps the sketch's own name as it is, or the new bytes.
struct Renaming {
    std::string bytes;
    std::string said;
};

Renaming withOwnName(const std::string& held, const std::string& name) {
    auto read = readSketch(held);
    if (!read || !read->warnings.empty()) {
        return {"", read ? "Only the file has the new name: this sketch has parts that this "
                           "version does not know and that writing it anew would lose."
                         : "Only the file has the new name: what it holds cannot be read."};
    }
    if (read->sketch.name == name) {
        return {};
    }
    read->sketch.name = name;
    auto bytes = savableBytes(read->sketch);
    return bytes ? Renaming{*std::move(bytes), ""} : Renaming{"", bytes.error().sentence};
}

// The file has its place; now the name inside.
void setOwnName(FileStore& store, const fs::path& library, const std::string& name,
                const std::string& held, KeptSketch& kept) {
    const Renaming renaming = withOwnName(held, name);
    addSentence(kept.said, renaming.said);
    if (renaming.bytes.empty()) {
        return;
    }
    const ContentKey before = kept.content;
    const auto done = store.replaceIf(
        library / kept.sketch, maxSketchFileBytes,
        [&](std::string_view bytes) { return contentKeyOf(bytes) == before; }, renaming.bytes);
    if (!done || !*done) {
        addSentence(kept.said,
                    done ? "Only the file has the new name: somebody else was just changing what "
                           "it holds."
                         : "Only the file has the new name. " + done.error().sentence);
        return;
    }
    kept.content = contentKeyOf(renaming.bytes);
    addSentence(kept.said, labelsAfterSave(store, library, kept.sketch, before, kept.content));
}

Result<KeptSketch> movedTo(FileStore& store, const fs::path& library, const std::string& sketch,
                           const fs::path& folder, std::string_view stem, ContentKey content) {
    const auto moved = moveToFreeName(library / sketch, folder, stem, 1, sketchFileSuffix);
    if (!moved) {
        return std::unexpected(notMoved(moved.error(), library / sketch));
    }
    KeptSketch kept{pathInLibrary(library, *moved), content, tellNumber(*moved, stem)};
    if (kept.sketch != sketch) {
        addSentence(kept.said, labelsAfterMove(store, library, sketch, kept.sketch, content));
    }
    return kept;
}

// What cannot be read can still be moved; it has no content to be found by.
std::string heldIn(FileStore& store, const fs::path& file) {
    return store.read(file, maxSketchFileBytes).value_or("");
}

// A folder of the library, made where it was missing, and the lock it was made under.
struct LockedFolder {
    FolderLock lock;
    fs::path path;
};

Result<LockedFolder> lockedFolder(const fs::path& library, std::string_view folder) {
    const auto checked = checkedFolder(folder);
    if (!checked) {
        return std::unexpected(checked.error());
    }
    auto lock = lockedLibrary(library);
    if (!lock) {
        return std::unexpected(std::move(lock.error()));
    }
    fs::path path = checked->empty() ? library : library / *checked;
    if (auto made = madeFolder(path); !made) {
        return std::unexpected(std::move(made.error()));
    }
    return LockedFolder{std::move(*lock), std::move(path)};
}

}  // namespace

Result<KeptSketch> renameSketch(FileStore& store, const fs::path& library,
                                const std::string& sketch, std::string_view newName) {
    const auto name = checkedName(newName);
    if (!name) {
        return std::unexpected(name.error());
    }
    const auto lock = lockedLibrary(library);
    if (!lock) {
        return std::unexpected(lock.error());
    }
    const fs::path file = library / sketch;
    const std::string held = heldIn(store, file);
    auto kept = movedTo(store, library, sketch, file.parent_path(), *name, contentKeyOf(held));
    if (kept) {
        setOwnName(store, library, *name, held, *kept);
    }
    return kept;
}

Result<KeptSketch> moveSketch(FileStore& store, const fs::path& library, const std::string& sketch,
                              std::string_view folder) {
    const auto target = lockedFolder(library, folder);
    if (!target) {
        return std::unexpected(target.error());
    }
    const ContentKey content = contentKeyOf(heldIn(store, library / sketch));
    return movedTo(store, library, sketch, target->path, stemOf(sketch), content);
}

Result<KeptSketch> copySketch(FileStore& store, const fs::path& library, const std::string& sketch,
                              std::string_view folder) {
    const auto target = lockedFolder(library, folder);
    if (!target) {
        return std::unexpected(target.error());
    }
    const auto held = store.read(library / sketch, maxSketchFileBytes);
    if (!held) {
        return std::unexpected(held.error());
    }
    for (int number = 1;; ++number) {
        const fs::path copy = target->path / numberedFileName(stemOf(sketch), number);
        const auto made = store.create(copy, *held);
        if (!made) {
            return std::unexpected(made.error());
        }
        if (*made) {
            const ContentKey content = contentKeyOf(*held);
            const std::string path = pathInLibrary(library, copy);
            return KeptSketch{path, content,
                              labelsAfterCopy(store, library, sketch, path, content)};
        }
    }
}

Result<TrashedFile> trashSketch(const fs::path& library, const std::string& sketch,
                                const TrashPlaces& places) {
    const auto lock = lockedLibrary(library);
    if (!lock) {
        return std::unexpected(lock.error());
    }
    return moveToTrash(library / sketch, places);
}

Result<KeptSketch> untrashSketch(const fs::path& library, const TrashedFile& trashed) {
    const auto lock = lockedLibrary(library);
    if (!lock) {
        return std::unexpected(lock.error());
    }
    const std::string stem(stemOf(trashed.original.filename().string()));
    for (int number = 1;; ++number) {
        const fs::path to = trashed.original.parent_path() / numberedFileName(stem, number);
        const auto back = restoreFromTrash(trashed, to);
        if (!back) {
            return std::unexpected(back.error());
        }
        if (*back) {
            DiskFileStore store;
            std::error_code ignored;
            const fs::path top = fs::weakly_canonical(library, ignored);
            return KeptSketch{pathInLibrary(top, to), contentKeyOf(heldIn(store, to)),
                              tellNumber(to, stem)};
        }
    }
}

Result<Labels> countUse(FileStore& store, const fs::path& library, const std::string& sketch,
                        Timestamp now) {
    auto changed = changeLabels(store, library, sketch, [&](Labels& labels) {
        labels.useCount += 1;
        labels.lastUsed = std::max(labels.lastUsed, std::optional(now));
    });
    if (!changed) {
        return std::unexpected(std::move(changed.error()));
    }
    return std::move(changed->labels);
}

}  // namespace matwright
