// SPDX-License-Identifier: MIT
#include "app/cutting/page_papers.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "app/cutting/cutting_choice.h"
#include "tests/app/cutting/cutting_page.h"

namespace matwright::app {
namespace {

std::vector<PaperPiece> piecesOf(const Session& session) {
    const PaperPage page{"Summer", session.sketch()};
    return paperPieces(std::span(&page, 1), Length::inches(0, 1, 2));
}

const PaperPiece& matOf(const std::vector<PaperPiece>& pieces) {
    return *std::ranges::find_if(pieces,
                                 [](const PaperPiece& piece) { return piece.mat.has_value(); });
}

TEST(PagePapers, NamingThePaperOfAMatIsOneUndoStep) {
    Session session;
    session.reset(pageToCut());
    const auto pieces = piecesOf(session);
    ASSERT_TRUE(namePaper(session, matOf(pieces), "white"));
    EXPECT_EQ(session.sketch().pieces.at(slotId).mats.front().paper, "white");
    session.undoStack().undo();
    EXPECT_EQ(session.sketch(), pageToCut());
}

TEST(PagePapers, TheHiddenMiddleIsSwitchedAndTakenBack) {
    Session session;
    session.reset(pageToCut());
    const auto pieces = piecesOf(session);
    ASSERT_TRUE(useMiddle(session, matOf(pieces), true));
    EXPECT_TRUE(session.sketch().pieces.at(slotId).mats.front().gutted);
    session.undoStack().undo();
    EXPECT_FALSE(session.sketch().pieces.at(slotId).mats.front().gutted);
}

TEST(PagePapers, FillingGivesAPaperToThoseWithoutAndLeavesTheOthers) {
    Session session;
    session.reset(pageToCut());
    ASSERT_TRUE(fillPapers(session, piecesOf(session), "white"));
    EXPECT_EQ(session.sketch().pieces.at(slotId).mats.front().paper, "white");
    EXPECT_EQ(session.sketch().pieces.at(stripId).paper, "dots");
    EXPECT_EQ(session.undoStack().count(), 1);
}

TEST(PagePapers, OffersPapersOnHandFirstAndEveryNameOnce) {
    PaperOnHand kraft;
    kraft.name = "Kraft";
    PaperOnHand scrap = kraft;
    scrap.name = "kraft ";
    const PaperOnHand onHand[] = {kraft, scrap};
    Session session;
    session.reset(pageToCut());
    EXPECT_EQ(paperChoices(onHand, piecesOf(session)), QStringList({"Kraft", "dots"}));
}

TEST(CuttingChoices, AreReadBackAsTheyWereWritten) {
    const CuttingChoice choice{5, Length::inches(2), Length::inches(0, 1, 4), false, true};
    EXPECT_EQ(cuttingChoiceFrom(bytesOf(choice)), choice);
}

TEST(CuttingChoices, AreTheUsualOnesWhereTheyCannotBeRead) {
    EXPECT_EQ(cuttingChoiceFrom({}), CuttingChoice());
    EXPECT_EQ(cuttingChoiceFrom("nonsense that is long enough to be read from here"),
              CuttingChoice());
    CuttingChoice wrong;
    wrong.seconds = 1000;
    EXPECT_EQ(cuttingChoiceFrom(bytesOf(wrong)), CuttingChoice());
}

}  // namespace
}  // namespace matwright::app
