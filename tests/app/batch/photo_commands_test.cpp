// SPDX-License-Identifier: MIT
#include "app/batch/photo_commands.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "app/batch/page_listing.h"
#include "core/pagefile/page_file.h"
#include "core/photo/photo_source.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/app/batch/batch_run.h"
#include "tests/support/busy_photo.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

// A folder with a sketch of one 6x4 slot, a photo and a listing that puts it there.
struct WithPhotos : BatchRun {
    WithPhotos() {
        disk = &store;
        commands = makePhotoCommands();
        photoCommands = commands.get();
        test::writeFile(place / "page.sketch.svg", writeSketch(smallSketch()));
        test::writeBusyPhoto(place / "beach.jpg", {2400, 1800}, 3);
        listing(R"({"sketch": "page.sketch.svg", "photos": [{"photo": "beach.jpg", "slot": 1}]})");
    }
    void listing(const std::string& text) { test::writeFile(place / "list.json", text); }
    std::string at(const char* name) const { return place / name; }
    int makePage() { return run({"page", at("list.json"), "-o", at("new.page.svg")}); }

    test::TemporaryFolder place;
    DiskFileStore store;
    std::unique_ptr<PhotoCommands> commands;
};

TEST(BatchPhotos, TellsSizesAndLargestPrints) {
    WithPhotos batch;
    EXPECT_EQ(batch.run({"photos", batch.at("beach.jpg"), "--json"}), Done);
    const auto all = nlohmann::json::parse(batch.out);
    EXPECT_EQ(all[0]["width"], 2400);
    EXPECT_EQ(all[0]["height"], 1800);
    // 2400 x 1800 at 300 ppi is 8 x 6 in exactly.
    EXPECT_EQ(all[0]["largestPrint"]["width"]["text"], "8 in");
    EXPECT_EQ(batch.run({"photos", batch.at("beach.jpg")}), Done);
    EXPECT_NE(batch.out.find("2400 × 1800"), std::string::npos) << batch.out;
}

TEST(BatchPhotos, TellsTheOthersWhereOneCannotBeRead) {
    WithPhotos batch;
    EXPECT_EQ(batch.run({"photos", batch.at("gone.jpg"), batch.at("beach.jpg")}), InputRefused);
    EXPECT_NE(batch.out.find("beach.jpg"), std::string::npos);
    EXPECT_NE(batch.err.find("gone.jpg"), std::string::npos);
}

TEST(BatchPage, PutsPhotosIntoSlots) {
    WithPhotos batch;
    batch.listing(R"({"sketch": "page.sketch.svg", "photos": [
        {"photo": "beach.jpg", "slot": "lighthouse", "zoom": 2, "centre": [0.25, 0.5],
         "border": "1/4", "evenOut": true, "focal": true, "wish": "4x6"}]})");
    ASSERT_EQ(batch.makePage(), Done) << batch.err;
    EXPECT_NE(batch.out.find("1 of 1 photos placed"), std::string::npos) << batch.out;
    const auto page = loadPage(batch.store, batch.at("new.page.svg"));
    ASSERT_TRUE(page);
    const PhotoWork& work = page->making.work;
    ASSERT_EQ(work.placements.size(), 1U);
    const Placement& placement = work.placements.begin()->second;
    EXPECT_EQ(placement.border, Length::inches(0, 1, 4));
    EXPECT_EQ(placement.crop.zoom, 2 * Crop::one);
    EXPECT_EQ(placement.crop.centreX, Crop::one / 4);
    EXPECT_EQ(work.focal, placement.photo);
    EXPECT_TRUE(work.photos.at(placement.photo).tone.evenOut);
    EXPECT_EQ(smallPicturesIn(test::readFile(batch.at("new.page.svg"))).size(), 1U);
}

TEST(BatchPage, RefusesListingsItCannotFollow) {
    WithPhotos batch;
    for (const char* listing :
         {"no json", "[]", R"({"photos": []})", R"({"sketch": "page.sketch.svg", "colour": 1})",
          R"({"sketch": "page.sketch.svg", "photos": [{"slot": 1}]})",
          R"({"sketch": "page.sketch.svg", "photos": [{"photo": "beach.jpg", "slot": 9}]})",
          R"({"sketch": "page.sketch.svg", "photos": [{"photo": "beach.jpg", "zoom": 0.5}]})",
          R"({"sketch": "page.sketch.svg", "photos": [{"photo": "beach.jpg", "turn": 45}]})",
          R"({"sketch": "page.sketch.svg", "photos": [{"photo": "gone.jpg", "slot": 1}]})",
          R"({"sketch": "page.sketch.svg",
              "photos": [{"photo": "beach.jpg", "slot": 1, "border": "3"}]})",
          R"({"sketch": "gone.sketch.svg", "photos": []})"}) {
        batch.listing(listing);
        EXPECT_EQ(batch.makePage(), InputRefused) << listing;
        EXPECT_NE(batch.err, "") << listing;
        EXPECT_FALSE(std::filesystem::exists(batch.at("new.page.svg"))) << listing;
    }
}

TEST(BatchPrints, MakesAFileOfItsSizeForEverySlot) {
    WithPhotos batch;
    ASSERT_EQ(batch.makePage(), Done) << batch.err;
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.at("prints"), "--json"}),
              Done)
        << batch.err;
    const auto all = nlohmann::json::parse(batch.out);
    ASSERT_EQ(all.size(), 1U);
    const auto& print = all[0]["prints"][0];
    // A 4:3 photo printed 3:2 loses 1/9 (common practice, no source); 2400 pixels on 6 in.
    EXPECT_NEAR(print["loss"].get<double>(), 1.0 / 9, 1e-5);
    EXPECT_NEAR(print["ppi"].get<double>(), 400, 1e-3);
    EXPECT_EQ(print["slot"], 1);
    EXPECT_TRUE(all[0]["failure"].is_null());
    const auto file = decodePhoto(all[0]["file"].get<std::string>(), 0);
    ASSERT_TRUE(file);
    EXPECT_EQ(file->size, (PixelSize{1800, 1200}));
}

TEST(BatchPrints, TakesFormatPpiAndBleed) {
    WithPhotos batch;
    ASSERT_EQ(batch.makePage(), Done);
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.at("prints"), "--format",
                         "png", "--ppi", "100", "--bleed", "1/4", "--cut-marks"}),
              Done)
        << batch.err;
    EXPECT_NE(batch.out.find("1 lighthouse.png"), std::string::npos) << batch.out;
    const auto file = decodePhoto(batch.place.path() / "prints" / "1 lighthouse.png", 0);
    ASSERT_TRUE(file);
    EXPECT_EQ(file->size, (PixelSize{650, 450}));
}

TEST(BatchPrints, SaysWhichPhotoIsGoneAndMakesNoFile) {
    WithPhotos batch;
    ASSERT_EQ(batch.makePage(), Done);
    std::filesystem::remove(batch.at("beach.jpg"));
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.at("prints")}),
              InputRefused);
    EXPECT_NE(batch.err.find("beach.jpg"), std::string::npos) << batch.err;
    EXPECT_NE(batch.out.find("not made"), std::string::npos) << batch.out;
    EXPECT_TRUE(std::filesystem::is_empty(batch.at("prints")));
}

TEST(BatchPrints, NeverWritesOverAPhotoOfThePage) {
    WithPhotos batch;
    const std::string photo = batch.at("1 lighthouse.jpg");
    std::filesystem::copy_file(batch.at("beach.jpg"), photo);
    batch.listing(
        R"({"sketch": "page.sketch.svg", "photos": [{"photo": "1 lighthouse.jpg", "slot": 1}]})");
    ASSERT_EQ(batch.makePage(), Done) << batch.err;
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.place.path()}),
              CouldNotWrite);
    EXPECT_NE(batch.err.find("Choose another folder"), std::string::npos) << batch.err;
    EXPECT_EQ(*batch.store.read(photo, 1U << 24U),
              *batch.store.read(batch.at("beach.jpg"), 1U << 24U));
}

TEST(BatchPrints, NeverWritesOverAnythingUnlessToldTo) {
    WithPhotos batch;
    ASSERT_EQ(batch.makePage(), Done) << batch.err;
    const std::string own = batch.at("1 lighthouse.jpg");
    test::writeFile(own, "somebody's own");
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.place.path()}),
              CouldNotWrite);
    EXPECT_NE(batch.err.find("--replace"), std::string::npos) << batch.err;
    EXPECT_NE(batch.out.find("not made"), std::string::npos) << batch.out;
    EXPECT_EQ(test::readFile(own), "somebody's own");
    EXPECT_EQ(
        batch.run({"prints", batch.at("new.page.svg"), "-o", batch.place.path(), "--replace"}),
        Done)
        << batch.err;
    EXPECT_TRUE(decodePhoto(own, 0));
}

TEST(BatchPrints, RefusesAPhotoThatHoldsAnotherPictureNow) {
    WithPhotos batch;
    ASSERT_EQ(batch.makePage(), Done);
    test::writeBusyPhoto(batch.place / "beach.jpg", {2400, 1800}, 4);
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.at("prints")}),
              InputRefused);
    EXPECT_NE(batch.err.find("another picture"), std::string::npos) << batch.err;
    EXPECT_TRUE(std::filesystem::is_empty(batch.at("prints")));
}

TEST(BatchPrints, SaysWhichChoicesChangeNothing) {
    WithPhotos batch;
    ASSERT_EQ(batch.makePage(), Done);
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.at("prints"), "--ganged",
                         "--cut-marks"}),
              Done);
    EXPECT_NE(batch.err.find("only one print"), std::string::npos) << batch.err;
    EXPECT_NE(batch.err.find("cut marks"), std::string::npos) << batch.err;
}

TEST(BatchDoubleCheck, MakesAPdfOfTheSheetAskedFor) {
    WithPhotos batch;
    ASSERT_EQ(batch.makePage(), Done);
    EXPECT_EQ(batch.run({"double-check", batch.at("new.page.svg"), "-o", batch.at("look.pdf"),
                         "--sheet", "a4"}),
              Done)
        << batch.err;
    EXPECT_NE(batch.out.find("1 print to look over"), std::string::npos) << batch.out;
    const std::string pdf = test::readFile(batch.at("look.pdf"));
    EXPECT_TRUE(pdf.starts_with("%PDF-1.7"));
    EXPECT_EQ(batch.run({"double-check", batch.at("new.page.svg"), "-o", batch.at("look.png")}),
              WrongUse);
    EXPECT_EQ(batch.run({"double-check", batch.at("page.sketch.svg"), "-o", batch.at("none.pdf")}),
              InputRefused);
    EXPECT_FALSE(std::filesystem::exists(batch.at("none.pdf")));
}

TEST(BatchLists, TakeAPageInTheMakingAsTheSketchItHolds) {
    WithPhotos batch;
    ASSERT_EQ(batch.makePage(), Done);
    EXPECT_EQ(batch.run({"pieces", batch.at("new.page.svg")}), Done) << batch.err;
    EXPECT_NE(batch.out.find("lighthouse"), std::string::npos) << batch.out;
}

TEST(BatchCheck, TellsPrintsThatWillNotLookSharp) {
    WithPhotos batch;
    test::writeBusyPhoto(batch.place / "beach.jpg", {240, 180}, 3);
    ASSERT_EQ(batch.makePage(), Done);
    EXPECT_EQ(batch.run({"check", batch.at("new.page.svg")}), Findings) << batch.err;
    EXPECT_NE(batch.out.find("beach.jpg prints at"), std::string::npos) << batch.out;
}

TEST(BatchPrints, GivesEachHalfOfALongNamedSlotItsOwnFile) {
    WithPhotos batch;
    Sketch sketch = smallSketch();
    sketch.page.doublePage = true;
    Piece& piece = sketch.pieces.begin()->second;
    piece.name = std::string(240, 'n');
    const Length fold = sketch.page.size.width;
    piece.place.x = fold - Length::inches(3);  // half of it
    test::writeFile(batch.place / "page.sketch.svg", writeSketch(sketch));
    ASSERT_EQ(batch.makePage(), Done) << batch.err;
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.at("prints")}), Done)
        << batch.err;
    EXPECT_EQ(std::ranges::distance(std::filesystem::directory_iterator(batch.at("prints"))), 2);
}

TEST(BatchPrints, RefusesAFolderThatCannotBeMade) {
    WithPhotos batch;
    ASSERT_EQ(batch.makePage(), Done);
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.at("beach.jpg")}),
              CouldNotWrite);
    EXPECT_EQ(batch.run({"prints", batch.at("new.page.svg"), "-o", batch.at("p"), "--ppi", "20"}),
              WrongUse);
}

}  // namespace
}  // namespace matwright::app
