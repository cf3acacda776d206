// SPDX-License-Identifier: MIT
#include "core/printplan/sheet_room.h"

#include <algorithm>

#include "core/measure/catalogue.h"
#include "core/printplan/sheet_packing.h"
#include "core/sheets/cut_area.h"

namespace matwright {

namespace {

// Enough to say that a sheet is nearly empty.
constexpr int mostAlike = 8;

void addFromLargest(std::vector<Size>& sizes, std::vector<Size> more) {
    for (Size& size : more) {
        size = size.isUpright() ? size : size.turned();
    }
    std::ranges::stable_sort(more, std::greater(), areaOf);
    for (const Size size : more) {
        if (std::ranges::find(sizes, size) == sizes.end()) {
            sizes.push_back(size);
        }
    }
}

}  // namespace

std::vector<Size> sizesToLookFor(const PlanInput& input, const std::vector<PlannedPrint>& prints) {
    std::vector<Size> used = input.usedSizes;
    for (const PlannedPrint& print : prints) {
        used.push_back(print.print.paper);
    }
    std::erase_if(used, [](Size size) { return !size.isPositive(); });
    std::vector<Size> catalogue;
    for (const NamedSize& size : printSizes()) {
        catalogue.push_back(size.size);
    }
    std::vector<Size> sizes;
    addFromLargest(sizes, std::move(used));
    addFromLargest(sizes, std::move(catalogue));
    return sizes;
}

std::vector<RoomFor> roomOn(const DraftSheet& sheet, const std::vector<PlannedPrint>& prints,
                            const std::vector<PrintPaperKind>& kinds,
                            const std::vector<Size>& sizes, std::uint64_t steps,
                            const std::stop_token& stop) {
    std::vector<Size> there;
    there.reserve(sheet.prints.size());
    for (const std::size_t print : sheet.prints) {
        there.push_back(prints[print].print.paper);
    }
    std::vector<RoomFor> room;
    for (const Size size : sizes) {
        std::vector<Size> with = there;
        int count = 0;
        while (count < mostAlike) {
            with.push_back(size);
            if (!packed(kinds[sheet.kind].sheet, with, steps, stop)) {
                break;
            }
            ++count;
        }
        if (count > 0) {
            room.push_back({size, count});
        }
        if (room.size() == mostRoomsFor || stop.stop_requested()) {
            break;
        }
    }
    return room;
}

}  // namespace matwright
