// SPDX-License-Identifier: MIT
#include "core/printplan/printed.h"

#include <filesystem>

namespace matwright {

namespace {

// As the store keeps it: for people, on one line, not too long.
std::string photoNameOf(const Photo& photo) {
    std::string name = std::filesystem::path(photo.path).filename().string();
    for (char& letter : name) {
        letter = static_cast<unsigned char>(letter) < ' ' ? ' ' : letter;
    }
    if (name.size() > maxPrintNameBytes) {
        std::size_t end = maxPrintNameBytes;
        while (end > 0 && (static_cast<unsigned char>(name[end]) & 0xc0U) == 0x80U) {
            --end;
        }
        name.resize(end);
    }
    return name;
}

}  // namespace

PrintingDone printingDone(const PrintPlan& plan, const PlanInput& input, const PrintedPart& part,
                          const std::string& when, const std::string& once) {
    PrintingDone done;
    done.when = when;
    done.once = once;
    for (const std::size_t index : part.sheets) {
        const PrintSheet& sheet = plan.sheets.at(index);
        ++done.papersUsed[sheet.paper];
        for (const Gang::Place& place : sheet.gang.places) {
            const PlannedPrint& print = plan.prints[place.print];
            done.made.push_back({lookOf(print.print, print.photo, input.bleed),
                                 photoNameOf(print.photo),
                                 print.page ? input.pages[*print.page].name : ""});
        }
    }
    for (const TakenPrint& taken : plan.taken) {
        if (part.withTaken) {
            done.taken.emplace(taken.onHand, input.pages[taken.page].name);
        }
    }
    return done;
}

PrintingDone printingDone(const PrintPlan& plan, const PlanInput& input, const std::string& when,
                          const std::string& once) {
    PrintedPart all;
    for (std::size_t sheet = 0; sheet < plan.sheets.size(); ++sheet) {
        all.sheets.insert(sheet);
    }
    return printingDone(plan, input, all, when, once);
}

Result<std::optional<std::int64_t>> recordPrinted(PrintingStore& store, const PrintPlan& plan,
                                                  const PlanInput& input, const std::string& when,
                                                  const std::string& once,
                                                  std::vector<PrintOnHandId>* gone) {
    return store.record(printingDone(plan, input, when, once), gone);
}

}  // namespace matwright
