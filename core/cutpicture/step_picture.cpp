// SPDX-License-Identifier: MIT
#include <algorithm>

#include "core/contactsheet/contact_sheet.h"
#include "core/cutpicture/sheet_picture.h"
#include "core/cutpicture/text_lines.h"

namespace matwright {

namespace {

constexpr Length hairline = Length::hundredthMillimetres(20);
constexpr Length bladeWidth = Length::hundredthMillimetres(50);

// The part in hand as it lies on the trimmer, in its own measures.
struct InHand {
    Size size;
    Length blade;   // from the left
    Length behind;  // from the left to what is left behind the blade
};

InHand inHand(const PlannedSheet& sheet, const CutStep& step) {
    const CutPart& part = sheet.plan.parts[static_cast<std::size_t>(step.part)];
    const bool upright = step.direction == CutDirection::Upright;
    const Size size = upright ? part.area.size() : part.area.size().turned();
    Length behind = size.width;
    if (step.second >= 0) {
        const Rect second = sheet.plan.parts[static_cast<std::size_t>(step.second)].area;
        behind = upright ? second.left() - part.area.left() : second.top() - part.area.top();
    }
    return {size, step.setting, behind};
}

class StepPainter {
  public:
    StepPainter(const PlannedSheet& sheet, const CutStep& step, const Rect& room)
        : m_sheet(sheet),
          m_step(step),
          m_hand(inHand(sheet, step)),
          m_text(std::clamp(room.size().width.scaledRounded(1.0 / 15), Length::points(4),
                            Length::points(8))) {
        const Length band = m_text.scaledRounded(2.2);
        m_room = {{room.left() + bladeWidth, room.right() - bladeWidth},
                  {std::min(room.top() + band, room.bottom()), room.bottom() - m_text}};
        m_outer = room;
    }

    std::vector<DrawingItem> run() {
        const std::vector<std::string> letters = partLetters(m_sheet.plan);
        const Rect whole = placed({{Length(), m_hand.size.width}, {Length(), m_hand.size.height}});
        addSide(m_step.first, {Length(), m_hand.blade}, letters);
        addSide(m_step.second, {m_hand.behind, m_hand.size.width}, letters);
        m_items.emplace_back(filledBox(whole, std::nullopt, Stroke{hairline, cutink::strong, {}}));
        addBlade(whole);
        return std::move(m_items);
    }

  private:
    Rect placed(const Rect& area) const { return placeInRoom(area, m_hand.size, m_room); }

    void addSide(int part, Interval x, const std::vector<std::string>& letters) {
        if (part < 0) {
            return;
        }
        const auto at = static_cast<std::size_t>(part);
        const Rect box = placed({x, {Length(), m_hand.size.height}});
        if (letters[at].empty()) {
            for (DrawingItem& item : hatchedBox(box, m_text.scaledRounded(0.7))) {
                m_items.push_back(std::move(item));
            }
            return;
        }
        m_items.emplace_back(filledBox(box, paler(m_sheet.colour, 0.6), std::nullopt));
        const Length wide = std::max(textWidthBound(letters[at], m_text, true), Length::points(1));
        const double by =
            std::min({1.0, ratio(box.size().width, wide), ratio(box.size().height, m_text)});
        const Length height = m_text.scaledRounded(by * 0.95);
        const Point middle = box.centreRoundedDown();
        m_items.emplace_back(textAt({middle.x, middle.y + height.scaledRounded(0.36)}, letters[at],
                                    height, cutink::strong, true, TextAnchor::Middle));
    }

    // The blade, and above it how far it is from the left edge.
    void addBlade(const Rect& whole) {
        const Length at = placed({{m_hand.blade, m_hand.blade}, {Length(), Length()}}).left();
        const Length over = m_text.scaledRounded(0.6);
        m_items.emplace_back(strokedLine({at, whole.top() - over}, {at, whole.bottom() + over},
                                         {bladeWidth, cutink::blade, {}}));
        const Length line = whole.top() - over.scaledRounded(0.8);
        const Stroke pen{hairline, cutink::blade, {}};
        m_items.emplace_back(strokedLine({whole.left(), line}, {at, line}, pen));
        m_items.emplace_back(strokedLine({whole.left(), line - over.halfRoundedDown()},
                                         {whole.left(), line + over.halfRoundedDown()}, pen));
        const std::string setting =
            fitted(lengthText(m_step.setting, m_sheet.scale), m_outer.size().width, m_text, true);
        const Length half = textWidthBound(setting, m_text, true).halfRoundedDown();
        const Length middle = whole.left() + (at - whole.left()).halfRoundedDown();
        const Length x = std::clamp(middle, std::min(m_outer.left() + half, m_outer.right()),
                                    std::max(m_outer.right() - half, m_outer.left()));
        m_items.emplace_back(textAt({x, line - m_text.scaledRounded(0.4)}, setting, m_text,
                                    cutink::blade, true, TextAnchor::Middle));
    }

    const PlannedSheet& m_sheet;
    const CutStep& m_step;
    InHand m_hand;
    Length m_text;
    Rect m_room;
    Rect m_outer;
    std::vector<DrawingItem> m_items;
};

}  // namespace

std::vector<DrawingItem> stepItems(const PlannedSheet& sheet, std::size_t step, const Rect& room) {
    return StepPainter(sheet, sheet.steps.steps[step], room).run();
}

Drawing stepPicture(const PlannedSheet& sheet, std::size_t step, Size box) {
    Drawing drawing;
    drawing.size = box;
    drawing.title = stepSentence(sheet, step);
    drawing.layers.push_back({"step", "Step", stepItems(sheet, step, Rect::at({}, box))});
    return drawing;
}

}  // namespace matwright
