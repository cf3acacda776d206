// SPDX-License-Identifier: MIT
#include "core/papers/csv_rows.h"

#include <csv.h>
#include <fmt/format.h>

#include <algorithm>

namespace matwright {

namespace {

bool needsQuotes(std::string_view field) {
    return field.find_first_of(",\"\r\n") != std::string_view::npos ||
           withoutBlanks(field) != field;
}

std::string quoted(std::string_view field) {
    std::string text(field.size() * 2 + 2, '\0');
    text.resize(csv_write(text.data(), text.size(), field.data(), field.size()));
    return text;
}

// RFC 4180: blanks are part of a field.
int isNoBlank(unsigned char) {
    return 0;
}

class CsvReader {
  public:
    CsvReader(std::size_t maxRows, std::size_t maxFields, char between)
        : m_maxRows(maxRows), m_maxFields(maxFields) {
        csv_init(&m_parser, CSV_STRICT | CSV_STRICT_FINI);
        csv_set_space_func(&m_parser, isNoBlank);
        csv_set_delim(&m_parser, static_cast<unsigned char>(between));
    }
    ~CsvReader() { csv_free(&m_parser); }
    CsvReader(const CsvReader&) = delete;
    CsvReader& operator=(const CsvReader&) = delete;
    CsvReader(CsvReader&&) = delete;
    CsvReader& operator=(CsvReader&&) = delete;

    // One line with its end.
    bool read(std::string_view line) {
        ++m_line;
        if (!m_isInside) {
            m_rowLine = m_line;
        }
        const std::size_t rows = m_rows.size();
        const std::size_t done =
            csv_parse(&m_parser, line.data(), line.size(), takeField, takeRow, this);
        const bool isBlank = line.find_first_not_of("\r\n") == std::string_view::npos;
        m_isInside = m_rows.size() == rows && (m_isInside || !isBlank);
        return done == line.size() && m_tooLarge.empty();
    }
    bool finish() {
        return csv_fini(&m_parser, takeField, takeRow, this) == 0 && m_tooLarge.empty();
    }

    Error error() {
        if (!m_tooLarge.empty()) {
            return {ErrorCode::TooLarge, m_tooLarge, {}};
        }
        if (csv_error(&m_parser) != CSV_EPARSE) {
            return {ErrorCode::TooLarge, "There is no memory for this table.", {}};
        }
        return {ErrorCode::Malformed,
                fmt::format("Line {}: a quotation mark stands where none may be, or one is never "
                            "closed. A field with commas, line breaks or quotation marks stands in "
                            "quotation marks, those inside it doubled.",
                            m_rowLine),
                {}};
    }
    std::vector<NumberedRow> rows() { return std::move(m_rows); }

  private:
    static void takeField(void* bytes, std::size_t size, void* self) {
        auto* reader = static_cast<CsvReader*>(self);
        if (reader->m_fields.size() < reader->m_maxFields) {
            reader->m_fields.emplace_back(static_cast<const char*>(bytes), size);
        } else if (reader->m_tooLarge.empty()) {
            reader->m_tooLarge = fmt::format(
                "Line {} has more than {} fields; that is no line of "
                "such a table.",
                reader->m_rowLine, reader->m_maxFields);
        }
    }
    static void takeRow(int, void* self) {
        auto* reader = static_cast<CsvReader*>(self);
        if (reader->m_rows.size() < reader->m_maxRows) {
            reader->m_rows.push_back({reader->m_rowLine, std::move(reader->m_fields)});
        } else if (reader->m_tooLarge.empty()) {
            reader->m_tooLarge = fmt::format(
                "Such a table has at most {} lines, the first one included; this one "
                "has more. Divide it.",
                reader->m_maxRows);
        }
        reader->m_fields.clear();
    }

    csv_parser m_parser{};
    std::size_t m_maxRows;
    std::size_t m_maxFields;
    std::string m_tooLarge;  // why no more is stored
    std::vector<NumberedRow> m_rows;
    CsvRow m_fields;
    std::size_t m_line = 0;
    std::size_t m_rowLine = 1;
    bool m_isInside = false;  // a quoted field goes on from the line before
};

}  // namespace

std::string csvLine(const CsvRow& row) {
    std::string line;
    for (std::size_t i = 0; i < row.size(); ++i) {
        line += i == 0 ? "" : ",";
        line += needsQuotes(row[i]) ? quoted(row[i]) : row[i];
    }
    return line + "\r\n";
}

Result<std::vector<NumberedRow>> readCsv(std::string_view text, std::size_t maxRows,
                                         std::size_t maxFields, char between) {
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(byteOrderMark)) {
        text.remove_prefix(byteOrderMark.size());
    }
    CsvReader reader(maxRows, maxFields, between);
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size() - 1) + 1;
        if (!reader.read(text.substr(0, end))) {
            return std::unexpected(reader.error());
        }
        text.remove_prefix(end);
    }
    if (!reader.finish()) {
        return std::unexpected(reader.error());
    }
    return reader.rows();
}

std::string_view withoutBlanks(std::string_view field) {
    constexpr std::string_view blanks = " \t";
    const std::size_t first = field.find_first_not_of(blanks);
    return first == std::string_view::npos
               ? std::string_view()
               : field.substr(first, field.find_last_not_of(blanks) - first + 1);
}

}  // namespace matwright
