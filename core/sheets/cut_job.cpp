// SPDX-License-Identifier: MIT
#include "core/sheets/cut_job.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "core/sheets/cut_area.h"

namespace matwright {

namespace {

bool isLengthOfJob(Length length) {
    return !length.isNegative() && length <= Length::coordinateLimit();
}

bool isSizeOfJob(Size size) {
    return size.isPositive() && isLengthOfJob(size.width) && isLengthOfJob(size.height);
}

Error fault(std::string sentence, std::string where = {}) {
    return {ErrorCode::OutOfRange, std::move(sentence), std::move(where)};
}

std::optional<Error> findFault(const CutPiece& piece, std::size_t index) {
    const std::string where = fmt::format("piece {}", index + 1);
    if (!isSizeOfJob(piece.size)) {
        return fault("A piece has to be larger than nothing and at most 1,000 in; change its size.",
                     where);
    }
    if (piece.count < 0 || piece.count > maxPiecesOfJob) {
        return fault(fmt::format("Give a count from 0 to {}.", maxPiecesOfJob), where);
    }
    return std::nullopt;
}

std::optional<Error> findFault(const CutSheet& sheet, std::size_t index) {
    const std::string where = fmt::format("sheet {}", index + 1);
    if (!isSizeOfJob(sheet.size)) {
        return fault("A sheet has to be larger than nothing and at most 1,000 in; change its size.",
                     where);
    }
    const SheetMargin& m = sheet.margin;
    if (!std::ranges::all_of(std::array{m.left, m.top, m.right, m.bottom}, isLengthOfJob)) {
        return fault("A margin has to be 0 or more and at most 1,000 in.", where);
    }
    if (sheet.atHand && *sheet.atHand < 0) {
        return fault("The number of sheets at hand cannot be below 0.", where);
    }
    if (sheet.price < 0 || sheet.price > maxSheetPrice) {
        return fault(fmt::format("Give a price from 0 to {}.", maxSheetPrice), where);
    }
    return std::nullopt;
}

// A margin has to be cut off, so it is at least as wide as the blade.
Length marginCutOff(Length margin, Length kerf) {
    return margin.isZero() ? margin : std::max(margin, kerf);
}

// Areas of all sheets that could be taken are added up in 64 bits.
std::optional<Error> findFaultOfAreas(const CutJob& job, std::int64_t pieces) {
    constexpr std::int64_t mostArea = 4'000'000'000'000'000'000;
    for (std::size_t i = 0; i < job.sheets.size(); ++i) {
        const Size size = job.sheets[i].size;
        if (pieces > 0 && areaOf(size) > mostArea / pieces) {
            return fault("Sheets of this size are planned only with fewer pieces at once.",
                         fmt::format("sheet {}", i + 1));
        }
    }
    return std::nullopt;
}

}  // namespace

std::optional<Error> findFault(const CutJob& job) {
    std::int64_t total = 0;
    for (std::size_t i = 0; i < job.pieces.size(); ++i) {
        if (auto found = findFault(job.pieces[i], i)) {
            return found;
        }
        total += job.pieces[i].count;
    }
    for (std::size_t i = 0; i < job.sheets.size(); ++i) {
        if (auto found = findFault(job.sheets[i], i)) {
            return found;
        }
    }
    if (total > maxPiecesOfJob) {
        return fault(fmt::format(
            "At most {} pieces are planned at once; plan fewer pages together.", maxPiecesOfJob));
    }
    if (!isLengthOfJob(job.rules.kerf) || job.rules.kerf > Length::inches(1)) {
        return fault("The blade's width has to lie between 0 and 1 in.");
    }
    if (!isLengthOfJob(job.rules.usefulSide)) {
        return fault("The smallest useful leftover has to lie between 0 and 1,000 in.");
    }
    return findFaultOfAreas(job, total);
}

Rect usableArea(const CutSheet& sheet, Length kerf) {
    const SheetMargin& m = sheet.margin;
    return {{marginCutOff(m.left, kerf), sheet.size.width - marginCutOff(m.right, kerf)},
            {marginCutOff(m.top, kerf), sheet.size.height - marginCutOff(m.bottom, kerf)}};
}

}  // namespace matwright
