// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "core/printplan/print_plan.h"

namespace matwright {

std::string roomText(const RoomFor& room) {
    const std::string size = naturalSizeText(room.size);
    return room.count == 1 ? fmt::format("room for one more {}", size)
                           : fmt::format("room for {} more {}", room.count, size);
}

SheetSteps stepsOf(const PrintSheet& sheet, Scale scale) {
    CutPlan one;
    one.sheets.push_back(sheet.cuts);
    return stepsOf(one, scale).front();
}

}  // namespace matwright
