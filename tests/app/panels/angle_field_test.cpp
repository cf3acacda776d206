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
    } rows[] = {{"7.5", 7500}, {"7,5", 7500},   {"90°", 90'000}, {"-10", 350'000},
                {"360", 0},    {"450", 90'000}, {"0.0004", 0}};
    for (const auto& row : rows) {
        field.lineEdit()->setText(QString::fromUtf8(row.typed));
        field.lineEdit()->setModified(true);
        QTest::keyClick(field.lineEdit(), Qt::Key_Return);
        EXPECT_EQ(field.value().toMillidegrees(), row.millidegrees) << row.typed;
        EXPECT_FALSE(field.hasError()) << row.typed;
    }
}

TEST(AngleField, RefusesWhatIsNoTurn) {
    for (const char* text : {"round", "7.5.1", "inf", "nan", "3601", "1e300"}) {
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

}  // namespace
}  // namespace matwright::app
