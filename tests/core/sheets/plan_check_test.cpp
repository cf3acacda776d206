// SPDX-License-Identifier: MIT
// One sound plan, and every kind of broken one made from it.
#include "core/sheets/plan_check.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "tests/core/sheets/random_job.h"

namespace matwright::test {
namespace {

using Use = CutPart::Use;

constexpr Length in(std::int64_t n) {
    return Length::inches(n);
}

Rect rect(std::int64_t x, std::int64_t y, std::int64_t w, std::int64_t h) {
    return Rect::at({in(x), in(y)}, {in(w), in(h)});
}

CutPart cutPart(Rect area, CutDirection direction, Length at, int first, int second) {
    return {area, Use::Cut, direction, at, first, second, -1, false};
}

CutPart piecePart(Rect area, int piece, bool turned = false) {
    return {area, Use::Piece, CutDirection::Upright, {}, -1, -1, piece, turned};
}

CutPart leftoverPart(Rect area) {
    return {area, Use::Leftover, CutDirection::Upright, {}, -1, -1, -1, false};
}

// A 4x10 and a turned 3x6 (as 6x3) from a 10x10.
struct Sample {
    CutJob job;
    CutPlan plan;
};

Sample sample() {
    Sample s;
    s.job.pieces = {{inchSize(4, 10), 1, false, 0}, {inchSize(3, 6), 1, true, 0}};
    s.job.sheets = {{inchSize(10, 10), 1, 1, {}, 0}, {inchSize(10, 10), 1, 1, {}, 1}};
    SheetPlan sheet{0, {}};
    sheet.parts = {cutPart(rect(0, 0, 10, 10), CutDirection::Upright, in(4), 1, 2),
                   piecePart(rect(0, 0, 4, 10), 0),
                   cutPart(rect(4, 0, 6, 10), CutDirection::Level, in(3), 3, 4),
                   piecePart(rect(4, 0, 6, 3), 1, true), leftoverPart(rect(4, 3, 6, 7))};
    s.plan.sheets = {sheet};
    s.plan.uncut = {0, 0};
    return s;
}

TEST(PlanCheck, PassesASoundPlan) {
    const Sample s = sample();
    EXPECT_EQ(faultsOf(s.plan, s.job), std::vector<std::string>{});
}

struct Broken {
    const char* how;
    std::function<void(Sample&)> broken;
};

TEST(PlanCheck, RefusesEveryKindOfBrokenPlan) {
    const auto parts = [](Sample& s) -> std::vector<CutPart>& { return s.plan.sheets[0].parts; };
    const std::vector<Broken> table{
        {"a sheet that is not there", [](Sample& s) { s.plan.sheets[0].sheet = 2; }},
        {"a negative sheet", [](Sample& s) { s.plan.sheets[0].sheet = -1; }},
        {"no parts", [&](Sample& s) { parts(s).clear(); }},
        {"a first part that is not the sheet",
         [&](Sample& s) { parts(s)[0].area = rect(0, 0, 9, 10); }},
        {"a child out of range", [&](Sample& s) { parts(s)[2].second = 7; }},
        {"a child before its cut", [&](Sample& s) { parts(s)[2].second = 0; }},
        {"a part with two parents", [&](Sample& s) { parts(s)[2].second = 3; }},
        {"a part without a parent",
         [&](Sample& s) { parts(s).push_back(leftoverPart(rect(4, 3, 6, 7))); }},
        {"a lost side", [&](Sample& s) { parts(s)[2].second = -1; }},
        {"a cut outside of its part", [&](Sample& s) { parts(s)[2].at = in(11); }},
        {"a cut at the very edge", [&](Sample& s) { parts(s)[2].at = in(0); }},
        {"a cut one tick off", [&](Sample& s) { parts(s)[2].at = in(3) + Length::fromTicks(1); }},
        {"a cut that does not go from edge to edge",
         [&](Sample& s) { parts(s)[4].area = rect(5, 3, 5, 7); }},
        {"a part without area", [&](Sample& s) { parts(s)[4].area = rect(4, 10, 6, 0); }},
        {"a piece that is not in the job", [&](Sample& s) { parts(s)[3].piece = 2; }},
        {"a piece of another size", [](Sample& s) { s.job.pieces[1].size = inchSize(3, 5); }},
        {"a turn that is not told", [&](Sample& s) { parts(s)[3].turned = false; }},
        {"a turn that is not allowed", [](Sample& s) { s.job.pieces[1].mayTurn = false; }},
        {"another paper", [](Sample& s) { s.job.pieces[1].paper = 1; }},
        {"a piece in the margin", [](Sample& s) { s.job.sheets[0].margin.top = in(1); }},
        {"a piece in the margin on the left",
         [](Sample& s) { s.job.sheets[0].margin.left = Length::fromTicks(1); }},
        {"a piece in the margin at the bottom",
         [](Sample& s) { s.job.sheets[0].margin.bottom = Length::fromTicks(1); }},
        {"a blade that needs room", [](Sample& s) { s.job.rules.kerf = Length::fromTicks(1); }},
        {"a piece too few", [](Sample& s) { s.job.pieces[0].count = 2; }},
        {"a piece too many", [](Sample& s) { s.job.pieces[0].count = 0; }},
        {"an uncut piece that was cut", [](Sample& s) { s.plan.uncut[0] = 1; }},
        {"a list of uncut pieces that is too short", [](Sample& s) { s.plan.uncut.pop_back(); }},
        {"a sheet that is not at hand", [](Sample& s) { s.job.sheets[0].atHand = 0; }},
    };
    for (const Broken& row : table) {
        Sample s = sample();
        row.broken(s);
        EXPECT_FALSE(faultsOf(s.plan, s.job).empty()) << row.how;
    }
}

TEST(PlanCheck, SeesOverlapsFromTheAreasAlone) {
    // Both pieces claim the same area; the tree is broken as well, but the overlap is named.
    Sample s = sample();
    s.plan.sheets[0].parts[4] = piecePart(rect(4, 0, 6, 3), 1, true);
    const auto faults = faultsOf(s.plan, s.job);
    EXPECT_TRUE(std::ranges::any_of(
        faults, [](const std::string& f) { return f.find("overlap") != std::string::npos; }));
}

TEST(PlanCheck, CountsTheKerfBetweenParts) {
    CutJob job;
    job.rules.kerf = in(1);
    job.pieces = {{inchSize(4, 10), 1, false, 0}, {inchSize(5, 10), 1, false, 0}};
    job.sheets = {{inchSize(10, 10), 1, 1, {}, 0}};
    CutPlan plan;
    plan.uncut = {0, 0};
    plan.sheets = {{0,
                    {cutPart(rect(0, 0, 10, 10), CutDirection::Upright, in(4), 1, 2),
                     piecePart(rect(0, 0, 4, 10), 0), piecePart(rect(5, 0, 5, 10), 1)}}};
    EXPECT_EQ(faultsOf(plan, job), std::vector<std::string>{});
}

// Upright, level, upright and a last level trim: three stages. One more level cut between two
// pieces: four.
TEST(PlanCheck, CountsStages) {
    CutJob job;
    job.rules.stages = CutStages::AtMostThree;
    job.pieces = {{inchSize(10, 4), 1, false, 0},
                  {inchSize(4, 6), 1, false, 0},
                  {inchSize(4, 3), 1, false, 0}};
    job.sheets = {{inchSize(12, 10), 1, 1, {}, 0}};
    CutPlan plan;
    plan.uncut = {0, 0, 0};
    plan.sheets = {{0,
                    {cutPart(rect(0, 0, 12, 10), CutDirection::Upright, in(10), 1, 2),
                     cutPart(rect(0, 0, 10, 10), CutDirection::Level, in(4), 3, 4),
                     leftoverPart(rect(10, 0, 2, 10)), piecePart(rect(0, 0, 10, 4), 0),
                     cutPart(rect(0, 4, 10, 6), CutDirection::Upright, in(4), 5, 6),
                     piecePart(rect(0, 4, 4, 6), 1),
                     cutPart(rect(4, 4, 6, 6), CutDirection::Upright, in(8), 7, 8),
                     cutPart(rect(4, 4, 4, 6), CutDirection::Level, in(7), 9, 10),
                     leftoverPart(rect(8, 4, 2, 6)), piecePart(rect(4, 4, 4, 3), 2),
                     leftoverPart(rect(4, 7, 4, 3))}}};
    EXPECT_EQ(faultsOf(plan, job), std::vector<std::string>{});
    EXPECT_EQ(stagesOf(plan.sheets[0], job), 3);

    job.pieces[2].count = 2;
    plan.sheets[0].parts[10] = piecePart(rect(4, 7, 4, 3), 2);
    EXPECT_EQ(stagesOf(plan.sheets[0], job), 4);
    EXPECT_EQ(faultsOf(plan, job).size(), 1U);
    job.rules.stages = CutStages::Any;
    EXPECT_TRUE(faultsOf(plan, job).empty());
}

}  // namespace
}  // namespace matwright::test
