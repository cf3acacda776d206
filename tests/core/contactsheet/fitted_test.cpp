// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "core/contactsheet/contact_sheet.h"

namespace matwright {
namespace {

constexpr Length height = Length::points(8);

Length widthOf(const std::string& text, bool bold = false) {
    return textWidthBound(text, height, bold);
}

TEST(Fitted, LeavesTextThatFitsAlone) {
    EXPECT_EQ(fitted("Harbour day", widthOf("Harbour day"), height, false), "Harbour day");
    EXPECT_EQ(fitted("", Length(), height, false), "");
}

TEST(Fitted, MarksWhatIsLeftOut) {
    const Length oneTickLess = widthOf("Harbour day") - Length::fromTicks(1);
    EXPECT_EQ(fitted("Harbour day", oneTickLess, height, false), "Harbour d\u2026");
    EXPECT_EQ(fitted("Harbour day", widthOf("Harbour \u2026"), height, false), "Harbour\u2026");
    EXPECT_EQ(fitted("Harbour day", widthOf("\u2026"), height, false), "\u2026");
    EXPECT_EQ(fitted("Harbour day", widthOf("\u2026") - Length::fromTicks(1), height, false), "");
}

TEST(Fitted, IsNeverWiderAndNeverCutsACharacter) {
    const std::string text = "a\u00E4\u5199 \U0001F642 W\u00DF i";
    for (const bool bold : {false, true}) {
        for (int percent = 0; percent <= 110; ++percent) {
            const Length room = widthOf(text, bold).scaledRounded(percent, 100);
            const std::string shown = fitted(text, room, height, bold);
            EXPECT_LE(widthOf(shown, bold), room);
            std::string kept = shown;
            if (kept.ends_with("\u2026")) {
                kept.resize(kept.size() - std::string("\u2026").size());
            }
            EXPECT_TRUE(text.starts_with(kept)) << shown;
            const char next = kept.size() < text.size() ? text[kept.size()] : ' ';
            EXPECT_NE(static_cast<unsigned char>(next) & 0xC0, 0x80);
        }
    }
}

}  // namespace
}  // namespace matwright
