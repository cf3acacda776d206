// SPDX-License-Identifier: MIT
#include "core/cutpicture/sheet_picture.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/contactsheet/contact_sheet.h"
#include "core/cutpicture/text_lines.h"
#include "core/template/text_block.h"

namespace matwright {

namespace {

constexpr Length hundredths(std::int64_t n) {
    return Length::hundredthMillimetres(n);
}

Length smallerSide(Size size) {
    return std::min(size.width, size.height);
}

class SheetPainter {
  public:
    SheetPainter(const PlannedSheet& sheet, const Rect& room, const SheetPictureOptions& options)
        : m_sheet(sheet),
          m_room(room),
          m_options(options),
          m_letters(partLetters(sheet.plan)),
          m_whole(placeInRoom(Rect::at({}, sheet.size), sheet.size, room)),
          m_text(std::clamp(smallerSide(m_whole.size()).scaledRounded(1.0 / 34), Length::points(4),
                            Length::points(9))) {}

    std::vector<DrawingItem> run() {
        m_items.emplace_back(filledBox(m_whole, cutink::white, std::nullopt));
        addFills();
        addCuts();
        m_items.emplace_back(
            filledBox(m_whole, std::nullopt, Stroke{hundredths(30), cutink::strong, {}}));
        addKnifeCuts();
        addUpArrow();
        if (m_options.numbers) {
            addNumbers();
        }
        addLabels();
        return std::move(m_items);
    }

  private:
    Rect placed(const Rect& area) const { return placeInRoom(area, m_sheet.size, m_room); }

    const CutPart& partAt(int index) const {
        return m_sheet.plan.parts[static_cast<std::size_t>(index)];
    }

    // Without a current step everything is.
    bool isCurrent(const Rect& area) const {
        return !m_options.current ||
               partAt(m_sheet.steps.steps[*m_options.current].part).area.contains(area);
    }

    void addFills() {
        for (const CutPart& part : m_sheet.plan.parts) {
            if (part.use == CutPart::Use::Piece) {
                const double by = isCurrent(part.area) ? 0.6 : 0.92;
                m_items.emplace_back(
                    filledBox(placed(part.area), paler(m_sheet.colour, by), std::nullopt));
            } else if (part.use == CutPart::Use::Leftover) {
                for (DrawingItem& item : hatchedBox(placed(part.area), m_text.scaledRounded(0.8))) {
                    m_items.push_back(std::move(item));
                }
            }
        }
    }

    std::pair<Point, Point> lineOf(const CutStep& step) const {
        const CutPart& part = partAt(step.part);
        const bool upright = step.direction == CutDirection::Upright;
        const Rect line =
            upright ? Rect{{part.at, part.at}, part.area.y} : Rect{part.area.x, {part.at, part.at}};
        const Rect there = placed(line);
        return {there.topLeft(), there.bottomRight()};
    }

    void addCuts() {
        for (std::size_t i = 0; i < m_sheet.steps.steps.size(); ++i) {
            const auto [from, to] = lineOf(m_sheet.steps.steps[i]);
            const bool isNow = m_options.current == i;
            const Colour colour = isNow                                         ? cutink::blade
                                  : m_options.current && *m_options.current < i ? cutink::pale
                                                                                : cutink::strong;
            m_items.emplace_back(strokedLine(from, to, {hundredths(isNow ? 60 : 20), colour, {}}));
        }
        if (m_options.current) {
            const int part = m_sheet.steps.steps[*m_options.current].part;
            m_items.emplace_back(filledBox(placed(partAt(part).area), std::nullopt,
                                           Stroke{hundredths(40), cutink::blade, {}}));
        }
    }

    void addKnifeCuts() {
        for (const KnifeCut& cut : m_sheet.knifeCuts) {
            const Rect there = placed(cut.area);
            m_items.emplace_back(filledBox(
                there, std::nullopt,
                Stroke{hundredths(30), cutink::knife, {hundredths(150), hundredths(100)}}));
            const Length pad = m_text.scaledRounded(0.3);
            const std::string word = fitted("knife", there.size().width - pad * 2, m_text, false);
            if (word.empty() || there.size().height < m_text * 2) {
                continue;
            }
            const Point at{there.left() + pad, there.top() + m_text.scaledRounded(1.1)};
            m_items.emplace_back(textAt(at, word, m_text, cutink::knife));
            m_taken.push_back(Rect::at(
                there.topLeft(),
                {textWidthBound(word, m_text, false) + pad * 2, m_text.scaledRounded(1.4)}));
        }
    }

    void addUpArrow() {
        if (!m_sheet.hasUp) {
            return;
        }
        const Size size{m_text * 2, m_text * 4};
        if (!m_whole.size().contains(size)) {
            return;
        }
        const Point corner{m_whole.right() - size.width, m_whole.top()};
        const Length middle = corner.x + m_text;
        const Length tip = corner.y + m_text.scaledRounded(0.5);
        const Stroke pen{hundredths(30), cutink::quiet, {}};
        PathItem head{{polygonPath({vertexAt({middle, tip}),
                                    vertexAt({middle - m_text.halfRoundedDown(), tip + m_text}),
                                    vertexAt({middle + m_text.halfRoundedDown(), tip + m_text})})},
                      std::nullopt,
                      cutink::quiet};
        m_items.emplace_back(strokedLine({middle, tip + m_text}, {middle, tip + m_text * 2}, pen));
        m_items.emplace_back(std::move(head));
        m_items.emplace_back(textAt({middle, tip + m_text * 3}, "up", m_text, cutink::quiet, false,
                                    TextAnchor::Middle));
        m_taken.push_back(Rect::at(corner, size));
    }

    bool isFree(const Rect& box) const {
        return std::ranges::none_of(
            m_taken, [&](const Rect& other) { return other.interiorIntersects(box); });
    }

    // Discs on the cut lines; the first free place of some, the first where none is free.
    void addNumbers() {
        const Length radius = m_text.scaledRounded(0.78);
        for (std::size_t i = 0; i < m_sheet.steps.steps.size(); ++i) {
            const auto [from, to] = lineOf(m_sheet.steps.steps[i]);
            Rect chosen;
            for (const int eighths : {1, 7, 4, 2, 6, 3, 5, 0, 8}) {
                const Rect disc = discOn(from, to, eighths, radius);
                if (eighths == 1 || isFree(disc)) {
                    chosen = disc;
                }
                if (isFree(disc)) {
                    break;
                }
            }
            addDisc(chosen, i);
        }
    }

    Rect discOn(Point from, Point to, int eighths, Length radius) const {
        const Point at{from.x + (to.x - from.x).scaledRounded(eighths, 8),
                       from.y + (to.y - from.y).scaledRounded(eighths, 8)};
        const auto inside = [radius](Length v, Interval whole) {
            return std::clamp(v, std::min(whole.low + radius, whole.high),
                              std::max(whole.high - radius, whole.low));
        };
        const Point middle{inside(at.x, m_whole.x), inside(at.y, m_whole.y)};
        return Rect{{middle.x, middle.x}, {middle.y, middle.y}}.expanded(radius);
    }

    void addDisc(const Rect& disc, std::size_t step) {
        const bool isNow = m_options.current == step;
        const Colour ink = isNow ? cutink::blade : cutink::strong;
        m_items.emplace_back(PathItem{{ovalPath(disc)},
                                      Stroke{hundredths(15), ink, {}},
                                      isNow ? cutink::blade : cutink::white});
        const std::string number = fmt::to_string(step + 1);
        Length height = m_text;
        const Length wide = textWidthBound(number, height, true);
        const Length room = disc.size().width.scaledRounded(0.86);
        if (wide > room) {
            height = height.scaledRounded(ratio(room, wide));
        }
        const Point middle = disc.centreRoundedDown();
        m_items.emplace_back(textAt({middle.x, middle.y + height.scaledRounded(0.36)}, number,
                                    height, isNow ? cutink::white : ink, true, TextAnchor::Middle));
        m_taken.push_back(disc);
    }

    void addLabels() {
        for (std::size_t i = 0; i < m_sheet.plan.parts.size(); ++i) {
            const CutPart& part = m_sheet.plan.parts[i];
            if (part.use == CutPart::Use::Piece) {
                addPieceLabel(part, m_letters[i]);
            } else if (part.use == CutPart::Use::Leftover && m_options.words) {
                addLabel(placed(part.area), {sizeText(part.area.size(), m_sheet.scale)}, false,
                         m_text.scaledRounded(0.9), cutink::quiet);
            }
        }
    }

    void addPieceLabel(const CutPart& part, const std::string& letter) {
        const Rect box = placed(part.area);
        const std::string size = sizeText(part.area.size(), m_sheet.scale);
        const std::string name = pieceName(m_sheet, part.piece);
        const Length longer = std::max(box.size().width, box.size().height) - m_text;
        const std::string shortName = fitted(name, longer, m_text, false);
        std::vector<std::vector<std::string>> choices;
        if (m_options.words) {
            choices = {{letter, name, size}, {letter, shortName, size}, {letter, size}};
        }
        choices.push_back({letter});
        for (const auto& lines : choices) {
            if (addLabel(box, lines, true, m_text, cutink::strong)) {
                return;
            }
        }
        const Length tiny = std::min(m_text, smallerSide(box.size()).scaledRounded(0.7));
        const Point middle = box.centreRoundedDown();
        m_items.emplace_back(textAt({middle.x, middle.y + tiny.scaledRounded(0.36)}, letter, tiny,
                                    cutink::strong, true, TextAnchor::Middle));
    }

    // False where there is no room for the lines in the box, clear of what is drawn already.
    bool addLabel(const Rect& box, std::vector<std::string> lines, bool bold, Length height,
                  Colour colour) {
        TextBlock block{std::move(lines), height, bold, true, false, colour};
        for (const bool upright : {false, true}) {
            block.upright = upright;
            const Size room = roomOf(block);
            const Size spare{box.size().width - room.width - height.scaledRounded(0.4),
                             box.size().height - room.height - height.scaledRounded(0.2)};
            if (spare.width.isNegative() || spare.height.isNegative()) {
                continue;
            }
            if (placeBlock(block, box, room)) {
                return true;
            }
        }
        return false;
    }

    bool placeBlock(const TextBlock& block, const Rect& box, Size room) {
        const Length acrossSpare = box.size().width - room.width;
        const Length downSpare = box.size().height - room.height;
        for (const int across : {5, 3, 7, 2, 8}) {
            for (const int down : {5, 3, 7, 2, 8}) {
                const Point at{box.left() + acrossSpare.scaledRounded(across, 10),
                               box.top() + downSpare.scaledRounded(down, 10)};
                if (!isFree(Rect::at(at, room))) {
                    continue;
                }
                for (DrawingItem& item : itemsAt(block, at)) {
                    m_items.push_back(std::move(item));
                }
                return true;
            }
        }
        return false;
    }

    const PlannedSheet& m_sheet;
    Rect m_room;
    SheetPictureOptions m_options;
    std::vector<std::string> m_letters;
    Rect m_whole;
    Length m_text;
    std::vector<DrawingItem> m_items;
    std::vector<Rect> m_taken;  // by numbers and words: labels stay clear of them
};

}  // namespace

Rect placeInRoom(const Rect& area, Size sheet, const Rect& room) {
    const double scale =
        std::min(ratio(room.size().width, sheet.width), ratio(room.size().height, sheet.height));
    const Length left =
        room.left() + (room.size().width - sheet.width.scaledRounded(scale)).halfRoundedDown();
    const Length top =
        room.top() + (room.size().height - sheet.height.scaledRounded(scale)).halfRoundedDown();
    return {{left + area.left().scaledRounded(scale), left + area.right().scaledRounded(scale)},
            {top + area.top().scaledRounded(scale), top + area.bottom().scaledRounded(scale)}};
}

std::vector<DrawingItem> sheetItems(const PlannedSheet& sheet, const Rect& room,
                                    const SheetPictureOptions& options) {
    return SheetPainter(sheet, room, options).run();
}

Drawing sheetPicture(const PlannedSheet& sheet, Size box, const SheetPictureOptions& options) {
    const Rect whole = placeInRoom(Rect::at({}, sheet.size), sheet.size, Rect::at({}, box));
    Drawing drawing;
    // Half of the outline lies outside.
    const Length edge = Length::hundredthMillimetres(20);
    drawing.size = whole.size();
    drawing.title = sheet.heading;
    drawing.layers.push_back(
        {"sheet", "Sheet", sheetItems(sheet, Rect::at({}, whole.size()).expanded(-edge), options)});
    return drawing;
}

}  // namespace matwright
