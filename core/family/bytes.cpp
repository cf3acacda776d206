// SPDX-License-Identifier: MIT
#include <limits>
#include <optional>

#include "core/family/family.h"
#include "core/sketch/soundness.h"

namespace matwright {

namespace {

// Format: the letter F, the version 1, then whole numbers seven bits a byte, lowest first, the
// eighth bit says that more follow; the sign is the lowest bit.
constexpr std::string_view opening = "F1";

class NumberWriter {
  public:
    void add(std::int64_t value) {
        auto bits = static_cast<std::uint64_t>(value);
        bits = value < 0 ? ~(bits << 1) : bits << 1;
        for (; bits >= 0x80; bits >>= 7) {
            m_bytes += static_cast<char>(bits | 0x80);
        }
        m_bytes += static_cast<char>(bits);
    }
    void add(Length length) { add(length.ticks()); }
    std::string take() { return std::move(m_bytes); }

  private:
    std::string m_bytes{opening};
};

// After the first wrong number everything reads as 0 and isGood() is false.
class NumberReader {
  public:
    explicit NumberReader(std::string_view bytes) : m_bytes(bytes) {}

    bool isGood() const { return m_good; }
    bool isAtEnd() const { return m_bytes.empty(); }

    std::int64_t number(std::int64_t low, std::int64_t high) {
        const std::optional<std::uint64_t> bits = next();
        if (!bits) {
            return 0;
        }
        const auto half = static_cast<std::int64_t>(*bits >> 1);
        const std::int64_t value = (*bits & 1) != 0 ? -half - 1 : half;
        m_good = m_good && low <= value && value <= high;
        return m_good ? value : 0;
    }
    Length length() {
        // Doubled coordinates from the middle of a surface stay far below this.
        const std::int64_t limit = 4 * Length::coordinateLimit().ticks();
        return Length::fromTicks(number(-limit, limit));
    }
    Point point() {
        const Length x = length();
        return {x, length()};
    }
    Size size() {
        const Length width = length();
        return {width, length()};
    }

  private:
    std::optional<std::uint64_t> next() {
        std::uint64_t bits = 0;
        for (unsigned shift = 0; m_good && shift < 64; shift += 7) {
            if (m_bytes.empty()) {
                break;
            }
            const auto byte = static_cast<unsigned char>(m_bytes.front());
            m_bytes.remove_prefix(1);
            bits |= static_cast<std::uint64_t>(byte & 0x7F) << shift;
            if (byte < 0x80) {
                return bits;
            }
        }
        m_good = false;
        return std::nullopt;
    }

    std::string_view m_bytes;
    bool m_good = true;
};

FamilyPiece readPiece(NumberReader& reader) {
    FamilyPiece piece;
    piece.kind = static_cast<PieceKind>(reader.number(0, std::size(allPieceKinds) - 1));
    piece.shape = static_cast<std::uint8_t>(reader.number(0, std::variant_size_v<Shape> - 1));
    piece.mats = static_cast<std::uint8_t>(reader.number(0, maxMats));
    piece.print = reader.size();
    piece.middle = reader.point();
    piece.size = reader.size();
    piece.rotation = Angle::millidegrees(reader.number(0, 359'999));
    const std::int64_t corners = reader.number(0, maxPolygonCorners);
    for (std::int64_t i = 0; i < corners && reader.isGood(); ++i) {
        piece.corners.push_back(reader.point());
    }
    return piece;
}

}  // namespace

std::string FamilyTraits::toBytes() const {
    NumberWriter writer;
    const auto addSize = [&](Size size) {
        writer.add(size.width);
        writer.add(size.height);
    };
    const auto addPoint = [&](Point point) {
        writer.add(point.x);
        writer.add(point.y);
    };
    addSize(page);
    writer.add(doublePage ? 1 : 0);
    writer.add(static_cast<std::int64_t>(pieces.size()));
    for (const FamilyPiece& piece : pieces) {
        writer.add(static_cast<std::int64_t>(piece.kind));
        writer.add(piece.shape);
        writer.add(piece.mats);
        addSize(piece.print);
        addPoint(piece.middle);
        addSize(piece.size);
        writer.add(piece.rotation.toMillidegrees());
        writer.add(static_cast<std::int64_t>(piece.corners.size()));
        for (const Point& corner : piece.corners) {
            addPoint(corner);
        }
    }
    return writer.take();
}

Result<FamilyTraits> FamilyTraits::fromBytes(std::string_view bytes) {
    const Error error{ErrorCode::Malformed,
                      "These are no family traits of this version; work them out anew.",
                      {}};
    if (!bytes.starts_with(opening)) {
        return std::unexpected(error);
    }
    NumberReader reader(bytes.substr(opening.size()));
    FamilyTraits traits;
    traits.page = reader.size();
    traits.doublePage = reader.number(0, 1) == 1;
    const std::int64_t pieces = reader.number(0, maxPieces);
    for (std::int64_t i = 0; i < pieces && reader.isGood(); ++i) {
        traits.pieces.push_back(readPiece(reader));
    }
    if (!reader.isGood() || !reader.isAtEnd()) {
        return std::unexpected(error);
    }
    return traits;
}

}  // namespace matwright
