// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <ostream>

#include "app/batch/json_values.h"
#include "app/batch/printing_commands.h"
#include "app/batch/printing_place.h"
#include "app/batch/table.h"
#include "core/library/printable.h"

namespace matwright::app {

namespace {

std::string printsTable(const std::vector<PrintOnHand>& prints) {
    Table table({"Print", "Size", "Photo", "State", "Page", "Since"}, {0});
    for (const PrintOnHand& print : prints) {
        table.addRow({fmt::format("{}", print.id.value), naturalSizeText(print.look.paper),
                      printablePath(print.photoName), std::string(stateWord(print.state)),
                      printablePath(print.page), print.when});
    }
    return prints.empty() ? "No print is on hand.\n" : table.text();
}

Json printsJson(const std::vector<PrintOnHand>& prints) {
    Json all = Json::array();
    for (const PrintOnHand& print : prints) {
        all.push_back({{"print", print.id.value},
                       {"size", json(print.look.paper)},
                       {"photo", print.photoName},
                       {"content", print.look.photo.text()},
                       {"state", stateWord(print.state)},
                       {"page", print.page},
                       {"since", print.when}});
    }
    return all;
}

int listPrints(const PrintsOnHandCommand& command, PrintingStore& store, BatchPorts& ports) {
    const auto prints = command.all ? store.prints() : store.prints(PrintState::OnHand);
    if (!prints) {
        return fail(ports, InputRefused, prints.error());
    }
    ports.out << (command.json ? textOf(printsJson(*prints)) + '\n' : printsTable(*prints));
    return Done;
}

int undoLast(PrintingStore& store, BatchPorts& ports) {
    const Result<PrintingChange> undone = store.undo();
    if (!undone) {
        const bool isNone = undone.error().code == ErrorCode::NotFound;
        return fail(ports, isNone ? InputRefused : CouldNotWrite, undone.error());
    }
    ports.out << fmt::format("Taken back: {} ({})\n", printablePath(undone->what), undone->when);
    return Done;
}

Result<void> act(const PrintsOnHandCommand& command, PrintOnHandId print, PrintingStore& store) {
    switch (command.act) {
        case PrintsOnHandCommand::Act::Use:
            return store.take(print, command.page, today());
        case PrintsOnHandCommand::Act::PutBack:
            return store.putBack(print, today());
        default:
            return store.waste(print, today());
    }
}

std::string_view doneWord(PrintsOnHandCommand::Act act) {
    return act == PrintsOnHandCommand::Act::Use       ? "used"
           : act == PrintsOnHandCommand::Act::PutBack ? "on hand"
                                                      : "wasted";
}

}  // namespace

int runPrintsOnHand(const PrintsOnHandCommand& command, BatchPorts& ports) {
    auto store = openPrinting(command.store, ports);
    if (!store) {
        return store.error();
    }
    if (command.act == PrintsOnHandCommand::Act::List) {
        return listPrints(command, *store, ports);
    }
    if (command.act == PrintsOnHandCommand::Act::Undo) {
        return undoLast(*store, ports);
    }
    int code = Done;
    for (const std::int64_t number : command.prints) {
        if (const Result<void> done = act(command, {number}, *store); !done) {
            const bool isUnknown = done.error().code == ErrorCode::NotFound;
            code = fail(ports, isUnknown ? InputRefused : CouldNotWrite, done.error());
        } else {
            ports.out << fmt::format("Print {} is {}\n", number, doneWord(command.act));
        }
    }
    return code;
}

}  // namespace matwright::app
