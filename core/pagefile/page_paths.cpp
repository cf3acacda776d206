// SPDX-License-Identifier: MIT
#include "core/pagefile/page_paths.h"

namespace matwright {

namespace {

std::string withSlash(std::string_view folder) {
    std::string text(folder);
    if (!text.ends_with('/')) {
        text += '/';
    }
    return text;
}

}  // namespace

bool leadsDown(std::string_view near) {
    for (;;) {
        const std::size_t slash = near.find('/');
        const std::string_view part = near.substr(0, slash);
        if (part.empty() || part == "." || part == "..") {
            return false;
        }
        if (slash == std::string_view::npos) {
            return true;
        }
        near.remove_prefix(slash + 1);
    }
}

std::string nearTo(std::string_view folder, std::string_view path) {
    const std::string start = withSlash(folder);
    if (folder.empty() || !path.starts_with(start)) {
        return {};
    }
    const std::string_view near = path.substr(start.size());
    return leadsDown(near) ? std::string(near) : std::string();
}

std::string below(std::string_view folder, std::string_view near) {
    return withSlash(folder).append(near);
}

}  // namespace matwright
