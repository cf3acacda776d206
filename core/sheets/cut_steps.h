// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "core/measure/length_text.h"
#include "core/sheets/cut_plan.h"

namespace matwright {

// One pass of the blade, as the hands do it.
struct CutStep {
    int part = 0;     // which part is laid on the trimmer: index of the sheet's parts, 0 the sheet
    int first = -1;   // what comes off in front of the blade, -1 where nothing does
    int second = -1;  // and what is left behind it
    CutDirection direction = CutDirection::Upright;  // as seen on the picture of the sheet
    Length setting;    // from the part's left (Upright) or top edge to the blade, exact
    Length shown;      // the same to the nearest step of the trimmer's scale
    bool set = false;  // the trimmer has to be set: the cut before was at another setting
    bool turn =
        false;  // what lies in hand is given a quarter turn: the cut before went the other way

    // How much too long (or too short, below 0) the measure is when the trimmer is set to `shown`.
    Length roundedBy() const { return shown - setting; }
    friend bool operator==(const CutStep&, const CutStep&) = default;
};

struct SheetSteps {
    int sheet = 0;  // index of the plan's sheets
    std::vector<CutStep> steps;
    friend bool operator==(const SheetSteps&, const SheetSteps&) = default;
};

// The cuts of every sheet in an order that can be done: a part is cut after it has come off. Among
// those that can be done next, cuts at the same setting and the same way come first, then the same
// way at the setting that serves most of them; so one setting serves as many cuts as lie open.
// The plan must be sound (faultsOf() is empty).
std::vector<SheetSteps> stepsOf(const CutPlan& plan, Scale scale);

// What lies on the table after the steps: carried out from the sheet's size alone, cut by cut, with
// what the blade takes. Knows nothing of the plan's areas.
struct CutOff {
    int part = 0;
    Size size;
    friend bool operator==(const CutOff&, const CutOff&) = default;
};
enum class SettingUsed { Exact, Shown };
// With the shown settings a part of which rounding leaves nothing is not on the table, and what it
// leaves where the plan has no part is not counted.
// Errors: BadEdit where a step cuts what is not there or beside it, with the number of the step.
Result<std::vector<CutOff>> carriedOut(const SheetSteps& steps, Size sheet, Length kerf,
                                       SettingUsed used);

// How much a piece comes out too large, too small below 0, with the trimmer at the shown settings:
// errors of all the cuts that make it, of what lay behind the blade too. Sides as they lie on the
// sheet.
struct OffSize {
    Length width;
    Length height;
    bool isLost = false;  // nothing of it is left; the sides say nothing then
    friend bool operator==(const OffSize&, const OffSize&) = default;
};
// By part, of the pieces that differ. The steps are those of the sheet.
std::map<int, OffSize> offSizes(const SheetSteps& steps, const SheetPlan& sheet);
// "B comes out 1/32 in too short from top to bottom."
std::string offText(std::string_view name, const OffSize& off);

}  // namespace matwright
