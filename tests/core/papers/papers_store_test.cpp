// SPDX-License-Identifier: MIT
#include "core/papers/papers_store.h"

#include <optional>
#include <thread>

#include "tests/core/papers/papers_store_fixture.h"
#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

using test::kraft;
using test::scrap;
using test::withoutId;

class PapersStoreTest : public test::PapersStoreFixture {};

TEST_F(PapersStoreTest, KeepsWhatWasAddedInEveryField) {
    PaperOnHand paper = kraft(6);
    paper.colour = {1, 2, 250};
    paper.picture = "/papers/kraft.png";
    paper.pictureWidth = Length::inches(11, 1, 2);
    paper.sides = PaperSides::Two;
    paper.pattern = PaperPattern::HasUp;
    paper.thickness = "216 gsm";
    paper.kind = PaperKind::Scrap;
    {
        PapersStore store = open();
        const auto id = store.add(paper);
        ASSERT_TRUE(id);
        paper.id = *id;
    }
    PapersStore again = open();
    EXPECT_EQ(listOf(again), std::vector{paper});
}

TEST_F(PapersStoreTest, AddingNothingIsNoChange) {
    PapersStore store = open();
    ASSERT_TRUE(store.add(kraft(1)));
    ASSERT_TRUE(store.undo());
    const auto version = store.version();
    const auto ids = store.add({}, "Import nothing");
    ASSERT_TRUE(ids);
    EXPECT_TRUE(ids->empty());
    EXPECT_EQ(store.version(), version);
    EXPECT_EQ(store.undoable(), (Result<std::optional<PapersChange>>(std::nullopt)));
    EXPECT_TRUE(*store.redoable());
}

TEST_F(PapersStoreTest, ListsByNameThenWholeSheetsThenLargerOnes) {
    PapersStore store = open();
    PaperOnHand white = kraft(1);
    white.name = "White";
    const PaperOnHand papers[] = {white, scrap(kraft(1), {Length::inches(20), Length::inches(20)}),
                                  kraft(1, {Length::inches(8), Length::inches(8)}), kraft(2)};
    ASSERT_TRUE(store.add(papers, "Add papers"));
    const auto list = listOf(store);
    ASSERT_EQ(list.size(), 4U);
    EXPECT_EQ(withoutId(list[0]), papers[3]);
    EXPECT_EQ(withoutId(list[1]), papers[2]);
    EXPECT_EQ(withoutId(list[2]), papers[1]);
    EXPECT_EQ(withoutId(list[3]), papers[0]);
}

TEST_F(PapersStoreTest, AFaultyPaperIsRefusedAndNothingIsAdded) {
    PapersStore store = open();
    const PaperOnHand papers[] = {kraft(1), kraft(-1)};
    const auto refused = store.add(papers, "Add papers");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Malformed);
    EXPECT_TRUE(listOf(store).empty());
    EXPECT_FALSE(*store.undoable());
}

TEST_F(PapersStoreTest, AChangeOfWhatAnotherProgramChangedIsRefused) {
    PapersStore one = open();
    PapersStore other = open();
    ASSERT_TRUE(one.add(kraft(3)));
    const PaperOnHand seen = listOf(other).front();
    PaperOnHand two = seen;
    two.count = 2;
    ASSERT_TRUE(one.change(seen, two));
    PaperOnHand four = seen;
    four.count = 4;
    const auto refused = other.change(seen, four);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::BadEdit);
    EXPECT_FALSE(other.remove(std::span(&seen, 1)));
    EXPECT_EQ(listOf(other), std::vector{two});
    EXPECT_TRUE(other.change(two, four));
}

TEST_F(PapersStoreTest, EveryChangeIsTakenBackAndBroughtBackAfterARestart) {
    std::vector<std::vector<PaperOnHand>> states;
    {
        PapersStore store = open();
        states.push_back(listOf(store));
        ASSERT_TRUE(store.add(kraft(3)));
        states.push_back(listOf(store));
        const PaperOnHand seen = states.back().front();
        PaperOnHand changed = seen;
        changed.name = "brown";
        ASSERT_TRUE(store.change(seen, changed));
        states.push_back(listOf(store));
        PapersCut cut{"Cut papers", {{seen.id, 2, changed}}, {}, {}};
        cut.putBack.push_back(scrap(withoutId(changed), {Length::inches(5), Length::inches(4)}));
        cut.pieces.push_back({"mat", "brown", {Length::inches(2), Length::inches(3)}, 4});
        ASSERT_TRUE(store.cut(cut));
        states.push_back(listOf(store));
        ASSERT_TRUE(store.remove(states.back()));
        states.push_back(listOf(store));
    }
    for (std::size_t i = states.size() - 1; i > 0; --i) {
        PapersStore store = open();
        ASSERT_TRUE(*store.undo());
        EXPECT_EQ(listOf(store), states[i - 1]) << i;
        EXPECT_EQ(store.cutPieces()->size(), i == 4 || i == 5 ? 1U : 0U) << i;
    }
    EXPECT_FALSE(*open().undo());
    for (std::size_t i = 1; i < states.size(); ++i) {
        PapersStore store = open();
        ASSERT_TRUE(*store.redo());
        EXPECT_EQ(listOf(store), states[i]) << i;
    }
    PapersStore store = open();
    EXPECT_FALSE(*store.redo());
    EXPECT_EQ((*store.undoable())->label, "Remove 2 papers");
}

TEST_F(PapersStoreTest, ANewChangeEndsWhatCouldBeBroughtBack) {
    PapersStore store = open();
    ASSERT_TRUE(store.add(kraft(3)));
    ASSERT_TRUE(*store.undo());
    EXPECT_EQ((*store.redoable())->label, "Add kraft");
    ASSERT_TRUE(store.add(kraft(5)));
    EXPECT_FALSE(*store.redoable());
    EXPECT_FALSE(*store.redo());
    EXPECT_EQ(withoutId(listOf(store).front()), kraft(5));
}

TEST_F(PapersStoreTest, AnIdIsNeverGivenTwice) {
    PapersStore store = open();
    const PaperId first = *store.add(kraft(3));
    ASSERT_TRUE(store.remove(listOf(store)));
    const PaperId second = *store.add(kraft(3));
    EXPECT_NE(first, second);
}

TEST_F(PapersStoreTest, UndoOfAnotherChangeThanTheOneSeenIsRefused) {
    PapersStore store = open();
    ASSERT_TRUE(store.add(kraft(3)));
    const std::int64_t seen = (*store.undoable())->number;
    ASSERT_TRUE(open().add(kraft(4)));
    const auto refused = store.undo(seen);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::NotFound);
    EXPECT_EQ(listOf(store).size(), 2U);
}

TEST_F(PapersStoreTest, TheVersionTellsOfEveryChangeWhicheverProgramMadeIt) {
    PapersStore store = open();
    PapersStore other = open();
    std::int64_t last = *store.version();
    ASSERT_TRUE(other.add(kraft(3)));
    EXPECT_NE(*store.version(), last);
    last = *store.version();
    ASSERT_TRUE(*other.undo());
    EXPECT_NE(*store.version(), last);
    last = *store.version();
    EXPECT_FALSE(other.add(kraft(-3)));
    EXPECT_EQ(*store.version(), last);
}

TEST_F(PapersStoreTest, OnlyTheLastChangesCanBeTakenBackButWhatWasCutStaysWrittenDown) {
    PapersStore store = open();
    ASSERT_TRUE(store.add(kraft(3)));
    const PaperOnHand paper = listOf(store).front();
    ASSERT_TRUE(store.cut(
        {"Cut papers", {{paper.id, 1, paper}}, {}, {{"mat", "kraft", kraft(1).size, 1}}}));
    for (int i = 0; i < keptPapersChanges; ++i) {
        const PaperOnHand seen = listOf(store).front();
        PaperOnHand changed = seen;
        changed.count = 10 + i;
        ASSERT_TRUE(store.change(seen, changed));
    }
    int undone = 0;
    while (*store.undo()) {
        ++undone;
    }
    EXPECT_EQ(undone, keptPapersChanges);
    EXPECT_EQ(listOf(store).front().count, 2);
    EXPECT_EQ(store.cutPieces()->size(), 1U);
}

TEST_F(PapersStoreTest, TwoProgramsAtOnceLoseNothing) {
    {
        open();
    }
    const auto work = [this] {
        PapersStore store = open();
        for (int i = 0; i < 25; ++i) {
            const auto id = store.add(kraft(1));
            EXPECT_TRUE(id) << id.error().text();
        }
    };
    std::jthread one(work);
    std::jthread other(work);
    one.join();
    other.join();
    PapersStore store = open();
    EXPECT_EQ(listOf(store).size(), 50U);
}

TEST_F(PapersStoreTest, RandomChangesAreTakenBackToTheBeginning) {
    constexpr std::uint64_t seed = 4711;
    test::Random random(seed);
    PapersStore store = open();
    std::vector<std::vector<PaperOnHand>> states{listOf(store)};
    for (int i = 0; i < 60; ++i) {
        const auto papers = listOf(store);
        const auto what = papers.empty() ? 0 : test::below(random, 4);
        const auto any = papers.empty() ? 0 : test::below(random, papers.size());
        if (what == 0) {
            ASSERT_TRUE(store.add(kraft(static_cast<int>(test::below(random, 9)))));
        } else if (what == 1) {
            PaperOnHand changed = papers[any];
            changed.count = static_cast<int>(test::below(random, 20));
            ASSERT_TRUE(store.change(papers[any], changed));
        } else if (what == 2) {
            ASSERT_TRUE(store.remove(std::span(&papers[any], 1)));
        } else {
            PapersCut cut{"Cut papers", {{papers[any].id, 1, papers[any]}}, {}, {}};
            cut.putBack.push_back(scrap(kraft(1), {Length::inches(3), Length::inches(4)}));
            if (!store.cut(cut)) {
                ASSERT_EQ(papers[any].count, 0);
                continue;
            }
        }
        states.push_back(listOf(store));
    }
    for (std::size_t i = states.size() - 1; i > 0; --i) {
        ASSERT_TRUE(*store.undo());
        ASSERT_EQ(listOf(store), states[i - 1]) << "step " << i << ", seed " << seed;
    }
    for (std::size_t i = 1; i < states.size(); ++i) {
        ASSERT_TRUE(*store.redo());
        ASSERT_EQ(listOf(store), states[i]) << "step " << i << ", seed " << seed;
    }
}

}  // namespace
}  // namespace matwright
