// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include <QActionGroup>
#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QGuiApplication>
#include <QLineEdit>
#include <QMessageBox>
#include <QMimeData>
#include <QTest>
#include <algorithm>
#include <set>

#include "app/canvas/page_view.h"
#include "app/canvas/ruler.h"
#include "app/panels/piece_panel.h"
#include "tests/app/window/undoable.h"

namespace matwright::app {
namespace {

class Actions : public UndoableTest {
  protected:
    Length left(std::size_t i) const { return trimBounds(piece(i)).left(); }
};

TEST_F(Actions, UndoAndRedoNameTheirStep) {
    EXPECT_FALSE(action("Undo").isEnabled());
    add({block(1, 1)});
    EXPECT_EQ(action("Undo add").iconText(), QStringLiteral("Undo"));
    trigger("Undo add");
    EXPECT_TRUE(sketch().pieces.empty());
    trigger("Redo add");
    EXPECT_EQ(sketch().pieces.size(), 1u);
}

TEST_F(Actions, CopiesPastesWhereItIsSeenAndSelectsThat) {
    add({block(1, 1)});
    trigger("Copy");
    expectUndoable("Paste", [&] { return sketch().pieces.size() == 2; });
    trigger("Paste");
    trigger("Paste");
    ASSERT_EQ(sketch().pieces.size(), 3u);
    const std::set<Length> lefts = {left(0), left(1), left(2)};
    EXPECT_EQ(lefts.size(), 3u);
    EXPECT_EQ(session().onlySelected(), sketch().order.back());
}

TEST_F(Actions, PastesInAnotherWindowAtTheSamePlace) {
    add({block(1, 1)});
    trigger("Copy");
    const Piece original = piece(0);
    work.document.startNew(blankSketch());
    trigger("Paste");
    EXPECT_EQ(piece(0), original);
}

TEST_F(Actions, CanPasteOnlyWhereTheClipboardMayHoldPieces) {
    QGuiApplication::clipboard()->setText(QStringLiteral("a shopping list"));
    EXPECT_FALSE(action("Paste").isEnabled());
    add({block(1, 1)});
    trigger("Copy");
    EXPECT_TRUE(action("Paste").isEnabled());
    QGuiApplication::clipboard()->clear();
    EXPECT_FALSE(action("Paste").isEnabled());
}

TEST_F(Actions, SeeOnceTheWindowIsPaintedWhatWasCopiedBefore) {
    add({block(1, 1)});
    trigger("Copy");
    MainWindow later(work, settings, questions);
    const auto canPaste = [&] {
        return std::ranges::any_of(later.findChildren<QAction*>(), [](const QAction* candidate) {
            return candidate->text() == QStringLiteral("&Paste") && candidate->isEnabled();
        });
    };
    EXPECT_FALSE(canPaste());
    later.show();
    EXPECT_TRUE(QTest::qWaitFor(canPaste, 5'000));
}

TEST_F(Actions, SayWhereAPictureOnTheClipboardHoldsNoPieces) {
    auto* mime = new QMimeData;
    mime->setData(QStringLiteral("image/svg+xml"), "<svg xmlns='http://www.w3.org/2000/svg'/>");
    QGuiApplication::clipboard()->setMimeData(mime);
    trigger("Paste");
    EXPECT_TRUE(sketch().pieces.empty());
    EXPECT_TRUE(says().contains(QStringLiteral("no pieces on the clipboard")));
}

TEST_F(Actions, CutsDuplicatesAndDeletes) {
    add({block(1, 1)});
    expectUndoable("Duplicate", [&] { return sketch().pieces.size() == 2; });
    session().selectAll();
    expectUndoable("Delete", [&] { return sketch().pieces.empty(); });
    session().selectAll();
    trigger("Cut");
    EXPECT_TRUE(sketch().pieces.empty());
    trigger("Paste");
    EXPECT_EQ(sketch().pieces.size(), 1u);
}

TEST_F(Actions, LeavesLockedPiecesAndSaysSo) {
    Piece locked = block(1, 1);
    locked.locked = true;
    add({locked, block(5, 5)});
    trigger("Delete");
    EXPECT_EQ(sketch().pieces.size(), 1u);
    EXPECT_TRUE(says().contains(QStringLiteral("Locked pieces stay")));
}

TEST_F(Actions, SelectsAllAndNothing) {
    add({block(1, 1), block(4, 4)});
    trigger("Select nothing");
    EXPECT_TRUE(session().selection().empty());
    trigger("Select all");
    EXPECT_EQ(session().selection().size(), 2u);
}

TEST_F(Actions, ZoomsAndFits) {
    add({block(1, 1)});
    window.resize(1000, 700);
    window.show();
    window.canvas().setZoom(1);
    trigger("Zoom in");
    EXPECT_GT(window.canvas().zoom(), 1);
    trigger("Zoom out");
    trigger("Zoom out");
    EXPECT_LT(window.canvas().zoom(), 1);
    trigger("True size");
    EXPECT_EQ(window.canvas().zoom(), 1);
    trigger("Fit page");
    const double ofPage = window.canvas().zoom();
    trigger("Fit selection");
    EXPECT_GT(window.canvas().zoom(), ofPage);
    session().clearSelection();
    EXPECT_FALSE(action("Fit selection").isEnabled());
}

TEST_F(Actions, KeepsTheMeasuredScreen) {
    trigger("Measure this screen");
    EXPECT_EQ(settings.value().screenPpi, 0);
    questions.ppiAnswer = 110.5;
    trigger("Measure this screen");
    EXPECT_EQ(settings.value().screenPpi, 110.5);
}

TEST_F(Actions, PickTheTool) {
    using Tool = Canvas::Tool;
    const std::pair<const char*, Tool> tools[] = {
        {"Photo slot", Tool::Photo},      {"Strip", Tool::Strip},
        {"Block", Tool::Block},           {"Title", Tool::Title},
        {"Journaling", Tool::Journaling}, {"Embellishment", Tool::Embellishment},
        {"Select", Tool::Select}};
    for (const auto& [name, tool] : tools) {
        trigger(name);
        EXPECT_EQ(window.canvas().tool(), tool) << name;
        EXPECT_TRUE(action(name).isChecked()) << name;
    }
    for (const char* shape : {"Rectangle", "Rounded rectangle", "Oval", "Six corners"}) {
        window.canvas().setTool(Tool::Select);
        trigger(shape);
        EXPECT_EQ(window.canvas().tool(), Tool::Embellishment);
    }
    window.canvas().setTool(Tool::Select);
    EXPECT_TRUE(action("Select").isChecked());
}

TEST_F(Actions, FollowTheSettingsAndChangeThem) {
    const auto value = [&]() -> const Settings& { return settings.value(); };
    trigger("Half millimetres");
    EXPECT_EQ(value().scale, Scale::HalfMillimetre);
    EXPECT_FALSE(action("Inches to 1/16").isChecked());
    trigger("Half millimetres");  // stays chosen
    EXPECT_TRUE(action("Half millimetres").isChecked());
    trigger("Scale of 1 mm");
    EXPECT_EQ(value().trimmerStep, Length::millimetres(1));
    trigger("Snapping");
    EXPECT_FALSE(value().snapOn);
    trigger("Thirds of the page");
    EXPECT_TRUE(value().snap.thirds);
    trigger("1/2 in");
    EXPECT_EQ(value().snap.gridStep, Length::inches(0, 1, 2));
    trigger("Rulers");
    EXPECT_FALSE(value().rulersShown);
    trigger("Dark");
    EXPECT_EQ(value().theme, Settings::Theme::Dark);

    settings.set(Settings());
    EXPECT_TRUE(action("Snapping").isChecked());
    EXPECT_TRUE(action("Like the system").isChecked());
    EXPECT_TRUE(action("Inches to 1/16").isChecked());
    EXPECT_FALSE(action("Thirds of the page").isChecked());
}

TEST_F(Actions, ChangingTheUnitsTakesTheTrimmersStepAlong) {
    trigger("Whole millimetres");
    EXPECT_EQ(settings.value().trimmerStep, Length::millimetres(1));
    EXPECT_TRUE(action("Scale of 1 mm").isChecked());
    trigger("Inches to 1/32");
    EXPECT_EQ(settings.value().trimmerStep, Length::inches(0, 1, 16));
    trigger("Scale of 1/8 in");
    trigger("Half millimetres");
    EXPECT_EQ(settings.value().trimmerStep, Length::inches(0, 1, 8)) << "the person's own choice";
}

TEST_F(Actions, AskingForAPieceLeadsToItsName) {
    window.show();
    window.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    ASSERT_TRUE(QTest::qWaitFor([this] { return window.findChild<PiecePanel*>() != nullptr; }));
    Piece title = block(1, 1, 5, 1);
    title.kind = PieceKind::Title;
    title.name = "Summer";
    add({title});
    window.canvas().setFocus();
    QTest::keyClick(&window.canvas().page(), Qt::Key_Return);
    const auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(field, nullptr);
    EXPECT_EQ(field->accessibleName(), QStringLiteral("Name"));
    EXPECT_EQ(field->selectedText(), QStringLiteral("Summer"));
    EXPECT_FALSE(field->visibleRegion().isEmpty()) << "scrolled into view";
}

TEST_F(Actions, AreRadioItemsWhereOneOfSeveralIsChosen) {
    for (const char* name : {"Dark", "Inches to 1/16", "Scale of 1 mm", "1/2 in"}) {
        const QActionGroup* group = action(name).actionGroup();
        ASSERT_NE(group, nullptr) << name;
        EXPECT_TRUE(group->isExclusive()) << name;
    }
    EXPECT_EQ(action("Thirds of the page").actionGroup(), nullptr);
    Settings strange = settings.value();
    strange.snap.gridStep = Length::inches(0, 3, 4);  // not in the menu
    settings.set(strange);
    EXPECT_EQ(action("1/2 in").actionGroup()->checkedAction(), nullptr);
}

TEST_F(Actions, ShowAndHideTheRulers) {
    const auto rulersHidden = [&] {
        const auto rulers = window.canvas().findChildren<Ruler*>();
        EXPECT_EQ(rulers.size(), 2);
        return std::ranges::all_of(rulers, &QWidget::isHidden);
    };
    EXPECT_FALSE(rulersHidden());
    trigger("Rulers");
    EXPECT_TRUE(rulersHidden());
    trigger("Rulers");
    EXPECT_FALSE(rulersHidden());
}

TEST_F(Actions, OpenTheirDialogsWithoutWaiting) {
    for (const char* name : {"Keyboard shortcuts", "About Matwright", "Template"}) {
        trigger(name);
        auto* dialog = window.findChild<QDialog*>();
        ASSERT_NE(dialog, nullptr) << name;
        EXPECT_TRUE(dialog->isVisible());
        delete dialog;
    }
}

TEST_F(Actions, SayWhereThePartForTemplatesIsMissing) {
    MainWindow bare(work, settings, questions, inFolder("no parts"));
    bare.showTemplate();
    EXPECT_EQ(bare.findChild<QDialog*>(), nullptr);
    ASSERT_TRUE(questions.wasAsked(QStringLiteral("tell Templates cannot be made: ")));
    EXPECT_TRUE(questions.asked.constLast().contains(QStringLiteral("Install Matwright again")));
}

}  // namespace
}  // namespace matwright::app
