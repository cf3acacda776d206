// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "core/sketchfile/sketch_file.h"

namespace matwright {

Result<LoadedSketch> loadSketch(FileStore& store, const std::filesystem::path& path) {
    const auto bytes = store.read(path, maxSketchFileBytes);
    if (!bytes) {
        return std::unexpected(bytes.error());
    }
    auto loaded = readSketch(*bytes);
    if (!loaded) {
        Error& error = loaded.error();
        error.where = error.where.empty() ? path.string() : path.string() + ", " + error.where;
    }
    return loaded;
}

Result<std::string> savableBytes(const Sketch& sketch) {
    std::string bytes = writeSketch(sketch);
    if (bytes.size() > maxSketchFileBytes) {
        return std::unexpected(Error{
            ErrorCode::TooLarge,
            fmt::format("The file was not saved: the sketch would take more than the {} MB that "
                        "can be opened again. Shorten its notes or split it in two.",
                        maxSketchFileBytes >> 20),
            ""});
    }
    return bytes;
}

Result<void> saveSketch(FileStore& store, const std::filesystem::path& path, const Sketch& sketch) {
    auto bytes = savableBytes(sketch);
    if (!bytes) {
        bytes.error().where = path.string();
        return std::unexpected(std::move(bytes.error()));
    }
    return store.replace(path, *bytes);
}

}  // namespace matwright
