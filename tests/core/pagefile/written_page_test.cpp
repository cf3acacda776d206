// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <pugixml.hpp>
#include <sstream>

#include "core/sketchfile/sketch_file.h"
#include "tests/core/pagefile/example_page.h"

namespace matwright::test {
namespace {

const std::string approvedPath = std::string(MATWRIGHT_APPROVED_FOLDER) + "/example.page.svg";

std::string fileContent(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream content;
    content << file.rdbuf();
    return std::move(content).str();
}

// The head of the file and the model; what the picture looks like is no part of the format.
std::string withoutPicture(const std::string& file) {
    constexpr std::string_view modelEnd = "</making>\n";
    return file.substr(0, file.find(modelEnd) + modelEnd.size()) + "</svg>\n";
}

// To accept a wanted change of the format, run this test with MATWRIGHT_ACCEPT=1 in the
// environment and look at the difference before it is committed.
TEST(WrittenPage, TheExampleIsWrittenAsApproved) {
    const std::string written = withoutPicture(examplePageFile());
    if (std::getenv("MATWRIGHT_ACCEPT") != nullptr) {
        std::ofstream(approvedPath, std::ios::binary) << written;
    }
    EXPECT_EQ(written, fileContent(approvedPath));
}

// Files of this version stay readable whatever becomes of the format.
TEST(WrittenPage, TheApprovedFileIsReadAsTheExample) {
    const auto loaded = readPage(fileContent(approvedPath), exampleFolder);
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->making, examplePage());
    EXPECT_TRUE(loaded->warnings.empty());
}

TEST(WrittenPage, TheSketchStandsInItInItsOwnWords) {
    const std::string page = examplePageFile();
    std::string sketch = writeSketch(examplePage().sketch);
    sketch = sketch.substr(sketch.find("<sketch"));
    sketch = sketch.substr(0, sketch.find("</sketch>"));
    // One level further in, so compared without the indent.
    const auto flat = [](std::string text) {
        for (std::size_t at = 0; (at = text.find("\n ", at)) != std::string::npos;) {
            text.erase(at + 1, 1);
        }
        return text;
    };
    EXPECT_TRUE(flat(page).contains(flat(sketch)));
}

TEST(WrittenPage, NoElementOfTheModelIsNamedAsOneOfSvg) {
    pugi::xml_document document;
    ASSERT_TRUE(document.load_string(examplePageFile().c_str()));
    const pugi::xml_node model = document.document_element().first_child();
    ASSERT_STREQ(model.name(), "making");
    for (const char* name :
         {"a",      "circle",  "defs",    "desc",     "ellipse", "g",      "image", "line",
          "path",   "pattern", "polygon", "polyline", "rect",    "script", "style", "switch",
          "symbol", "text",    "title",   "tspan",    "use",     "view"}) {
        EXPECT_FALSE(model.select_node((std::string(".//") + name).c_str())) << name;
    }
}

TEST(WrittenPage, ASketchFileIsReadAsAPageWithoutPhotos) {
    const auto loaded = readPage(writeSketch(examplePage().sketch));
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->making, (Making{examplePage().sketch, {}}));
}

TEST(WrittenPage, UnknownPartsAreNamedInWarnings) {
    std::string file = examplePageFile();
    file = replaced(file, "<focal photo=\"1\" />", "<focal photo=\"1\" since=\"x\"/><mood/>");
    file = replaced(file, "<page width", "<glue/><page width");
    const auto loaded = readPage(file, exampleFolder);
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->making, examplePage());
    ASSERT_EQ(loaded->warnings.size(), 3);
    EXPECT_TRUE(loaded->warnings[0].contains("\"glue\""));
    EXPECT_TRUE(loaded->warnings[1].contains("\"since\""));
    EXPECT_TRUE(loaded->warnings[2].contains("\"mood\""));
}

TEST(WrittenPage, PrefixesAndAnotherPictureAreFine) {
    std::string file = examplePageFile();
    file = file.substr(0, file.find("<g id=\"made-page\"")) + "<rect/></svg>";
    file = replaced(file, "<making version=\"1\" xmlns=\"urn:matwright:page\">",
                    "<m:making version=\"1\" xmlns:m=\"urn:matwright:page\">");
    file = replaced(file, "</making>", "</m:making>");
    for (const char* name : {"photos", "photo ", "focal", "placements", "placement ", "papers",
                             "paper ", "wish", "tone"}) {
        for (std::size_t at = file.find("<photos"); at != std::string::npos;) {
            at = file.find(std::string("<") + name, at + 1);
            if (at != std::string::npos) {
                file.insert(at + 1, "m:");
            }
        }
    }
    file = replaced(file, "<photos>", "<m:photos>");
    for (const char* name : {"photos", "placements", "papers", "photo"}) {
        file = replaced(file, std::string("</") + name + ">", std::string("</m:") + name + ">");
    }
    const auto loaded = readPage("\xEF\xBB\xBF" + file, exampleFolder);
    ASSERT_TRUE(loaded) << loaded.error().text() << file;
    EXPECT_EQ(loaded->making, examplePage());
    EXPECT_TRUE(loaded->warnings.empty()) << loaded->warnings.front();
}

}  // namespace
}  // namespace matwright::test
