// SPDX-License-Identifier: MIT
#include "app/batch/typed_size.h"

#include <fmt/format.h>

#include <array>

#include "core/measure/catalogue.h"
#include "core/measure/length_text.h"
#include "core/sketch/soundness.h"

namespace matwright::app {

namespace {

constexpr std::string_view blanks = " \t";

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

// "inches", "cm", "\"": what stands behind the last digit, and is no fraction character.
std::string_view unitAt(std::string_view text) {
    for (const std::string_view unit : {"inches", "inch", "in", "\"", "mm", "cm"}) {
        if (text.ends_with(unit)) {
            return unit;
        }
    }
    return {};
}

Error notASize(std::string_view text, std::string_view catalogue, std::string_view example) {
    return {ErrorCode::BadText,
            fmt::format("\"{}\" is no size. Write width x height, such as {}, or a name of the "
                        "list that \"matwright-batch sizes\" shows under {}.",
                        text, example, catalogue),
            ""};
}

// The two sides as they are written; nothing where there are not two.
std::optional<std::array<std::string, 2>> sidesOf(std::string_view text) {
    for (const std::string_view by : {"x", "X", "×"}) {
        const std::size_t at = text.find(by);
        if (at == std::string_view::npos) {
            continue;
        }
        std::string width(trimmed(text.substr(0, at)));
        const std::string height(trimmed(text.substr(at + by.size())));
        if (unitAt(width).empty()) {
            width += unitAt(height);
        }
        return std::array{width, height};
    }
    return std::nullopt;
}

struct Kind {
    std::string_view catalogue;
    std::string_view example;
    Length smallest;
    Length largest;
};

Result<Size> parseSize(std::string_view text, const NamedSize* named, const Kind& kind) {
    if (named) {
        return named->size;
    }
    const auto sides = sidesOf(text);
    if (!sides) {
        return std::unexpected(notASize(text, kind.catalogue, kind.example));
    }
    std::array<Length, 2> lengths;
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        const Result<Length> length = parseLength((*sides)[i], Unit::Inch);
        if (!length) {
            return std::unexpected(length.error().code == ErrorCode::BadText
                                       ? notASize(text, kind.catalogue, kind.example)
                                       : length.error());
        }
        if (*length < kind.smallest || *length > kind.largest) {
            return std::unexpected(
                Error{ErrorCode::OutOfRange,
                      fmt::format("\"{}\" is no size for {}: a side is {} to {}.", text,
                                  kind.catalogue == "Pages" ? "a page" : "a print",
                                  exactText(kind.smallest), exactText(kind.largest)),
                      ""});
        }
        lengths[i] = *length;
    }
    return Size{lengths[0], lengths[1]};
}

std::string typed(Size size, const NamedSize* named) {
    return named ? std::string(named->id)
                 : fmt::format("{} x {}", exactText(size.width), exactText(size.height));
}

}  // namespace

Result<Size> parsePageSize(std::string_view text) {
    return parseSize(text, findPageSize(text),
                     {"Pages", R"("9 x 12" or "20 x 30 cm")", smallestPageSide, largestPageSide});
}

Result<Size> parsePrintSize(std::string_view text) {
    return parseSize(text, findPrintSize(text),
                     {"Prints", R"("3 1/2 x 5" or "9 x 13 cm")", smallestSide, largestSide});
}

Result<Size> parsePaperSize(std::string_view text) {
    const NamedSize* sheet = findSheetSize(text);
    return sheet != nullptr ? Result<Size>(sheet->size) : parsePrintSize(text);
}

std::string typedPageSize(Size size) {
    return typed(size, pageSizeOf(size));
}

std::string typedPrintSize(Size size) {
    return typed(size, printSizeOf(size));
}

}  // namespace matwright::app
