// SPDX-License-Identifier: MIT
#include "app/printplan/plan_draft.h"

#include <algorithm>
#include <utility>

#include "core/library/names.h"

namespace matwright::app {

namespace {

bool isOffered(const PrintWish& wish, const std::vector<Printer>& printers) {
    const Printer* printer = find(printers, wish.printer);
    return printer && (!wish.paper || find(*printer, *wish.paper));
}

}  // namespace

std::string planNameOf(const QString& file) {
    return std::string(stemOf(file.toStdString()));
}

void PlanDraft::removePage(std::size_t page) {
    pages.erase(pages.begin() + static_cast<std::ptrdiff_t>(page));
    std::erase_if(wishes, [page](const PrintWish& each) { return each.page == page; });
    for (PrintWish& each : wishes) {
        each.page -= each.page > page ? 1 : 0;
    }
}

void PlanDraft::wish(std::size_t page, PieceId slot, const WishedPlace& place) {
    std::erase_if(wishes,
                  [&](const PrintWish& each) { return each.page == page && each.slot == slot; });
    if (place.printer) {
        wishes.push_back({page, slot, *place.printer, place.paper});
    }
}

WishedPlace PlanDraft::wished(std::size_t page, PieceId slot) const {
    for (const PrintWish& each : wishes) {
        if (each.page == page && each.slot == slot) {
            return {each.printer, each.paper};
        }
    }
    return {};
}

std::string PlanDraft::freeName(const std::string& name) const {
    const auto isTaken = [this](const std::string& text) {
        return std::ranges::any_of(pages,
                                   [&](const DraftPage& each) { return each.page.name == text; });
    };
    std::string text = name;
    for (int number = 2; isTaken(text); ++number) {
        text = name + ' ' + std::to_string(number);
    }
    return text;
}

PlanInput PlanDraft::input(PlanInput known, PrintOnHandId before) const {
    PlanInput input = std::move(known);
    std::erase_if(input.used, [&](const PrintOnHand& print) {
        const auto page = std::ranges::find(pages, print.page,
                                            [](const DraftPage& each) { return each.page.name; });
        return page != pages.end() && page->file.isEmpty() && print.id <= before;
    });
    input.ahead = ahead;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        const DraftPage& each = pages[i];
        (each.isPrinted ? input.pages : input.waiting).push_back(each.page);
        for (PrintWish wish : wishes) {
            if (each.isPrinted && wish.page == i && isOffered(wish, input.printers)) {
                wish.page = input.pages.size() - 1;
                input.wishes.push_back(wish);
            }
        }
    }
    return input;
}

std::size_t PlanDraft::pageOf(std::size_t inputPage) const {
    std::size_t printed = 0;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (pages[i].isPrinted && printed++ == inputPage) {
            return i;
        }
    }
    return pages.size();
}

std::vector<DraftPrint> printsOf(const PlanDraft& draft) {
    std::vector<DraftPrint> prints;
    for (std::size_t i = 0; i < draft.pages.size(); ++i) {
        const Making& making = draft.pages[i].page.making;
        for (const Print& print :
             draft.pages[i].isPrinted ? matwright::printsOf(making, {}) : std::vector<Print>{}) {
            prints.push_back({i, std::nullopt, print, making.work.photos.at(print.photo)});
        }
    }
    for (std::size_t i = 0; i < draft.ahead.size(); ++i) {
        prints.push_back({std::nullopt, i, draft.ahead[i].print, draft.ahead[i].photo});
    }
    return prints;
}

}  // namespace matwright::app
