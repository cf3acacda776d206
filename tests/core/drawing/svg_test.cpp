// SPDX-License-Identifier: MIT
#include "core/drawing/svg.h"

#include <gtest/gtest.h>

#include <clocale>
#include <pugixml.hpp>

namespace matwright {
namespace {

double ticksOf(Length length) {
    return static_cast<double>(length.ticks());
}

Path triangle() {
    Path path{{0, 0}, {}, true};
    path.lineTo({ticksOf(Length::millimetres(10)), 0});
    path.lineTo({0, ticksOf(Length::millimetres(5))});
    return path;
}

Drawing sample() {
    Drawing drawing;
    drawing.size = {Length::inches(12), Length::millimetres(210)};
    drawing.title = "Sea & <sand>";
    Layer layer{"trim", "Trim lines", {}};
    layer.items.push_back(PathItem{{triangle()},
                                   Stroke{Length::hundredthMillimetres(25),
                                          {1, 2, 255},
                                          {Length::millimetres(2), Length::millimetres(1)}},
                                   std::nullopt});
    layer.items.push_back(PathItem{{triangle()}, std::nullopt, Colour{255, 250, 0}});
    layer.items.push_back(TextItem{{36'000, 72'000},
                                   Length::millimetres(3),
                                   "a \"b\" & <c>",
                                   TextAnchor::End,
                                   Angle::degrees(270),
                                   true,
                                   {}});
    drawing.layers.push_back(layer);
    return drawing;
}

pugi::xml_document parsed(const std::string& text) {
    pugi::xml_document document;
    EXPECT_TRUE(document.load_string(text.c_str()));
    return document;
}

TEST(SvgNumber, IsTheShortestDecimalOfTheTenthOfAMicrometre) {
    EXPECT_EQ(svgNumber(0), "0");
    EXPECT_EQ(svgNumber(ticksOf(Length::inches(12))), "304.8");
    EXPECT_EQ(svgNumber(ticksOf(-Length::inches(0, 1, 1000))), "-0.0254");
    EXPECT_EQ(svgNumber(ticksOf(Length::inches(0, 3, 16))), "4.7625");
    EXPECT_EQ(svgNumber(ticksOf(Length::millimetres(100))), "100");
    EXPECT_EQ(svgNumber(1), "0");
    EXPECT_EQ(svgNumber(-1), "0");
    EXPECT_EQ(svgNumber(2), "0.0001");
    EXPECT_EQ(svgNumber(ticksOf(Length::coordinateLimit())), "25400");
}

TEST(SvgNumber, HasAPointInEveryLocale) {
    const std::string before = std::setlocale(LC_NUMERIC, nullptr);
    std::setlocale(LC_NUMERIC, "de_DE.UTF-8");  // stays as it was where that is not installed
    EXPECT_EQ(svgNumber(ticksOf(Length::inches(12))), "304.8");
    std::setlocale(LC_NUMERIC, before.c_str());
}

TEST(SvgPathData, WritesLinesCurvesAndClosing) {
    EXPECT_EQ(svgPathData({triangle()}), "M0 0L10 0L0 5Z");
    Path curve{{0, 0}, {}, false};
    curve.curveTo({36'000, 0}, {36'000, 36'000}, {0, -36'000});
    EXPECT_EQ(svgPathData({curve}), "M0 0C1 0 1 1 0 -1");
    EXPECT_EQ(svgPathData({curve, triangle()}), "M0 0C1 0 1 1 0 -1M0 0L10 0L0 5Z");
    EXPECT_EQ(svgPathData({}), "");
}

TEST(SvgText, HasItsSizeInMillimetresAndAViewBoxInMillimetres) {
    const auto document = parsed(svgText(sample()));
    const pugi::xml_node svg = document.document_element();
    EXPECT_STREQ(svg.name(), "svg");
    EXPECT_STREQ(svg.attribute("width").value(), "304.8mm");
    EXPECT_STREQ(svg.attribute("height").value(), "210mm");
    EXPECT_STREQ(svg.attribute("viewBox").value(), "0 0 304.8 210");
    EXPECT_STREQ(svg.child("title").text().get(), "Sea & <sand>");
    EXPECT_FALSE(svg.child("desc"));
}

TEST(SvgText, MakesOneNamedGroupALayer) {
    const auto document = parsed(svgText(sample()));
    const pugi::xml_node group = document.document_element().child("g");
    EXPECT_STREQ(group.attribute("id").value(), "trim");
    EXPECT_STREQ(group.child("title").text().get(), "Trim lines");
    EXPECT_FALSE(group.next_sibling("g"));
}

TEST(SvgText, WritesStrokeDashFillAndText) {
    const auto document = parsed(svgText(sample()));
    const pugi::xml_node line = document.document_element().child("g").child("path");
    EXPECT_STREQ(line.attribute("fill").value(), "none");
    EXPECT_STREQ(line.attribute("stroke").value(), "#0102ff");
    EXPECT_STREQ(line.attribute("stroke-width").value(), "0.25");
    EXPECT_STREQ(line.attribute("stroke-dasharray").value(), "2 1");
    const pugi::xml_node area = line.next_sibling("path");
    EXPECT_STREQ(area.attribute("fill").value(), "#fffa00");
    EXPECT_FALSE(area.attribute("stroke"));
    const pugi::xml_node text = area.next_sibling("text");
    EXPECT_STREQ(text.text().get(), "a \"b\" & <c>");
    EXPECT_STREQ(text.attribute("transform").value(), "rotate(270 1 2)");
    EXPECT_STREQ(text.attribute("text-anchor").value(), "end");
    EXPECT_STREQ(text.attribute("font-weight").value(), "bold");
    EXPECT_STREQ(text.attribute("font-size").value(), "3");
}

TEST(SvgText, HasNoUnitInsideTheDocument) {
    const std::string text = svgText(sample());
    EXPECT_EQ(text.find("mm\"", text.find("viewBox")), std::string::npos);
}

TEST(AppendSvg, KeepsWhatTheElementHasAndReplacesItsSize) {
    pugi::xml_document document;
    pugi::xml_node svg = document.append_child("svg");
    svg.append_attribute("width").set_value("1mm");
    svg.append_child("metadata");
    appendSvg(svg, sample());
    EXPECT_STREQ(svg.attribute("width").value(), "304.8mm");
    EXPECT_STREQ(svg.first_child().name(), "metadata");
    EXPECT_STREQ(svg.last_child().name(), "g");
}

}  // namespace
}  // namespace matwright
