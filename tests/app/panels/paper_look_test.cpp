// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <QTemporaryDir>

#include "app/panels/paper_look_button.h"
#include "app/panels/paper_look_dialog.h"

namespace matwright::app {
namespace {

TEST(PaperLookButton, PaperWithoutANameHasNoLook) {
    const QTemporaryDir folder;
    Session session;
    SettingsStore settings(folder.filePath("settings.ini"));
    PaperLookButton button(session, settings);
    EXPECT_FALSE(button.isEnabled());
    button.showPaper("kraft");
    EXPECT_TRUE(button.isEnabled());
    EXPECT_TRUE(button.icon().isNull());
}

TEST(PaperLookButton, LookIsOneUndoStepAndShowsOnTheButton) {
    const QTemporaryDir folder;
    Session session;
    SettingsStore settings(folder.filePath("settings.ini"));
    PaperLookButton button(session, settings);
    button.showPaper("kraft");
    const PaperLook look{{150, 110, 70}, {}, {}, {}};
    button.setLook(look);
    button.setLook(look);
    EXPECT_EQ(session.undoStack().count(), 1);
    EXPECT_EQ(session.work().papers.at("kraft"), look);
    EXPECT_FALSE(button.icon().isNull());
    button.setLook(std::nullopt);
    EXPECT_TRUE(session.work().papers.empty());
    session.undoStack().undo();
    EXPECT_EQ(session.work().papers.at("kraft"), look);
}

TEST(PaperLookDialog, PictureBringsItsMeanColourAndASheetsWidth) {
    const QTemporaryDir folder;
    QImage picture(64, 64, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(folder.filePath("paper.png")));
    PaperLookDialog dialog("kraft", std::nullopt, Scale::SixteenthInch);
    EXPECT_FALSE(dialog.look());
    EXPECT_TRUE(dialog.setPicture(folder.filePath("paper.png")).isEmpty());
    ASSERT_TRUE(dialog.look());
    EXPECT_EQ(dialog.look()->colour, (Colour{40, 90, 140}));
    EXPECT_EQ(dialog.look()->pictureWidth, Length::inches(12));
    dialog.takePictureAway();
    EXPECT_TRUE(dialog.look()->picture.empty());
    EXPECT_EQ(dialog.look()->colour, (Colour{40, 90, 140}));
}

TEST(PaperLookDialog, FileThatIsNoPictureChangesNothing) {
    PaperLookDialog dialog("kraft", PaperLook{{1, 2, 3}, {}, {}, {}}, Scale::SixteenthInch);
    EXPECT_FALSE(dialog.setPicture("/nowhere/paper.png").isEmpty());
    EXPECT_EQ(dialog.look()->colour, (Colour{1, 2, 3}));
}

}  // namespace
}  // namespace matwright::app
