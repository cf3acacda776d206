// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>

#include "core/papers/papers_store.h"
#include "tests/checks/stock_kill/stock_subject.h"

namespace matwright::test {

namespace {

constexpr Length sixteenth = Length::inches(0, 1, 16);

std::int64_t squareSixteenths(Size size) {
    return (size.width.ticks() / sixteenth.ticks()) * (size.height.ticks() / sixteenth.ticks());
}

// What is on hand and what was cut of one paper, kept apart from the store: cutting conserves area.
struct Account {
    std::map<std::tuple<std::int64_t, std::int64_t, bool>, int> sheets;  // by size and scrap
    std::map<std::pair<std::int64_t, std::int64_t>, int> cut;            // by size

    void addSheet(Size size, bool isScrap, int count) {
        sheets[{size.width.ticks(), size.height.ticks(), isScrap}] += count;
    }
    void addCut(Size size, int count) { cut[{size.width.ticks(), size.height.ticks()}] += count; }

    std::string text() const {
        std::int64_t area = 0;
        std::string words = "on hand";
        for (const auto& [what, count] : sheets) {
            const auto& [width, height, isScrap] = what;
            if (count != 0) {
                words +=
                    fmt::format("; {} of {} x {}{}", count, width, height, isScrap ? " scrap" : "");
                area +=
                    count * squareSixteenths({Length::fromTicks(width), Length::fromTicks(height)});
            }
        }
        words += "; cut";
        for (const auto& [size, count] : cut) {
            words += fmt::format("; {} of {} x {}", count, size.first, size.second);
            area += count * squareSixteenths(
                                {Length::fromTicks(size.first), Length::fromTicks(size.second)});
        }
        return words + fmt::format("; together {}", area);
    }
};

class PapersWorker final : public StockWorker {
  public:
    PapersWorker(PapersStore store, int number)
        : m_store(std::move(store)), m_name(fmt::format("paper of {}", number)) {}

    std::string state() override {
        const std::optional<Account> account = read();
        return account ? account->text() : std::string();
    }

    Change next(Random& random, bool isAlone) override {
        const auto account = read();
        if (!account) {
            return {"", [] { return false; }};
        }
        const auto any = below(random, isAlone ? 8 : 6);
        if (any == 6 && !m_past.empty()) {
            return takeBack(*account);
        }
        if (any == 7 && !m_future.empty()) {
            return bringBack(*account);
        }
        if (m_papers.empty() || any == 0) {
            return addSome(random, *account);
        }
        const PaperOnHand& paper = m_papers[below(random, m_papers.size())];
        if (any == 1) {
            return removeIt(paper, *account);
        }
        if (any == 2 || paper.count == 0) {
            return recount(random, paper, *account);
        }
        return cutOne(random, paper, *account);
    }

  private:
    std::optional<Account> read() {
        const auto list = m_store.list();
        const auto pieces = m_store.cutPieces();
        if (!list || !pieces) {
            return std::nullopt;
        }
        Account account;
        m_papers.clear();
        for (const PaperOnHand& paper : *list) {
            if (paper.name == m_name) {
                m_papers.push_back(paper);
                account.addSheet(paper.size, paper.kind == PaperKind::Scrap, paper.count);
            }
        }
        for (const PapersCut::Piece& piece : *pieces) {
            if (piece.paper == m_name) {
                account.addCut(piece.size, piece.count);
            }
        }
        return account;
    }

    // The change that ends at `after`; when it is made what was before can be taken back.
    Change changeTo(const Account& before, Account after, std::function<bool()> make) {
        return {after.text(), [this, before, make = std::move(make)] {
                    m_past.push_back(before);
                    m_future.clear();
                    return make();
                }};
    }

    Change addSome(Random& random, const Account& before) {
        PaperOnHand paper;
        paper.name = m_name;
        paper.size = {sixteenth * static_cast<std::int64_t>(32 + below(random, 160)),
                      sixteenth * static_cast<std::int64_t>(32 + below(random, 160))};
        paper.count = static_cast<int>(1 + below(random, 6));
        Account after = before;
        after.addSheet(paper.size, false, paper.count);
        return changeTo(before, after, [this, paper] { return m_store.add(paper).has_value(); });
    }

    Change removeIt(const PaperOnHand& paper, const Account& before) {
        Account after = before;
        after.addSheet(paper.size, paper.kind == PaperKind::Scrap, -paper.count);
        return changeTo(before, after,
                        [this, paper] { return m_store.remove(std::span(&paper, 1)).has_value(); });
    }

    Change recount(Random& random, const PaperOnHand& paper, const Account& before) {
        PaperOnHand changed = paper;
        changed.count = static_cast<int>(1 + below(random, 9));
        Account after = before;
        after.addSheet(paper.size, paper.kind == PaperKind::Scrap, changed.count - paper.count);
        return changeTo(before, after, [this, paper, changed] {
            return m_store.change(paper, changed).has_value();
        });
    }

    // One sheet into a piece and a scrap, or all of it where it is narrow: nothing is wasted.
    Change cutOne(Random& random, const PaperOnHand& paper, const Account& before) {
        const std::int64_t steps = paper.size.width.ticks() / sixteenth.ticks();
        const bool isWhole = steps < 16;
        const Length width =
            isWhole ? paper.size.width
                    : sixteenth * static_cast<std::int64_t>(
                                      4 + below(random, static_cast<std::uint64_t>(steps) - 8));
        const Size piece{width, paper.size.height};
        const Size rest{paper.size.width - width, paper.size.height};
        PapersCut cut{"Cut papers", {{paper.id, 1}}, {}, {{"piece", m_name, piece, 1}}};
        Account after = before;
        after.addSheet(paper.size, paper.kind == PaperKind::Scrap, -1);
        after.addCut(piece, 1);
        if (!isWhole) {
            PaperOnHand scrap = paper;
            scrap.id = {};
            scrap.kind = PaperKind::Scrap;
            scrap.size = rest;
            scrap.count = 1;
            cut.putBack.push_back(scrap);
            after.addSheet(rest, true, 1);
        }
        return changeTo(before, after, [this, cut] { return m_store.cut(cut).has_value(); });
    }

    Change takeBack(const Account& now) {
        return {m_past.back().text(), [this, now] {
                    m_past.pop_back();
                    m_future.push_back(now);
                    const auto undone = m_store.undo();
                    return undone && undone->has_value();
                }};
    }

    Change bringBack(const Account& now) {
        return {m_future.back().text(), [this, now] {
                    m_future.pop_back();
                    m_past.push_back(now);
                    const auto redone = m_store.redo();
                    return redone && redone->has_value();
                }};
    }

    PapersStore m_store;
    std::string m_name;
    std::vector<PaperOnHand> m_papers;  // of this worker
    std::vector<Account> m_past;        // before the changes of this life
    std::vector<Account> m_future;
};

class PapersSubject final : public StockSubject {
  public:
    std::string name() const override { return "papers on hand"; }

    std::unique_ptr<StockWorker> worker(const std::filesystem::path& folder, int number) override {
        auto store = PapersStore::open(folder / "papers.sqlite");
        return store ? std::make_unique<PapersWorker>(std::move(*store), number) : nullptr;
    }

    // Everything that can be taken back is, and brought back again: the list is the same.
    std::vector<std::string> faultsAtTheEnd(const std::filesystem::path& folder) override {
        auto store = PapersStore::open(folder / "papers.sqlite");
        if (!store) {
            return {store.error().text()};
        }
        const auto before = store->list();
        int undone = 0;
        while (store->undo().value_or(std::nullopt)) {
            ++undone;
        }
        int redone = 0;
        while (store->redo().value_or(std::nullopt)) {
            ++redone;
        }
        const auto after = store->list();
        if (!before || !after || *before != *after || undone > redone) {
            return {"taking everything back and bringing it back gives another list"};
        }
        return {};
    }
};

}  // namespace

std::unique_ptr<StockSubject> papersSubject() {
    return std::make_unique<PapersSubject>();
}

}  // namespace matwright::test
