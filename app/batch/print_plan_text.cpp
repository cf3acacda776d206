// SPDX-License-Identifier: MIT
#include "app/batch/print_plan_text.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/library/printable.h"
#include "core/printplan/drawn_sheet.h"

namespace matwright::app {

namespace {

constexpr std::size_t mostOffersTold = 3;

double ppiOf(const PlannedPrint& print) {
    return effectivePpi(print.print.crop, print.photo.upright, print.print.window);
}

std::string pageName(const PlannedPrints& prints, std::size_t page) {
    return prints.input.pages.at(page).name;
}

std::string offerText(const PrintOffer& offer) {
    return fmt::format("    {} as {} ({}){}{}", offer.print.print.name,
                       naturalSizeText(offer.print.print.paper), offer.print.why,
                       offer.warning.empty() ? "" : ": ", offer.warning);
}

std::string printSheetText(const PlannedPrints& prints, std::size_t index) {
    const PrintSheet& sheet = prints.plan.sheets[index];
    const PlannedSheet drawn = drawnSheet(prints.plan, prints.input, index, scaleFor(sheet.size));
    std::string text = drawn.heading + '\n';
    for (const std::string& line : pieceLines(drawn)) {
        text += "  " + line + '\n';
    }
    for (int number = 1; const std::string& sentence : stepSentences(drawn)) {
        text += fmt::format("  {}. {}\n", number++, sentence);
    }
    for (const std::string& note : drawn.notes) {
        text += "  " + note + '\n';
    }
    const std::vector<PrintOffer>& offers = prints.offers[index];
    if (!offers.empty()) {
        text += "  It could be filled with:\n";
        for (std::size_t i = 0; i < std::min(offers.size(), mostOffersTold); ++i) {
            text += offerText(offers[i]) + '\n';
        }
    }
    return text;
}

std::string takenText(const PlannedPrints& prints) {
    std::string text;
    for (const TakenPrint& taken : prints.plan.taken) {
        text += fmt::format("On hand: print {} is {} for {}\n", taken.onHand.value,
                            taken.print.name, pageName(prints, taken.page));
    }
    for (const TherePrint& there : prints.plan.there) {
        text += fmt::format("Printed before: {} for {} (print {})\n", there.print.name,
                            pageName(prints, there.page), there.used.value);
    }
    for (const AlikePrint& alike : prints.plan.alike) {
        text += fmt::format("Print {} on hand is the photo of {} in its size, cropped otherwise\n",
                            alike.onHand.value, prints.plan.prints[alike.print].print.name);
    }
    return text;
}

std::string oneLine(const std::string& text) {
    std::string shown;
    std::size_t from = 0;
    for (std::size_t end = text.find('\n'); end != std::string::npos; end = text.find('\n', from)) {
        shown += printablePath(text.substr(from, end - from)) + '\n';
        from = end + 1;
    }
    return shown;
}

Json printsOfSheet(const PlannedPrints& prints, const PrintSheet& sheet) {
    Json all = Json::array();
    for (const Gang::Place& place : sheet.gang.places) {
        const PlannedPrint& print = prints.plan.prints[place.print];
        Json one{{"page", nullptr},
                 {"slot", print.print.slot.value},
                 {"name", print.print.name},
                 {"photo", printablePath(print.photo.path)},
                 {"size", json(print.print.paper)},
                 {"left", json(place.at.x)},
                 {"top", json(place.at.y)},
                 {"turned", place.turned},
                 {"ppi", ppiOf(print)}};
        if (print.page) {
            one["page"] = pageName(prints, *print.page);
        }
        all.push_back(std::move(one));
    }
    return all;
}

Json sheetJson(const PlannedPrints& prints, std::size_t index) {
    const PrintSheet& sheet = prints.plan.sheets[index];
    const Printer& printer = *find(prints.input.printers, sheet.printer);
    const PlannedSheet drawn = drawnSheet(prints.plan, prints.input, index, scaleFor(sheet.size));
    Json steps = stepSentences(drawn);
    Json room = Json::array();
    for (const RoomFor& one : sheet.room) {
        room.push_back({{"size", json(one.size)}, {"count", one.count}, {"text", roomText(one)}});
    }
    Json offers = Json::array();
    for (const PrintOffer& offer : prints.offers[index]) {
        offers.push_back({{"photo", printablePath(offer.print.photo.path)},
                          {"why", offer.print.why},
                          {"size", json(offer.print.print.paper)},
                          {"ppi", offer.ppi},
                          {"warning", offer.warning}});
    }
    return {{"printer", printer.name},    {"paper", find(printer, sheet.paper)->name},
            {"size", json(sheet.size)},   {"prints", printsOfSheet(prints, sheet)},
            {"steps", std::move(steps)},  {"room", std::move(room)},
            {"offers", std::move(offers)}};
}

}  // namespace

Scale scaleFor(Size paper) {
    constexpr Length eighth = Length::inches(0, 1, 8);
    return paper.width.isMultipleOf(eighth) && paper.height.isMultipleOf(eighth)
               ? Scale::SixteenthInch
               : Scale::HalfMillimetre;
}

std::string planText(const PlannedPrints& prints) {
    std::string text = prints.plan.bound + '\n' + takenText(prints);
    for (const LeftOutPrint& left : prints.plan.leftOut) {
        text += fmt::format("Left out: {}. {}\n",
                            printText(prints.plan.prints[left.print], prints.input), left.sentence);
    }
    for (std::size_t i = 0; i < prints.plan.sheets.size(); ++i) {
        text += '\n' + printSheetText(prints, i);
    }
    if (!prints.plan.sheets.empty()) {
        text += fmt::format("\n{}\n", bladeCaution);
    }
    return oneLine(text);
}

Json planJson(const PlannedPrints& prints) {
    Json sheets = Json::array();
    for (std::size_t i = 0; i < prints.plan.sheets.size(); ++i) {
        sheets.push_back(sheetJson(prints, i));
    }
    Json taken = Json::array();
    for (const TakenPrint& one : prints.plan.taken) {
        taken.push_back({{"page", pageName(prints, one.page)},
                         {"name", one.print.name},
                         {"print", one.onHand.value}});
    }
    Json there = Json::array();
    for (const TherePrint& one : prints.plan.there) {
        there.push_back({{"page", pageName(prints, one.page)},
                         {"name", one.print.name},
                         {"print", one.used.value}});
    }
    Json alike = Json::array();
    for (const AlikePrint& one : prints.plan.alike) {
        alike.push_back(
            {{"name", prints.plan.prints[one.print].print.name}, {"print", one.onHand.value}});
    }
    Json leftOut = Json::array();
    for (const LeftOutPrint& one : prints.plan.leftOut) {
        leftOut.push_back({{"name", printText(prints.plan.prints[one.print], prints.input)},
                           {"why", one.sentence}});
    }
    return {{"bound", prints.plan.bound},   {"provedCheapest", prints.plan.provedCheapest},
            {"sheets", std::move(sheets)},  {"taken", std::move(taken)},
            {"there", std::move(there)},    {"alike", std::move(alike)},
            {"leftOut", std::move(leftOut)}};
}

}  // namespace matwright::app
