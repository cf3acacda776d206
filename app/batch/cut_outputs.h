// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/json_values.h"
#include "app/batch/paper_commands.h"

namespace matwright::app {

// The plan as lines to read: summary, then every sheet with its pieces and steps.
std::string cutText(const PaperPlan& plan);

// {"bound", "provedCheapest", "sheets": [{"heading", "source": "on hand" | "to buy" | "middle",
// "paperId" (on hand), "middleOf" (middle: the mat's name), "size", "pieces": [{"letter", "name",
// "size", "left", "top", "turned"}], "steps": [sentences], "knifeCuts": [sentences], "notes",
// "leftovers": [sizes]}], "toBuy", "notCut": [{"name", "why"}], "needPaper": [names], "remarks"}
Json cutJson(const PaperPlan& plan);

// One PDF of the plan on paper.
int writeCutPdf(const CutCommand& command, const PaperPlan& plan, const std::string& title,
                BatchPorts& ports);
// One SVG a sheet: "sheet-1.svg", … in the command's folder.
int writeCutSvgs(const CutCommand& command, const PaperPlan& plan, BatchPorts& ports);

}  // namespace matwright::app
