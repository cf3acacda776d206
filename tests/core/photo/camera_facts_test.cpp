// SPDX-License-Identifier: MIT
// What is read of the metadata of real cameras' photos, against ExifTool.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <vector>

#include "core/photo/metadata_text.h"
#include "core/photo/photo_source.h"
#include "tests/support/check_data.h"
#include "tests/support/outside_tool.h"

namespace matwright {
namespace {

using nlohmann::json;
using test::checkData;

const char* const tags =
    "-IFD0:Orientation -ExifIFD:DateTimeOriginal -ExifIFD:CreateDate -XMP-exif:DateTimeOriginal "
    "-XMP-xmp:CreateDate -XMP-xmp:Rating -ICC_Profile:ProfileDescription";

std::vector<std::filesystem::path> photosIn(const std::filesystem::path& folder) {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        const auto ending = entry.path().extension();
        if (ending == ".jpg" || ending == ".heic") {
            files.push_back(entry.path());
        }
    }
    std::ranges::sort(files);
    return files;
}

std::string textOf(const json& said, const char* tag) {
    return said.contains(tag) && said[tag].is_string() ? said[tag].get<std::string>() : "";
}

// The first of the four times that is one, as ExifTool prints them all: "2026:07:14 16:03:22".
std::string takenOf(const json& said) {
    for (const char* tag : {"ExifIFD:DateTimeOriginal", "ExifIFD:CreateDate",
                            "XMP-exif:DateTimeOriginal", "XMP-xmp:CreateDate"}) {
        if (const auto time = exifTime(textOf(said, tag))) {
            return *time;
        }
    }
    return "";
}

std::optional<int> ratingOf(const json& said) {
    return said.contains("XMP-xmp:Rating") ? std::optional(said["XMP-xmp:Rating"].get<int>())
                                           : std::nullopt;
}

// The turn that is left to do: none for HEIC.
int turnOf(const json& said, const PhotoFacts& facts) {
    const int turn = said.contains("IFD0:Orientation") ? said["IFD0:Orientation"].get<int>() : 1;
    return facts.format == "HEIC" || turn < 1 || turn > 8 ? 1 : turn;
}

void expectAsExifToolSays(const std::filesystem::path& folder) {
    const std::string printed =
        test::outputOf(std::string("exiftool -json -n -G1 -r -ext jpg -ext heic ") + tags + " '" +
                       folder.string() + "'");
    int seen = 0;
    for (const json& said : json::parse(printed)) {
        const auto facts = photoFacts(said["SourceFile"].get<std::string>());
        const std::string name =
            std::filesystem::path(said["SourceFile"].get<std::string>()).filename();
        ASSERT_TRUE(facts) << name << ": " << facts.error().sentence;
        EXPECT_EQ(facts->orientation, turnOf(said, *facts)) << name;
        EXPECT_EQ(facts->taken, takenOf(said)) << name;
        EXPECT_EQ(facts->rating, ratingOf(said)) << name;
        EXPECT_EQ(facts->profile, textOf(said, "ICC_Profile:ProfileDescription")) << name;
        ++seen;
    }
    EXPECT_EQ(seen, static_cast<int>(photosIn(folder).size()));
    std::printf("%d photos say what ExifTool says of them\n", seen);
}

TEST(CameraFacts, AreWhatExifToolSaysOfThem) {
    const auto cameras = checkData("photos/camera");
    const auto phones = checkData("photos/heic");
    if (!cameras || !phones) {
        GTEST_SKIP() << test::noCheckData;
    }
    if (!test::hasTool("exiftool")) {
        GTEST_SKIP() << "SKIPPED: exiftool is not installed.";
    }
    expectAsExifToolSays(*cameras);
    expectAsExifToolSays(*phones);
}

}  // namespace
}  // namespace matwright
