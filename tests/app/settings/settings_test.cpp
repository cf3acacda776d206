// SPDX-License-Identifier: MIT
#include "app/settings/settings.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <cmath>
#include <limits>

#include "app/settings/settings_file.h"

namespace matwright::app {
namespace {

class SettingsFile : public testing::Test {
  protected:
    QString path() const { return m_folder.filePath(QStringLiteral("settings.ini")); }
    void write(const QByteArray& bytes) const {
        QFile file(path());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        ASSERT_EQ(file.write(bytes), bytes.size());
    }

  private:
    QTemporaryDir m_folder;
};

Settings unusualSettings() {
    Settings settings;
    settings.scale = Scale::HalfMillimetre;
    settings.snapOn = false;
    settings.snap = {.pageEdges = false,
                     .margins = false,
                     .pageCentres = false,
                     .thirds = true,
                     .grid = true,
                     .neighbourEdges = false,
                     .neighbourCentres = false,
                     .gutter = false,
                     .equalGaps = false,
                     .matEdges = false,
                     .gridStep = Length::millimetres(7),
                     .reach = Length::inches(0, 3, 16),
                     .scale = Scale::HalfMillimetre};
    settings.trimmerStep = Length::millimetres(1);
    settings.theme = Settings::Theme::Dark;
    settings.rulersShown = false;
    settings.screenPpi = 109.25;
    settings.sheetId = "a3";
    settings.printerMargin = Length::millimetres(5);
    settings.overlap = Length::inches(0, 1, 2);
    settings.templateTiled = true;
    settings.recentFiles = {QStringLiteral("/home/me/a, b; c.sketch.svg"),
                            QStringLiteral("/home/me/\u00e4\u00f6\u00fc \"x\".sketch.svg")};
    return settings;
}

TEST_F(SettingsFile, StartsWithTheDefaultsWhereThereIsNoFile) {
    EXPECT_EQ(SettingsStore(path()).value(), Settings());
}

TEST_F(SettingsFile, GivesEverySettingBackToTheNextSession) {
    const Settings settings = unusualSettings();
    SettingsStore(path()).set(settings);
    EXPECT_EQ(SettingsStore(path()).value(), settings);
}

TEST_F(SettingsFile, TellsOfAChangeOnceAndOnlyOfAChange) {
    SettingsStore store(path());
    const QSignalSpy changes(&store, &SettingsStore::changed);
    store.set(Settings());
    EXPECT_EQ(changes.count(), 0);
    store.set(unusualSettings());
    store.set(unusualSettings());
    EXPECT_EQ(changes.count(), 1);
}

TEST_F(SettingsFile, TakesNonsenseAsNotSet) {
    write(
        "scale=furlongs\ntheme=7\nscreen-ppi=nan\ntrimmer-step=-3\nrecent-files=\n"
        "[snap]\non=perhaps\nmargins=2\ngrid-step=1e300\nreach=\xff\xfe\n"
        "[template]\nsheet=../../etc\nprinter-margin=99\noverlap=a, b, c\ntiled=@Invalid()\n");
    EXPECT_EQ(SettingsStore(path()).value(), Settings());
}

TEST_F(SettingsFile, TakesAFileThatIsNoIniFileAsEmpty) {
    write(QByteArray("\x89PNG\r\n\x1a\n\0\0\0\rIHDR[[[\0%", 22));
    EXPECT_EQ(SettingsStore(path()).value(), Settings());
}

TEST_F(SettingsFile, ReadsLengthsAsAPersonTypesThem) {
    write("trimmer-step=1 mm\n[template]\nprinter-margin=3/8\noverlap=\"0,5\"\n");
    const SettingsStore store(path());
    EXPECT_EQ(store.value().trimmerStep, Length::millimetres(1));
    EXPECT_EQ(store.value().printerMargin, Length::inches(0, 3, 8));
    EXPECT_EQ(store.value().overlap, Length::inches(0, 1, 2));
}

TEST_F(SettingsFile, KeepsWindowStatesAsTheyWere) {
    const QByteArray bytes("\0\1\xff geometry", 12);
    SettingsStore(path()).setWindowState(QStringLiteral("geometry"), bytes);
    EXPECT_EQ(SettingsStore(path()).windowState(QStringLiteral("geometry")), bytes);
    EXPECT_TRUE(SettingsStore(path()).windowState(QStringLiteral("docks")).isEmpty());
}

TEST(MadeSound, LeavesSoundSettingsAlone) {
    EXPECT_EQ(madeSound(Settings()), Settings());
    EXPECT_EQ(madeSound(unusualSettings()), unusualSettings());
}

TEST(MadeSound, KeepsLengthsAtTheirBounds) {
    Settings settings;
    settings.printerMargin = Length();
    settings.overlap = Length::inches(2);
    EXPECT_EQ(madeSound(settings), settings);
    settings.printerMargin = Length::fromTicks(-1);
    settings.overlap = Length::inches(2) + Length::fromTicks(1);
    EXPECT_EQ(madeSound(settings), Settings());
}

TEST(MadeSound, TakesAnImpossibleScreenAsUnmeasured) {
    for (const double ppi : {-1.0, 19.9, 1000.1, std::numeric_limits<double>::infinity(),
                             std::numeric_limits<double>::quiet_NaN()}) {
        Settings settings;
        settings.screenPpi = ppi;
        EXPECT_EQ(madeSound(settings).screenPpi, 0) << ppi;
    }
}

TEST(MadeSound, LetsTheSnapWordsFollowTheScale) {
    Settings settings;
    settings.scale = Scale::WholeMillimetre;
    EXPECT_EQ(madeSound(settings).snap.scale, Scale::WholeMillimetre);
}

TEST(MadeSound, KeepsTheLatestTenFilesOnce) {
    Settings settings;
    for (int i = 0; i < 12; ++i) {
        settings.recentFiles << QStringLiteral("/f%1").arg(i) << QStringLiteral("/f0") << QString();
    }
    const QStringList kept = madeSound(settings).recentFiles;
    ASSERT_EQ(kept.size(), 10);
    EXPECT_EQ(kept.first(), QStringLiteral("/f0"));
    EXPECT_EQ(kept.last(), QStringLiteral("/f9"));
}

TEST(WithScale, TakesTheTrimmersUsualStepAlongAndKeepsOneThatWasChosen) {
    Settings settings;
    settings = withScale(settings, Scale::HalfMillimetre);
    EXPECT_EQ(settings.scale, Scale::HalfMillimetre);
    EXPECT_EQ(settings.trimmerStep, Length::millimetres(1));
    settings = withScale(settings, Scale::EighthInch);
    EXPECT_EQ(settings.trimmerStep, Length::inches(0, 1, 16));
    settings.trimmerStep = Length::inches(0, 1, 32);
    EXPECT_EQ(withScale(settings, Scale::WholeMillimetre).trimmerStep, Length::inches(0, 1, 32));
}

TEST_F(SettingsFile, TellsTheChosenLibraryWithoutAWindow) {
    EXPECT_EQ(chosenLibraryFolder(path()), "");
    for (const char* folder : {"/home/ann/Sketches", "/media/a, b; c/Mes idées"}) {
        SettingsStore store(path());
        Settings settings = store.value();
        settings.libraryFolder = QString::fromUtf8(folder);
        store.set(settings);
        EXPECT_EQ(chosenLibraryFolder(path()), folder);
    }
}

}  // namespace
}  // namespace matwright::app
