// SPDX-License-Identifier: MIT
#include "app/panels/paper_names.h"

#include <QCompleter>

#include "app/panels/text_field.h"
#include "tests/app/panels/piece_panel_bench.h"

namespace matwright::app {
namespace {

class PaperNamesTest : public PiecePanelTest {
  protected:
    PaperNamesTest() {
        panel.useKnownPapers({[this] {
                                  ++asked;
                                  return QStringList{QStringLiteral("wave print"),
                                                     QStringLiteral("navy")};
                              },
                              [](const QString& name) {
                                  PaperLook look;
                                  look.colour = {static_cast<std::uint8_t>(name.size()), 2, 3};
                                  return std::optional(look);
                              }});
        Piece slot = photoSlot(inchSize(4, 6));
        slot.mats.push_back({Length::inches(0, 1, 8), std::nullopt, "kraft", false});
        fill({block(inchSize(4, 4)), slot});
    }
    TextField* field(const char* name) { return control<TextField>(panel, name); }
    static void offer(TextField* field, const char* letters) {
        field->setFocus(Qt::TabFocusReason);
        field->selectAll();
        QTest::keyClicks(field, QString::fromUtf8(letters));
    }

    int asked = 0;
};

TEST_F(PaperNamesTest, AreOfferedByPartsOfTheirNames) {
    select({1});
    offer(field("Paper"), "AV");
    QCompleter* completer = field("Paper")->completer();
    ASSERT_TRUE(completer->popup()->isVisible());
    EXPECT_EQ(completer->completionCount(), 2);  // wave print, navy
    EXPECT_EQ(asked, 1);
    completer->popup()->hide();
}

TEST_F(PaperNamesTest, OfThePageAreOfferedToo) {
    select({1});
    offer(field("Paper"), "kr");
    EXPECT_EQ(field("Paper")->completer()->currentCompletion(), QStringLiteral("kraft"));
    field("Paper")->completer()->popup()->hide();
}

TEST_F(PaperNamesTest, ChosenOnesCountAsTypedAndBringTheirLook) {
    select({1});
    offer(field("Paper"), "wa");
    QAbstractItemView* popup = field("Paper")->completer()->popup();
    QTest::keyClick(popup, Qt::Key_Down);
    QTest::keyClick(popup, Qt::Key_Return);
    EXPECT_EQ(piece(1).paper, "wave print");
    ASSERT_TRUE(session.work().papers.contains("wave print"));
    EXPECT_EQ(session.work().papers.at("wave print").colour, (Colour{10, 2, 3}));
    EXPECT_FALSE(session.work().papers.contains("wa"));
    session.undoStack().undo();
    EXPECT_EQ(piece(1).paper, "");
    EXPECT_TRUE(session.work().papers.empty());
}

TEST_F(PaperNamesTest, OfMatsBringTheirLookWhenTypedInFull) {
    select({2});
    offer(field("Paper: First mat"), "navy");
    field("Paper: First mat")->completer()->popup()->hide();
    EXPECT_EQ(piece(2).mats[0].paper, "navy");
    EXPECT_TRUE(session.work().papers.contains("navy"));
}

TEST_F(PaperNamesTest, ThePagesOwnLookStays) {
    PhotoEdit own;
    own.papers["navy"] = PaperLook{};
    ASSERT_TRUE(session.perform(own, QStringLiteral("look")));
    select({1});
    offer(field("Paper"), "navy");
    field("Paper")->completer()->popup()->hide();
    EXPECT_EQ(session.work().papers.at("navy"), PaperLook{});
}

}  // namespace
}  // namespace matwright::app
