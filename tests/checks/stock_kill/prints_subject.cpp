// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <tuple>

#include "core/printers/printing_store.h"
#include "tests/checks/stock_kill/stock_subject.h"

namespace matwright::test {

namespace {

constexpr const char* printDay = "2026-07-14";
constexpr int fullBox = 60;

// The prints and papers of one worker, kept apart from the store.
struct PrintAccount {
    using OnePrint = std::tuple<std::string, PrintState, std::string>;  // look, state, page
    std::vector<OnePrint> prints;
    int papers = 0;

    void move(const std::string& look, PrintState state, const std::string& page) {
        const auto found = std::ranges::find_if(
            prints, [&](const OnePrint& print) { return std::get<0>(print) == look; });
        *found = {look, state, page};
    }
    std::string text() const {
        std::vector<std::string> lines;
        for (const auto& [look, state, page] : prints) {
            lines.push_back(fmt::format("{} {} {}", look, stateWord(state), page));
        }
        std::ranges::sort(lines);
        return fmt::format("{} papers, {} prints\n{}", papers, lines.size(),
                           fmt::join(lines, "\n"));
    }
};

class PrintsWorker final : public StockWorker {
  public:
    PrintsWorker(PrintingStore store, int number)
        : m_store(std::move(store)), m_name(fmt::format("of worker {}", number)) {}

    // Every worker has a printer of its own.
    bool hasPrinter() {
        if (readPrinter()) {
            return true;
        }
        Printer printer = startingPrinters(Unit::Inch).front();
        printer.name = m_name;
        printer.papers.front().atHand = fullBox;
        return m_store.add(printer).has_value();
    }

    std::string state() override {
        const std::optional<PrintAccount> account = read();
        return account ? account->text() : std::string();
    }

    Change next(Random& random, bool isAlone) override {
        const std::optional<PrintAccount> account = read();
        if (!account) {
            return {"", [] { return false; }};
        }
        const auto any = below(random, isAlone ? 8 : 6);
        if (any >= 6 && !m_past.empty()) {
            return takeBack();
        }
        if (account->papers == 0) {
            return fillBox(*account);
        }
        if (m_prints.empty() || any < 3) {
            return print(random, *account);
        }
        return moveOne(random, *account);
    }

  private:
    std::optional<Printer> readPrinter() {
        const auto printers = m_store.printers();
        if (!printers) {
            return std::nullopt;
        }
        const auto found = std::ranges::find(*printers, m_name, &Printer::name);
        return found == printers->end() ? std::nullopt : std::optional(*found);
    }

    std::optional<PrintAccount> read() {
        const auto all = m_store.prints();
        const auto printer = readPrinter();
        if (!all || !printer) {
            return std::nullopt;
        }
        PrintAccount account;
        m_prints.clear();
        m_paper = printer->papers.front().id;
        account.papers = printer->papers.front().atHand.value_or(-1);
        for (const PrintOnHand& one : *all) {
            if (one.photoName == m_name) {
                m_prints.push_back(one);
                account.prints.emplace_back(textOf(one.look), one.state, one.page);
            }
        }
        return account;
    }

    Change changeTo(const PrintAccount& before, const PrintAccount& after,
                    std::function<bool()> make) {
        return {after.text(), [this, before, make = std::move(make)] {
                    m_past.push_back(before.text());
                    return make();
                }};
    }

    MadePrint madePrint(Random& random) const {
        MadePrint made;
        made.look.photo = contentKeyOf(fmt::format("{} {}", m_name, random()));
        made.look.paper = {Length::inches(3), Length::inches(4)};
        made.look.trim = Rect::at({}, made.look.paper);
        made.look.window = made.look.paper;
        made.photoName = m_name;
        made.page = below(random, 2) == 0 ? "A page" : "";
        return made;
    }

    // A sheet with new prints, and one print on hand taken with it. Told twice, as a program does
    // that was killed before it heard the answer.
    Change print(Random& random, const PrintAccount& before) {
        PrintAccount after = before;
        PrintingDone done;
        done.when = printDay;
        done.once = fmt::format("{} {}", m_name, random());
        const std::uint64_t count = 1 + below(random, 3);
        for (std::uint64_t i = 0; i < count; ++i) {
            done.made.push_back(madePrint(random));
            const MadePrint& made = done.made.back();
            after.prints.emplace_back(textOf(made.look),
                                      made.page.empty() ? PrintState::OnHand : PrintState::Used,
                                      made.page);
        }
        const auto onHand = std::ranges::find(m_prints, PrintState::OnHand, &PrintOnHand::state);
        if (onHand != m_prints.end()) {
            done.taken = {{onHand->id, "Another page"}};
            after.move(textOf(onHand->look), PrintState::Used, "Another page");
        }
        done.papersUsed = {{m_paper, 1}};
        --after.papers;
        return changeTo(before, after, [this, done] {
            const auto first = m_store.record(done);
            const auto again = m_store.record(done);
            return first && *first && again && !*again;
        });
    }

    Change moveOne(Random& random, const PrintAccount& before) {
        const PrintOnHand& one = m_prints[below(random, m_prints.size())];
        const PrintOnHandId id = one.id;
        PrintAccount after = before;
        if (one.state != PrintState::OnHand) {
            after.move(textOf(one.look), PrintState::OnHand, "");
            return changeTo(before, after,
                            [this, id] { return m_store.putBack(id, printDay).has_value(); });
        }
        if (below(random, 2) == 0) {
            after.move(textOf(one.look), PrintState::Wasted, "");
            return changeTo(before, after,
                            [this, id] { return m_store.waste(id, printDay).has_value(); });
        }
        after.move(textOf(one.look), PrintState::Used, "Third page");
        return changeTo(before, after, [this, id] {
            return m_store.take(id, "Third page", printDay).has_value();
        });
    }

    // A new box of paper cannot be taken back with the prints.
    Change fillBox(const PrintAccount& before) {
        PrintAccount after = before;
        after.papers = fullBox;
        return {after.text(), [this] {
                    m_past.clear();
                    const std::optional<Printer> printer = readPrinter();
                    Printer full = *printer;
                    full.papers.front().atHand = fullBox;
                    return m_store.change(*printer, full).has_value();
                }};
    }

    Change takeBack() {
        return {m_past.back(), [this] {
                    m_past.pop_back();
                    return m_store.undo().has_value();
                }};
    }

    PrintingStore m_store;
    std::string m_name;
    std::vector<PrintOnHand> m_prints;  // of this worker
    PrinterPaperId m_paper;
    std::vector<std::string> m_past;  // before the changes of this life
};

class PrintsSubject final : public StockSubject {
  public:
    std::string name() const override { return "prints on hand"; }

    std::unique_ptr<StockWorker> worker(const std::filesystem::path& folder, int number) override {
        auto store = PrintingStore::open(folder / printingStoreName);
        if (!store) {
            return nullptr;
        }
        auto worker = std::make_unique<PrintsWorker>(std::move(*store), number);
        return worker->hasPrinter() ? std::move(worker) : nullptr;
    }

    // Sound as it is, and sound when everything that can be taken back is.
    std::vector<std::string> faultsAtTheEnd(const std::filesystem::path& folder) override {
        auto store = PrintingStore::open(folder / printingStoreName);
        if (!store) {
            return {store.error().text()};
        }
        std::vector<std::string> faults = store->faults();
        while (store->undo()) {
        }
        const std::vector<std::string> more = store->faults();
        faults.insert(faults.end(), more.begin(), more.end());
        return faults;
    }
};

}  // namespace

std::unique_ptr<StockSubject> printsSubject() {
    return std::make_unique<PrintsSubject>();
}

}  // namespace matwright::test
