// SPDX-License-Identifier: MIT
#include "app/panels/page_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>

#include "app/panels/text_field.h"
#include "core/measure/catalogue.h"
#include "tests/app/panels/panel_bench.h"

namespace matwright::app {
namespace {

class PagePanelTest : public PanelBench {
  protected:
    PagePanelTest() : panel(session, settings) { show(panel, {320, 800}); }
    const PageSetup& page() const { return session.sketch().page; }
    LengthField* length(const char* name) { return control<LengthField>(panel, name); }
    void choosePage(int index) {
        auto* box = control<QComboBox>(panel, "Page size");
        choose(box, index < 0 ? box->count() + index : index);
    }
    void tick(const char* text) {
        QTest::mouseClick(labelled<QCheckBox>(panel, text), Qt::LeftButton, {}, {8, 12});
    }

    PagePanel panel;
};

TEST_F(PagePanelTest, OffersEveryPageSizeOfTheCatalogue) {
    const auto known = pageSizes();
    for (std::size_t i = 0; i < known.size(); ++i) {
        choosePage(static_cast<int>(i));
        EXPECT_EQ(page().size, known[i].size) << known[i].id;
    }
    EXPECT_EQ(undoSteps(), static_cast<int>(known.size()) - 1) << "12x12 was there already";
    EXPECT_EQ(length("Width"), nullptr) << "a known size needs no figures";
}

TEST_F(PagePanelTest, AMetricPageOffersMillimetresAndLeavesTheInchesUntilThen) {
    EXPECT_EQ(labelled<QPushButton>(panel, "Show millimetres"), nullptr);
    for (std::size_t i = 0; i < pageSizes().size(); ++i) {
        choosePage(static_cast<int>(i));
        EXPECT_EQ(labelled<QPushButton>(panel, "Show millimetres") != nullptr,
                  pageSizes()[i].id.starts_with("a4"));
    }
    EXPECT_EQ(settings.value().scale, Scale::SixteenthInch);
    choosePage(static_cast<int>(findPageSize("a4") - pageSizes().data()));
    QTest::mouseClick(labelled<QPushButton>(panel, "Show millimetres"), Qt::LeftButton);
    EXPECT_EQ(settings.value().scale, Scale::WholeMillimetre);
    EXPECT_EQ(settings.value().trimmerStep, Length::millimetres(1));
    EXPECT_EQ(labelled<QPushButton>(panel, "Show millimetres"), nullptr);
}

TEST_F(PagePanelTest, TakesACustomSize) {
    choosePage(-1);
    type(length("Width"), "7 1/2");
    EXPECT_EQ(page().size, (Size{inches(7, 1, 2), inches(12)}));
    session.undoStack().undo();
    EXPECT_EQ(length("Width")->value(), inches(12));
}

TEST_F(PagePanelTest, MakesADoublePageWithAFoldGapAndBack) {
    EXPECT_EQ(length("Fold gap"), nullptr);
    tick("Double page");
    EXPECT_TRUE(page().doublePage);
    type(length("Fold gap"), "1/4");
    EXPECT_EQ(page().foldGap, inches(0, 1, 4));
    tick("Double page");
    EXPECT_FALSE(page().doublePage);
    EXPECT_TRUE(page().foldGap.isZero());
}

TEST_F(PagePanelTest, SetsAllMarginsOrEachAlone) {
    type(length("Margin"), "3/4");
    EXPECT_EQ(page().margins, Margins::all(inches(0, 3, 4)));
    tick("Same on all sides");
    EXPECT_EQ(undoSteps(), 1) << "offering four fields changes nothing";
    type(length("Bottom"), "1");
    EXPECT_EQ(page().margins.bottom, inches(1));
    EXPECT_EQ(page().margins.left, inches(0, 3, 4));
    tick("Same on all sides");
    EXPECT_EQ(page().margins, Margins::all(inches(0, 3, 4)));
}

TEST_F(PagePanelTest, ShowsFourMarginsWhereASketchHasThem) {
    Sketch sketch = blankSketch();
    sketch.page.margins.top = inches(2);
    session.reset(sketch);
    ASSERT_NE(length("Top"), nullptr);
    EXPECT_EQ(length("Top")->value(), inches(2));
    EXPECT_EQ(length("Margin"), nullptr);
}

TEST_F(PagePanelTest, TabGoesDownThePanel) {
    choosePage(-1);
    tick("Double page");
    tick("Same on all sides");
    expectTabGoesDown(panel, control<QComboBox>(panel, "Page size"));
}

TEST_F(PagePanelTest, ForgetsWhatWasTypedForTheSketchBefore) {
    choosePage(-1);
    tick("Same on all sides");
    type(length("Gutter"), "abc");
    session.reset(blankSketch());
    EXPECT_EQ(length("Width"), nullptr);
    EXPECT_NE(length("Margin"), nullptr);
    EXPECT_FALSE(length("Gutter")->hasError());
}

TEST_F(PagePanelTest, TellsBesideTheFieldWhyMarginsAreRefused) {
    const PageSetup before = page();
    type(length("Margin"), "6");
    EXPECT_EQ(page(), before);
    EXPECT_TRUE(length("Margin")->hasError());
    EXPECT_EQ(length("Margin")->value(), inches(0, 1, 2));
}

TEST_F(PagePanelTest, TellsWhyACatalogueSizeIsRefused) {
    type(length("Margin"), "5");
    for (std::size_t i = 0; i < pageSizes().size(); ++i) {
        if (pageSizes()[i].id == "6x8") {
            choosePage(static_cast<int>(i));
        }
    }
    EXPECT_EQ(page().size, inchSize(12, 12));
    EXPECT_EQ(control<QComboBox>(panel, "Page size")->currentIndex(), 0);
    bool told = false;
    for (const QLabel* label : panel.findChildren<QLabel*>()) {
        told |= label->isVisible() && label->text().contains(QStringLiteral("margins must"));
    }
    EXPECT_TRUE(told);
}

TEST_F(PagePanelTest, StepsOfTheGutterAreOneUndo) {
    LengthField* gutter = length("Gutter");
    gutter->setFocus();
    for (int i = 0; i < 3; ++i) {
        QTest::keyClick(gutter->lineEdit(), Qt::Key_Down);
    }
    EXPECT_EQ(page().gutter, inches(0, 1, 16));
    EXPECT_EQ(undoSteps(), 1);
}

TEST_F(PagePanelTest, NamesAndNotesTheSketchAsItIsTyped) {
    auto* name = control<TextField>(panel, "Name");
    name->setFocus();
    QTest::keyClicks(name, QStringLiteral("At the sea"));
    auto* note = control<NoteField>(panel, "Note");
    note->setFocus();
    QTest::keyClicks(note, QStringLiteral("two"));
    QTest::keyClick(note, Qt::Key_Return);
    QTest::keyClicks(note, QStringLiteral("lines"));
    EXPECT_EQ(session.sketch().name, "At the sea");
    EXPECT_EQ(session.sketch().note, "two\nlines");
    EXPECT_EQ(undoSteps(), 2);
    session.undoStack().undo();
    session.undoStack().undo();
    EXPECT_EQ(name->text(), QString());
    EXPECT_EQ(note->toPlainText(), QString());
}

TEST(SavableText, DropsWhatASketchCannotHold) {
    EXPECT_EQ(savableText(QStringLiteral("a\tb\nc\x07"), true), QStringLiteral("a b\nc "));
    EXPECT_EQ(savableText(QStringLiteral("a\nb"), false), QStringLiteral("a b"));
    EXPECT_EQ(savableText(QStringLiteral("Åse – 3½"), false), QStringLiteral("Åse – 3½"));
    const QString long3(20'000, QChar(0x20AC));  // three bytes each
    EXPECT_LE(savableText(long3, true).toUtf8().size(), static_cast<int>(maxTextBytes));
}

}  // namespace
}  // namespace matwright::app
