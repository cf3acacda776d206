// SPDX-License-Identifier: MIT
#include "core/checks/checks.h"

#include <fmt/format.h>

#include <cassert>

#include "core/checks/finders.h"

namespace matwright {

namespace {

// In the order of CheckKind; CoarsePrint is in photo_checks.cpp.
constexpr auto finders = {findOffPage, findOverMargin, findAcrossFold,      findPhotosOverlap,
                          findHidden,  findOffScale,   findNoSuchPrintSize, findTrimOverPrint};

}  // namespace

std::string CheckContext::label(PieceId id) const {
    const auto number = numbers.find(id);
    assert(number != numbers.end());
    return fmt::format("{} \u00B7 {}", number->second, displayName(sketch.pieces.at(id)));
}

std::vector<CheckFinding> checkSketch(const Sketch& sketch, const CheckSettings& settings,
                                      const std::stop_token& stop) {
    const Layering layering(sketch);
    std::map<PieceId, std::size_t> numbers;
    for (std::size_t i = 0; i < sketch.order.size(); ++i) {
        numbers.emplace(sketch.order[i], i + 1);
    }
    const CheckContext context{sketch, settings, layering, numbers};
    Findings findings;
    for (const PieceId id : sketch.order) {
        const Piece& piece = sketch.pieces.at(id);
        const Length slack = Length::fromTicks(piece.rotation.isZero() ? 0 : 1);
        const CheckedPiece checked{id, piece, layering.bounds(id), slack};
        for (const auto& find : finders) {
            if (stop.stop_requested()) {
                return findings;
            }
            find(context, checked, findings);
        }
    }
    return findings;
}

std::string_view checkWord(CheckKind kind) {
    switch (kind) {
        case CheckKind::OffPage:
            return "off-page";
        case CheckKind::OverMargin:
            return "over-margin";
        case CheckKind::AcrossFold:
            return "across-fold";
        case CheckKind::PhotosOverlap:
            return "photos-overlap";
        case CheckKind::Hidden:
            return "hidden";
        case CheckKind::OffScale:
            return "off-scale";
        case CheckKind::NoSuchPrintSize:
            return "no-such-print-size";
        case CheckKind::TrimOverPrint:
            return "trim-over-print";
        case CheckKind::CoarsePrint:
            return "coarse-print";
    }
    return "";
}

}  // namespace matwright
