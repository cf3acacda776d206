// SPDX-License-Identifier: MIT
#include "core/cutpicture/plan_pages.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/contactsheet/contact_sheet.h"
#include "core/cutpicture/sheet_picture.h"
#include "core/cutpicture/text_lines.h"

namespace matwright {

namespace {

constexpr Length titleHeight = Length::points(15);
constexpr Length headingHeight = Length::points(11);
constexpr Length wordsHeight = Length::points(8);
constexpr Length gap = Length::points(10);
constexpr Size stepBox{Length::inches(1, 3, 8), Length::inches(1)};

constexpr Length pitchOf(Length height) {
    return Length::fromTicks(height.ticks() * 13 / 10);
}

// Pages that fill from top to bottom.
class Flow {
  public:
    explicit Flow(const PlanPagesOptions& options)
        : m_options(options), m_inside(Rect::at({}, options.paper).expanded(-options.margin)) {
        m_inside.y.high -= pitchOf(wordsHeight);
        breakPage();
    }

    Length width() const { return m_inside.size().width; }
    Length height() const { return m_inside.size().height; }
    Length left() const { return m_inside.left(); }
    Length top() const { return m_cursor; }
    Length room() const { return m_inside.bottom() - m_cursor; }
    bool isFresh() const { return m_cursor == m_inside.top(); }

    void breakPage() {
        m_pages.emplace_back();
        m_cursor = m_inside.top();
    }
    void add(DrawingItem item) { m_pages.back().push_back(std::move(item)); }
    void add(std::vector<DrawingItem> items) {
        for (DrawingItem& item : items) {
            add(std::move(item));
        }
    }
    void advance(Length by) { m_cursor += by; }

    // One paragraph; goes on over the page where it has to.
    void addText(const std::string& text, Length size, bool bold, Colour colour) {
        for (const std::string& line : brokenLines(text, width(), size, bold)) {
            if (room() < pitchOf(size)) {
                breakPage();
            }
            add(textAt({left(), m_cursor + size}, line, size, colour, bold));
            advance(pitchOf(size));
        }
    }

    std::vector<Drawing> drawings() {
        std::vector<Drawing> all;
        for (std::size_t i = 0; i < m_pages.size(); ++i) {
            const std::string number = fmt::format("Page {} of {}", i + 1, m_pages.size());
            m_pages[i].emplace_back(
                textAt({m_inside.right(), m_options.paper.height - m_options.margin}, number,
                       wordsHeight, cutink::quiet, false, TextAnchor::End));
            Drawing drawing;
            drawing.size = m_options.paper;
            drawing.title =
                m_options.title.empty() ? number : fmt::format("{}, {}", m_options.title, number);
            drawing.layers.push_back({"plan", "Cutting plan", std::move(m_pages[i])});
            all.push_back(std::move(drawing));
        }
        return all;
    }

  private:
    const PlanPagesOptions& m_options;
    Rect m_inside;
    Length m_cursor;
    std::vector<std::vector<DrawingItem>> m_pages;
};

// A step's sentence beside its picture.
struct StepCell {
    std::size_t step = 0;
    std::vector<std::string> lines;
    Length height() const {
        return std::max(stepBox.height, pitchOf(wordsHeight) * std::ssize(lines));
    }
};

class SheetOnPages {
  public:
    SheetOnPages(const PlannedSheet& sheet, Flow& flow)
        : m_sheet(sheet), m_flow(flow), m_columns(flow.width() >= Length::inches(6) ? 2 : 1) {}

    void run() {
        addHead();
        addSteps();
        addNotes();
    }

  private:
    Length columnWidth() const {
        return Length::fromTicks((m_flow.width() - gap * (m_columns - 1)).ticks() / m_columns);
    }
    Length wordsRoom() const { return columnWidth() - stepBox.width - Length::points(6); }

    // The heading, the picture and the list of the pieces beside it, never parted.
    void addHead() {
        const bool isFull = std::ssize(m_sheet.names) > 6;
        const Length most = m_flow.height().scaledRounded(isFull ? 0.42 : 0.3);
        const Length headings = pitchOf(headingHeight) * std::ssize(headingLines(false));
        const bool isBeside = m_columns == 2;
        const Length wide = isBeside ? m_flow.width().scaledRounded(0.56) : m_flow.width();
        const Size picture =
            placeInRoom(Rect::at({}, m_sheet.size), m_sheet.size, Rect::at({}, {wide, most}))
                .size();
        if (!m_flow.isFresh()) {
            m_flow.advance(gap);
            if (m_flow.room() < headings + picture.height + stepBox.height + gap * 3) {
                m_flow.breakPage();
            }
        }
        addHeading(false);
        const Rect place = Rect::at({m_flow.left(), m_flow.top()}, picture);
        m_flow.add(sheetItems(m_sheet, place));
        std::vector<std::string> lines = pieceLines(m_sheet);
        std::size_t beside = 0;
        if (isBeside) {
            beside = addBeside(place, lines);
        }
        m_flow.advance(picture.height + Length::points(6));
        for (std::size_t i = beside; i < lines.size(); ++i) {
            addLine(lines[i]);
        }
        m_flow.advance(Length::points(4));
    }

    // How many of the lines found room beside the picture.
    std::size_t addBeside(const Rect& picture, const std::vector<std::string>& lines) {
        const Length left = picture.right() + gap;
        const Length room = m_flow.left() + m_flow.width() - left;
        Length at = picture.top();
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const auto broken = brokenLines(lines[i], room, wordsHeight);
            if (at + pitchOf(wordsHeight) * std::ssize(broken) > picture.bottom()) {
                return i;
            }
            for (const std::string& line : broken) {
                at += pitchOf(wordsHeight);
                m_flow.add(textAt({left, at - wordsHeight.scaledRounded(0.3)}, line, wordsHeight,
                                  cutink::strong));
            }
        }
        return lines.size();
    }

    std::vector<std::string> headingLines(bool goesOn) const {
        return brokenLines(goesOn ? m_sheet.heading + " (goes on)" : m_sheet.heading,
                           m_flow.width(), headingHeight, true);
    }

    void addHeading(bool goesOn) {
        m_flow.addText(goesOn ? m_sheet.heading + " (goes on)" : m_sheet.heading, headingHeight,
                       true, cutink::strong);
        m_flow.advance(Length::points(3));
    }

    // A page of its own for what comes, where there is no room for it here.
    void need(Length height) {
        if (m_flow.room() < height && !m_flow.isFresh()) {
            m_flow.breakPage();
            addHeading(true);
        }
    }

    void addLine(const std::string& text) {
        need(pitchOf(wordsHeight));
        m_flow.addText(text, wordsHeight, false, cutink::strong);
    }

    std::vector<StepCell> cells() const {
        std::vector<StepCell> all;
        for (std::size_t i = 0; i < m_sheet.steps.steps.size(); ++i) {
            const std::string sentence = fmt::format("{}. {}", i + 1, stepSentence(m_sheet, i));
            all.push_back({i, brokenLines(sentence, wordsRoom(), wordsHeight)});
        }
        return all;
    }

    // Across first, then down, so that they are read in their order.
    void addSteps() {
        const std::vector<StepCell> all = cells();
        const auto columns = static_cast<std::size_t>(m_columns);
        for (std::size_t first = 0; first < all.size(); first += columns) {
            const std::size_t end = std::min(first + columns, all.size());
            Length height;
            for (std::size_t i = first; i < end; ++i) {
                height = std::max(height, all[i].height());
            }
            need(height);
            for (std::size_t i = first; i < end; ++i) {
                addCell(all[i], static_cast<std::int64_t>(i - first));
            }
            m_flow.advance(height + Length::points(6));
        }
    }

    void addCell(const StepCell& cell, std::int64_t column) {
        const Point at{m_flow.left() + (columnWidth() + gap) * column, m_flow.top()};
        m_flow.add(stepItems(m_sheet, cell.step, Rect::at(at, stepBox)));
        Length baseline = at.y + wordsHeight;
        for (const std::string& line : cell.lines) {
            m_flow.add(textAt({at.x + stepBox.width + Length::points(6), baseline}, line,
                              wordsHeight, cutink::strong));
            baseline += pitchOf(wordsHeight);
        }
    }

    void addNotes() {
        std::size_t number = m_sheet.steps.steps.size();
        for (const KnifeCut& cut : m_sheet.knifeCuts) {
            addLine(fmt::format("{}. {}", ++number, knifeSentence(m_sheet, cut)));
        }
        for (const std::string& note : m_sheet.notes) {
            addLine(note);
        }
    }

    const PlannedSheet& m_sheet;
    Flow& m_flow;
    std::int64_t m_columns;
};

}  // namespace

std::vector<Drawing> planPages(std::span<const PlannedSheet> sheets,
                               const PlanPagesOptions& options) {
    Flow flow(options);
    if (!options.title.empty()) {
        flow.addText(options.title, titleHeight, true, cutink::strong);
        flow.advance(Length::points(4));
    }
    for (const std::string& line : options.summary) {
        flow.addText(line, wordsHeight + Length::points(1), false, cutink::strong);
    }
    if (!sheets.empty()) {
        flow.addText(bladeCaution, wordsHeight, false, cutink::quiet);
    }
    for (const PlannedSheet& sheet : sheets) {
        SheetOnPages(sheet, flow).run();
    }
    return flow.drawings();
}

}  // namespace matwright
