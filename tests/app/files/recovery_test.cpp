// SPDX-License-Identifier: MIT
#include "app/files/recovery.h"

#include <gtest/gtest.h>
#include <signal.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <iostream>
#include <random>
#include <thread>

#include "app/files/open_work.h"
#include "app/files/paths.h"
#include "core/making/making_edit.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

class Recovery : public testing::Test {
  protected:
    QString folder() const { return m_folder.filePath(QStringLiteral("recovery")); }
    QString original() const { return m_folder.filePath(QStringLiteral("garden.sketch.svg")); }
    QStringList leftFiles() const { return QDir(folder()).entryList(QDir::Files); }
    // Leaves work as a crash does: with nobody who holds its lock.
    void leaveWork(const Sketch& sketch, const QString& originalPath) {
        RecoveryPlace place(folder(), m_files);
        ASSERT_TRUE(place.write({{sketch, {}}, {}, originalPath}));
    }

    QTemporaryDir m_folder;
    DiskFileStore m_files;
};

TEST_F(Recovery, LiesInTheStateFolder) {
    qputenv("XDG_STATE_HOME", "/state");
    EXPECT_EQ(standardRecoveryFolder(), QStringLiteral("/state/matwright/recovery"));
    qputenv("XDG_STATE_HOME", "not/absolute");
    EXPECT_EQ(standardRecoveryFolder(),
              QDir::homePath() + QStringLiteral("/.local/state/matwright/recovery"));
}

TEST_F(Recovery, FindsNothingWhereNothingWasLeft) {
    EXPECT_TRUE(findAbandonedWork(folder()).empty());
    {
        const RecoveryPlace place(folder(), m_files);
    }
    EXPECT_TRUE(findAbandonedWork(folder()).empty());
    EXPECT_TRUE(leftFiles().isEmpty());
}

TEST_F(Recovery, GivesBackWorkAndWhereItBelongs) {
    Sketch sketch = blankSketch();
    sketch.name = "Garden";
    leaveWork(sketch, original());
    auto found = findAbandonedWork(folder());
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].originalPath, original());
    EXPECT_EQ(found[0].shownName(), QStringLiteral("garden"));
    const auto loaded = loadSketch(m_files, toPath(found[0].copyPath));
    ASSERT_TRUE(loaded);
    EXPECT_EQ(loaded->sketch, sketch);
}

TEST_F(Recovery, KeepsAPageInTheMakingWithItsPhotosAndSmallPictures) {
    Making making{blankSketch(), {}};
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.size = {Length::inches(4), Length::inches(6)};
    slot.printSize = slot.size;
    ASSERT_TRUE(apply(making, PageEdit{addPieces(making.sketch, {&slot, 1}), {}}));
    Photo photo;
    photo.path = "/photos/boat.jpg";
    photo.upright = {3024, 4032};
    ASSERT_TRUE(apply(making, PageEdit{{}, addPhotos(making.work, {&photo, 1})}));
    ASSERT_TRUE(apply(making, PageEdit{{}, placePhoto(making, PieceId{1}, PhotoId{1})}));
    const std::string jpeg("\xFF\xD8\xFFsmall\xFF\xD9");
    {
        RecoveryPlace place(folder(), m_files);
        // As a sketch first: of two copies only the later one may be left.
        Making asSketch;
        asSketch.sketch = making.sketch;
        ASSERT_TRUE(place.write({asSketch, {}, original()}));
        ASSERT_TRUE(place.write({making, {{PieceId{1}, jpeg}}, original()}));
    }
    auto found = findAbandonedWork(folder());
    ASSERT_EQ(found.size(), 1u);
    EXPECT_TRUE(found[0].copyPath.endsWith(QStringLiteral(".page.svg")));
    OpenWork work(m_files, folder());
    ASSERT_TRUE(work.document.openRecovered(found[0].copyPath, found[0].originalPath));
    EXPECT_EQ(work.session.making(), making);
    EXPECT_EQ(work.document.keptPictures().find(making, PieceId{1}), jpeg);
    EXPECT_TRUE(work.document.needsName());  // the original is a sketch, and stays one
    throwAway(std::move(found[0]));
    EXPECT_TRUE(findAbandonedWork(folder()).empty());
}

TEST_F(Recovery, CallsWorkThatWasNeverSavedUntitled) {
    leaveWork(blankSketch(), {});
    EXPECT_EQ(findAbandonedWork(folder()).at(0).shownName(), QStringLiteral("Untitled"));
}

TEST_F(Recovery, LeavesRunningSessionsAlone) {
    RecoveryPlace place(folder(), m_files);
    ASSERT_TRUE(place.write({{blankSketch(), {}}, {}, {}}));
    EXPECT_TRUE(findAbandonedWork(folder()).empty());
    // Not even when the session has been running for days.
    const QString lock = QDir(folder()).entryList({QStringLiteral("*.lock")}).at(0);
    QFile file(folder() + u'/' + lock);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.setFileTime(QDateTime::currentDateTime().addDays(-9),
                                 QFileDevice::FileModificationTime));
    EXPECT_TRUE(findAbandonedWork(folder()).empty());
}

TEST_F(Recovery, OffersWorkToOneSessionAtATime) {
    leaveWork(blankSketch(), {});
    {
        const auto first = findAbandonedWork(folder());
        ASSERT_EQ(first.size(), 1u);
        EXPECT_TRUE(findAbandonedWork(folder()).empty());
    }
    EXPECT_EQ(findAbandonedWork(folder()).size(), 1u);
}

TEST_F(Recovery, ThrowsWorkAwayForGood) {
    leaveWork(blankSketch(), original());
    throwAway(std::move(findAbandonedWork(folder()).at(0)));
    EXPECT_TRUE(findAbandonedWork(folder()).empty());
    EXPECT_TRUE(leftFiles().isEmpty());
}

TEST_F(Recovery, OffersTheLatestFirst) {
    for (const char* name : {"/a.sketch.svg", "/b.sketch.svg"}) {
        leaveWork(blankSketch(), QString::fromUtf8(name));
        std::this_thread::sleep_for(std::chrono::milliseconds(15));
    }
    const auto found = findAbandonedWork(folder());
    ASSERT_EQ(found.size(), 2u);
    EXPECT_EQ(found[0].shownName(), QStringLiteral("b"));
}

TEST_F(Recovery, SaysSoWhereTheFolderCannotBeMade) {
    QFile file(folder());  // a file where the folder should be
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    RecoveryPlace place(folder(), m_files);
    const auto written = place.write({{blankSketch(), {}}, {}, {}});
    ASSERT_FALSE(written);
    EXPECT_NE(written.error().sentence.find(folder().toStdString()), std::string::npos);
}

class Crash : public Recovery {
  protected:
    void SetUp() override { ASSERT_TRUE(saveSketch(m_files, toPath(original()), blankSketch())); }

    // Runs a session, lets it write a first copy, goes on for `more` and kills it.
    void crash(std::chrono::microseconds more, int editEvery, int copyAfter) {
        QProcess session;
        session.start(
            QStringLiteral(CRASHING_SESSION),
            {folder(), original(), QString::number(editEvery), QString::number(copyAfter)});
        ASSERT_TRUE(session.waitForStarted());
        ASSERT_TRUE(session.waitForReadyRead(20'000));
        std::this_thread::sleep_for(more);
        ASSERT_EQ(::kill(static_cast<pid_t>(session.processId()), SIGKILL), 0);
        ASSERT_TRUE(session.waitForFinished());
        ASSERT_EQ(session.exitStatus(), QProcess::CrashExit);
    }

    // The recovered sketch is one that the session had at some moment: pieces 0, 1, …, n - 1.
    void expectWholeWork(const QString& copyPath) {
        const auto loaded = loadSketch(m_files, toPath(copyPath));
        ASSERT_TRUE(loaded) << loaded.error().text();
        EXPECT_TRUE(loaded->warnings.empty());
        ASSERT_FALSE(loaded->sketch.order.empty());
        int number = 0;
        for (const PieceId id : loaded->sketch.order) {
            EXPECT_EQ(find(loaded->sketch, id)->place.x, Length::inches(0, 1, 16) * number++);
        }
    }
};

TEST_F(Crash, OffersTheEditsOfAKilledSessionAndOpensThem) {
    crash(std::chrono::milliseconds(60), 5, 20);
    auto found = findAbandonedWork(folder());
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].originalPath, original());
    expectWholeWork(found[0].copyPath);

    OpenWork next(m_files, folder());
    ASSERT_TRUE(next.document.openRecovered(found[0].copyPath, found[0].originalPath));
    EXPECT_FALSE(next.session.isClean());
    EXPECT_FALSE(next.session.sketch().pieces.empty());
    ASSERT_TRUE(next.autosave.writeNow());
    throwAway(std::move(found[0]));
    ASSERT_TRUE(next.document.save());
    // Beside the original, which may have changed since.
    EXPECT_NE(next.document.path(), original());
    EXPECT_FALSE(loadSketch(m_files, toPath(next.document.path()))->sketch.pieces.empty());
    EXPECT_TRUE(findAbandonedWork(folder()).empty());
}

TEST_F(Crash, LeavesWholeWorkAtWhateverMomentItComes) {
    constexpr int crashes = 40;
    constexpr unsigned seed = 20'260'729;
    std::mt19937 random(seed);
    for (int i = 0; i < crashes; ++i) {
        ASSERT_NO_FATAL_FAILURE(crash(std::chrono::microseconds(random() % 8'000), 0, 1));
        auto found = findAbandonedWork(folder());
        ASSERT_EQ(found.size(), 1u) << "crash " << i << ", seed " << seed;
        expectWholeWork(found[0].copyPath);
        throwAway(std::move(found[0]));
    }
    EXPECT_TRUE(findAbandonedWork(folder()).empty());
    EXPECT_TRUE(QDir(folder()).entryList(QDir::Files | QDir::Hidden).isEmpty());
    if (!HasFailure()) {
        std::cout << crashes << " kills while recovery copies were being written: " << crashes
                  << " whole sketches offered\n";
    }
}

}  // namespace
}  // namespace matwright::app
