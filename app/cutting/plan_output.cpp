// SPDX-License-Identifier: MIT
#include "app/cutting/plan_output.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/cutpicture/plan_pages.h"
#include "core/cutpicture/sheet_picture.h"
#include "core/drawing/svg.h"

namespace matwright::app {

namespace {

QString outWord(const char* text) {
    return QCoreApplication::translate("matwright::app::PlanOutput", text);
}

}  // namespace

TemplateChoice planPaper(bool onA4) {
    TemplateChoice choice;
    choice.sheet = findSheetSize(onA4 ? "a4" : "letter");
    return choice;
}

TemplateSheets planSheets(const PaperPlan& plan, const QString& title, bool onA4) {
    PlanPagesOptions options;
    options.paper = planPaper(onA4).sheet->size;
    options.title = title.toStdString();
    options.summary = plan.summary();
    TemplateSheets sheets;
    for (Drawing& page : planPages(plan.plannedSheets(), options)) {
        const Size media = page.size;
        sheets.pages.push_back({std::move(page), media, {}, {}});
    }
    return sheets;
}

std::string sheetSvg(const PaperSheet& sheet) {
    return svgText(sheetPicture(sheet.planned, sheet.planned.size));
}

int sheetsToBuy(const PaperPlan& plan) {
    return static_cast<int>(std::ranges::count_if(plan.sheets, [](const PaperSheet& sheet) {
        return std::holds_alternative<ToBuy>(sheet.source);
    }));
}

QString cutSentence(const PapersCut& cut, const PaperPlan& plan) {
    int taken = 0;
    for (const PapersCut::Taken& one : cut.taken) {
        taken += one.count;
    }
    int back = 0;
    for (const PaperOnHand& scrap : cut.putBack) {
        back += scrap.count;
    }
    const QString off = taken == 1 ? outWord("1 sheet is off the list")
                                   : outWord("%1 sheets are off the list").arg(taken);
    const QString on =
        back == 1 ? outWord("1 scrap came onto it") : outWord("%1 scraps came onto it").arg(back);
    QString all = outWord("%1, %2.").arg(off, on);
    const int bought = sheetsToBuy(plan);
    if (bought == 1) {
        all += outWord(" What is left of the sheet to buy is among the scraps.");
    } else if (bought > 1) {
        all += outWord(" What is left of the %1 sheets to buy is among the scraps.").arg(bought);
    }
    return all;
}

}  // namespace matwright::app
