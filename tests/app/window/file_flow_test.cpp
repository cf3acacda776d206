// SPDX-License-Identifier: MIT
#include "app/window/file_flow.h"

#include <gtest/gtest.h>

#include <QCloseEvent>
#include <QDir>
#include <QDockWidget>
#include <QFile>
#include <QMenu>
#include <QTest>

#include "app/files/paths.h"
#include "app/panels/checks_panel.h"
#include "app/printing/template_dialog.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/app/window/window_fixture.h"

namespace matwright::app {
namespace {

using Unsaved = Questions::UnsavedChoice;

class FileFlowTest : public WindowTest {
  protected:
    std::size_t savedPieces(const char* name) {
        const auto loaded = loadSketch(files, toPath(inFolder(name)));
        return loaded ? loaded->sketch.pieces.size() : 999;
    }
    void writeFile(const char* name, const QByteArray& bytes) {
        QFile file(inFolder(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    QStringList recoveryCopies() const {
        return QDir(work.recoveryFolder).entryList({QStringLiteral("*.sketch.svg")});
    }
};

TEST_F(FileFlowTest, StartsOnABlankTwelveInchPage) {
    EXPECT_EQ(sketch(), blankSketch());
    EXPECT_TRUE(window.windowTitle().startsWith(QStringLiteral("Untitled")));
    EXPECT_FALSE(window.isWindowModified());
}

TEST_F(FileFlowTest, StartsANewSketchOnTheChosenPage) {
    PageSetup page;
    page.size = {Length::inches(8), Length::inches(8)};
    questions.pageAnswer = page;
    trigger("New");
    EXPECT_EQ(sketch().page, page);
    EXPECT_FALSE(questions.wasAsked(QStringLiteral("unsaved")));
}

TEST_F(FileFlowTest, GoesOnInTheUnitsChosenWithTheNewPage) {
    questions.pageAnswer = PageSetup();
    questions.scaleAnswer = Scale::WholeMillimetre;
    trigger("New");
    EXPECT_EQ(settings.value().scale, Scale::WholeMillimetre);
    EXPECT_EQ(settings.value().trimmerStep, Length::millimetres(1));
}

TEST_F(FileFlowTest, AsksBeforeUnsavedWorkIsGivenUp) {
    add({block(1, 1)});
    EXPECT_TRUE(window.isWindowModified());
    questions.pageAnswer = PageSetup();
    trigger("New");  // cancelled
    EXPECT_EQ(sketch().pieces.size(), 1u);
    trigger("Open");
    EXPECT_EQ(sketch().pieces.size(), 1u);
    EXPECT_FALSE(window.close());
    EXPECT_EQ(questions.asked.filter(QStringLiteral("unsaved Untitled")).size(), 3);
    questions.unsavedAnswer = Unsaved::DontSave;
    trigger("New");
    EXPECT_TRUE(sketch().pieces.empty());
}

TEST_F(FileFlowTest, SavesFirstWhereThatIsTheAnswer) {
    add({block(1, 1)});
    questions.unsavedAnswer = Unsaved::Save;
    questions.saveAnswer = inFolder("one");
    questions.pageAnswer = PageSetup();
    trigger("New");
    EXPECT_EQ(savedPieces("one.sketch.svg"), 1u);
    EXPECT_TRUE(sketch().pieces.empty());
}

TEST_F(FileFlowTest, ATemplateIsSavedBesideItsSketchToBeginWith) {
    add({block(1, 1)});
    questions.saveAnswer = inFolder("one");
    trigger("Save");
    window.showTemplate();
    const auto* dialog = window.findChild<TemplateDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->suggestedName(), inFolder("one"));
}

TEST_F(FileFlowTest, TheTemplateLeadsToTheChecks) {
    window.show();  // the panels come after the first paint
    ChecksPanel* checks = nullptr;
    ASSERT_TRUE(QTest::qWaitFor([&] {
        checks = window.findChild<ChecksPanel*>();
        return checks != nullptr;
    }));
    auto* dock = qobject_cast<QDockWidget*>(checks->parentWidget());
    ASSERT_TRUE(dock);
    dock->hide();
    window.showTemplate();
    emit window.findChild<TemplateDialog*>()->checksRequested();
    EXPECT_FALSE(dock->isHidden());
}

TEST_F(FileFlowTest, StaysWhenSavingFirstIsCancelled) {
    add({block(1, 1)});
    questions.unsavedAnswer = Unsaved::Save;
    EXPECT_FALSE(window.close());
    EXPECT_EQ(sketch().pieces.size(), 1u);
}

TEST_F(FileFlowTest, SavesUnderAChosenNameThenWithoutAsking) {
    add({block(1, 1)});
    questions.saveAnswer = inFolder("garden");
    trigger("Save");
    EXPECT_EQ(savedPieces("garden.sketch.svg"), 1u);
    EXPECT_TRUE(window.windowTitle().startsWith(QStringLiteral("garden")));
    EXPECT_FALSE(window.isWindowModified());
    questions.asked.clear();
    add({block(5, 5)});
    trigger("Save");
    EXPECT_EQ(savedPieces("garden.sketch.svg"), 2u);
    EXPECT_TRUE(questions.asked.isEmpty());
    EXPECT_EQ(settings.value().recentFiles, QStringList(inFolder("garden.sketch.svg")));
}

TEST_F(FileFlowTest, AsksBeforeAFileItAddedTheSuffixToIsReplaced) {
    writeFile("garden.sketch.svg", "mine");
    questions.saveAnswer = inFolder("garden");
    trigger("Save as");
    EXPECT_TRUE(questions.wasAsked(QStringLiteral("replace ")));
    EXPECT_EQ(savedPieces("garden.sketch.svg"), 999u);
    questions.replaceAnswer = true;
    trigger("Save as");
    EXPECT_EQ(savedPieces("garden.sketch.svg"), 0u);
}

TEST_F(FileFlowTest, KeepsBothWhereSomebodyElseHasChangedTheFile) {
    questions.saveAnswer = inFolder("garden");
    trigger("Save");
    writeFile("garden.sketch.svg", "theirs");
    add({block(1, 1)});
    trigger("Save");
    EXPECT_TRUE(questions.wasAsked(QStringLiteral("tell Both are kept")));
    EXPECT_EQ(savedPieces("garden.sketch.svg"), 999u);
    EXPECT_EQ(savedPieces("garden (2).sketch.svg"), 1u);
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_EQ(work.document.path(), inFolder("garden (2).sketch.svg"));
    add({block(5, 5)});
    trigger("Save");
    EXPECT_EQ(savedPieces("garden (2).sketch.svg"), 2u);
}

TEST_F(FileFlowTest, SuggestsTheLibraryAndTheSketchesOwnNameForWorkNeverSaved) {
    Settings chosen = settings.value();
    chosen.libraryFolder = inFolder("my library");
    settings.set(chosen);
    ASSERT_TRUE(QDir().mkpath(chosen.libraryFolder));
    Sketch named = blankSketch();
    named.name = "Spring/summer, page";
    work.document.startNew(std::move(named));
    trigger("Save as");
    EXPECT_EQ(questions.asked.last(),
              QStringLiteral("save ") + inFolder("my library/Spring-summer, page.sketch.svg"));
}

TEST_F(FileFlowTest, KeepsWorkOpenUnsavedAndCopiedWhenTheFolderIsGone) {
    add({block(1, 1)});
    questions.saveAnswer = inFolder("gone/garden");
    trigger("Save");
    EXPECT_TRUE(questions.wasAsked(QStringLiteral("tell The sketch could not be saved")));
    EXPECT_TRUE(questions.asked.last().contains(QStringLiteral("still open and unsaved")));
    EXPECT_TRUE(window.isWindowModified());
    EXPECT_EQ(sketch().pieces.size(), 1u);
    EXPECT_EQ(recoveryCopies().size(), 1);
}

TEST_F(FileFlowTest, SaysThatNothingIsLostWhenSavingSavedWorkElsewhereFails) {
    questions.saveAnswer = inFolder("garden");
    trigger("Save");
    questions.saveAnswer = inFolder("gone/garden");
    trigger("Save as");
    EXPECT_TRUE(questions.asked.last().contains(QStringLiteral("nothing in it is lost")));
    EXPECT_FALSE(questions.asked.last().contains(QStringLiteral("unsaved")));
    EXPECT_TRUE(recoveryCopies().isEmpty());
}

TEST_F(FileFlowTest, DoesNotAskForAnEndingThatTheFileHas) {
    writeFile("broken.sketch.svg", "<svg xmlns='http://www.w3.org/2000/svg'/>");
    EXPECT_FALSE(window.files().open(inFolder("broken.sketch.svg")));
    EXPECT_FALSE(questions.asked.last().contains(QStringLiteral("ends in")));
    EXPECT_TRUE(questions.asked.last().contains(QStringLiteral("no page in it and no sketch")));
}

TEST_F(FileFlowTest, SaysSoWhenThereIsNoRecoveredWork) {
    trigger("Recovered work");
    EXPECT_TRUE(questions.asked.isEmpty());
    EXPECT_TRUE(says().startsWith(QStringLiteral("There is no recovered work")));
}

TEST_F(FileFlowTest, KeepsWarningWhileUnsavedWorkIsNotKeptSafe) {
    add({block(1, 1)});
    ASSERT_TRUE(QDir(work.recoveryFolder).removeRecursively());
    ASSERT_FALSE(work.autosave.writeNow());
    EXPECT_EQ(window.statusLine().warning(), QStringLiteral("Unsaved work is not kept safe"));
    EXPECT_TRUE(says().contains(work.recoveryFolder)) << says().toStdString();
    add({block(4, 4)});
    window.statusLine().say(QStringLiteral("Something else."));
    EXPECT_FALSE(window.statusLine().warning().isEmpty());
    ASSERT_TRUE(QDir().mkpath(work.recoveryFolder));
    ASSERT_TRUE(work.autosave.writeNow());
    EXPECT_TRUE(window.statusLine().warning().isEmpty());
    EXPECT_EQ(says(), QStringLiteral("Something else."));
}

TEST_F(FileFlowTest, OpensAFileAndListsItAsRecent) {
    Sketch other = blankSketch();
    other.name = "Garden";
    ASSERT_TRUE(saveSketch(files, toPath(inFolder("garden.sketch.svg")), other));
    questions.openAnswer = inFolder("garden.sketch.svg");
    trigger("Open");
    EXPECT_EQ(sketch(), other);
    EXPECT_FALSE(window.isWindowModified());
    work.document.startNew(blankSketch());
    const QString name = QStringLiteral("1  garden – ") + QFileInfo(inFolder("x")).path();
    action(name).trigger();
    EXPECT_EQ(sketch(), other);
}

TEST_F(FileFlowTest, TellsOfABrokenFileAndLeavesTheOpenWorkAlone) {
    add({block(1, 1)});
    session().setClean();
    writeFile("broken.sketch.svg", "<svg");
    EXPECT_FALSE(window.files().open(inFolder("broken.sketch.svg")));
    EXPECT_TRUE(questions.wasAsked(QStringLiteral("tell This sketch could not be opened: ")));
    EXPECT_TRUE(questions.asked.last().contains(QStringLiteral("broken.sketch.svg")));
    EXPECT_EQ(sketch().pieces.size(), 1u);
    EXPECT_TRUE(settings.value().recentFiles.isEmpty());
}

TEST_F(FileFlowTest, TellsOfAVanishedRecentFileAndForgetsIt) {
    Settings value = settings.value();
    value.recentFiles = {inFolder("vanished.sketch.svg")};
    settings.set(value);
    action(QStringLiteral("1  vanished – ") + QFileInfo(inFolder("x")).path()).trigger();
    EXPECT_TRUE(questions.wasAsked(QStringLiteral("tell This sketch could not be opened")));
    EXPECT_TRUE(settings.value().recentFiles.isEmpty());
}

TEST_F(FileFlowTest, ClosesWithoutLeavingARecoveryCopy) {
    add({block(1, 1)});
    ASSERT_TRUE(work.autosave.writeNow());
    EXPECT_EQ(recoveryCopies().size(), 1);
    questions.unsavedAnswer = Unsaved::DontSave;
    EXPECT_TRUE(window.close());
    EXPECT_TRUE(recoveryCopies().isEmpty());
}

class RecoveredWork : public FileFlowTest {
  protected:
    void SetUp() override {
        Making lost;
        lost.sketch = blankSketch();
        lost.sketch.name = "Lost";
        ASSERT_TRUE(RecoveryPlace(work.recoveryFolder, files)
                        .write({lost, {}, inFolder("garden.sketch.svg")}));
    }
};

TEST_F(RecoveredWork, IsOfferedAndOpenedAsUnsaved) {
    questions.recoveryAnswer = Questions::RecoveryChoice::Open;
    EXPECT_TRUE(window.files().offerRecoveredWork());
    EXPECT_EQ(questions.asked, QStringList(QStringLiteral("recovered garden")));
    EXPECT_EQ(sketch().name, "Lost");
    EXPECT_TRUE(window.isWindowModified());
    EXPECT_TRUE(window.windowTitle().startsWith(QStringLiteral("garden")));
    // The old copy has made way for one of this session.
    EXPECT_EQ(recoveryCopies().size(), 1);
    EXPECT_TRUE(findAbandonedWork(work.recoveryFolder).empty());
}

TEST_F(RecoveredWork, StaysForLater) {
    trigger("Recovered work");
    EXPECT_EQ(sketch(), blankSketch());
    EXPECT_EQ(findAbandonedWork(work.recoveryFolder).size(), 1u);
}

TEST_F(RecoveredWork, CanBeThrownAway) {
    questions.recoveryAnswer = Questions::RecoveryChoice::ThrowAway;
    EXPECT_TRUE(window.files().offerRecoveredWork());
    EXPECT_FALSE(window.files().offerRecoveredWork());
    EXPECT_TRUE(recoveryCopies().isEmpty());
}

TEST_F(RecoveredWork, DoesNotReplaceUnsavedWorkUnasked) {
    add({block(1, 1)});
    questions.recoveryAnswer = Questions::RecoveryChoice::Open;
    trigger("Recovered work");
    EXPECT_TRUE(questions.wasAsked(QStringLiteral("unsaved")));
    EXPECT_EQ(sketch().pieces.size(), 1u);
    EXPECT_EQ(findAbandonedWork(work.recoveryFolder).size(), 1u);
}

}  // namespace
}  // namespace matwright::app
