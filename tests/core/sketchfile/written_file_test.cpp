// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <pugixml.hpp>
#include <sstream>

#include "core/sketchfile/sketch_file.h"
#include "tests/core/sketchfile/example.h"

namespace matwright {
namespace {

const std::string approvedPath = std::string(MATWRIGHT_APPROVED_FOLDER) + "/example.sketch.svg";

std::string fileContent(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream content;
    content << file.rdbuf();
    return std::move(content).str();
}

// The head of the file and the model; what the picture looks like is no part of the format.
std::string withoutPicture(const std::string& file) {
    constexpr std::string_view modelEnd = "</sketch>\n";
    return file.substr(0, file.find(modelEnd) + modelEnd.size()) + "</svg>\n";
}

// To accept a wanted change of the format, run this test with MATWRIGHT_ACCEPT=1 in the
// environment and look at the difference before it is committed.
TEST(WrittenFile, TheExampleIsWrittenAsApproved) {
    const std::string written = withoutPicture(writeSketch(test::exampleSketch()));
    if (std::getenv("MATWRIGHT_ACCEPT") != nullptr) {
        std::ofstream(approvedPath, std::ios::binary) << written;
    }
    EXPECT_EQ(written, fileContent(approvedPath));
}

// Files of this version stay readable whatever becomes of the format.
TEST(WrittenFile, TheApprovedFileIsReadAsTheExample) {
    const auto loaded = readSketch(fileContent(approvedPath));
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->sketch, test::exampleSketch());
    EXPECT_TRUE(loaded->warnings.empty());
}

TEST(WrittenFile, IsAnSvgPictureOfThePageSizeWithTheModelAsItsFirstChild) {
    pugi::xml_document document;
    ASSERT_TRUE(document.load_string(writeSketch(test::exampleSketch()).c_str()));
    const pugi::xml_node svg = document.document_element();
    EXPECT_STREQ(svg.name(), "svg");
    EXPECT_STREQ(svg.attribute("xmlns").value(), "http://www.w3.org/2000/svg");
    EXPECT_STREQ(svg.attribute("width").value(), "304.8mm");
    EXPECT_STREQ(svg.attribute("height").value(), "304.8mm");
    EXPECT_STREQ(svg.attribute("viewBox").value(), "0 0 304.8 304.8");
    EXPECT_STREQ(svg.first_child().name(), "sketch");
    EXPECT_STREQ(svg.first_child().attribute("xmlns").value(), sketchNamespace);
    EXPECT_STREQ(svg.first_child().first_attribute().name(), "version");
    EXPECT_TRUE(svg.first_child().next_sibling("g")) << "no picture";
}

// Some viewers look at local names only; none of ours may be drawn as a part of the picture.
TEST(WrittenFile, NoElementOfTheModelIsNamedAsOneOfSvg) {
    pugi::xml_document document;
    ASSERT_TRUE(document.load_string(writeSketch(test::exampleSketch()).c_str()));
    const auto svgNames = {"a",     "circle", "defs",  "desc",    "ellipse", "g",
                           "image", "line",   "path",  "pattern", "polygon", "polyline",
                           "rect",  "script", "style", "switch",  "symbol",  "text",
                           "title", "tspan",  "use",   "view"};
    for (const char* name : svgNames) {
        const std::string anywhere = std::string(".//") + name;
        EXPECT_FALSE(document.document_element().child("sketch").select_node(anywhere.c_str()))
            << name;
    }
}

TEST(WrittenFile, PiecesStandFromBottomToTop) {
    pugi::xml_document document;
    ASSERT_TRUE(document.load_string(writeSketch(test::exampleSketch()).c_str()));
    std::vector<int> ids;
    for (const auto& piece : document.select_nodes("/svg/sketch/pieces/piece")) {
        ids.push_back(piece.node().attribute("id").as_int());
    }
    EXPECT_EQ(ids, (std::vector<int>{2, 1, 9, 5, 6}));
}

}  // namespace
}  // namespace matwright
