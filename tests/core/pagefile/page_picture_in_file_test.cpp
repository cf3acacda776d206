// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <pugixml.hpp>

#include "tests/core/pagefile/example_page.h"

namespace matwright::test {
namespace {

std::string pictureOf(PieceId slot) {
    return smallPicture(static_cast<int>(slot.value));
}

struct Parsed {
    explicit Parsed(const std::string& file) { document.load_string(file.c_str()); }
    pugi::xml_node image(const char* id) const {
        return document.select_node((std::string("//image[@id='") + id + "']").c_str()).node();
    }
    pugi::xml_document document;
};

TEST(PagePictureInFile, PhotosAreDrawnInTheirWindowsAndTurnedWithThem) {
    const Parsed parsed(writePage(examplePage(), pictureOf));
    const auto first = parsed.image("photo-1");
    ASSERT_TRUE(first);
    // The window is 3 3/4 x 5 3/4 in at 1 1/8 in from both edges.
    EXPECT_STREQ(first.attribute("x").value(), "28.575");
    EXPECT_STREQ(first.attribute("y").value(), "28.575");
    EXPECT_STREQ(first.attribute("width").value(), "95.25");
    EXPECT_STREQ(first.attribute("height").value(), "146.05");
    EXPECT_FALSE(first.attribute("transform"));
    const auto second = parsed.image("photo-2");
    EXPECT_STREQ(second.attribute("transform").value(), "rotate(6 203.2 228.6)");
    EXPECT_STREQ(second.attribute("preserveAspectRatio").value(), "none");
}

TEST(PagePictureInFile, TheSmallPicturesComeOutAgainAndDoNotTouchThePage) {
    const std::string file = writePage(examplePage(), pictureOf, exampleFolder);
    EXPECT_EQ(smallPicturesIn(file),
              (std::map<PieceId, std::string>{{PieceId{1}, smallPicture(1)},
                                              {PieceId{2}, smallPicture(2)}}));
    const auto loaded = readPage(file, exampleFolder);
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->making, examplePage());
    EXPECT_TRUE(loaded->warnings.empty());
}

TEST(PagePictureInFile, AnOvalShowsThePlainSlotAndCarriesItsPicture) {
    Making making = examplePage();
    making.sketch.pieces.at(PieceId{1}).shape = OvalShape{};
    const std::string file = writePage(making, pictureOf);
    const Parsed parsed(file);
    EXPECT_STREQ(parsed.image("photo-1").parent().name(), "defs");
    EXPECT_STREQ(parsed.image("photo-2").parent().name(), "g");
    EXPECT_EQ(smallPicturesIn(file).at(PieceId{1}), smallPicture(1));
}

TEST(PagePictureInFile, APhotoAcrossTheFoldIsDrawnOnceOverBothPages) {
    Making making = examplePage();
    making.sketch.page.doublePage = true;
    making.sketch.page.foldGap = Length::inches(0, 1, 4);
    Piece& slot = making.sketch.pieces.at(PieceId{1});
    slot.place.x = making.sketch.page.size.width - Length::inches(2);
    const Parsed parsed(writePage(making, pictureOf));
    EXPECT_EQ(parsed.document.select_nodes("//image[@id='photo-1']").size(), 1);
    EXPECT_STREQ(parsed.image("photo-1").attribute("width").value(), "95.25");
}

TEST(PagePictureInFile, PapersHaveTheirColoursThere) {
    const std::string file = examplePageFile();
    EXPECT_TRUE(file.contains("fill=\"#c8aa82\""));
}

TEST(PagePictureInFile, PicturesPastTheRoomForAllAreLeftOut) {
    const std::string large(maxSmallPictureBytes, 'x');
    const auto pictures = [&](PieceId slot) {
        return slot == PieceId{2} ? "\xFF\xD8\xFF" + large : pictureOf(slot);
    };
    const std::string file = writePage(examplePage(), pictures);
    EXPECT_LT(file.size(), 100'000);
    EXPECT_EQ(smallPicturesIn(file).size(), 1);
}

TEST(PagePictureInFile, WhatIsNoSmallPictureIsPassedOver) {
    const std::string file = writePage(examplePage(), pictureOf);
    const std::string data = "data:image/jpeg;base64,/9j/MQ==";
    for (const char* bad : {"data:image/png;base64,/9j/MQ==", "data:image/jpeg;base64,/9j/M",
                            "data:image/jpeg;base64,####", "data:image/jpeg;base64,AAAA",
                            "file:///etc/hosts", "http://localhost/a.jpg", ""}) {
        const auto pictures = smallPicturesIn(replaced(file, data, bad));
        EXPECT_FALSE(pictures.contains(PieceId{1})) << bad;
        EXPECT_TRUE(pictures.contains(PieceId{2})) << bad;
    }
    for (const char* bad :
         {"photo-0", "photo-", "photo-1x", "photo--1", "photo-99999999999", "1"}) {
        EXPECT_EQ(
            smallPicturesIn(replaced(file, "id=\"photo-1\"", std::string("id=\"") + bad + "\""))
                .size(),
            1)
            << bad;
    }
    EXPECT_TRUE(smallPicturesIn("").empty());
    EXPECT_TRUE(smallPicturesIn("<svg").empty());
}

}  // namespace
}  // namespace matwright::test
