// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "app/printing/template_choice.h"
#include "core/paperplan/paper_plan.h"

namespace matwright::app {

// A cutting plan on paper: Letter or A4 upright, ready for a PDF and a printer alike. Needs a
// QGuiApplication.
TemplateSheets planSheets(const PaperPlan& plan, const QString& title, bool onA4);
// For the print run: the same paper, nothing in parts.
TemplateChoice planPaper(bool onA4);
// One sheet of the plan in true size, as SVG.
std::string sheetSvg(const PaperSheet& sheet);

// How many sheets of the plan are still to be bought.
int sheetsToBuy(const PaperPlan& plan);
// What cutting the plan has done to the list: "2 sheets are off the list, 1 scrap came onto it."
QString cutSentence(const PapersCut& cut, const PaperPlan& plan);

}  // namespace matwright::app
