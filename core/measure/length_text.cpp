// SPDX-License-Identifier: MIT
#include "core/measure/length_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdlib>
#include <numeric>
#include <optional>
#include <vector>

namespace matwright {

namespace {

constexpr std::string_view almostEqual = "\u2248";

struct FractionSign {
    std::string_view text;
    int numerator;
    int denominator;
};
constexpr FractionSign fractionSigns[] = {
    {"\u00BD", 1, 2}, {"\u00BC", 1, 4}, {"\u00BE", 3, 4}, {"\u215B", 1, 8},
    {"\u215C", 3, 8}, {"\u215D", 5, 8}, {"\u215E", 7, 8},
};

// ASCII only, so that no locale has a say; tabs and line breaks come along when people paste.
char plainCharacter(char c) {
    if (c >= 'A' && c <= 'Z') {
        return static_cast<char>(c - 'A' + 'a');
    }
    return c == '\t' || c == '\n' || c == '\r' ? ' ' : c;
}

// The text with everything people type in several ways brought to one form: fraction signs become
// " n/d", the figure dashes and no-break space become ASCII, letters lower case.
std::string plainForm(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const auto startsWith = [&](std::string_view s) { return text.starts_with(s); };
        const auto sign = std::ranges::find_if(fractionSigns, startsWith, &FractionSign::text);
        if (sign != std::end(fractionSigns)) {
            out += fmt::format(" {}/{}", sign->numerator, sign->denominator);
            text.remove_prefix(sign->text.size());
        } else if (startsWith("\u2044")) {  // fraction slash
            out += '/';
            text.remove_prefix(3);
        } else if (startsWith("\u2212") || startsWith("\u2013")) {  // minus, en dash
            out += '-';
            text.remove_prefix(3);
        } else if (startsWith("\u2033") || startsWith("\u201D")) {  // double prime, quote
            out += '"';
            text.remove_prefix(3);
        } else if (startsWith("\u00A0")) {
            out += ' ';
            text.remove_prefix(2);
        } else if (startsWith("\u202F") || startsWith("\u2009")) {
            out += ' ';
            text.remove_prefix(3);
        } else {
            out += plainCharacter(text.front());
            text.remove_prefix(1);
        }
    }
    return out;
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ') {
        text.remove_prefix(1);
    }
    while (!text.empty() && text.back() == ' ') {
        text.remove_suffix(1);
    }
    return text;
}

struct UnitWord {
    std::string_view text;
    double ticks;
};
constexpr UnitWord unitWords[] = {
    {"inches", 914'400}, {"inch", 914'400}, {"in.", 914'400}, {"in", 914'400},
    {"\"", 914'400},     {"''", 914'400},   {"mm", 36'000},   {"cm", 360'000},
};

// Takes a unit word off the end; nothing when there is none.
std::optional<double> takeUnit(std::string_view& text) {
    for (const UnitWord& word : unitWords) {
        if (text.ends_with(word.text)) {
            text = trimmed(text.substr(0, text.size() - word.text.size()));
            return word.ticks;
        }
    }
    return std::nullopt;
}

bool isDigits(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

// Up to nine digits: no figure anybody measures has more.
std::optional<std::int64_t> wholeNumber(std::string_view text) {
    if (!isDigits(text) || text.size() > 9) {
        return std::nullopt;
    }
    std::int64_t value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

struct Ratio {
    std::int64_t numerator;
    std::int64_t denominator;
};

// "7", "3.5", ".5", "3,5"
std::optional<Ratio> decimal(std::string_view text) {
    const std::size_t point = text.find_first_of(".,");
    if (point == std::string_view::npos) {
        const auto whole = wholeNumber(text);
        return whole ? std::optional(Ratio{*whole, 1}) : std::nullopt;
    }
    const std::string_view before = text.substr(0, point);
    const std::string_view after = text.substr(point + 1);
    const auto whole = before.empty() ? std::optional<std::int64_t>(0) : wholeNumber(before);
    const auto part = after.empty() ? std::optional<std::int64_t>(0) : wholeNumber(after);
    if (!whole || !part || (before.empty() && after.empty())) {
        return std::nullopt;
    }
    std::int64_t scale = 1;
    for (std::size_t i = 0; i < after.size(); ++i) {
        scale *= 10;
    }
    return Ratio{*whole * scale + *part, scale};
}

// "1/8"
std::optional<Ratio> fraction(std::string_view text) {
    const std::size_t slash = text.find('/');
    if (slash == std::string_view::npos) {
        return std::nullopt;
    }
    const auto numerator = wholeNumber(trimmed(text.substr(0, slash)));
    const auto denominator = wholeNumber(trimmed(text.substr(slash + 1)));
    if (!numerator || !denominator || *denominator == 0) {
        return std::nullopt;
    }
    return Ratio{*numerator, *denominator};
}

// A figure without sign or unit: decimal, fraction, or whole number and fraction with a space, a
// hyphen or both between them.
std::optional<Ratio> figure(std::string_view text) {
    if (text.find('/') == std::string_view::npos) {
        return decimal(text);
    }
    const std::size_t gap = text.find_first_of(" -");
    if (gap == std::string_view::npos || !isDigits(text.substr(0, gap))) {
        return fraction(text);
    }
    std::string_view rest = trimmed(text.substr(gap));
    if (rest.starts_with('-')) {
        rest = trimmed(rest.substr(1));
    }
    if (rest.starts_with('/')) {
        return fraction(text);  // "1 / 8"
    }
    const auto whole = wholeNumber(text.substr(0, gap));
    const auto part = fraction(rest);
    if (!whole || !part || part->numerator >= part->denominator) {
        return std::nullopt;
    }
    return Ratio{*whole * part->denominator + part->numerator, part->denominator};
}

// In bytes. No length anybody writes comes near it; a pasted book is refused without reading it.
constexpr std::size_t longestFigure = 200;

// What was typed, as far as it is useful in a sentence: about 40 bytes, cut between characters, and
// nothing in it that a terminal would obey.
std::string quoted(std::string_view text) {
    constexpr std::size_t most = 40;
    std::size_t end = std::min(text.size(), most);
    while (end < text.size() && end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) {
        --end;
    }
    std::string out = "\"";
    for (const char c : text.substr(0, end)) {
        const auto byte = static_cast<unsigned char>(c);
        out += byte < 0x20 || byte == 0x7F ? '?' : c;
    }
    return out + (end < text.size() ? "\u2026\"" : "\"");
}

Error badText(std::string_view text) {
    return {ErrorCode::BadText,
            quoted(text) + " is not a length; type it like 3 1/2, 3.5, 89 mm or 8.9 cm.", ""};
}

std::string inchFigure(std::int64_t steps, std::int64_t denominator) {
    const std::int64_t whole = steps / denominator;
    const std::int64_t rest = steps % denominator;
    if (rest == 0) {
        return std::to_string(whole);
    }
    const std::int64_t common = std::gcd(rest, denominator);
    const std::string part = fmt::format("{}/{}", rest / common, denominator / common);
    return whole == 0 ? part : fmt::format("{} {}", whole, part);
}

}  // namespace

Length stepOf(Scale scale) {
    switch (scale) {
        case Scale::EighthInch:
            return Length::inches(0, 1, 8);
        case Scale::SixteenthInch:
            return Length::inches(0, 1, 16);
        case Scale::ThirtySecondInch:
            return Length::inches(0, 1, 32);
        case Scale::WholeMillimetre:
            return Length::millimetres(1);
        case Scale::HalfMillimetre:
            return Length::hundredthMillimetres(50);
    }
    return Length::inches(0, 1, 16);
}

Result<Length> parseLength(std::string_view text, Unit bareUnit) {
    if (text.size() > longestFigure) {
        return std::unexpected(badText(text));
    }
    const std::string plain = plainForm(text);
    std::string_view rest = trimmed(plain);
    const bool negative = rest.starts_with('-');
    if (negative) {
        rest = trimmed(rest.substr(1));
    }
    const double unitTicks = takeUnit(rest).value_or(bareUnit == Unit::Inch ? 914'400.0 : 36'000.0);
    const auto value = figure(rest);
    if (!value) {
        return std::unexpected(badText(text));
    }
    const double inches = static_cast<double>(value->numerator) /
                          static_cast<double>(value->denominator) * unitTicks / 914'400.0;
    if (inches > Length::coordinateLimit().toInches()) {
        return std::unexpected(Error{
            ErrorCode::OutOfRange, quoted(text) + " is too long; lengths go up to 1,000 in.", ""});
    }
    const Length length = Length::fromTicks(static_cast<std::int64_t>(unitTicks))
                              .scaledRounded(value->numerator, value->denominator);
    return negative ? -length : length;
}

std::string figureText(Length length, Scale scale) {
    const Length step = stepOf(scale);
    const Length shown = abs(length).roundedTo(step);
    const std::int64_t steps = shown.ticks() / step.ticks();
    std::string figure;
    switch (scale) {
        case Scale::EighthInch:
            figure = inchFigure(steps, 8);
            break;
        case Scale::SixteenthInch:
            figure = inchFigure(steps, 16);
            break;
        case Scale::ThirtySecondInch:
            figure = inchFigure(steps, 32);
            break;
        case Scale::WholeMillimetre:
            figure = std::to_string(steps);
            break;
        case Scale::HalfMillimetre:
            figure = fmt::format("{}{}", steps / 2, steps % 2 == 0 ? "" : ".5");
            break;
    }
    std::string out;
    if (shown != abs(length)) {
        out += almostEqual;
    }
    if (length.isNegative() && steps != 0) {
        out += '-';
    }
    return out + figure;
}

std::string lengthText(Length length, Scale scale) {
    return figureText(length, scale) + (unitOf(scale) == Unit::Inch ? " in" : " mm");
}

std::string sizeText(Size size, Scale scale) {
    return fmt::format("{} \u00D7 {}", figureText(size.width, scale),
                       lengthText(size.height, scale));
}

std::string naturalSizeText(Size size) {
    for (const Scale scale : {Scale::ThirtySecondInch, Scale::HalfMillimetre}) {
        if (size.width.isMultipleOf(stepOf(scale)) && size.height.isMultipleOf(stepOf(scale))) {
            return sizeText(size, scale);
        }
    }
    return sizeText(size, Scale::SixteenthInch);
}

std::string exactText(Length length) {
    const std::string sign = length.isNegative() ? "-" : "";
    const Length size = abs(length);
    // The finest fraction of an inch, by halves, that the grid has.
    const Length thirtySecond = Length::inches(0, 1, 32);
    if (size.isMultipleOf(thirtySecond)) {
        return fmt::format("{}{} in", sign, inchFigure(size.ticks() / thirtySecond.ticks(), 32));
    }
    if (size.isMultipleOf(Length::hundredthMillimetres(1))) {
        const bool isTenths = size.isMultipleOf(Length::hundredthMillimetres(10));
        const Length tenthInch = Length::inches(0, 1, 10);
        return !isTenths && size.isMultipleOf(tenthInch)
                   ? fmt::format("{}{:.1f} in", sign, size.toInches())
                   : fmt::format("{}{} mm", sign, size.toMillimetres());
    }
    const std::int64_t sixtyFourths = size.scaledRounded(64, Length::ticksPerInch).ticks();
    if (size == Length::inches(0, sixtyFourths, 64)) {
        return fmt::format("{}{} in", sign, inchFigure(sixtyFourths, 64));
    }
    // Seven decimals are finer than half a tick, so the reader finds the same tick at the latest
    // there.
    for (int decimals = 1; decimals < 7; ++decimals) {
        const std::string text = fmt::format("{:.{}f} in", size.toInches(), decimals);
        if (parseLength(text, Unit::Inch) == size) {
            return sign + text;
        }
    }
    return fmt::format("{}{:.7f} in", sign, size.toInches());
}

}  // namespace matwright
