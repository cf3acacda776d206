// SPDX-License-Identifier: MIT
#include "app/files/autosave.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/files/open_work.h"
#include "app/files/paths.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

using std::chrono::milliseconds;

class AutosaveTest : public testing::Test {
  protected:
    explicit AutosaveTest(Autosave::Pace pace = {milliseconds(5), milliseconds(50)})
        : m_work(m_files, m_folder.filePath(QStringLiteral("recovery")), pace) {}

    void edit() {
        Piece piece;
        piece.size = {Length::inches(1), Length::inches(1)};
        ASSERT_TRUE(m_work.session.perform(addPieces(m_work.session.sketch(), {&piece, 1}), {}));
    }
    QString copyPath() const {
        const QDir dir(m_work.recoveryFolder);
        const QStringList names = dir.entryList({QStringLiteral("*.sketch.svg")});
        return names.isEmpty() ? QString() : dir.filePath(names.first());
    }
    std::size_t copiedPieces() {
        const auto loaded = loadSketch(m_files, toPath(copyPath()));
        return loaded ? loaded->sketch.pieces.size() : 0;
    }
    bool waitForCopyOf(std::size_t pieces) {
        return QTest::qWaitFor([&] { return copiedPieces() == pieces; }, 5'000);
    }

    QTemporaryDir m_folder;
    DiskFileStore m_files;
    OpenWork m_work;
};

TEST_F(AutosaveTest, CopiesTheWorkSoonAfterAChange) {
    EXPECT_TRUE(copyPath().isEmpty());
    edit();
    EXPECT_TRUE(copyPath().isEmpty());
    EXPECT_TRUE(waitForCopyOf(1));
    edit();
    EXPECT_TRUE(waitForCopyOf(2));
}

TEST_F(AutosaveTest, TakesSelectingAsNoChange) {
    edit();
    ASSERT_TRUE(waitForCopyOf(1));
    QFile::remove(copyPath());
    m_work.session.selectAll();
    m_work.session.clearSelection();
    QTest::qWait(100);
    EXPECT_TRUE(copyPath().isEmpty());
}

TEST_F(AutosaveTest, DropsTheCopyOnceTheWorkIsSaved) {
    edit();
    ASSERT_TRUE(waitForCopyOf(1));
    ASSERT_TRUE(m_work.document.saveAs(m_folder.filePath(QStringLiteral("a.sketch.svg"))));
    EXPECT_TRUE(copyPath().isEmpty());
    QTest::qWait(100);
    EXPECT_TRUE(copyPath().isEmpty());
}

TEST_F(AutosaveTest, DropsTheCopyWhenUndoneToWhatWasSaved) {
    edit();
    ASSERT_TRUE(waitForCopyOf(1));
    m_work.session.undoStack().undo();
    EXPECT_TRUE(copyPath().isEmpty());
}

TEST_F(AutosaveTest, CopiesWorkThatIsUnsavedWithoutAnEdit) {
    m_work.session.markUnsaved();
    EXPECT_TRUE(QTest::qWaitFor([&] { return !copyPath().isEmpty(); }, 5'000));
}

TEST_F(AutosaveTest, KeepsTheCopyWhenSavingFails) {
    edit();
    ASSERT_TRUE(waitForCopyOf(1));
    EXPECT_FALSE(m_work.document.saveAs(m_folder.filePath(QStringLiteral("gone/a.sketch.svg"))));
    EXPECT_EQ(copiedPieces(), 1u);
}

TEST_F(AutosaveTest, WritesAtOnceWhenAsked) {
    edit();
    ASSERT_TRUE(m_work.autosave.writeNow());
    EXPECT_EQ(copiedPieces(), 1u);
    m_work.autosave.discard();
    EXPECT_TRUE(copyPath().isEmpty());
}

class SlowAutosave : public AutosaveTest {
  protected:
    SlowAutosave() : AutosaveTest({milliseconds(400), milliseconds(900)}) {}
};

TEST_F(SlowAutosave, DoesNotWaitForeverWhileChangesKeepComing) {
    QElapsedTimer clock;
    clock.start();
    while (copyPath().isEmpty() && clock.elapsed() < 5'000) {
        edit();
        QTest::qWait(20);
    }
    // Not after the first pause (there is none), and long before the changes end.
    EXPECT_GE(clock.elapsed(), 850);
    EXPECT_LT(clock.elapsed(), 5'000);
}

TEST(FailingAutosave, TellsOnceUntilItWorksAgain) {
    const QTemporaryDir folder;
    MemoryFileStore files;
    files.failReplacesWith = Error{ErrorCode::WriteFailed, "The disk is full.", {}};
    OpenWork work(files, folder.filePath(QStringLiteral("r")), {milliseconds(1), milliseconds(5)});
    const QSignalSpy failures(&work.autosave, &Autosave::failed);
    const auto editAndWait = [&work] {
        work.session.markUnsaved();
        QTest::qWait(60);
    };
    editAndWait();
    editAndWait();
    ASSERT_EQ(failures.count(), 1);
    EXPECT_TRUE(failures.at(0).at(0).toString().contains(QStringLiteral("The disk is full.")));
    EXPECT_FALSE(work.session.isClean());
}

TEST(FailingAutosave, SaysWhenTheWorkIsSafeAgainAndThenTellsAnew) {
    const QTemporaryDir folder;
    MemoryFileStore files;
    const Error full{ErrorCode::WriteFailed, "The disk is full.", {}};
    OpenWork work(files, folder.filePath(QStringLiteral("r")));
    const QSignalSpy failures(&work.autosave, &Autosave::failed);
    const QSignalSpy recoveries(&work.autosave, &Autosave::safeAgain);
    work.session.markUnsaved();
    ASSERT_TRUE(work.autosave.writeNow());
    EXPECT_EQ(recoveries.count(), 0);  // it had not failed

    files.failReplacesWith = full;
    EXPECT_FALSE(work.autosave.writeNow());
    files.failReplacesWith.reset();
    EXPECT_TRUE(work.autosave.writeNow());
    EXPECT_EQ(failures.count(), 1);
    EXPECT_EQ(recoveries.count(), 1);

    files.failReplacesWith = full;
    EXPECT_FALSE(work.autosave.writeNow());
    EXPECT_EQ(failures.count(), 2);
    work.session.setClean();  // saved: nothing is at risk
    EXPECT_EQ(recoveries.count(), 2);
}

}  // namespace
}  // namespace matwright::app
