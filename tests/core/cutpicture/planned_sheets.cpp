// SPDX-License-Identifier: MIT
#include "tests/core/cutpicture/planned_sheets.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <utility>

#include "core/sheets/cut_planner.h"

namespace matwright::test {

namespace {

constexpr Length sixteenths(std::uint64_t n) {
    return Length::inches(0, static_cast<std::int64_t>(n), 16);
}

Rect inkOfText(const TextItem& text) {
    const Length width = textWidthBound(text.text, text.height, text.bold);
    const Point at{Length::roundedFromTicks(text.at.x), Length::roundedFromTicks(text.at.y)};
    const Length before = text.anchor == TextAnchor::Start ? Length()
                          : text.anchor == TextAnchor::End ? width
                                                           : width.halfRoundedDown();
    const Length up = text.height.scaledRounded(0.76);
    const Length down = text.height.scaledRounded(0.24);
    if (text.rotation.isZero()) {
        return {{at.x - before, at.x - before + width}, {at.y - up, at.y + down}};
    }
    return {{at.x - up, at.x + down}, {at.y + before - width, at.y + before}};
}

}  // namespace

std::vector<PlannedSheet> plannedSheets(const CutJob& job) {
    const auto answer = planCuts(job, {200'000, std::chrono::milliseconds(2000)});
    EXPECT_TRUE(answer) << answer.error().text();
    const auto steps = stepsOf(answer->plan, Scale::SixteenthInch);
    std::vector<PlannedSheet> sheets;
    for (std::size_t i = 0; i < answer->plan.sheets.size(); ++i) {
        PlannedSheet sheet;
        sheet.heading = "Sheet " + std::to_string(i + 1) + ": kraft cardstock";
        sheet.plan = answer->plan.sheets[i];
        sheet.size = job.sheets[static_cast<std::size_t>(sheet.plan.sheet)].size;
        sheet.steps = steps[i];
        for (std::size_t part = 0; part < sheet.plan.parts.size(); ++part) {
            const CutPart& it = sheet.plan.parts[part];
            const Length rim = Length::inches(0, 1, 2);
            const Size size = it.area.size();
            if (it.use == CutPart::Use::Piece && size.width > rim * 4 && size.height > rim * 4) {
                sheet.knifeCuts.push_back(
                    {static_cast<int>(part), it.area.expanded(-rim), "it is sheet 9"});
                break;
            }
        }
        for (int piece = 0; std::cmp_less(piece, job.pieces.size()); piece += 2) {
            sheet.names[piece] = "mat under the photo of piece " + std::to_string(piece + 1);
        }
        sheets.push_back(std::move(sheet));
    }
    return sheets;
}

PlannedSheet smallSheet() {
    CutJob job;
    job.pieces = {{{Length::inches(12), Length::inches(3)}, 1, false, 0},
                  {{Length::inches(4), Length::inches(5)}, 2, false, 0}};
    job.sheets = {{{Length::inches(12), Length::inches(12)}, std::nullopt, 1, {}, 0}};
    PlannedSheet sheet = plannedSheets(job).front();
    sheet.names = {{0, "strip"}, {1, "mat"}};
    sheet.knifeCuts.clear();
    return sheet;
}

CutJob randomCutJob(Random& random) {
    CutJob job;
    for (auto kinds = 1 + below(random, 6); kinds > 0; --kinds) {
        job.pieces.push_back(
            {{sixteenths(4 + below(random, 180)), sixteenths(4 + below(random, 100))},
             static_cast<int>(1 + below(random, 5)),
             below(random, 2) == 0,
             0});
    }
    job.sheets = {{{Length::inches(12), Length::inches(12)}, std::nullopt, 1, {}, 0}};
    return job;
}

std::vector<TextItem> textsOf(const std::vector<DrawingItem>& items) {
    std::vector<TextItem> texts;
    for (const DrawingItem& item : items) {
        if (const auto* text = std::get_if<TextItem>(&item)) {
            texts.push_back(*text);
        }
    }
    return texts;
}

bool says(const std::vector<DrawingItem>& items, const std::string& text) {
    return std::ranges::any_of(textsOf(items),
                               [&](const TextItem& item) { return item.text == text; });
}

Rect inkOf(const DrawingItem& item) {
    if (const auto* text = std::get_if<TextItem>(&item)) {
        return inkOfText(*text);
    }
    const auto& path = std::get<PathItem>(item);
    Rect all = boundsOf(path.paths.front());
    for (const Path& one : path.paths) {
        all = all.united(boundsOf(one));
    }
    return all;
}

}  // namespace matwright::test
