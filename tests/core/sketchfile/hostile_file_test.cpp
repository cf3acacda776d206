// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <functional>

#include "core/sketchfile/sketch_file.h"
#include "core/sketchfile/xml_guard.h"
#include "tests/core/sketchfile/example.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using enum ErrorCode;
using test::block;
using test::exampleSketch;
using test::fileAround;
using test::modelWith;
using test::replaced;

// Every refusal is a whole sentence in plain words and names a line. What the file is called is no
// part of it: files of the right name are refused too.
void expectRefused(const std::string& file, ErrorCode code, std::string_view what) {
    const auto loaded = readSketch(file);
    ASSERT_FALSE(loaded) << what;
    EXPECT_EQ(loaded.error().code, code) << what << ": " << loaded.error().text();
    EXPECT_TRUE(loaded.error().sentence.ends_with('.')) << what << ": " << loaded.error().text();
    EXPECT_TRUE(loaded.error().where.starts_with("line ")) << what << ": " << loaded.error().text();
    EXPECT_LT(loaded.error().text().size(), 500u) << what;
    for (const char* word : {"bytes", "XML", ".sketch.svg"}) {
        EXPECT_FALSE(loaded.error().sentence.contains(word))
            << what << ": " << loaded.error().text();
    }
}

std::string repeated(std::string_view part, std::size_t count) {
    std::string text;
    text.reserve(part.size() * count);
    for (std::size_t i = 0; i < count; ++i) {
        text += part;
    }
    return text;
}

std::string wide(std::string_view ascii, bool bigEndian) {
    std::string text = bigEndian ? "\xFE\xFF" : "\xFF\xFE";
    for (const char c : ascii) {
        text += bigEndian ? std::string{'\0', c} : std::string{c, '\0'};
    }
    return text;
}

TEST(HostileFile, CutOffAtAnyByteIsRefused) {
    const std::string whole = writeSketch(exampleSketch());
    const std::size_t end = whole.rfind("</svg>") + 6;
    for (std::size_t length = 0; length < end; ++length) {
        ASSERT_NO_FATAL_FAILURE(expectRefused(whole.substr(0, length), NotXml,
                                              fmt::format("cut off after {} bytes", length)));
    }
    EXPECT_TRUE(readSketch(whole.substr(0, end)));
}

TEST(HostileFile, AnyOneByteChangedNeverBringsAnUnsoundSketchIn) {
    const std::string whole = writeSketch(exampleSketch());
    const std::size_t modelEnd = whole.find("</sketch>");
    for (std::size_t at = 0; at < modelEnd; ++at) {
        for (const char c : {'\0', '<', '&', '"', '-', '9', ' ', '\xC3'}) {
            std::string changed = whole;
            changed[at] = c;
            if (const auto loaded = readSketch(changed)) {
                const auto again = readSketch(writeSketch(loaded->sketch));
                ASSERT_TRUE(again && again->sketch == loaded->sketch) << at;
            }
        }
    }
}

struct Case {
    const char* what;
    ErrorCode code;
    std::function<std::string()> file;
};

TEST(HostileFile, WhatIsNoSketchFileIsRefused) {
    const std::string good = writeSketch(exampleSketch());
    const auto file = [](std::string text) { return [text] { return text; }; };
    const Case cases[] = {
        {"empty", NotXml, file("")},
        {"white space", NotXml, file(" \n")},
        {"plain text", NotXml, file("Dear aunt, here is my page.")},
        {"a picture in bytes", NotXml, file("\x89PNG\r\n\x1A\n\0\0\0\rIHDR")},
        {"a zero byte", NotXml, file(replaced(good, "Focal", std::string("F\0cal", 5)))},
        {"a control character", NotXml,
         file(replaced(good, "Focal",
                       "F\x01"
                       "cal"))},
        {"invalid UTF-8", NotXml, file(replaced(good, "Focal", "Foc\xC3l"))},
        {"overlong UTF-8", NotXml, file(replaced(good, "Focal", "F\xC0\xAF"))},
        {"a surrogate in UTF-8", NotXml, file(replaced(good, "Focal", "\xED\xA0\x80"))},
        {"UTF-16, low byte first", NotXml, [&] { return wide(good, false); }},
        {"UTF-16, high byte first", NotXml, [&] { return wide(good, true); }},
        {"UTF-16 without a mark", NotXml, [&] { return wide(good, false).substr(2); }},
        {"another stated encoding", NotXml, file(replaced(good, "UTF-8", "ISO-8859-1"))},
        {"tags that do not match", NotXml, file("<svg><g></svg></g>")},
        {"two roots", NotXml, [&] { return good + good.substr(good.find("<svg")); }},
        {"text after the end", NotXml, [&] { return good + "more"; }},
        {"end tags only", NotXml, file("</svg>")},
        {"an open comment", NotXml, file("<svg><!-- ")},
        {"an open quote", NotXml, file("<svg a=\">")},
        {"a tag in a value", NotXml, file("<svg a=\"<b>\"/>")},
        {"an unknown entity", NotXml, file(replaced(good, "Focal", "&nbsp;"))},
        {"an ampersand alone", NotXml, file(replaced(good, "Focal", "&"))},
        {"a character number past the last", NotXml, file(replaced(good, "Focal", "&#x110000;"))},
        {"a huge character number", NotXml,
         file(replaced(good, "Focal", "&#99999999999999999999;"))},
        {"another root", WrongFormat, file("<html><body/></html>")},
        {"an svg of no namespace", WrongFormat, file("<svg/>")},
        {"a picture without a model", WrongFormat,
         file("<svg xmlns=\"http://www.w3.org/2000/svg\"><rect/></svg>")},
        {"a model of another namespace", WrongFormat,
         file(replaced(good, sketchNamespace, "urn:other"))},
        {"a model too deep inside", WrongFormat,
         file(replaced(replaced(good, "<sketch ", "<g><sketch "), "</sketch>", "</sketch></g>"))},
        {"a newer version", NewerVersion,
         file(replaced(good, "<sketch version=\"1\"", "<sketch version=\"2\""))},
        {"a far newer version", NewerVersion,
         file(replaced(good, "<sketch version=\"1\"", "<sketch version=\"99999999999999999999\""))},
    };
    for (const Case& c : cases) {
        expectRefused(c.file(), c.code, c.what);
    }
}

TEST(HostileFile, ANewerVersionIsNamed) {
    const auto loaded = readSketch(
        replaced(writeSketch(exampleSketch()), "<sketch version=\"1\"", "<sketch version=\"7\""));
    ASSERT_FALSE(loaded);
    EXPECT_TRUE(loaded.error().sentence.contains("version \"7\"")) << loaded.error().text();
}

TEST(HostileFile, DocumentTypesAndWithThemEntityBombsAreRefused) {
    const std::string body = fileAround("<note>&z;</note>" + modelWith(""));
    std::string bomb = "<!DOCTYPE svg [<!ENTITY a \"ha\">\n";
    for (char c = 'b'; c <= 'z'; ++c) {
        bomb += fmt::format("<!ENTITY {} \"{}\">\n", c,
                            repeated(fmt::format("&{};", static_cast<char>(c - 1)), 10));
    }
    expectRefused(bomb + "]>" + body, WrongFormat, "billion laughs");
    expectRefused("<!DOCTYPE svg [<!ENTITY z \"" + repeated("ha", 100'000) + "\">]>" + body,
                  WrongFormat, "quadratic blow-up");
    expectRefused("<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"nowhere.dtd\">" + body,
                  WrongFormat, "a document type by address");
    expectRefused("<svg><!DOCTYPE svg></svg>", WrongFormat, "a document type inside");
    expectRefused(body, NotXml, "an entity nobody defined");
}

// A reader that opened the pipe would wait for ever: the test would not end.
TEST(HostileFile, NamesOfOtherFilesAreNeverOpened) {
    const test::TemporaryFolder folder;
    const std::string pipe = folder / "pipe";
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    const std::string good = writeSketch(exampleSketch());
    expectRefused(fmt::format("<!DOCTYPE svg [<!ENTITY z SYSTEM \"{}\">]>", pipe) +
                      fileAround("<note>&z;</note>" + modelWith("")),
                  WrongFormat, "an external entity");
    expectRefused(fmt::format("<!DOCTYPE svg SYSTEM \"{}\">", pipe) + fileAround(modelWith("")),
                  WrongFormat, "an external document type");
    const std::string links = fmt::format(
        "<image xmlns:xlink=\"http://www.w3.org/1999/xlink\" xlink:href=\"{0}\" href=\"{0}\"/>"
        "<xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\"{0}\"/>"
        "<use href=\"{0}#a\"/><style>@import url({0});</style></svg>",
        pipe);
    const std::string styled = fmt::format("<?xml-stylesheet href=\"{}\"?>\n<svg ", pipe);
    const auto loaded = readSketch(replaced(replaced(good, "</svg>", links), "<svg ", styled));
    ASSERT_TRUE(loaded) << loaded.error().text();
    EXPECT_EQ(loaded->sketch, exampleSketch());
}

TEST(HostileFile, AHundredMegabytesAreRefusedUnread) {
    expectRefused(std::string(100'000'000, '<'), TooLarge, "100 MB");
    expectRefused(std::string(maxSketchFileBytes + 1, ' '), TooLarge, "one byte too many");
    expectRefused(std::string(maxSketchFileBytes, ' '), NotXml, "as many as allowed, all blank");
}

TEST(HostileFile, DepthIsRefusedWhateverTheElementsAre) {
    for (const std::size_t depth : {65u, 10'000u, 1'000'000u}) {
        expectRefused(repeated("<a>", depth) + repeated("</a>", depth), TooLarge, "deep");
        expectRefused(repeated("<a>", depth), TooLarge, "deep and cut off");
    }
    expectRefused(fileAround("<note>" + repeated("<a>", 10'000) + repeated("</a>", 10'000) +
                             "</note>" + modelWith("")),
                  TooLarge, "deep in a note");
    EXPECT_FALSE(findXmlFault(repeated("<a>", 64) + repeated("</a>", 64)));
}

TEST(HostileFile, AMillionElementsAndMoreAreRefused) {
    const auto around = [](std::size_t n) { return "<svg>" + repeated("<a/>", n) + "</svg>"; };
    EXPECT_FALSE(findXmlFault(around(maxSketchFileElements - 1)));
    expectRefused(around(maxSketchFileElements), TooLarge, "one element too many");
}

TEST(HostileFile, PartsThatBreakTheRulesAreRefused) {
    const std::string good = writeSketch(exampleSketch());
    struct Change {
        const char* what;
        std::string_view from;
        std::string_view to;
    };
    const Change changes[] = {
        {"no version", "<sketch version=\"1\"", "<sketch"},
        {"an empty version", "<sketch version=\"1\"", "<sketch version=\"\""},
        {"version 0", "<sketch version=\"1\"", "<sketch version=\"0\""},
        {"a version below", "<sketch version=\"1\"", "<sketch version=\"-1\""},
        {"no number as version", "<sketch version=\"1\"", "<sketch version=\"one\""},
        {"another unit", "unit=\"1/914400 in\"", "unit=\"mm\""},
        {"no unit", "unit=\"1/914400 in\"", ""},
        {"an attribute twice", "unit=\"1/914400 in\"", "unit=\"1/914400 in\" unit=\"1/914400 in\""},
        {"no page", "<page ", "<page xmlns=\"urn:other\" "},
        {"a second model", "</sketch>",
         "</sketch><sketch version=\"1\" unit=\"1/914400 in\" xmlns=\"urn:matwright:sketch\"/>"},
        {"a negative gutter", "gutter=\"228600\"", "gutter=\"-1\""},
        {"no gutter", "gutter=\"228600\"", ""},
        {"a fold gap past 10 in", "gutter=\"228600\"", "gutter=\"228600\" fold-gap=\"9144001\""},
        {"a page of no size", "<page width=\"10972800\"", "<page width=\"0\""},
        {"a page of absurd size", "<page width=\"10972800\"", "<page width=\"914400000\""},
        {"margins wider than the page", "<margins left=\"457200\"", "<margins left=\"99999999\""},
        {"the same id twice", "id=\"2\"", "id=\"1\""},
        {"id 0", "id=\"2\"", "id=\"0\""},
        {"a negative id", "id=\"2\"", "id=\"-2\""},
        {"an id past a billion", "id=\"2\"", "id=\"1000000001\""},
        {"an id past 32 bits", "id=\"2\"", "id=\"4294967298\""},
        {"no id", "id=\"2\"", ""},
        {"an unknown kind", "kind=\"strip\"", "kind=\"sticker\""},
        {"a kind in capitals", "kind=\"strip\"", "kind=\"Strip\""},
        {"no kind", "kind=\"strip\"", ""},
        {"an unknown shape", "shape=\"oval\"", "shape=\"star\""},
        {"no shape", "shape=\"oval\"", ""},
        {"a width of zero", "width=\"10972800\" height=\"1828800\"",
         "width=\"0\" height=\"1828800\""},
        {"a negative width", "width=\"10972800\" height=\"1828800\"",
         "width=\"-10972800\" height=\"1828800\""},
        {"an absurd width", "width=\"10972800\" height=\"1828800\"",
         "width=\"99999999999\" height=\"1828800\""},
        {"a width past 64 bits", "width=\"10972800\" height=\"1828800\"",
         "width=\"99999999999999999999999\" height=\"1828800\""},
        {"a width that is no number", "width=\"10972800\" height=\"1828800\"",
         "width=\"NaN\" height=\"1828800\""},
        {"an infinite width", "width=\"10972800\" height=\"1828800\"",
         "width=\"1e999\" height=\"1828800\""},
        {"a width in inches", "width=\"10972800\" height=\"1828800\"",
         "width=\"12in\" height=\"1828800\""},
        {"a fraction of a tick", "width=\"10972800\" height=\"1828800\"",
         "width=\"0.5\" height=\"1828800\""},
        {"a place past the limit", "x=\"8229600\"", "x=\"914400001\""},
        {"a place at the limit with its width past it", "x=\"8229600\"", "x=\"914400000\""},
        {"a turn that is no number", "turn=\"12.5\"", "turn=\"nan\""},
        {"a full turn", "turn=\"12.5\"", "turn=\"360\""},
        {"a turn too fine", "turn=\"12.5\"", "turn=\"12.3456\""},
        {"a negative turn", "turn=\"12.5\"", "turn=\"-12.5\""},
        {"another word for locked", "locked=\"yes\"", "locked=\"true\""},
        {"an empty word for locked", "locked=\"yes\"", "locked=\"\""},
        {"no radius", "radius=\"228600\"", ""},
        {"a radius of zero", "radius=\"228600\"", "radius=\"0\""},
        {"two corners", "corners=\"0,0 1828800,0 1828800,914400\"", "corners=\"0,0 1828800,0\""},
        {"no corners", "corners=\"0,0 1828800,0 1828800,914400\"", ""},
        {"empty corners", "corners=\"0,0 1828800,0 1828800,914400\"", "corners=\"\""},
        {"a corner outside the box", "corners=\"0,0 1828800,0 1828800,914400\"",
         "corners=\"0,0 1828801,0 1828800,914400\""},
        {"corners in a line", "corners=\"0,0 1828800,0 1828800,914400\"",
         "corners=\"0,0 5,5 10,10\""},
        {"corners that cross", "corners=\"0,0 1828800,0 1828800,914400\"",
         "corners=\"0,0 1828800,914400 1828800,0 0,914400\""},
        {"half a corner", "corners=\"0,0 1828800,0 1828800,914400\"",
         "corners=\"0,0 1828800,0 1828800\""},
        {"a mat without a border", "<mat border=\"114300\">", "<mat>"},
        {"a negative border", "<mat border=\"114300\">", "<mat border=\"-114300\">"},
        {"a mat of no width at the bottom", "bottom=\"685800\"", "bottom=\"0\""},
        {"three mats", "<mat border=\"114300\">",
         "<mat border=\"114300\"/><mat border=\"114300\">"},
        {"a mat under a strip", "<paper>patterned", "<mat border=\"114300\"/><paper>patterned"},
        {"a print on a strip", "<paper>patterned",
         "<print width=\"914400\" height=\"914400\"/><paper>patterned"},
        {"no print on a photo", "<print ", "<prind "},
        {"two names", "<name>Focal", "<name>x</name><name>Focal"},
        {"a line break in a name", "Focal", "Focal\n"},
        {"a control character by number", "Focal", "&#1;"},
        {"a carriage return by number", "Focal", "&#13;"},
        {"half a surrogate pair by number", "Focal", "&#xD800;"},
    };
    for (const Change& change : changes) {
        expectRefused(replaced(good, change.from, change.to), Malformed, change.what);
    }
}

TEST(HostileFile, MorePiecesCornersOrTextThanASketchMayHaveAreRefused) {
    std::string pieces;
    for (std::size_t id = 1; id <= maxPieces + 1; ++id) {
        pieces += block(static_cast<int>(id));
    }
    expectRefused(fileAround(modelWith(pieces)), Malformed, "20,001 pieces");
    expectRefused(
        fileAround("<note>" + std::string(maxTextBytes + 1, 'x') + "</note>" + modelWith("")),
        Malformed, "a long note");
    expectRefused(replaced(fileAround(modelWith(block(1))), "shape=\"rectangle\"",
                           "shape=\"polygon\" corners=\"" + repeated("0,0 ", 1'000'000) + "0,0\""),
                  Malformed, "a million corners");
}

TEST(HostileFile, AFaultNamesTheLineItIsIn) {
    const auto loaded = readSketch(fileAround(modelWith(block(1) + block(2) + block(1))));
    ASSERT_FALSE(loaded);
    EXPECT_EQ(loaded.error().where, "line 9");
    const auto named = readSketch(fileAround(
        modelWith(block(1) + block(2, "", "<print width='1' height='1'/><name>sun</name>"))));
    ASSERT_FALSE(named);
    EXPECT_EQ(named.error().where, "line 8, sun");
}

}  // namespace
}  // namespace matwright
