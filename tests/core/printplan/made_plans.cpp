// SPDX-License-Identifier: MIT
#include "tests/core/printplan/made_plans.h"

#include <gtest/gtest.h>

#include "core/measure/catalogue.h"

namespace matwright::test {

PlanPage madePage(const std::string& name, const std::vector<Size>& prints, int firstPhoto) {
    PlanPage page{name, {}};
    page.making.sketch = blankSketch();
    std::vector<Piece> slots;
    slots.reserve(prints.size());
    for (const Size size : prints) {
        slots.push_back(slotAt({Length::inches(1), Length::inches(1)}, size));
    }
    EXPECT_TRUE(apply(page.making.sketch, addPieces(page.making.sketch, slots)));
    std::uint32_t number = 0;
    for (const PieceId slot : page.making.sketch.order) {
        const PhotoId id{++number};
        const Size size = page.making.sketch.pieces.at(slot).size;
        const Photo photo = plainPhoto(firstPhoto + static_cast<int>(number) - 1);
        page.making.work.photos.emplace(id, photo);
        page.making.work.placements.emplace(slot,
                                            Placement{id, startingCrop(photo.upright, size), {}});
    }
    return page;
}

std::vector<Printer> keptPrinters(Unit unit) {
    std::vector<Printer> printers = startingPrinters(unit);
    std::int64_t printer = 0;
    std::int64_t paper = 10;
    for (Printer& one : printers) {
        one.id = {++printer};
        for (PrinterPaper& kind : one.papers) {
            kind.id = {++paper};
        }
    }
    return printers;
}

PlanInput inputOf(std::vector<PlanPage> pages, std::vector<Printer> printers) {
    PlanInput input;
    input.pages = std::move(pages);
    input.printers = std::move(printers);
    return input;
}

PrintOnHand onHandFor(const PlanPage& page, std::size_t print, std::int64_t id) {
    const Print wanted = printsOf(page.making, {}).at(print);
    return {{id},    lookOf(wanted, page.making.work.photos.at(wanted.photo)),
            "x.jpg", PrintState::OnHand,
            "",      "2026-07-14"};
}

namespace {

std::vector<Size> randomSizes(Random& random) {
    std::vector<Size> sizes;
    const auto catalogue = printSizes();
    const std::uint64_t count = below(random, 7);
    for (std::uint64_t i = 0; i < count; ++i) {
        const Size size = catalogue[below(random, catalogue.size())].size;
        sizes.push_back(below(random, 2) == 0 ? size : size.turned());
    }
    if (below(random, 4) == 0) {
        sizes.push_back({Length::inches(3, 1, 16), Length::inches(4, 3, 16)});
    }
    return sizes;
}

void addWishes(Random& random, PlanInput& input) {
    for (std::size_t page = 0; page < input.pages.size(); ++page) {
        for (const auto& [slot, placement] : input.pages[page].making.work.placements) {
            if (below(random, 4) != 0) {
                continue;
            }
            const Printer& printer = input.printers[below(random, input.printers.size())];
            const auto paper = below(random, printer.papers.size() + 1);
            input.wishes.push_back({page, slot, printer.id,
                                    paper < printer.papers.size()
                                        ? std::optional(printer.papers[paper].id)
                                        : std::nullopt});
        }
    }
}

void addOnHand(Random& random, PlanInput& input) {
    std::int64_t id = 0;
    for (const PlanPage& page : input.pages) {
        for (std::size_t i = 0; i < page.making.work.placements.size(); ++i) {
            PrintOnHand print = onHandFor(page, i, ++id);
            const std::uint64_t kind = below(random, 6);
            if (kind == 1) {
                print.look.crop.centreX /= 2;
            } else if (kind == 2) {
                print.state = PrintState::Used;
            }
            if (kind < 3) {
                input.onHand.push_back(print);
            }
        }
    }
}

}  // namespace

PlanInput randomInput(Random& random) {
    PlanInput input;
    const std::uint64_t pages = 1 + below(random, 3);
    for (std::uint64_t i = 0; i < pages; ++i) {
        input.pages.push_back(madePage("Page " + std::to_string(i), randomSizes(random),
                                       static_cast<int>(below(random, 5))));
    }
    input.printers = keptPrinters(below(random, 4) == 0 ? Unit::Millimetre : Unit::Inch);
    for (Printer& printer : input.printers) {
        for (PrinterPaper& paper : printer.papers) {
            paper.borderless = below(random, 3) != 0;
            if (below(random, 3) == 0) {
                paper.atHand = static_cast<int>(below(random, 4));
            }
        }
    }
    if (below(random, 2) == 0) {
        addWishes(random, input);
    }
    if (below(random, 2) == 0) {
        addOnHand(random, input);
    }
    const PlanPage more = madePage("More", randomSizes(random), 50);
    for (const Print& print : printsOf(more.making, {})) {
        input.ahead.push_back({more.making.work.photos.at(print.photo), print, "favourite"});
    }
    return input;
}

PrintPlan soundPlan(const PlanInput& input, const PrintPlanLimits& limits) {
    const Result<PrintPlan> plan = planPrints(input, limits);
    EXPECT_TRUE(plan) << plan.error().text();
    if (!plan) {
        return {};
    }
    EXPECT_EQ(faultsOf(*plan, input), std::vector<std::string>{});
    return *plan;
}

}  // namespace matwright::test
