// SPDX-License-Identifier: MIT
#include "app/batch/table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

#include "app/batch/place.h"

namespace matwright::app {

namespace {

std::size_t characters(const std::string& utf8) {
    return static_cast<std::size_t>(std::ranges::count_if(
        utf8, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::string withoutTrailingBlanks(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line;
}

bool isEmpty(const Table::Row& row) {
    return std::ranges::all_of(row, &std::string::empty);
}

}  // namespace

Table::Table(Row heading, std::set<std::size_t> right)
    : m_right(std::move(right)), m_rows{std::move(heading)} {}

void Table::addRow(Row row) {
    assert(row.size() == m_rows.front().size());
    m_rows.push_back(std::move(row));
}

std::string Table::text() const {
    std::vector<std::size_t> widths(m_rows.front().size());
    for (const Row& row : m_rows) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            widths[i] = std::max(widths[i], characters(row[i]));
        }
    }
    std::string text;
    for (const Row& row : m_rows) {
        if (&row == &m_rows.front() && isEmpty(row)) {
            continue;
        }
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string blanks(widths[i] - characters(row[i]), ' ');
            line += m_right.contains(i) ? blanks + row[i] : row[i] + blanks;
            line += "  ";
        }
        text += withoutTrailingBlanks(line) + '\n';
    }
    return text;
}

namespace {

std::string matsText(const Piece& piece, Scale scale) {
    std::string text;
    for (const Mat& mat : piece.mats) {
        text += text.empty() ? "" : ", ";
        text += lengthText(mat.border, scale);
        if (mat.bottomBorder) {
            text += fmt::format(" (bottom {})", lengthText(*mat.bottomBorder, scale));
        }
    }
    return text;
}

std::string rotationText(Angle rotation) {
    return rotation.isZero() ? "" : fmt::format("{:g}°", rotation.toDegrees());
}

}  // namespace

std::string piecesTable(const Sketch& sketch, Scale scale) {
    const std::vector<Rect> allPages = pages(sketch.page);
    const bool facing = allPages.size() > 1;
    Table::Row heading = {"No.", "Kind", "Name", "Print", "Trim", "Mats"};
    if (facing) {
        heading.emplace_back("Page");
    }
    const std::size_t left = heading.size();
    heading.insert(heading.end(), {"Left", "Top", "Rotation"});
    Table table(std::move(heading), {0, left, left + 1, left + 2});
    for (std::size_t i = 0; i < sketch.order.size(); ++i) {
        const Piece& piece = sketch.pieces.at(sketch.order[i]);
        const Place place = placeOf(piece, allPages);
        Table::Row row = {std::to_string(i + 1),
                          std::string(kindName(piece.kind)),
                          piece.name,
                          piece.printSize ? sizeText(*piece.printSize, scale) : "",
                          sizeText(piece.size, scale),
                          matsText(piece, scale)};
        if (facing) {
            row.emplace_back(place.page == 0 ? "left" : "right");
        }
        row.insert(row.end(), {lengthText(place.left, scale), lengthText(place.top, scale),
                               rotationText(piece.rotation)});
        table.addRow(std::move(row));
    }
    return table.text();
}

}  // namespace matwright::app
