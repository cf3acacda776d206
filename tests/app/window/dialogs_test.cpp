// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include "app/canvas/canvas.h"
#include "app/canvas/page_view.h"
#include "app/window/new_page_dialog.h"
#include "app/window/screen_dialog.h"
#include "core/measure/catalogue.h"
#include "core/sketch/soundness.h"

namespace matwright::app {
namespace {

void type(QLineEdit& edit, const char* text) {
    edit.window()->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(edit.window()));
    edit.setFocus();
    edit.selectAll();
    QTest::keyClicks(&edit, QString::fromUtf8(text));
    QTest::keyClick(&edit, Qt::Key_Tab);
}

class NewPage : public testing::Test {
  protected:
    NewPage() { dialog.show(); }
    QComboBox& sizes() { return *dialog.findChild<QComboBox*>(); }
    QLineEdit& field(int index) {
        return *dialog.findChildren<LengthField*>().at(index)->lineEdit();
    }

    NewPageDialog dialog{Scale::SixteenthInch, nullptr};
};

TEST_F(NewPage, BeginsWithTheBlankPage) {
    ASSERT_TRUE(dialog.page());
    EXPECT_EQ(*dialog.page(), blankSketch().page);
}

TEST_F(NewPage, OffersEverySizeOfTheCatalogue) {
    ASSERT_EQ(sizes().count(), static_cast<int>(pageSizes().size()) + 1);
    for (std::size_t i = 0; i < pageSizes().size(); ++i) {
        sizes().setCurrentIndex(static_cast<int>(i));
        ASSERT_TRUE(dialog.page());
        EXPECT_EQ(dialog.page()->size, pageSizes()[i].size);
        EXPECT_FALSE(dialog.page()->doublePage);
    }
}

TEST_F(NewPage, TakesACustomSizeAsItIsTyped) {
    sizes().setCurrentIndex(sizes().count() - 1);
    type(field(0), "9 1/2");
    type(field(1), "200 mm");
    ASSERT_TRUE(dialog.page());
    EXPECT_EQ(dialog.page()->size, (Size{Length::inches(9, 1, 2), Length::millimetres(200)}));
}

TEST_F(NewPage, OffersMillimetresForAPageThatIsMeasuredInThem) {
    auto& millimetres = *dialog.findChildren<QCheckBox*>().at(1);
    EXPECT_FALSE(millimetres.isVisible());
    sizes().setCurrentText(QStringLiteral("A4 upright"));
    EXPECT_TRUE(millimetres.isVisible());
    EXPECT_EQ(dialog.scale(), Scale::WholeMillimetre);
    EXPECT_EQ(field(0).text(), QStringLiteral("210 mm"));
    ASSERT_TRUE(dialog.page());
    EXPECT_EQ(dialog.page()->margins, Margins::all(Length::millimetres(13)));
    EXPECT_EQ(dialog.page()->gutter, Length::millimetres(6));
    millimetres.click();
    EXPECT_EQ(dialog.scale(), Scale::SixteenthInch);
    EXPECT_EQ(dialog.page()->margins, blankSketch().page.margins);
    millimetres.click();
    sizes().setCurrentIndex(0);
    EXPECT_EQ(dialog.scale(), Scale::SixteenthInch);
}

TEST(NewPageInMillimetres, OnlyOffersInchesForAnInchPage) {
    NewPageDialog dialog(Scale::HalfMillimetre, nullptr);
    dialog.show();
    EXPECT_TRUE(dialog.findChildren<QCheckBox*>().at(1)->isVisible());
    EXPECT_EQ(dialog.scale(), Scale::HalfMillimetre);
    dialog.findChildren<QCheckBox*>().at(1)->click();
    EXPECT_EQ(dialog.scale(), Scale::SixteenthInch);
}

TEST_F(NewPage, EnterCreates) {
    QTest::keyClick(&dialog, Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(NewPage, MakesADoublePage) {
    dialog.findChild<QCheckBox*>()->click();
    ASSERT_TRUE(dialog.page());
    EXPECT_TRUE(dialog.page()->doublePage);
}

TEST(PageOf, IsSoundForTheSmallestAndTheLargestPage) {
    for (const Length side : {Length::inches(1), Length::inches(100)}) {
        EXPECT_FALSE(findFault(pageOf({side, side}, false)));
        EXPECT_FALSE(findFault(pageOf({side, side}, true)));
    }
    EXPECT_EQ(pageOf(blankSketch().page.size, false), blankSketch().page);
}

TEST(ScreenDialog, TurnsTheMeasuredLengthIntoPixelsPerInch) {
    ScreenDialog dialog(0, 100, Scale::SixteenthInch, nullptr);
    dialog.show();
    EXPECT_DOUBLE_EQ(dialog.ppi(), 100);
    type(*dialog.findChild<LengthField*>()->lineEdit(), "3 1/8");
    EXPECT_DOUBLE_EQ(dialog.ppi(), ScreenDialog::barPixels / 3.125);
}

TEST(ScreenDialog, ProposesALengthAsItStandsOnARuler) {
    for (const double ppi : {72.0, 95.9, 101.3, 163.0}) {
        ScreenDialog dialog(ppi, 100, Scale::SixteenthInch, nullptr);
        dialog.show();
        QLineEdit& edit = *dialog.findChild<LengthField*>()->lineEdit();
        dialog.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
        edit.setFocus();
        EXPECT_FALSE(edit.text().contains(u'.')) << edit.text().toStdString();
    }
}

TEST(ScreenDialog, CanGoBackToTheSystemsFigure) {
    ScreenDialog dialog(120, 100, Scale::SixteenthInch, nullptr);
    EXPECT_NEAR(dialog.ppi(), 120, 1e-3);
    for (auto* button : dialog.findChildren<QPushButton*>()) {
        if (button->text().contains(QStringLiteral("system"))) {
            button->click();
        }
    }
    EXPECT_EQ(dialog.ppi(), 0);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

TEST(ScreenDialog, TheBarIsAsLongOnThePageAtTrueSizeWhateverTheDevicePixelRatio) {
    const QTemporaryDir folder;
    SettingsStore settings(folder.filePath(QStringLiteral("settings.ini")));
    ScreenDialog dialog(0, 96, Scale::SixteenthInch, nullptr);
    dialog.show();
    type(*dialog.findChild<LengthField*>()->lineEdit(), "3 1/8");
    Settings measured;
    measured.screenPpi = dialog.ppi();
    settings.set(measured);
    Session session;
    Canvas canvas(session, settings);
    canvas.resize(400, 400);
    canvas.show();
    canvas.trueSize();
    const double perInch = canvas.page().viewport().pixelsPerInch();
    EXPECT_NEAR(perInch * 3.125, ScreenDialog::barPixels, 1e-6)
        << "at a device pixel ratio of " << canvas.devicePixelRatioF();
}

}  // namespace
}  // namespace matwright::app
