// SPDX-License-Identifier: MIT
#include "core/printers/print_look.h"

#include <bit>
#include <utility>

#include "core/printers/number_line.h"

namespace matwright {

namespace {

// One after the other: the photo's key, then the numbers in the order of lookNumbers().
constexpr std::size_t keyDigits = 32;
constexpr std::size_t numberCount = 23;

std::vector<std::int64_t> lookNumbers(const PrintLook& look) {
    const Crop& crop = look.crop;
    const Tone& tone = look.tone;
    return {look.paper.width.ticks(),
            look.paper.height.ticks(),
            look.trim.left().ticks(),
            look.trim.top().ticks(),
            look.trim.right().ticks(),
            look.trim.bottom().ticks(),
            look.border.ticks(),
            look.bleed.ticks(),
            crop.centreX,
            crop.centreY,
            crop.zoom,
            crop.quarterTurns,
            crop.straighten.toMillidegrees(),
            look.window.width.ticks(),
            look.window.height.ticks(),
            std::bit_cast<std::int64_t>(look.from),
            std::bit_cast<std::int64_t>(look.to),
            tone.evenOut ? 1 : 0,
            tone.brightness,
            tone.contrast,
            tone.warmth,
            tone.saturation,
            tone.sharpen};
}

}  // namespace

namespace {

// Takes the numbers one after the other; what does not fit its place makes the whole unsound.
class LookReader {
  public:
    explicit LookReader(const std::vector<std::int64_t>& numbers) : m_numbers(numbers) {}

    Length length() { return Length::fromTicks(next()); }
    int small() {
        const std::int64_t number = next();
        m_isSound = m_isSound && std::in_range<int>(number);
        return static_cast<int>(number);
    }
    double share() {
        const auto value = std::bit_cast<double>(next());
        m_isSound = m_isSound && value >= 0 && value <= 1;
        return value;
    }
    Angle angle() {
        const std::int64_t number = next();
        m_isSound = m_isSound && number >= 0 && number < 360'000;
        return Angle::millidegrees(number);
    }
    bool isSound() const { return m_isSound; }

  private:
    std::int64_t next() { return m_numbers[m_at++]; }

    const std::vector<std::int64_t>& m_numbers;
    std::size_t m_at = 0;
    bool m_isSound = true;
};

bool isSoundLook(const PrintLook& look) {
    return look.paper.isPositive() && look.window.isPositive() && look.trim.size().isPositive() &&
           !look.border.isNegative() && !look.bleed.isNegative() && look.from < look.to &&
           isSound(look.crop) && isSound(look.tone);
}

}  // namespace

std::string textOf(const PrintLook& look) {
    return look.photo.text() + ' ' + numberLine(lookNumbers(look));
}

std::optional<PrintLook> parsePrintLook(std::string_view text) {
    if (text.size() <= keyDigits || text[keyDigits] != ' ') {
        return std::nullopt;
    }
    const auto key = parseContentKey(text.substr(0, keyDigits));
    const auto numbers = parseNumberLine(text.substr(keyDigits + 1), numberCount);
    if (!key || !numbers) {
        return std::nullopt;
    }
    LookReader reader(*numbers);
    PrintLook look;
    look.photo = *key;
    look.paper = {reader.length(), reader.length()};
    const Point topLeft{reader.length(), reader.length()};
    const Point bottomRight{reader.length(), reader.length()};
    look.trim = {{topLeft.x, bottomRight.x}, {topLeft.y, bottomRight.y}};
    look.border = reader.length();
    look.bleed = reader.length();
    look.crop.centreX = reader.small();
    look.crop.centreY = reader.small();
    look.crop.zoom = reader.small();
    look.crop.quarterTurns = reader.small();
    look.crop.straighten = reader.angle();
    look.window = {reader.length(), reader.length()};
    look.from = reader.share();
    look.to = reader.share();
    look.tone.evenOut = reader.small() != 0;
    look.tone.brightness = reader.small();
    look.tone.contrast = reader.small();
    look.tone.warmth = reader.small();
    look.tone.saturation = reader.small();
    look.tone.sharpen = reader.small();
    if (!reader.isSound() || !isSoundLook(look) || textOf(look) != text) {
        return std::nullopt;
    }
    return look;
}

bool isAlike(const PrintLook& a, const PrintLook& b) {
    return a.photo == b.photo && (a.paper == b.paper || a.paper == b.paper.turned());
}

}  // namespace matwright
