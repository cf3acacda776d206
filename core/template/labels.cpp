// SPDX-License-Identifier: MIT
#include "core/template/labels.h"

#include <fmt/format.h>

#include "core/template/free_place.h"
#include "core/template/pen.h"
#include "core/template/text_block.h"

namespace matwright {

namespace {

constexpr std::int64_t labelPoints[] = {9, 8, 7, 6};
constexpr std::int64_t besidePoints[] = {7, 6};
constexpr std::int64_t listPoints = 6;
// A figure closer than this to a label would read as part of it.
constexpr Length labelAir = Length::millimetres(1);
constexpr std::size_t longName = 32;
constexpr std::size_t shortName = 14;
// Beyond this many rows a list is no help on a template.
constexpr std::size_t mostRows = 120;
// After so many searches without a place the page is full and searching on only takes time.
constexpr int enoughInVain = 12;

// With papers and second distances on lines of their own.
std::vector<std::string> narrowed(const std::vector<std::string>& lines) {
    std::vector<std::string> out;
    for (std::string_view line : lines) {
        for (std::size_t comma = line.find(", "); comma != std::string_view::npos && !out.empty();
             comma = line.find(", ")) {
            out.emplace_back(line.substr(0, comma));
            line.remove_prefix(comma + 2);
        }
        out.emplace_back(line);
    }
    return out;
}

// The ways to set a label: stacked, in one row, stacked in narrow lines, the first two reading
// upwards.
std::vector<TextBlock> settings(const std::vector<std::string>& lines, Length height,
                                bool centred) {
    std::string row;
    for (const std::string& line : lines) {
        row += (row.empty() ? "" : " \u00B7 ") + line;
    }
    const TextBlock stacked{lines, height, true, centred, false, pen::ink};
    const TextBlock oneRow{{row}, height, false, false, false, pen::ink};
    const TextBlock narrow{narrowed(lines), height, true, centred, false, pen::ink};
    std::vector<TextBlock> all{stacked, oneRow, narrow, stacked, oneRow};
    all[3].upright = all[4].upright = true;
    return all;
}

}  // namespace

LabelPlacer::LabelPlacer(const Scene& scene, Scale scale, Occupancy& occupancy)
    : m_scene(scene), m_scale(scale), m_occupancy(occupancy) {}

void LabelPlacer::put(const TextBlock& block, Point at) {
    std::ranges::move(itemsAt(block, at), std::back_inserter(m_items));
    m_occupancy.addBox(Rect::at(at, roomOf(block)).expanded(labelAir), Occupancy::Mark);
}

void LabelPlacer::putLeader(Vertex from, Vertex to) {
    const Length dot = Length::hundredthMillimetres(40);
    const Point end{Length::roundedFromTicks(to.x), Length::roundedFromTicks(to.y)};
    const Rect around = Rect::at(end, {}).expanded(dot);
    m_items.emplace_back(PathItem{{linePath(from, to)}, pen::leader(), std::nullopt});
    m_items.emplace_back(PathItem{{ovalPath(around)}, std::nullopt, pen::ink});
    m_occupancy.addLine(from, to, Occupancy::Mark);
    m_occupancy.addBox(around, Occupancy::Mark);
}

bool LabelPlacer::placeInPiece(const ScenePiece& piece, const std::vector<std::string>& lines) {
    const bool centred = !piece.piece->rotation.isQuarterTurn() ||
                         std::holds_alternative<OvalShape>(piece.piece->shape);
    for (const std::int64_t points : labelPoints) {
        for (const TextBlock& block : settings(lines, Length::points(points), centred)) {
            if (const auto at = matwright::placeInPiece(m_scene, m_occupancy, piece, block)) {
                put(block, *at);
                return true;
            }
        }
    }
    return false;
}

bool LabelPlacer::placeBeside(const ScenePiece& piece, const std::vector<std::string>& lines) {
    for (const std::int64_t points : besidePoints) {
        const TextBlock block{lines, Length::points(points), true, false, false, pen::ink};
        if (const auto place = matwright::placeBeside(m_scene, m_occupancy, piece, roomOf(block))) {
            put(block, place->at);
            putLeader(place->leaderFrom, place->leaderTo);
            return true;
        }
    }
    return false;
}

bool LabelPlacer::placeTag(const ScenePiece& piece) {
    if (!showsSomewhere(m_scene, m_occupancy, piece)) {
        return false;
    }
    const std::vector<std::string> tag{std::to_string(piece.number)};
    return placeInPiece(piece, tag) || placeBeside(piece, tag);
}

void LabelPlacer::placeInside(const std::map<PieceId, ToldDistances>& told) {
    for (const ScenePiece& piece : m_scene.pieces()) {
        if (!showsSomewhere(m_scene, m_occupancy, piece)) {
            m_waiting.push_back(&piece);
            continue;
        }
        const ToldDistances say = told.at(piece.id);
        const std::vector<std::string> whole = labelLines(piece, m_scale, say, longName);
        const std::vector<std::string> brief = labelLines(piece, m_scale, say, shortName);
        if (!placeInPiece(piece, whole) && (brief == whole || !placeInPiece(piece, brief))) {
            m_waiting.push_back(&piece);
        }
    }
}

void LabelPlacer::placeOthers(const std::map<PieceId, ToldDistances>& told) {
    std::vector<const ScenePiece*> listed;
    for (const ScenePiece* piece : m_waiting) {
        if (std::ssize(listed) <= enoughInVain &&
            placeBeside(*piece, labelLines(*piece, m_scale, told.at(piece->id), shortName))) {
            continue;
        }
        if (listed.size() >= mostRows) {
            ++m_leftOut;
            continue;
        }
        placeTag(*piece);
        listed.push_back(piece);
    }
    placeList(listed, told);
    if (m_leftOut > 0) {
        placeRows({fmt::format("{} more pieces: no room for their figures here", m_leftOut)});
    }
}

bool LabelPlacer::placeRows(const std::vector<std::string>& rows) {
    const TextBlock block{rows, Length::points(listPoints), false, false, false, pen::ink};
    for (const Freedom freedom : {Freedom::BarePaper, Freedom::NoLines, Freedom::NothingElse}) {
        if (const auto at =
                placeOnSheet(m_scene, m_occupancy, roomOf(block), freedom, Corner::BottomLeft)) {
            put(block, *at);
            return true;
        }
    }
    return false;
}

// All rows together where there is room, else in halves down to single rows and those in several
// lines.
void LabelPlacer::placeList(std::span<const ScenePiece* const> pieces,
                            const std::map<PieceId, ToldDistances>& told) {
    if (pieces.empty()) {
        return;
    }
    std::vector<std::string> rows;
    for (const ScenePiece* piece : pieces) {
        rows.push_back(labelRow(*piece, m_scale, told.at(piece->id)));
    }
    if (m_leftOut > enoughInVain) {
        m_leftOut += static_cast<int>(pieces.size());
    } else if (placeRows(rows)) {
        return;
    } else if (pieces.size() > 1) {
        const std::size_t half = pieces.size() / 2;
        placeList(pieces.subspan(half), told);  // lower, so that the rows read downwards
        placeList(pieces.first(half), told);
    } else if (!placeRows(
                   narrowed(labelLines(*pieces[0], m_scale, told.at(pieces[0]->id), shortName)))) {
        ++m_leftOut;
    }
}

}  // namespace matwright
