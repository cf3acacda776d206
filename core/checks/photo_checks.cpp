// SPDX-License-Identifier: MIT
#include "core/checks/photo_checks.h"

#include <fmt/format.h>

#include <filesystem>

#include "core/crop/crop.h"
#include "core/making/fold.h"
#include "core/photo/photo_words.h"

namespace matwright {

namespace {

void findCoarsePrint(const Making& making, PieceId slot, const Placement& placement,
                     std::vector<CheckFinding>& findings) {
    const Piece& piece = making.sketch.pieces.at(slot);
    const Photo& photo = making.work.photos.at(placement.photo);
    const Size window = shownWindow(piece, placement.border, making.sketch.page);
    const double ppi = effectivePpi(placement.crop, photo.upright, window);
    if (sharpnessAt(ppi) != Sharpness::Fine) {
        findings.push_back(
            {CheckKind::CoarsePrint,
             {slot},
             fmt::format("{} · {}: {} prints at {}.", pieceNumber(making.sketch, slot),
                         displayName(piece), std::filesystem::path(photo.path).filename().string(),
                         ppiText(ppi))});
    }
}

}  // namespace

std::vector<CheckFinding> checkMaking(const Making& making, const CheckSettings& settings,
                                      const std::stop_token& stop) {
    std::vector<CheckFinding> findings = checkSketch(making.sketch, settings, stop);
    for (const PieceId slot : making.sketch.order) {
        const auto found = making.work.placements.find(slot);
        if (found != making.work.placements.end() && !stop.stop_requested()) {
            findCoarsePrint(making, slot, found->second, findings);
        }
    }
    return findings;
}

}  // namespace matwright
