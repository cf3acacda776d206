// SPDX-License-Identifier: MIT
#include "core/library/importing.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

#include "core/library/folder_lock.h"
#include "core/library/label_moves.h"
#include "core/library/names.h"
#include "core/library/printable.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

// A file to import and the sub-folder of the library it goes to.
struct ImportTask {
    fs::path source;
    fs::path folder;       // inside the library
    ImportedFile refusal;  // has a sentence where there is nothing to import
};

std::string nameOfSource(const fs::path& source) {
    const fs::path plain = source.lexically_normal();
    return (plain.has_filename() ? plain : plain.parent_path()).filename().string();
}

void addFolderTasks(const fs::path& source, const fs::path& into, const ImportOptions& options,
                    std::vector<ImportTask>& tasks) {
    ScanOptions scanning;
    scanning.stop = options.stop;
    const FolderScan scan = scanFolder(source, scanning);
    const fs::path top = into / nameOfSource(source);
    for (const ScannedFile& file : scan.files) {
        tasks.push_back({source / file.path, (top / file.path).parent_path(), {}});
    }
    for (const LibraryProblem& problem : scan.problems) {
        const fs::path path = source / problem.path;
        tasks.push_back({path, {}, {path, ImportOutcome::Unreadable, "", problem.sentence}});
    }
}

std::vector<ImportTask> tasksFor(std::span<const fs::path> sources, const fs::path& into,
                                 const ImportOptions& options) {
    std::vector<ImportTask> tasks;
    for (const fs::path& source : sources) {
        std::error_code ignored;
        if (fs::is_directory(source, ignored)) {
            addFolderTasks(source, into, options, tasks);
        } else {
            tasks.push_back({source, into, {}});
        }
    }
    return tasks;
}

class Import {
  public:
    Import(FileStore& store, const fs::path& library, std::span<const KeyedSketch> known)
        : m_store(store), m_library(library) {
        for (const KeyedSketch& sketch : known) {
            m_known.emplace(sketch.content, sketch.path);
        }
    }

    ImportedFile perform(const ImportTask& task) {
        if (!task.refusal.said.empty()) {
            return task.refusal;
        }
        ImportedFile file{task.source, ImportOutcome::NotASketch, "", ""};
        if (!hasSketchSuffix(task.source.filename().string())) {
            file.said = fmt::format(
                "This is no sketch file: those end in \u201C{}\u201D. It was left where it is.",
                sketchFileSuffix);
            return file;
        }
        const auto bytes = m_store.read(task.source, maxSketchFileBytes);
        if (!bytes) {
            file.outcome = ImportOutcome::Unreadable;
            file.said = bytes.error().sentence;
            return file;
        }
        if (const auto read = readSketch(*bytes); !read) {
            file.said = read.error().sentence;
            return file;
        }
        return taken(std::move(file), *bytes, task.folder);
    }

  private:
    ImportedFile taken(ImportedFile file, const std::string& bytes, const fs::path& folder) {
        const ContentKey content = contentKeyOf(bytes);
        if (const auto there = placeOf(content, bytes)) {
            file.outcome = ImportOutcome::AlreadyThere;
            file.sketch = *there;
            file.said = fmt::format("The library has it already, as \u201C{}\u201D.",
                                    printablePath(*there));
            return file;
        }
        const auto made = madeIn(folder, stemOf(file.source.filename().string()), bytes);
        if (!made) {
            file.outcome = ImportOutcome::NotWritten;
            file.said = made.error().sentence;
            return file;
        }
        file.outcome = ImportOutcome::Imported;
        file.sketch = *made;
        if (stemOf(*made) != stemOf(file.source.filename().string())) {
            file.said = fmt::format(
                "Another sketch has this name already, so this one is called \u201C{}\u201D.",
                printablePath(stemOf(*made)));
        }
        const std::string labels =
            labelsAfterSave(m_store, m_library, *made, std::nullopt, content);
        file.said += (file.said.empty() || labels.empty() ? "" : " ") + labels;
        m_known.emplace(content, *made);
        return file;
    }

    std::optional<std::string> placeOf(ContentKey content, const std::string& bytes) {
        const auto [first, last] = m_known.equal_range(content);
        for (auto it = first; it != last; ++it) {
            const auto held = m_store.read(m_library / it->second, maxSketchFileBytes);
            if (held && *held == bytes) {
                return it->second;
            }
        }
        return std::nullopt;
    }

    Result<std::string> madeIn(const fs::path& folder, std::string_view stem,
                               const std::string& bytes) {
        std::error_code ignored;
        fs::create_directories(m_library / folder, ignored);
        for (int number = 1;; ++number) {
            const fs::path path = folder / numberedFileName(stem, number);
            const auto made = m_store.create(m_library / path, bytes);
            if (!made) {
                return std::unexpected(made.error());
            }
            if (*made) {
                return path.string();
            }
        }
    }

    FileStore& m_store;
    const fs::path& m_library;
    std::multimap<ContentKey, std::string> m_known;
};

}  // namespace

int ImportReport::count(ImportOutcome outcome) const {
    return static_cast<int>(std::ranges::count(files, outcome, &ImportedFile::outcome));
}

Result<ImportReport> importSketches(FileStore& store, const fs::path& library,
                                    std::span<const fs::path> sources,
                                    const ImportOptions& options) {
    const auto into = checkedFolder(options.intoFolder);
    if (!into) {
        return std::unexpected(into.error());
    }
    if (auto made = makeLibrary(library); !made) {
        return std::unexpected(std::move(made.error()));
    }
    ImportReport report;
    Import import(store, library, options.known);
    for (const ImportTask& task : tasksFor(sources, *into, options)) {
        if (options.stop.stop_requested()) {
            report.cancelled = true;
            break;
        }
        // One file at a time: others may want to save in between.
        const auto lock = FolderLock::take(library);
        if (!lock) {
            return std::unexpected(lock.error());
        }
        report.files.push_back(import.perform(task));
        if (options.progress) {
            options.progress(report.files.size());
        }
    }
    report.cancelled = report.cancelled || options.stop.stop_requested();
    return report;
}

}  // namespace matwright
