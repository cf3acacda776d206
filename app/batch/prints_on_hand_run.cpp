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

std::string printsTable(const std::vector<PrintOnHand>& prints, bool all) {
    Table table({"Print", "Size", "Photo", "State", "Page", "Since"}, {0});
    for (const PrintOnHand& print : prints) {
        table.addRow({fmt::format("{}", print.id.value), naturalSizeText(print.look.paper),
                      printablePath(print.photoName), std::string(stateWord(print.state)),
                      printablePath(print.page), print.when});
    }
    return !prints.empty() ? table.text()
           : all           ? "There are no prints.\n"
                           : "No print is on hand.\n";
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
    ports.out << (command.json ? textOf(printsJson(*prints)) + '\n'
                               : printsTable(*prints, command.all));
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

Result<std::int64_t> act(const PrintsOnHandCommand& command, PrintingStore& store) {
    std::set<PrintOnHandId> prints;
    for (const std::int64_t number : command.prints) {
        prints.insert({number});
    }
    switch (command.act) {
        case PrintsOnHandCommand::Act::Use:
            return store.take(prints, command.page, today());
        case PrintsOnHandCommand::Act::PutBack:
            return store.putBack(prints, today());
        default:
            return store.waste(prints, today());
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
    // All of them or none, so that one undo takes the whole command back.
    if (const Result<std::int64_t> done = act(command, *store); !done) {
        const bool isUnknown = done.error().code == ErrorCode::NotFound;
        const bool wereSeveral = command.prints.size() > 1;
        return fail(ports, isUnknown ? InputRefused : CouldNotWrite,
                    {done.error().code,
                     done.error().sentence + (wereSeveral ? " None of them was changed." : ""),
                     done.error().where});
    }
    for (const std::int64_t number : command.prints) {
        ports.out << fmt::format("Print {} is {}\n", number, doneWord(command.act));
    }
    return Done;
}

}  // namespace matwright::app
