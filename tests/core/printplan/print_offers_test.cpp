// SPDX-License-Identifier: MIT
#include "core/printplan/print_offers.h"

#include <gtest/gtest.h>

#include "tests/core/printplan/made_plans.h"

namespace matwright {

namespace {

using test::inches;

class PrintOffers : public testing::Test {
  protected:
    PrintOffers() {
        m_input = test::inputOf({test::madePage("A page", {inches(3, 4)})});
        m_input.printers.resize(1);
        m_input.printers[0].papers.resize(1);
    }
    PhotoId addPhoto(PlanPage& page, int number, bool favourite,
                     PixelSize upright = {4032, 3024}) const {
        Photo photo = test::plainPhoto(number, upright);
        photo.favourite = favourite;
        const PhotoId id = nextPhotoId(page.making.work);
        page.making.work.photos.emplace(id, photo);
        return id;
    }
    std::vector<PrintOffer> offers() {
        m_plan = test::soundPlan(m_input);
        return offersFor(m_plan, m_input, 0);
    }
    static std::vector<std::string> whys(const std::vector<PrintOffer>& offers) {
        std::vector<std::string> whys;
        for (const PrintOffer& offer : offers) {
            whys.push_back(offer.print.why);
        }
        return whys;
    }
    PlanInput m_input;
    PrintPlan m_plan;
};

TEST_F(PrintOffers, AreFavouritesFirstThenWhatWaitingPagesNeedThenTheirOtherPhotos) {
    addPhoto(m_input.pages[0], 40, true);
    m_input.waiting = {test::madePage("Waiting", {inches(4, 6), inches(4, 3)}, 60)};
    addPhoto(m_input.waiting[0], 70, false);
    const auto all = offers();
    EXPECT_EQ(whys(all), (std::vector<std::string>{"favourite", "Waiting", "Waiting", "Waiting"}));
    // The second is just what the page needs, with its crop; photo 60 is in another size there.
    EXPECT_EQ(all[1].print.photo.content, test::plainPhoto(61).content);
    EXPECT_EQ(all[1].print.print.paper, inches(4, 3));
    EXPECT_EQ(all[1].print.print.crop,
              m_input.waiting[0].making.work.placements.rbegin()->second.crop);
}

TEST_F(PrintOffers, AreCroppedAsCropsBeginAndLieAsThePhotoDoes) {
    addPhoto(m_input.pages[0], 40, true);
    addPhoto(m_input.pages[0], 41, true, {3024, 4032});
    const auto all = offers();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].print.print.paper, inches(4, 3));
    EXPECT_EQ(all[1].print.print.paper, inches(3, 4));
    EXPECT_EQ(all[1].print.print.crop, startingCrop({3024, 4032}, inches(3, 4)));
    // 3024 pixels for 3 in.
    EXPECT_NEAR(all[1].ppi, 1008, 1);
    EXPECT_TRUE(all[1].warning.empty());
}

TEST_F(PrintOffers, WarnOfTooFewPixels) {
    addPhoto(m_input.pages[0], 40, true, {640, 480});
    const auto all = offers();
    ASSERT_EQ(all.size(), 1U);
    EXPECT_NE(all[0].warning.find("160 ppi"), std::string::npos) << all[0].warning;
}

TEST_F(PrintOffers, LeaveOutWhatWasPrintedOrIsInThePlan) {
    const PhotoId id = addPhoto(m_input.pages[0], 40, true);
    m_input.pages[0].making.work.photos.begin()->second.favourite = true;
    EXPECT_EQ(offers().size(), 1U);
    m_input.printedPhotos.insert(m_input.pages[0].making.work.photos.at(id).content);
    EXPECT_TRUE(offers().empty());
}

TEST_F(PrintOffers, LeaveOutWhatAWaitingPageHasOnHandAlready) {
    m_input.waiting = {test::madePage("Waiting", {inches(3, 4)}, 60)};
    EXPECT_EQ(offers().size(), 1U);
    m_input.onHand = {test::onHandFor(m_input.waiting[0], 0, 5)};
    m_input.printedPhotos.insert(m_input.onHand[0].look.photo);
    EXPECT_TRUE(offers().empty());
}

TEST_F(PrintOffers, LeaveOutWhatAWaitingPageHasFromBefore) {
    m_input.waiting = {test::madePage("Waiting", {inches(3, 4)}, 60)};
    ASSERT_FALSE(offers().empty());
    PrintOnHand used = test::onHandFor(m_input.waiting[0], 0, 5);
    used.state = PrintState::Used;
    used.page = "Waiting";
    m_input.used = {used};
    m_input.printedPhotos = {used.look.photo};
    EXPECT_TRUE(offers().empty());
    m_input.used[0].page = "Another";
    EXPECT_EQ(offers().size(), 1U);
}

TEST_F(PrintOffers, AreMadeAheadOnTheSameSheetWhenTheyAreAccepted) {
    addPhoto(m_input.pages[0], 40, true);
    const auto all = offers();
    ASSERT_EQ(all.size(), 1U);
    const PlanInput with = accepted(m_input, all[0]);
    const PrintPlan plan = test::soundPlan(with);
    EXPECT_EQ(plan.sheets.size(), m_plan.sheets.size());
    EXPECT_EQ(plan.sheets[0].gang.places.size(), 2U);
    EXPECT_TRUE(plan.leftOut.empty());
    EXPECT_TRUE(offersFor(plan, with, 0).empty());
}

TEST_F(PrintOffers, AreNoneForASheetThatIsFullOrNotThere) {
    m_input.pages[0] = test::madePage("A page", {inches(4, 6)});
    addPhoto(m_input.pages[0], 40, true);
    EXPECT_TRUE(offers().empty());
    EXPECT_TRUE(offersFor(m_plan, m_input, 9).empty());
}

}  // namespace

}  // namespace matwright
