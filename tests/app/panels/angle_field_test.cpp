// SPDX-License-Identifier: MIT
#include "app/panels/angle_field.h"

#include "tests/app/panels/panel_bench.h"

namespace matwright::app {
namespace {

TEST(AngleField, ReadsDegreesAsPeopleWriteThem) {
    AngleField field(QStringLiteral("Rotation"));
    field.show();
    const struct {
        const char* typed;
        int millidegrees;
    } rows[] = {{"7.5", 7500},          {"7,5", 7500},       {"90°", 90'000},
                {"-10", 350'000},       {"360", 0},          {"450", 90'000},
                {"0.0004", 0},          {"6 left", 354'000}, {"6° to the left", 354'000},
                {"12.5 right", 12'500}, {"-6 LEFT", 6000}};
    for (const auto& row : rows) {
        field.lineEdit()->setText(QString::fromUtf8(row.typed));
        field.lineEdit()->setModified(true);
        QTest::keyClick(field.lineEdit(), Qt::Key_Return);
        EXPECT_EQ(field.value().toMillidegrees(), row.millidegrees) << row.typed;
        EXPECT_FALSE(field.hasError()) << row.typed;
    }
}

TEST(AngleField, RefusesWhatIsNoTurn) {
    for (const char* text : {"round", "7.5.1", "inf", "nan", "3601", "1e300", "left", "6 up"}) {
        AngleField field(QStringLiteral("Rotation"));
        field.setValue(Angle::degrees(30));
        field.lineEdit()->setText(QLatin1String(text));
        field.lineEdit()->setModified(true);
        QTest::keyClick(field.lineEdit(), Qt::Key_Return);
        EXPECT_EQ(field.value(), Angle::degrees(30)) << text;
        EXPECT_TRUE(field.hasError()) << text;
    }
}

TEST(AngleField, StepsByOneDegreeAndByFifteenWithShift) {
    AngleField field(QStringLiteral("Rotation"));
    QTest::keyClick(field.lineEdit(), Qt::Key_Down);
    EXPECT_EQ(field.value(), Angle::degrees(359));
    QTest::keyClick(field.lineEdit(), Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_EQ(field.value(), Angle::degrees(14));
}

TEST(AngleField, ShowsTheShortWayRoundAndReadsWhatItShows) {
    AngleField field(QStringLiteral("Rotation"));
    for (const int degrees : {0, 6, 179, 180, 181, 354, 359}) {
        field.setValue(Angle::degrees(degrees));
        EXPECT_EQ(field.lineEdit()->text().toStdString(), turnText(Angle::degrees(degrees)));
        field.lineEdit()->setModified(true);
        field.commitTyped();
        EXPECT_EQ(field.value(), Angle::degrees(degrees)) << degrees;
        EXPECT_FALSE(field.hasError()) << degrees;
    }
}

}  // namespace
}  // namespace matwright::app
