// SPDX-License-Identifier: MIT
#include "core/paperplan/plan_key.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/content/content_key.h"

namespace matwright {

std::string planKey(std::span<const PaperPage> pages, std::span<const PaperPiece> pieces) {
    std::vector<std::string> told;
    told.reserve(pages.size());
    for (const PaperPage& page : pages) {
        told.push_back(page.sketch.name + '\n');
    }
    for (const PaperPiece& piece : pieces) {
        const int mat = piece.mat ? static_cast<int>(*piece.mat) : -1;
        told[piece.page] +=
            fmt::format("{} {} {} {} {} {}\n", piece.piece.value, mat, static_cast<int>(piece.side),
                        piece.size.width.ticks(), piece.size.height.ticks(), paperKey(piece.paper));
    }
    std::ranges::sort(told);
    return contentKeyOf(fmt::format("{}", fmt::join(told, "\n"))).text();
}

std::string cutName(const std::string& key, const std::optional<PapersChange>& before) {
    return before ? fmt::format("{} after {}", key, before->number) : key;
}

}  // namespace matwright
