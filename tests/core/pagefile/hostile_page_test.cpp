// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <gtest/gtest.h>

#include "core/sketchfile/sketch_file.h"
#include "tests/core/pagefile/example_page.h"

namespace matwright::test {
namespace {

using enum ErrorCode;

void expectRefused(const std::string& file, ErrorCode code, std::string_view what) {
    const auto loaded = readPage(file, exampleFolder);
    ASSERT_FALSE(loaded) << what;
    EXPECT_EQ(loaded.error().code, code) << what << ": " << loaded.error().text();
    EXPECT_TRUE(loaded.error().sentence.ends_with('.')) << what << ": " << loaded.error().text();
    EXPECT_TRUE(loaded.error().where.starts_with("line ")) << what << ": " << loaded.error().text();
    EXPECT_LT(loaded.error().text().size(), 500u) << what;
}

TEST(HostilePage, CutOffAtAnyByteIsRefused) {
    const std::string whole = examplePageFile();
    const std::size_t end = whole.rfind("</svg>") + 6;
    for (std::size_t length = 0; length < end; ++length) {
        ASSERT_NO_FATAL_FAILURE(expectRefused(whole.substr(0, length), NotXml,
                                              fmt::format("cut off after {} bytes", length)));
    }
    EXPECT_TRUE(readPage(whole.substr(0, end)));
}

TEST(HostilePage, AnyOneByteChangedNeverBringsAnUnsoundPageIn) {
    const std::string whole = examplePageFile();
    const std::size_t modelEnd = whole.find("</making>");
    for (std::size_t at = 0; at < modelEnd; ++at) {
        for (const char c : {'\0', '<', '&', '"', '-', '9', ' ', '/'}) {
            std::string changed = whole;
            changed[at] = c;
            if (const auto loaded = readPage(changed, "/elsewhere")) {
                ASSERT_FALSE(findFault(loaded->making)) << at;
            }
        }
    }
}

TEST(HostilePage, WhatIsNoPageIsRefused) {
    const std::string good = examplePageFile();
    expectRefused("", NotXml, "empty");
    expectRefused("Dear aunt", NotXml, "plain text");
    expectRefused(good + good.substr(good.find("<svg")), NotXml, "two roots");
    expectRefused("<!DOCTYPE svg>" + good.substr(good.find("<svg")), WrongFormat,
                  "a document type");
    expectRefused("<html><body/></html>", WrongFormat, "another root");
    expectRefused("<svg xmlns=\"http://www.w3.org/2000/svg\"><rect/></svg>", WrongFormat,
                  "a picture without a model");
    expectRefused(replaced(good, pageNamespace, "urn:other"), WrongFormat, "another namespace");
    expectRefused(replaced(good, "<making version=\"1\"", "<making version=\"2\""), NewerVersion,
                  "a newer page");
    expectRefused(replaced(good, "<sketch version=\"1\"", "<sketch version=\"2\""), NewerVersion,
                  "a newer sketch in it");
    expectRefused(std::string(maxPageFileBytes + 1, ' '), TooLarge, "one byte too many");
    std::string deep;
    for (int i = 0; i < 100; ++i) {
        deep += "<a>";
    }
    expectRefused(deep, TooLarge, "deep");
}

struct Change {
    const char* what;
    std::string_view from;
    std::string_view to;
};

void expectEachMalformed(std::span<const Change> changes) {
    const std::string good = examplePageFile();
    for (const Change& change : changes) {
        expectRefused(replaced(good, change.from, change.to), Malformed, change.what);
    }
}

TEST(HostilePage, ModelsThatBreakTheRulesAreRefused) {
    const Change changes[] = {
        {"no version", "<making version=\"1\"", "<making"},
        {"version 0", "<making version=\"1\"", "<making version=\"0\""},
        {"no sketch", "xmlns=\"urn:matwright:sketch\"", "xmlns=\"urn:other\""},
        {"a second sketch", "</sketch>",
         "</sketch><sketch version=\"1\" unit=\"1/914400 in\" xmlns=\"urn:matwright:sketch\"/>"},
        {"a second page", "</making>",
         "</making><making version=\"1\" xmlns=\"urn:matwright:page\"/>"},
        {"a sketch in another unit", "unit=\"1/914400 in\"", "unit=\"mm\""},
        {"a fault in the sketch", "gutter=\"228600\"", "gutter=\"-1\""},
        {"a second list of photos", "<focal", "<photos/><focal"},
        {"a second focal photo", "<focal", "<focal photo=\"1\"/><focal"},
        {"a focal photo that is missing", "<focal photo=\"1\"", "<focal photo=\"7\""},
        {"a focal photo without a number", "<focal photo=\"1\"", "<focal"},
    };
    expectEachMalformed(changes);
}

TEST(HostilePage, PhotosThatBreakTheRulesAreRefused) {
    const Change changes[] = {
        {"the same id twice", "<photo id=\"2\"", "<photo id=\"1\""},
        {"id 0", "<photo id=\"2\"", "<photo id=\"0\""},
        {"an id past a billion", "<photo id=\"2\"", "<photo id=\"1000000001\""},
        {"no path", "path=\"/media/camera/0002.jpg\"", ""},
        {"an empty path", "path=\"/media/camera/0002.jpg\"", "path=\"\""},
        {"a control character", "path=\"/media/camera/0002.jpg\"", "path=\"/a&#1;b\""},
        {"a line break by number", "path=\"/media/camera/0002.jpg\"", "path=\"/a&#10;b\""},
        {"a way up", "near=\"photos/beach", "near=\"../beach"},
        {"a way from the top", "near=\"photos/beach", "near=\"/photos/beach"},
        {"no way", "near=\"photos/beach &amp; dunes.jpg\"", "near=\"\""},
        {"a short content", "b2b2b2b2\"", "b2b2b2\""},
        {"no content", "content=\"b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2\"", ""},
        {"negative bytes", "bytes=\"3482113\"", "bytes=\"-1\""},
        {"bytes past 64 bits", "bytes=\"3482113\"", "bytes=\"99999999999999999999\""},
        {"a width of zero", "width=\"3024\"", "width=\"0\""},
        {"an absurd width", "width=\"3024\"", "width=\"200001\""},
        {"a width that is no number", "width=\"3024\"", "width=\"NaN\""},
        {"no width", "width=\"3024\"", ""},
        {"a rating of 6", "rating=\"4\"", "rating=\"6\""},
        {"another word for favourite", "favourite=\"yes\"", "favourite=\"1\""},
        {"a wish of no size", "<wish width=\"3657600\"", "<wish width=\"0\""},
        {"an endless slider", "brightness=\"10\"", "brightness=\"1e999\""},
        {"a slider past its end", "brightness=\"10\"", "brightness=\"101\""},
        {"negative sharpening", "sharpen=\"30\"", "sharpen=\"-1\""},
        {"two tones", "<tone", "<tone/><tone"},
    };
    expectEachMalformed(changes);
}

TEST(HostilePage, PlacementsAndPapersThatBreakTheRulesAreRefused) {
    const Change changes[] = {
        {"a missing photo", "slot=\"2\" photo=\"2\"", "slot=\"2\" photo=\"3\""},
        {"a missing slot", "slot=\"2\" photo=\"2\"", "slot=\"3\" photo=\"2\""},
        {"a slot twice", "slot=\"2\" photo=\"2\"", "slot=\"1\" photo=\"2\""},
        {"a slot that is none", "<piece id=\"2\" kind=\"photo-slot\"",
         "<piece id=\"2\" kind=\"block\""},
        {"a crop left of the photo", "x=\"450000\"", "x=\"-1\""},
        {"a crop right of the photo", "x=\"450000\"", "x=\"1000001\""},
        {"a crop that is no number", "x=\"450000\"", "x=\"NaN\""},
        {"no crop", "x=\"450000\"", ""},
        {"a zoom below one", "zoom=\"1250000\"", "zoom=\"999999\""},
        {"an absurd zoom", "zoom=\"1250000\"", "zoom=\"50000001\""},
        {"four quarter turns", "quarter-turns=\"1\"", "quarter-turns=\"4\""},
        {"straightened too far", "straighten=\"358.5\"", "straighten=\"46\""},
        {"straightened by nothing known", "straighten=\"358.5\"", "straighten=\"inf\""},
        {"a negative border", " border=\"114300\" />\n   <placement",
         " border=\"-1\" />\n   <placement"},
        {"a border that leaves nothing", " border=\"114300\" />\n   <placement",
         " border=\"1828800\" />\n   <placement"},
        {"a paper without a name", "name=\"kraft\"", ""},
        {"a paper with an empty name", "name=\"kraft\"", "name=\"\""},
        {"the same paper twice", "name=\"patterned, 6 x 12\"", "name=\"kraft\""},
        {"a colour by name", "#c8aa82\" />\n   <paper", "red\" />\n   <paper"},
        {"a short colour", "#c8aa82\" />\n   <paper", "#c8aa8\" />\n   <paper"},
        {"no colour", "colour=\"#5a783c\"", ""},
        {"a picture without content", "content=\"c3c3c3c3c3c3c3c3c3c3c3c3c3c3c3c3\"", ""},
        {"a picture of no width", "c3\" width=\"10972800\"", "c3\" width=\"0\""},
        {"an empty path of a picture",
         "path=\"/home/somebody/Pages/papers/dots.png\" near=\"papers/dots.png\"", "path=\"\""},
    };
    expectEachMalformed(changes);
}

TEST(HostilePage, MorePhotosThanAPageMayHaveAreRefused) {
    std::string photos;
    for (std::size_t id = 3; id <= maxPhotos + 1; ++id) {
        photos += fmt::format(
            "<photo id=\"{}\" path=\"/a\" content=\"{:032x}\" width=\"1\" "
            "height=\"1\"/>",
            id, id);
    }
    expectRefused(replaced(examplePageFile(), "</photos>", photos + "</photos>"), Malformed,
                  "2,001 photos");
}

TEST(HostilePage, NothingInTheFileMakesTheReaderTouchAnotherFile) {
    // A path that leads nowhere is read like any other: nobody looks.
    const auto loaded = readPage(
        replaced(examplePageFile(), "/media/camera/0002.jpg", "/proc/self/mem"), exampleFolder);
    ASSERT_TRUE(loaded);
    EXPECT_EQ(loaded->making.work.photos.at(PhotoId{2}).path, "/proc/self/mem");
}

}  // namespace
}  // namespace matwright::test
