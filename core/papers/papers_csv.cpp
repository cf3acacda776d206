// SPDX-License-Identifier: MIT
#include "core/papers/papers_csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

#include "core/drawing/colour_text.h"
#include "core/papers/csv_rows.h"
#include "core/sketch/soundness.h"

namespace matwright {

namespace {

// More than there are columns, so that a line with a comma too many is named with the others.
constexpr std::size_t maxFieldsOfLine = 50;
constexpr std::size_t namedFaults = 10;
enum Column {
    Name,
    Width,
    Height,
    Count,
    Kind,
    Pattern,
    Sides,
    Thickness,
    Colours,
    Picture,
    PictureWidth
};
constexpr std::string_view columnNames[] = {"Name",   "Width",   "Height",       "Count",
                                            "Kind",   "Pattern", "Sides",        "Thickness",
                                            "Colour", "Picture", "Picture width"};

CsvRow rowOf(const PaperOnHand& paper) {
    return {paper.name,
            exactText(paper.size.width),
            exactText(paper.size.height),
            fmt::to_string(paper.count),
            paper.kind == PaperKind::Scrap ? "scrap" : "whole",
            paper.pattern == PaperPattern::HasUp ? "up" : "none",
            paper.sides == PaperSides::Two ? "two" : "one",
            paper.thickness,
            colourText(paper.colour),
            paper.picture,
            paper.picture.empty() ? "" : exactText(paper.pictureWidth)};
}

// Reads the fields of one line; remembers the first thing that is wrong with it.
class PaperRow {
  public:
    PaperRow(const CsvRow& row, const std::vector<int>& places) : m_row(row), m_places(places) {}

    PaperOnHand read() {
        PaperOnHand paper;
        paper.name = field(Name);
        paper.size = {length(Width), length(Height)};
        paper.count = count();
        paper.kind = word(Kind, "whole", "scrap") ? PaperKind::Scrap : PaperKind::WholeSheet;
        paper.pattern = word(Pattern, "none", "up") ? PaperPattern::HasUp : PaperPattern::None;
        paper.sides = word(Sides, "one", "two") ? PaperSides::Two : PaperSides::One;
        paper.thickness = field(Thickness);
        paper.colour = colour(paper.colour);
        paper.picture = field(Picture);
        paper.pictureWidth = field(PictureWidth).empty() ? Length() : length(PictureWidth);
        if (const auto fault = findFault(paper); fault && m_fault.empty()) {
            m_fault = fault->sentence;
        }
        return paper;
    }
    const std::string& fault() const { return m_fault; }

  private:
    std::string field(Column column) const {
        const int place = m_places[column];
        return place < 0 ? std::string()
                         : std::string(withoutBlanks(m_row[static_cast<std::size_t>(place)]));
    }

    void wrong(Column column, std::string_view wanted) {
        if (m_fault.empty()) {
            const std::string text = field(column);
            const bool isShown = text.size() <= 60 && isValidText(text, false);
            m_fault = fmt::format("{} is {}; it has to be {}.", columnNames[column],
                                  text.empty() ? "empty"
                                               : (isShown ? fmt::format("\"{}\"", text)
                                                          : std::string("something else")),
                                  wanted);
        }
    }

    Length length(Column column) {
        const Result<Length> read = parseLength(field(column), Unit::Inch);
        if (!read) {
            wrong(column, "a length such as 8 1/2 in or 210 mm");
        }
        return read.value_or(Length::inches(1));
    }

    int count() {
        const std::string text = field(Count);
        int number = 1;
        const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), number);
        if (!text.empty() && (failed != std::errc() || end != text.data() + text.size())) {
            wrong(Count, "a whole number");
        }
        return number;
    }

    // Whether it is the second word; the first is what an empty field means.
    bool word(Column column, std::string_view first, std::string_view second) {
        const std::string text = paperKey(field(column));
        if (!text.empty() && text != first && text != second) {
            wrong(column, fmt::format("{} or {}", first, second));
        }
        return text == second;
    }

    Colour colour(Colour otherwise) {
        const std::string text = field(Colours);
        if (text.empty()) {
            return otherwise;
        }
        const std::optional<Colour> read = parseColour(text);
        if (!read) {
            wrong(Colours, "a colour such as #c8aa82");
        }
        return read.value_or(otherwise);
    }

    const CsvRow& m_row;
    const std::vector<int>& m_places;
    std::string m_fault;
};

Error csvFault(ErrorCode code, std::string sentence) {
    return {code, std::move(sentence), {}};
}

// Where each column stands in the file, -1 where it does not.
Result<std::vector<int>> placesIn(const CsvRow& heading) {
    std::vector<int> places(std::size(columnNames), -1);
    for (std::size_t i = 0; i < heading.size(); ++i) {
        const auto* const found = std::ranges::find_if(columnNames, [&](std::string_view name) {
            return paperKey(name) == paperKey(heading[i]);
        });
        const auto column = static_cast<std::size_t>(found - std::begin(columnNames));
        if (column == places.size() || places[column] >= 0) {
            return std::unexpected(csvFault(
                ErrorCode::Malformed,
                fmt::format("Column {} of the first line is {}. The first line names the columns, "
                            "each once: {}.",
                            i + 1, column == places.size() ? "not known" : "there twice",
                            fmt::join(columnNames, ", "))));
        }
        places[column] = static_cast<int>(i);
    }
    for (const Column needed : {Name, Width, Height}) {
        if (places[needed] < 0) {
            return std::unexpected(
                csvFault(ErrorCode::NotFound,
                         fmt::format("There is no column {}. The first line names the "
                                     "columns: {}.",
                                     columnNames[needed], fmt::join(columnNames, ", "))));
        }
    }
    return places;
}

// No column's name has either.
char separatorOf(std::string_view text) {
    const std::string_view heading = text.substr(0, text.find('\n'));
    return heading.contains(';') && !heading.contains(',') ? ';' : ',';
}

struct Gathered {
    std::vector<PaperOnHand> papers;
    std::vector<std::string> faults;
};

Gathered gather(std::span<const NumberedRow> rows, std::size_t columns,
                const std::vector<int>& places) {
    Gathered gathered;
    for (const NumberedRow& row : rows) {
        if (row.fields.size() != columns) {
            gathered.faults.push_back(fmt::format("Line {}: {} fields, the first line has {}.",
                                                  row.line, row.fields.size(), columns));
            continue;
        }
        PaperRow reading(row.fields, places);
        gathered.papers.push_back(reading.read());
        if (!reading.fault().empty()) {
            gathered.faults.push_back(fmt::format("Line {}: {}", row.line, reading.fault()));
        }
    }
    return gathered;
}

std::string faultsText(std::vector<std::string> faults) {
    const std::size_t count = faults.size();
    faults.resize(std::min(count, namedFaults));
    std::string text = fmt::format("{}", fmt::join(faults, " "));
    if (count > namedFaults) {
        text += fmt::format(" And {} more.", count - namedFaults);
    }
    return text + " Nothing was read; correct this and try again.";
}

}  // namespace

std::string papersCsv(std::span<const PaperOnHand> papers) {
    std::string text = csvLine(CsvRow(std::begin(columnNames), std::end(columnNames)));
    for (const PaperOnHand& paper : papers) {
        text += csvLine(rowOf(paper));
    }
    return text;
}

Result<std::vector<PaperOnHand>> readPapersCsv(std::string_view text) {
    if (text.size() > maxPapersCsvBytes) {
        return std::unexpected(
            csvFault(ErrorCode::TooLarge, "A table of papers may be 16 MB long; divide it."));
    }
    const Result<std::vector<NumberedRow>> rows =
        readCsv(text, maxPapersOnHand + 1, maxFieldsOfLine, separatorOf(text));
    if (!rows) {
        return std::unexpected(rows.error());
    }
    if (rows->empty()) {
        return std::unexpected(
            csvFault(ErrorCode::NotFound, "The table is empty. Its first line names the columns."));
    }
    const CsvRow& heading = rows->front().fields;
    const Result<std::vector<int>> places = placesIn(heading);
    if (!places) {
        return std::unexpected(places.error());
    }
    Gathered gathered = gather(std::span(*rows).subspan(1), heading.size(), *places);
    if (!gathered.faults.empty()) {
        return std::unexpected(csvFault(ErrorCode::Malformed, faultsText(gathered.faults)));
    }
    return std::move(gathered.papers);
}

}  // namespace matwright
