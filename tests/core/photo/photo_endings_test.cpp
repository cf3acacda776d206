// SPDX-License-Identifier: MIT
#include "core/photo/photo_endings.h"

#include <gtest/gtest.h>

#include <set>

namespace matwright {

namespace {

TEST(PhotoEndings, AreKnownInSmallLettersAndCapitals) {
    for (const char* name : {"a.jpg", "B.JPG", "c.Jpeg", "d.jfif", "e.PNG", "f.tiff", "g.webp",
                             "h.HEIC", "i.hif", "/in a.folder/j.jpe"}) {
        EXPECT_TRUE(isNamedAsPhoto(name)) << name;
    }
    for (const char* name : {"a.txt", "jpg", ".jpg", "b.jpg.part", "c.svg", "", "d.jpg/e"}) {
        EXPECT_FALSE(isNamedAsPhoto(name)) << name;
    }
}

TEST(PhotoEndings, BelongToOneFormatEachAndSuitIt) {
    std::set<std::string_view> seen;
    for (const PhotoFormat format : {PhotoFormat::Jpeg, PhotoFormat::Png, PhotoFormat::Tiff,
                                     PhotoFormat::WebP, PhotoFormat::Heic}) {
        for (const std::string_view ending : endingsOf(format)) {
            EXPECT_TRUE(seen.insert(ending).second) << ending;
            EXPECT_EQ(wrongNameRemark("photo" + std::string(ending), format), "");
        }
    }
    EXPECT_EQ(seen.size(), photoEndings().size());
}

}  // namespace

}  // namespace matwright
