// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <algorithm>

#include "core/library/label_store.h"

namespace matwright {
namespace {

const ContentKey one = contentKeyOf("1");
const ContentKey two = contentKeyOf("2");
const ContentKey three = contentKeyOf("3");

LabelRecord record(const std::string& sketch, ContentKey content, const std::string& tag) {
    LabelRecord made{sketch, content, {}};
    made.labels.tags = {tag};
    return made;
}

using Sketches = std::vector<KeyedSketch>;
using Records = std::vector<LabelRecord>;

// The tags of the sketches, "-" for none, in any order of the records.
std::string tagsOf(const Sketches& sketches, Records records) {
    std::string text;
    for (int turn = 0; turn < 2; ++turn) {
        std::string now;
        for (const Labels& labels : labelsFor(sketches, records)) {
            for (const std::string& tag : labels.tags) {
                now += tag;
            }
            now += labels.tags.empty() ? "- " : " ";
        }
        EXPECT_TRUE(turn == 0 || now == text) << now << " and " << text;
        text = now;
        std::ranges::reverse(records);
    }
    return text;
}

TEST(LabelMatch, GoesByPathAndContent) {
    EXPECT_EQ(tagsOf({{"a", one}, {"b", two}}, {record("a", one, "A"), record("b", two, "B")}),
              "A B ");
    EXPECT_EQ(tagsOf({}, {record("a", one, "A")}), "");
    EXPECT_EQ(tagsOf({{"a", one}}, {}), "- ");
}

TEST(LabelMatch, FindsASketchThatWasRenamedElsewhere) {
    EXPECT_EQ(tagsOf({{"new", one}}, {record("old", one, "A")}), "A ");
    EXPECT_EQ(tagsOf({{"new", one}}, {record("", one, "A")}), "A ");
}

TEST(LabelMatch, FollowsTwoSketchesThatChangedNames) {
    EXPECT_EQ(tagsOf({{"a", two}, {"b", one}}, {record("a", one, "A"), record("b", two, "B")}),
              "B A ");
}

TEST(LabelMatch, KeepsTheLabelsOfASketchThatWasChangedElsewhere) {
    EXPECT_EQ(tagsOf({{"a", three}}, {record("a", one, "A")}), "A ");
}

TEST(LabelMatch, FollowsARenameWhereAnotherSketchTookTheOldName) {
    EXPECT_EQ(tagsOf({{"a", three}, {"b", one}}, {record("a", one, "A")}), "- A ");
}

TEST(LabelMatch, GivesACopyNothing) {
    EXPECT_EQ(tagsOf({{"a", one}, {"copy", one}}, {record("a", one, "A")}), "A - ");
}

TEST(LabelMatch, KeepsLabelsOfVanishedSketchesAway) {
    EXPECT_EQ(tagsOf({{"a", one}}, {record("gone", two, "G")}), "- ");
}

TEST(LabelMatch, UnitesWhatACloudDriveWroteTwice) {
    EXPECT_EQ(tagsOf({{"a", one}}, {record("a", one, "A"), record("a", two, "B")}), "AB ");
    EXPECT_EQ(tagsOf({{"a", three}}, {record("a", one, "A"), record("a", two, "B")}), "AB ");
}

TEST(LabelMatch, GivesARecordToOneSketchOnly) {
    EXPECT_EQ(tagsOf({{"b", one}, {"c", one}}, {record("gone", one, "G")}), "G - ");
}

}  // namespace
}  // namespace matwright
