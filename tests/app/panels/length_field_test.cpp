// SPDX-License-Identifier: MIT
#include "app/panels/length_field.h"

#include <QLabel>
#include <QShortcut>
#include <QSignalSpy>
#include <QVBoxLayout>
#include <QWheelEvent>

#include "tests/app/panels/panel_bench.h"

namespace matwright::app {
namespace {

// One field in a window beside another control, with every change noted.
class LengthFieldTest : public PanelBench {
  protected:
    LengthFieldTest() {
        auto* layout = new QVBoxLayout(&window);
        field = new LengthField(QStringLiteral("Width"));
        layout->addWidget(field);
        layout->addWidget(&other);
        field->setValue(inches(3, 1, 2));
        show(window, {200, 160});
        other.setFocus();
        QObject::connect(field, &LengthField::valueChanged, field,
                         [this](Length to, int gesture) { changes.push_back({to, gesture}); });
    }
    QString shown() const { return field->lineEdit()->text(); }
    void press(Qt::Key key, Qt::KeyboardModifiers with = {}) {
        QTest::keyClick(field->lineEdit(), key, with);
    }

    struct Noted {
        Length to;
        int gesture;
    };
    QWidget window;
    QLineEdit other;
    LengthField* field;
    std::vector<Noted> changes;
};

TEST_F(LengthFieldTest, GoesQuietlyWithTheFocusAndWrongTextInIt) {
    field->lineEdit()->setFocus();
    QTest::keyClicks(field->lineEdit(), "wide");
    press(Qt::Key_Return);
    delete field;
    EXPECT_TRUE(changes.empty());
}

TEST_F(LengthFieldTest, ReadsWhatPeopleWriteToTheTick) {
    const struct {
        const char* typed;
        Length means;
    } rows[] = {{"3 1/4", inches(3, 1, 4)},         {"3-1/8", inches(3, 1, 8)},
                {"4.5", inches(4, 1, 2)},           {"4,25", inches(4, 1, 4)},
                {"89 mm", Length::millimetres(89)}, {"8.9cm", Length::millimetres(89) * 1},
                {"1/32\"", inches(0, 1, 32)}};
    for (const auto& row : rows) {
        type(field, row.typed);
        EXPECT_EQ(field->value(), row.means) << row.typed;
    }
    ASSERT_EQ(changes.size(), std::size(rows) - 1) << "8.9cm after 89 mm is no change";
    EXPECT_EQ(changes.front().gesture, 0) << "typing stands alone in the undo stack";
}

TEST_F(LengthFieldTest, MarksARoundedFigureAndShowsItExactlyToBeEdited) {
    field->setValue(Length::millimetres(89));
    EXPECT_EQ(shown(), QStringLiteral("≈3 1/2 in"));
    field->setFocus();
    EXPECT_EQ(shown(), QStringLiteral("89 mm"));
    other.setFocus();
    EXPECT_EQ(shown(), QStringLiteral("≈3 1/2 in"));
    EXPECT_EQ(field->value(), Length::millimetres(89));
    EXPECT_TRUE(changes.empty()) << "entering and leaving changes nothing";
}

TEST_F(LengthFieldTest, FollowsTheScale) {
    field->setScale(Scale::WholeMillimetre);
    EXPECT_EQ(shown(), QStringLiteral("≈89 mm"));
    type(field, "90");
    EXPECT_EQ(field->value(), Length::millimetres(90)) << "a bare number takes the scale's unit";
}

TEST_F(LengthFieldTest, CommitsOnLeaving) {
    field->setFocus();
    field->lineEdit()->selectAll();
    QTest::keyClicks(field->lineEdit(), QStringLiteral("5"));
    EXPECT_TRUE(changes.empty());
    other.setFocus();
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes[0].to, inches(5));
}

TEST_F(LengthFieldTest, EscapePutsTheOldFigureBack) {
    type(field, "7 1/2", Qt::Key_Escape);
    EXPECT_EQ(shown(), QStringLiteral("3 1/2 in"));
    other.setFocus();
    EXPECT_TRUE(changes.empty());
}

TEST_F(LengthFieldTest, AnswersWrongTextWithASentenceAndKeepsTheValue) {
    type(field, "abc");
    EXPECT_EQ(field->value(), inches(3, 1, 2));
    EXPECT_TRUE(changes.empty());
    EXPECT_EQ(shown(), QStringLiteral("abc")) << "the text stays to be mended";
    EXPECT_TRUE(field->errorText().contains(QStringLiteral("abc")));
    EXPECT_EQ(field->lineEdit()->accessibleDescription(), field->errorText());
    bool sentenceIsVisible = false;
    for (const QLabel* label : field->findChildren<QLabel*>()) {
        sentenceIsVisible |= label->isVisible() && label->text() == field->errorText();
    }
    EXPECT_TRUE(sentenceIsVisible);
    press(Qt::Key_Escape);
    EXPECT_FALSE(field->hasError());
    EXPECT_EQ(shown(), QStringLiteral("3 1/2 in"));
    EXPECT_TRUE(field->lineEdit()->accessibleDescription().isEmpty());
}

TEST_F(LengthFieldTest, TheSentenceIsWholeAndBeneathTheField) {
    type(field, "zzz");
    QTest::qWait(20);
    const auto* label = field->findChild<QLabel*>();
    EXPECT_GE(label->height(), label->heightForWidth(label->width()));
    EXPECT_GE(label->y(), field->lineEdit()->geometry().bottom());
    EXPECT_LE(label->geometry().bottom(), field->height());
}

TEST_F(LengthFieldTest, WhatTheOwnerRefusesStaysToBeMendedUntilTheOldValueIsBack) {
    QObject::connect(field, &LengthField::valueChanged, field, [this](Length to) {
        if (to > inches(6)) {
            field->setValue(inches(3, 1, 2));
            field->showError(QStringLiteral("Too wide for the page."));
        }
    });
    type(field, "9");
    EXPECT_TRUE(field->hasError());
    EXPECT_EQ(shown(), QStringLiteral("9"));
    type(field, "3 1/2");
    EXPECT_FALSE(field->hasError());
    type(field, "9");
    press(Qt::Key_Escape);
    EXPECT_FALSE(field->hasError());
    EXPECT_EQ(shown(), QStringLiteral("3 1/2 in"));
}

TEST_F(LengthFieldTest, WrongTextMendedIsTaken) {
    type(field, "4 1/");
    EXPECT_TRUE(field->hasError());
    QTest::keyClick(field->lineEdit(), Qt::Key_2);
    press(Qt::Key_Return);
    EXPECT_FALSE(field->hasError());
    EXPECT_EQ(field->value(), inches(4, 1, 2));
}

TEST_F(LengthFieldTest, HoldsTheRangeBothEndsIncluded) {
    field->setRange(inches(1), inches(10));
    const struct {
        Length typed;
        bool taken;
    } rows[] = {{inches(1), true},
                {inches(10), true},
                {inches(1) - inches(0, 1, 64), false},
                {inches(10) + inches(0, 1, 64), false}};
    for (const auto& row : rows) {
        type(field, exactText(row.typed).c_str());
        EXPECT_EQ(field->value() == row.typed, row.taken) << exactText(row.typed);
        EXPECT_EQ(field->hasError(), !row.taken);
    }
}

TEST_F(LengthFieldTest, StepsByTheScaleAndEightTimesAsFarWithShift) {
    field->setFocus();
    press(Qt::Key_Up);
    EXPECT_EQ(field->value(), inches(3, 9, 16));
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    EXPECT_EQ(field->value(), inches(3, 7, 16));
    press(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(field->value(), inches(3, 15, 16));
    ASSERT_EQ(changes.size(), 4U);
    EXPECT_GT(changes[0].gesture, 0);
    EXPECT_EQ(changes[0].gesture, changes[3].gesture) << "one burst, one gesture";
}

TEST_F(LengthFieldTest, AStepTakesWhatIsTypedFirst) {
    field->setFocus();
    field->lineEdit()->selectAll();
    QTest::keyClicks(field->lineEdit(), QStringLiteral("6"));
    press(Qt::Key_Up);
    EXPECT_EQ(field->value(), inches(6, 1, 16));
}

TEST_F(LengthFieldTest, ABurstEndsWithTheFocusAndWithAChangeFromOutside) {
    field->setFocus();
    press(Qt::Key_Up);
    other.setFocus();
    field->setFocus();
    press(Qt::Key_Up);
    field->setValue(inches(1));
    press(Qt::Key_Up);
    ASSERT_EQ(changes.size(), 3U);
    EXPECT_NE(changes[0].gesture, changes[1].gesture);
    EXPECT_NE(changes[1].gesture, changes[2].gesture);
}

TEST_F(LengthFieldTest, StepsStopAtTheRange) {
    field->setRange(inches(3), inches(3, 1, 2));
    field->setFocus();
    press(Qt::Key_Up);
    EXPECT_TRUE(changes.empty());
    press(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(field->value(), inches(3));
}

TEST_F(LengthFieldTest, TheWheelStepsOnlyWithTheFocus) {
    const auto turn = [this] {
        const QPointF at(field->lineEdit()->rect().center());
        QWheelEvent event(at, field->lineEdit()->mapToGlobal(at), {}, {0, 120}, Qt::NoButton,
                          Qt::NoModifier, Qt::NoScrollPhase, false);
        QCoreApplication::sendEvent(field->lineEdit(), &event);
    };
    turn();
    EXPECT_TRUE(changes.empty());
    field->setFocus();
    turn();
    EXPECT_EQ(field->value(), inches(3, 9, 16));
}

TEST_F(LengthFieldTest, ShowsThatPiecesDifferUntilSomethingIsTyped) {
    field->setMixed();
    EXPECT_TRUE(shown().isEmpty());
    EXPECT_FALSE(field->lineEdit()->placeholderText().isEmpty());
    field->setFocus();
    press(Qt::Key_Up);
    press(Qt::Key_Return);
    EXPECT_TRUE(changes.empty()) << "nothing typed, nothing to step from";
    type(field, "3 1/2");
    ASSERT_EQ(changes.size(), 1U) << "the value of one is a change for the others";
    EXPECT_FALSE(field->isMixed());
}

TEST_F(LengthFieldTest, TypingSurvivesARefreshWithTheSameValueOnly) {
    field->setFocus();
    field->lineEdit()->selectAll();
    QTest::keyClicks(field->lineEdit(), QStringLiteral("12"));
    field->setValue(inches(3, 1, 2));
    EXPECT_EQ(shown(), QStringLiteral("12"));
    field->setValue(inches(4));
    EXPECT_EQ(shown(), QStringLiteral("4 in"));
    EXPECT_TRUE(changes.empty());
}

TEST_F(LengthFieldTest, UndoIsTheWindowsUnlessSomethingIsTyped) {
    int undone = 0;
    QShortcut undo(QKeySequence::Undo, &window);
    QObject::connect(&undo, &QShortcut::activated, &window, [&] { ++undone; });
    type(field, "5");
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone, 1);
    QTest::keyClicks(field->lineEdit(), QStringLiteral("7"));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(undone, 1);
}

TEST_F(LengthFieldTest, AShortcutOfTheWindowSeesWhatWasTyped) {
    Length seen;
    QShortcut save(QKeySequence(QStringLiteral("Ctrl+S")), &window);
    QObject::connect(&save, &QShortcut::activated, &window, [&] { seen = field->value(); });
    field->setFocus();
    field->lineEdit()->selectAll();
    QTest::keyClicks(field->lineEdit(), QStringLiteral("5 1/2"));
    press(Qt::Key_S, Qt::ControlModifier);
    EXPECT_EQ(seen, inches(5, 1, 2));
}

TEST_F(LengthFieldTest, IsTallEnoughToHit) {
    EXPECT_GE(field->lineEdit()->height(), 24);
}

TEST(SteppedLength, GoesToTheNextMultipleFromBetweenTwo) {
    const Length step = inches(0, 1, 16);
    const Length off = inches(1) + Length::fromTicks(1);
    const struct {
        Length from;
        int count;
        Length to;
    } rows[] = {{inches(1), 1, inches(1, 1, 16)}, {inches(1), -1, inches(0, 15, 16)},
                {off, 1, inches(1, 1, 16)},       {off, -1, inches(1)},
                {off, 2, inches(1, 2, 16)},       {off, -2, inches(0, 15, 16)},
                {-off, -1, -inches(1, 1, 16)},    {-off, 1, -inches(1)},
                {inches(0), 0, inches(0)}};
    for (const auto& row : rows) {
        EXPECT_EQ(steppedLength(row.from, step, row.count), row.to)
            << exactText(row.from) << " by " << row.count;
    }
}

}  // namespace
}  // namespace matwright::app
