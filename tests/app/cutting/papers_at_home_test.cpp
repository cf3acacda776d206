// SPDX-License-Identifier: MIT
#include "app/cutting/papers_at_home.h"

#include <fstream>

#include "tests/app/cutting/cutting_fixture.h"

namespace matwright::app {
namespace {

class PapersAtHome : public CuttingFixture {};

TEST_F(PapersAtHome, AreNoneWithoutAListAndMakeNone) {
    EXPECT_TRUE(namesAtHome(file()).isEmpty());
    EXPECT_FALSE(lookAtHome(file(), QStringLiteral("navy")));
    EXPECT_FALSE(std::filesystem::exists(file()));
}

TEST_F(PapersAtHome, AreNoneWhereTheListIsDamaged) {
    std::ofstream(file()) << "no database";
    EXPECT_TRUE(namesAtHome(file()).isEmpty());
}

TEST_F(PapersAtHome, AreNamedOnceAndLookAsTheyDo) {
    PaperOnHand navy = paper("navy", inches(12, 12), 2);
    navy.colour = {20, 30, 90};
    PaperOnHand scrap = paper("navy", inches(5, 3), 1, PaperKind::Scrap);
    PaperOnHand lost = paper("waves", inches(12, 12));
    lost.picture = (folder() / "waves.png").string();
    lost.pictureWidth = Length::inches(12);
    for (const PaperOnHand& one : {navy, scrap, lost}) {
        ASSERT_TRUE(store().add(one));
    }
    EXPECT_EQ(namesAtHome(file()), (QStringList{QStringLiteral("navy"), QStringLiteral("waves")}));
    EXPECT_EQ(lookAtHome(file(), QStringLiteral("navy"))->colour, (Colour{20, 30, 90}));
    EXPECT_FALSE(lookAtHome(file(), QStringLiteral("Navy ")));
    EXPECT_EQ(lookAtHome(file(), QStringLiteral("waves"))->picture, "");
    std::ofstream(folder() / "waves.png") << "a picture";
    const PaperLook waves = *lookAtHome(file(), QStringLiteral("waves"));
    EXPECT_EQ(waves.picture, lost.picture);
    EXPECT_EQ(waves.pictureWidth, Length::inches(12));
    EXPECT_NE(waves.content, ContentKey());
}

TEST_F(PapersAtHome, GiveAPageTheirLookWhereItHasNone) {
    ASSERT_TRUE(store().add(paper("navy", inches(12, 12))));
    PhotoWork page;
    const PhotoEdit edit = lookFromHome(file(), page, QStringLiteral("navy"));
    ASSERT_TRUE(edit.papers.contains("navy"));
    page.papers["navy"] = *edit.papers.at("navy");
    EXPECT_TRUE(lookFromHome(file(), page, QStringLiteral("navy")).isEmpty());
    EXPECT_TRUE(lookFromHome(file(), page, QStringLiteral("kraft")).isEmpty());
}

}  // namespace
}  // namespace matwright::app
