// SPDX-License-Identifier: MIT
#include <optional>

#include "core/measure/catalogue.h"
#include "core/prints/print_job.h"

namespace matwright {

namespace {

constexpr Size largestSheet{Length::inches(5), Length::inches(7)};

// The catalogue print that two of `paper` fill exactly, one beside or under the other.
std::optional<Size> sheetOfTwo(Size paper) {
    const Size beside{2 * paper.width, paper.height};
    const Size under{paper.width, 2 * paper.height};
    // Long sides together: what two small prints make of one sheet.
    const bool stands = paper.isUpright();
    for (const Size sheet : {stands ? beside : under, stands ? under : beside}) {
        const Size upright = sheet.isUpright() ? sheet : sheet.turned();
        if (printSizeOf(sheet) && largestSheet.contains(upright)) {
            return sheet;
        }
    }
    return std::nullopt;
}

Gang pairOf(std::size_t first, std::size_t second, Size paper, Size sheet, bool turnSecond) {
    const bool beside = sheet.width > paper.width;
    const Point next{beside ? paper.width : Length(), beside ? Length() : paper.height};
    return {sheet, {{first, {}, false}, {second, next, turnSecond}}};
}

}  // namespace

std::vector<Gang> simpleGangs(const std::vector<Print>& prints) {
    std::vector<Gang> gangs;
    std::vector<bool> taken(prints.size(), false);
    for (std::size_t i = 0; i < prints.size(); ++i) {
        if (taken[i]) {
            continue;
        }
        const Size paper = prints[i].paper;
        const std::optional<Size> sheet = sheetOfTwo(paper);
        std::size_t other = sheet ? i + 1 : prints.size();
        while (other < prints.size() && (taken[other] || (prints[other].paper != paper &&
                                                          prints[other].paper != paper.turned()))) {
            ++other;
        }
        if (other < prints.size()) {
            taken[other] = true;
            gangs.push_back(pairOf(i, other, paper, *sheet, prints[other].paper != paper));
        } else {
            gangs.push_back({paper, {{i, {}, false}}});
        }
    }
    return gangs;
}

}  // namespace matwright
