// SPDX-License-Identifier: MIT
#include "core/library/label_record.h"

#include <gtest/gtest.h>

#include "core/sketch/sketch.h"

namespace matwright {
namespace {

LabelRecord fullRecord() {
    LabelRecord record;
    record.sketch = "2026/Harbour day.sketch.svg";
    record.content = contentKeyOf("Harbour day");
    record.labels.tags = {"beach", "f\u00FCr Oma"};
    record.labels.favourite = true;
    record.labels.note = "for the \"blue\" papers\nand <others>";
    record.labels.useCount = 3;
    record.labels.lastUsed = Timestamp(std::chrono::seconds(1'764'075'107));
    return record;
}

TEST(LabelRecord, IsWrittenAsTheHeaderSays) {
    LabelRecord record = fullRecord();
    record.labels.tags = {"beach", "family"};
    record.labels.note = "for the blue papers";
    EXPECT_EQ(writeLabelRecord(record).value(),
              R"({
  "version": 1,
  "sketch": "2026/Harbour day.sketch.svg",
  "content": "10621a89f2a23649490b6800cd1aea32",
  "tags": [
    "beach",
    "family"
  ],
  "favourite": true,
  "note": "for the blue papers",
  "uses": 3,
  "lastUsed": 1764075107
}
)");
}

TEST(LabelRecord, IsReadAsItWasWritten) {
    std::string everyByte;
    for (int byte = 1; byte < 256; ++byte) {
        everyByte += static_cast<char>(byte);
    }
    LabelRecord record = fullRecord();
    for (const std::string& path :
         {record.sketch, std::string("100 % \u5199.sketch.svg"), std::string("two\nlines"),
          std::string("%41"), everyByte, std::string()}) {
        record.sketch = path;
        const std::string bytes = writeLabelRecord(record).value();
        EXPECT_EQ(readLabelRecord(bytes).value(), record);
        EXPECT_EQ(writeLabelRecord(record, bytes).value(), bytes);
    }
    const LabelRecord empty{"a.sketch.svg", {}, {}};
    EXPECT_EQ(readLabelRecord(writeLabelRecord(empty).value()).value(), empty);
}

TEST(LabelRecord, KeepsMembersItDoesNotKnow) {
    const std::string old =
        R"({"version": 1, "colour": {"of": ["the", "paper"]}, "sketch": "old", "content": "x",
            "lastUsed": 5})";
    LabelRecord record = fullRecord();
    record.labels.lastUsed.reset();
    const std::string bytes = writeLabelRecord(record, old).value();
    EXPECT_NE(bytes.find(R"("colour": {)"), std::string::npos);
    EXPECT_EQ(bytes.find("lastUsed"), std::string::npos);
    EXPECT_EQ(readLabelRecord(bytes).value(), record);
}

TEST(LabelRecord, OfALaterVersionIsRefusedByName) {
    const auto read = readLabelRecord(R"({"version": 2})");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::NewerVersion);
}

TEST(LabelRecord, ThatIsDamagedIsNamed) {
    for (const char* text : {"", "{", "[]", "null", "\xFF", "{\"version\": 1"}) {
        EXPECT_EQ(readLabelRecord(text).error().code, ErrorCode::WrongFormat) << text;
    }
    const std::string start =
        R"({"version": 1, "sketch": "a", "content": "10621a89f2a23649490b6800cd1aea32")";
    ASSERT_TRUE(readLabelRecord(start + "}"));
    for (const char* more :
         {R"(, "version": "1")", R"(, "version": 0)", R"(, "sketch": 3)", R"(, "sketch": "a%2")",
          R"(, "sketch": "a%XY")", R"(, "content": "10621a89")", R"(, "content": null)",
          R"(, "tags": "beach")", R"(, "tags": [1])", R"(, "favourite": 1)", R"(, "note": [])",
          R"(, "uses": -1)", R"(, "uses": 1.5)", R"(, "uses": 99999999999)",
          R"(, "lastUsed": "now")", R"(, "lastUsed": 18446744073709551615)"}) {
        const auto read = readLabelRecord(start + more + "}");
        ASSERT_FALSE(read) << more;
        EXPECT_EQ(read.error().code, ErrorCode::Malformed) << more;
    }
}

TEST(LabelRecord, RefusesTextThatCannotBeKept) {
    LabelRecord record = fullRecord();
    record.labels.tags = {"\xC3"};
    EXPECT_EQ(writeLabelRecord(record).error().code, ErrorCode::BadText);
    record.labels.tags = {std::string(maxTextBytes + 1, 'a')};
    EXPECT_EQ(writeLabelRecord(record).error().code, ErrorCode::OutOfRange);
    record.labels.tags.clear();
    for (int i = 0; i < 110; ++i) {
        record.labels.tags.push_back(std::to_string(i) + std::string(maxTextBytes - 10, 'a'));
    }
    EXPECT_EQ(writeLabelRecord(record).error().code, ErrorCode::OutOfRange);
}

TEST(Labels, ArePutInOrder) {
    Labels labels;
    labels.tags = {"  summer", "beach", "", "   ", "summer ", "beach", "a b"};
    labels.useCount = -4;
    const Labels ordered = inOrder(labels);
    EXPECT_EQ(ordered.tags, (std::vector<std::string>{"a b", "beach", "summer"}));
    EXPECT_EQ(ordered.useCount, 0);
    EXPECT_EQ(inOrder(ordered), ordered);
}

TEST(Labels, UnitedLoseNothing) {
    Labels a;
    a.tags = {"beach"};
    a.note = "mine";
    a.useCount = 3;
    Labels b;
    b.tags = {"beach", "summer"};
    b.favourite = true;
    b.note = "yours";
    b.lastUsed = Timestamp(std::chrono::seconds(5));
    const Labels both = united(a, b);
    EXPECT_EQ(both.tags, (std::vector<std::string>{"beach", "summer"}));
    EXPECT_TRUE(both.favourite);
    EXPECT_EQ(both.note, "mine\nyours");
    EXPECT_EQ(both.useCount, 3);
    EXPECT_EQ(both.lastUsed, b.lastUsed);
    EXPECT_EQ(united(both, both), both);
    EXPECT_EQ(united(both, Labels()), both);
    EXPECT_EQ(united(Labels(), both), both);
}

}  // namespace
}  // namespace matwright
