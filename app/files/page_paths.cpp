// SPDX-License-Identifier: MIT
#include "app/files/page_paths.h"

#include <filesystem>
#include <utility>

#include "app/files/paths.h"

namespace matwright::app {

namespace {

namespace fs = std::filesystem;

template <typename Change>
Making withPaths(Making making, Change change) {
    for (auto& entry : making.work.photos) {
        change(entry.second.path);
    }
    for (auto& entry : making.work.papers) {
        if (!entry.second.picture.empty()) {
            change(entry.second.picture);
        }
    }
    return making;
}

}  // namespace

Making withPathsFrom(Making making, const QString& folder) {
    return withPaths(std::move(making), [base = toPath(folder)](std::string& path) {
        if (fs::path(path).is_relative()) {
            path = (base / path).lexically_normal().string();
        }
    });
}

Making withPathsBelow(Making making, const QString& folder) {
    return withPaths(std::move(making), [base = toPath(folder)](std::string& path) {
        const fs::path from = fs::path(path).lexically_relative(base);
        if (!from.empty() && *from.begin() != "..") {
            path = from.string();
        }
    });
}

}  // namespace matwright::app
