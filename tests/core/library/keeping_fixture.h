// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "core/content/content_key.h"
#include "core/filestore/file_store.h"
#include "core/library/folder_lock.h"
#include "core/library/label_store.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/support/temporary_folder.h"

namespace matwright::test {

inline Sketch sketchNamed(const std::string& name, const std::string& note = "") {
    Sketch sketch = blankSketch();
    sketch.name = name;
    sketch.note = note;
    return sketch;
}

inline std::string bytesOfSketch(const std::string& name, const std::string& note = "") {
    return writeSketch(sketchNamed(name, note));
}

// A library on the disk.
struct LibraryOnDisk {
    TemporaryFolder folder;
    DiskFileStore store;
    std::filesystem::path path = folder / "library";

    LibraryOnDisk() { makeLibrary(path).value(); }

    // Without the program knowing, as a file manager would; the suffix is added.
    std::string put(const std::string& stem, const std::string& bytes) const {
        const std::string sketch = stem + sketchFileSuffix;
        std::filesystem::create_directories((path / sketch).parent_path());
        writeFile(path / sketch, bytes);
        return sketch;
    }
    std::string putNamed(const std::string& stem) const { return put(stem, bytesOfSketch(stem)); }
    std::string held(const std::string& sketch) const { return readFile(path / sketch); }
    bool has(const std::string& sketch) const {
        return std::filesystem::exists(std::filesystem::symlink_status(path / sketch));
    }
    // As the wall shows them.
    Labels labels(const std::string& sketch) const {
        std::vector<KeyedSketch> all;
        std::size_t wanted = 0;
        for (const auto& entry : std::filesystem::recursive_directory_iterator(path)) {
            const std::string each = entry.path().lexically_relative(path).string();
            if (!each.starts_with('.') && each.ends_with(sketchFileSuffix)) {
                wanted = each == sketch ? all.size() : wanted;
                all.push_back({each, contentKeyOf(held(each))});
            }
        }
        return labelsFor(all, readLabelRecords(path).records).at(wanted);
    }
    void tag(const std::string& sketch, const std::string& tag) {
        changeLabels(store, path, sketch, [&](Labels& labels) {
            labels.tags.push_back(tag);
        }).value();
    }
};

using Tags = std::vector<std::string>;

}  // namespace matwright::test
