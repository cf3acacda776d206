// SPDX-License-Identifier: MIT
#include "core/carry/gave_way.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "core/measure/catalogue.h"
#include "core/measure/length_text.h"
#include "core/outline/layering.h"

namespace matwright::carry {

namespace {

using Sentences = std::vector<std::string>;
using Indices = std::vector<std::size_t>;

std::string printText(Size size) {
    const NamedSize* named = printSizeOf(size);
    return named && named->size == size ? std::string(named->name) : naturalSizeText(size);
}

const Piece& pieceAfter(const Source& source, const Attempt& attempt, std::size_t i) {
    return attempt.sketch.pieces.at(source.pieces[i].id);
}

void tellPrints(const Source& source, const Attempt& attempt, Sentences& told) {
    for (const PhotoClass& photos : source.photos) {
        const Size now = *pieceAfter(source, attempt, photos.members.front()).printSize;
        const std::string label = labelOf(source, photos.members);
        const bool several = photos.members.size() > 1;
        if (now != photos.print) {
            told.push_back(fmt::format("{} {} printed {} now, not {}.", label,
                                       several ? "are" : "is", printText(now),
                                       printText(photos.print)));
        } else if (!printSizeOf(now)) {
            told.push_back(fmt::format("{} {} print of {}, which is no usual size.", label,
                                       several ? "keep their" : "keeps its", printText(now)));
        }
    }
}

void tellTrims(const Source& source, const Attempt& attempt, Sentences& told) {
    for (const PhotoClass& photos : source.photos) {
        std::vector<std::pair<Size, Indices>> trims;
        for (const std::size_t i : photos.members) {
            const Piece& now = pieceAfter(source, attempt, i);
            if (now.size == trimFrom(photos, *now.printSize, source.step)) {
                continue;
            }
            auto it = std::ranges::find(trims, now.size, &std::pair<Size, Indices>::first);
            if (it == trims.end()) {
                it = trims.insert(trims.end(), {now.size, {}});
            }
            it->second.push_back(i);
        }
        for (const auto& [trim, members] : trims) {
            told.push_back(fmt::format("{} {} trimmed to {}.", labelOf(source, members),
                                       members.size() > 1 ? "are" : "is", naturalSizeText(trim)));
        }
    }
}

void tellShapes(const Source& source, const Attempt& attempt, Sentences& told) {
    for (std::size_t i = 0; i < source.pieces.size(); ++i) {
        const Piece& before = *source.pieces[i].piece;
        const Piece& now = pieceAfter(source, attempt, i);
        if (before.shape.index() != now.shape.index()) {
            told.push_back(labelOf(source, {i}) + " lost its shape; draw it anew.");
        } else if (std::holds_alternative<OvalShape>(before.shape) &&
                   before.size.width == before.size.height && now.size.width != now.size.height) {
            told.push_back(labelOf(source, {i}) + " is no longer round.");
        }
        const bool text = before.kind == PieceKind::Title || before.kind == PieceKind::Journaling;
        const auto area = [](Size size) { return size.width.toInches() * size.height.toInches(); };
        if (text && area(now.size) < 0.5 * area(before.size) * source.scale * source.scale) {
            told.push_back(fmt::format("{} has only {} left.", labelOf(source, {i}),
                                       naturalSizeText(now.size)));
        }
    }
}

std::set<std::pair<std::size_t, std::size_t>> overlapsIn(const Sketch& sketch) {
    std::map<PieceId, std::size_t> numbers;
    for (std::size_t i = 0; i < sketch.order.size(); ++i) {
        numbers.emplace(sketch.order[i], i);
    }
    std::set<std::pair<std::size_t, std::size_t>> found;
    for (const Overlap& overlap : Layering(sketch).overlaps()) {
        found.emplace(numbers.at(overlap.below), numbers.at(overlap.above));
    }
    return found;
}

void tellOverlaps(const Source& source, const Attempt& attempt, Sentences& told) {
    const auto before = overlapsIn(source.sketch);
    for (const auto& pair : overlapsIn(attempt.sketch)) {
        if (!before.contains(pair)) {
            told.push_back(labelOf(source, {pair.first, pair.second}) + " overlap now.");
        }
    }
}

}  // namespace

Sentences gaveWayText(const Source& source, const Attempt& attempt) {
    Sentences told;
    tellPrints(source, attempt, told);
    tellTrims(source, attempt, told);
    tellShapes(source, attempt, told);
    for (const std::size_t relation : attempt.lost) {
        told.push_back(lostText(source, source.relations[relation]));
    }
    tellOverlaps(source, attempt, told);
    return told;
}

}  // namespace matwright::carry
