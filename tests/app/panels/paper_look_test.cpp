// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <QDialogButtonBox>
#include <QImageWriter>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

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

void choose(PaperLookDialog& dialog, const QString& path) {
    dialog.setPicture(path);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !dialog.isReading(); }));
}

QImage sampleOf(const PaperLookDialog& dialog) {
    return dialog.findChild<QLabel*>("sample")->pixmap().toImage();
}

QPushButton* okOf(const PaperLookDialog& dialog) {
    return dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
}

TEST(PaperLookDialog, PictureBringsItsMeanColourAndASheetsWidth) {
    const QTemporaryDir folder;
    QImage picture(64, 64, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(folder.filePath("paper.png")));
    PaperLookDialog dialog("kraft", std::nullopt, Scale::SixteenthInch);
    EXPECT_FALSE(dialog.look());
    choose(dialog, folder.filePath("paper.png"));
    EXPECT_TRUE(dialog.problem().isEmpty());
    ASSERT_TRUE(dialog.look());
    EXPECT_EQ(dialog.look()->colour, (Colour{40, 90, 140}));
    EXPECT_EQ(dialog.look()->pictureWidth, Length::inches(12));
    dialog.takePictureAway();
    EXPECT_TRUE(dialog.look()->picture.empty());
    EXPECT_EQ(dialog.look()->colour, (Colour{40, 90, 140}));
}

TEST(PaperLookDialog, FileThatIsNoPictureChangesNothing) {
    PaperLookDialog dialog("kraft", PaperLook{{1, 2, 3}, {}, {}, {}}, Scale::SixteenthInch);
    choose(dialog, "/nowhere/paper.png");
    EXPECT_FALSE(dialog.problem().isEmpty());
    EXPECT_EQ(dialog.look()->colour, (Colour{1, 2, 3}));
}

TEST(PaperLookDialog, IsNotAcceptedBeforeThePictureIsRead) {
    const QTemporaryDir folder;
    QImage picture(64, 64, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(folder.filePath("paper.png")));
    PaperLookDialog dialog("kraft", std::nullopt, Scale::SixteenthInch);
    dialog.show();
    dialog.setPicture(folder.filePath("paper.png"));
    EXPECT_FALSE(okOf(dialog)->isEnabled());
    dialog.accept();
    EXPECT_TRUE(dialog.isVisible());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isReading(); }));
    EXPECT_TRUE(okOf(dialog)->isEnabled());
    dialog.accept();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

TEST(PaperLookDialog, ColourThatIsChosenWhileAPictureIsReadStays) {
    const QTemporaryDir folder;
    QImage picture(64, 64, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(folder.filePath("paper.png")));
    PaperLookDialog dialog("kraft", std::nullopt, Scale::SixteenthInch);
    dialog.setPicture(folder.filePath("paper.png"));
    dialog.setColour(QColor(1, 2, 3));
    QTest::qWait(200);
    EXPECT_EQ(dialog.look(), (PaperLook{{1, 2, 3}, {}, {}, {}}));
}

TEST(PaperLookDialog, OkIsRefusedWhileTheWidthIsNoLength) {
    const QTemporaryDir folder;
    QImage picture(64, 64, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(folder.filePath("paper.png")));
    PaperLookDialog dialog("kraft", std::nullopt, Scale::SixteenthInch);
    dialog.show();
    choose(dialog, folder.filePath("paper.png"));
    auto* width = dialog.findChild<QLineEdit*>();
    width->setFocus();
    width->selectAll();
    QTest::keyClicks(width, "abc");
    okOf(dialog)->click();
    EXPECT_TRUE(dialog.isVisible());
    width->selectAll();
    QTest::keyClicks(width, "6 in");
    okOf(dialog)->click();
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(dialog.look()->pictureWidth, Length::inches(6));
}

// Exif 2.32, tag 0112H: the orientation that a camera writes instead of turning the picture.
TEST(PaperLookDialog, TurnedPictureLooksTheSameWhenTheDialogIsOpenedAgain) {
    const QTemporaryDir folder;
    QImage picture(96, 48, QImage::Format_RGB32);
    picture.fill(Qt::red);
    QPainter(&picture).fillRect(0, 0, 48, 48, Qt::blue);
    QImageWriter writer(folder.filePath("turned.jpg"));
    writer.setTransformation(QImageIOHandler::TransformationRotate90);
    ASSERT_TRUE(writer.write(picture));
    PaperLookDialog first("kraft", std::nullopt, Scale::SixteenthInch);
    choose(first, folder.filePath("turned.jpg"));
    ASSERT_TRUE(first.look());
    PaperLookDialog again("kraft", first.look(), Scale::SixteenthInch);
    EXPECT_TRUE(QTest::qWaitFor([&] { return sampleOf(again) == sampleOf(first); }));
}

}  // namespace
}  // namespace matwright::app
