// SPDX-License-Identifier: MIT
#include "app/cutting/paper_dialog.h"

#include <QIcon>
#include <QSpinBox>

#include "tests/app/cutting/papers_window_fixture.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

class PaperDialogTest : public PapersWindowFixture {};

TEST_F(PaperDialogTest, KeepsAPaperThatWasTypedWithFractions) {
    open();
    inDialog([](PaperDialog& dialog) {
        type(dialog, "Name", "kraft cardstock");
        type(dialog, "Width", "5 1/2");
        type(dialog, "Height", "178 mm");
        dialog.findChild<QSpinBox*>()->setValue(3);
        press(dialog, "OK");
    });
    press(*window, "Add paper…");
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(cell(0, PapersModel::Name), "kraft cardstock");
    EXPECT_EQ(cell(0, PapersModel::Count), "3");
    const auto kept = store().list();
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->front().size.width, Length::inches(5, 1, 2));
    EXPECT_EQ(kept->front().size.height, Length::hundredthMillimetres(17'800));
    EXPECT_EQ(window->news(), "Added kraft cardstock.");
}

TEST_F(PaperDialogTest, TellsInTheDialogWhatKeepsAPaperFromBeingAdded) {
    open();
    inDialog([](PaperDialog& dialog) {
        press(dialog, "OK");
        EXPECT_TRUE(dialog.problem().contains("name"));
        type(dialog, "Name", "kraft");
        type(dialog, "Width", "wide");
        press(dialog, "OK");
        EXPECT_TRUE(dialog.problem().contains("wide"));
        EXPECT_TRUE(dialog.isVisible());
        dialog.reject();
    });
    press(*window, "Add paper…");
    EXPECT_EQ(rows(), 0);
}

TEST_F(PaperDialogTest, SaysSoWhereNothingWasChanged) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    chooseRow(0);
    inDialog([](PaperDialog& dialog) { press(dialog, "OK"); });
    press(*window, "Change…");
    EXPECT_EQ(window->news(), "Nothing was changed.");
}

TEST_F(PaperDialogTest, NameThatNobodyTouchedStaysWhole) {
    const std::string name = "  " + std::string(130, 'k') + "  raft ";
    ASSERT_TRUE(store().add(paper(name.c_str(), inches(12, 12), 5)));
    open();
    chooseRow(0);
    inDialog([](PaperDialog& dialog) {
        dialog.findChild<QSpinBox*>()->setValue(4);
        press(dialog, "OK");
    });
    press(*window, "Change…");
    EXPECT_EQ(store().list()->front().count, 4);
    EXPECT_EQ(store().list()->front().name, name);
}

TEST_F(PaperDialogTest, NameThatIsTooLongIsRefusedNotCut) {
    open();
    inDialog([](PaperDialog& dialog) {
        field(dialog, "Name")->insert(QString(maxPaperNameBytes + 1, u'k'));
        press(dialog, "OK");
        EXPECT_TRUE(dialog.problem().contains("400 of its 401 letters"));
        EXPECT_TRUE(dialog.isVisible());
        dialog.reject();
    });
    press(*window, "Add paper…");
    EXPECT_EQ(rows(), 0);
}

TEST_F(PaperDialogTest, ShowsThePictureOfAPaperOnceItIsRead) {
    QImage picture(600, 600, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(QString::fromStdString(folder() / "dots.png")));
    PaperOnHand dots = paper("dots", inches(12, 12));
    dots.colour = {200, 170, 130};
    dots.picture = folder() / "dots.png";
    dots.pictureWidth = Length::inches(12);
    ASSERT_TRUE(store().add(dots));
    open();
    const auto middle = [this](QIcon::Mode mode) {
        const QImage swatch = window->table()
                                  .model()
                                  ->index(0, PapersModel::Name)
                                  .data(Qt::DecorationRole)
                                  .value<QIcon>()
                                  .pixmap(PapersModel::swatchSize, mode)
                                  .toImage();
        return swatch.pixelColor(swatch.width() / 2, swatch.height() / 2);
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return middle(QIcon::Normal) == QColor(40, 90, 140); }));
    EXPECT_EQ(middle(QIcon::Selected), QColor(40, 90, 140));
}

TEST_F(PaperDialogTest, TakesAChosenPictureWithItsMeanColour) {
    QImage picture(600, 300, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(QString::fromStdString(folder() / "dots.png")));
    test::writeFile(folder() / "words.png", "no picture");
    ASSERT_TRUE(store().add(paper("dots", inches(12, 12))));
    open();
    chooseRow(0);
    inDialog([this](PaperDialog& dialog) {
        dialog.setPicture(QString::fromStdString(folder() / "words.png"));
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isReading(); }));
        EXPECT_TRUE(dialog.problem().contains("words.png"));
        dialog.setPicture(QString::fromStdString(folder() / "dots.png"));
        EXPECT_EQ(dialog.problem(), "");
        press(dialog, "OK");
        EXPECT_TRUE(dialog.isVisible()) << "accepted before the picture was read";
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isReading(); }));
        press(dialog, "OK");
    });
    press(*window, "Change…");
    const PaperOnHand kept = store().list()->front();
    EXPECT_EQ(kept.picture, (folder() / "dots.png").string());
    EXPECT_EQ(kept.colour, (Colour{40, 90, 140}));
    EXPECT_EQ(kept.pictureWidth, Length::inches(12));
}

TEST_F(PaperDialogTest, GrowsForWhatAppearsInIt) {
    QImage picture(60, 60, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(QString::fromStdString(folder() / "dots.png")));
    open();
    inDialog([this](PaperDialog& dialog) {
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
        const int before = dialog.height();
        dialog.setPicture(QString::fromStdString(folder() / "dots.png"));
        ASSERT_TRUE(QTest::qWaitFor([&] { return dialog.height() > before; }));
        const int buttonHeight = button(dialog, "No picture")->height();
        press(dialog, "OK");
        EXPECT_FALSE(dialog.problem().isEmpty());
        QTest::qWait(50);
        EXPECT_EQ(button(dialog, "No picture")->height(), buttonHeight);
        EXPECT_GE(buttonHeight, 28);
        dialog.reject();
    });
    press(*window, "Add paper…");
}

}  // namespace
}  // namespace matwright::app
