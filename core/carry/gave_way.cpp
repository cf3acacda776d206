// SPDX-License-Identifier: MIT
#include "core/carry/gave_way.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "core/carry/judgement.h"
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

// Which of the members got which size.
template <typename SizeOf>
std::vector<std::pair<Size, Indices>> groupedBy(const Indices& members, const SizeOf& sizeOf) {
    std::vector<std::pair<Size, Indices>> groups;
    for (const std::size_t i : members) {
        const Size size = sizeOf(i);
        auto it = std::ranges::find(groups, size, &std::pair<Size, Indices>::first);
        if (it == groups.end()) {
            it = groups.insert(groups.end(), {size, {}});
        }
        it->second.push_back(i);
    }
    return groups;
}

void tellPrints(const Source& source, const Attempt& attempt, Sentences& told) {
    for (const PhotoClass& photos : source.photos) {
        const auto groups = groupedBy(photos.members, [&](std::size_t i) {
            return *pieceAfter(source, attempt, i).printSize;
        });
        for (const auto& [print, members] : groups) {
            const std::string label = labelOf(source, members);
            const bool several = members.size() > 1;
            if (print != photos.print) {
                told.push_back(fmt::format("{} {} printed {} now, not {}.", label,
                                           several ? "are" : "is", printText(print),
                                           printText(photos.print)));
            } else if (!printSizeOf(print)) {
                told.push_back(fmt::format("{} {} print of {}, which is no usual size.", label,
                                           several ? "keep their" : "keeps its", printText(print)));
            }
        }
    }
}

void tellTrims(const Source& source, const Attempt& attempt, Sentences& told) {
    for (const PhotoClass& photos : source.photos) {
        Indices members = photos.members;
        std::erase_if(members, [&](std::size_t i) {
            const Piece& now = pieceAfter(source, attempt, i);
            // A trim that was larger than its print is cut down to it, which is told too.
            const bool isExpected = *now.printSize == photos.print
                                        ? now.size == photos.trim
                                        : now.size == trimFrom(photos, *now.printSize, source.step);
            return isExpected && photos.print.contains(photos.trim);
        });
        const auto groups =
            groupedBy(members, [&](std::size_t i) { return pieceAfter(source, attempt, i).size; });
        for (const auto& [trim, same] : groups) {
            told.push_back(fmt::format("{} {} trimmed to {}.", labelOf(source, same),
                                       same.size() > 1 ? "are" : "is", naturalSizeText(trim)));
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
        if (isNewlyOverMargin(source, i, footprint(source.pieces[i].id, now))) {
            told.push_back(labelOf(source, {i}) + " runs over a margin now.");
        }
        const bool text = before.kind == PieceKind::Title || before.kind == PieceKind::Journaling;
        if (text && squareInches(now.size) <
                        0.5 * squareInches(before.size) * source.scale * source.scale) {
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
        if (!before.contains(pair) && mustStayClear(pieceAfter(source, attempt, pair.first),
                                                    pieceAfter(source, attempt, pair.second))) {
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
    if (source.pieces.size() <= mostRelatedPieces) {
        tellOverlaps(source, attempt, told);
    }
    return told;
}

}  // namespace matwright::carry
