// SPDX-License-Identifier: MIT
#include "app/files/sketch_document.h"

#include <gtest/gtest.h>

#include <QSignalSpy>

#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

const QString path = QStringLiteral("/home/me/garden.sketch.svg");

Piece photo() {
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.size = {Length::inches(4), Length::inches(6)};
    piece.printSize = piece.size;
    return piece;
}

class Document : public testing::Test {
  protected:
    void edit() {
        const Piece piece = photo();
        ASSERT_TRUE(m_session.perform(addPieces(m_session.sketch(), {&piece, 1}), {}));
    }
    std::string& bytes() { return m_store.files[path.toStdString()]; }

    Session m_session;
    MemoryFileStore m_store;
    SketchDocument m_document{m_session, m_store};
};

TEST_F(Document, IsUntitledUntilItIsSaved) {
    EXPECT_TRUE(m_document.path().isEmpty());
    EXPECT_EQ(m_document.shownName(), QStringLiteral("Untitled"));
    const QSignalSpy moves(&m_document, &SketchDocument::pathChanged);
    ASSERT_TRUE(m_document.saveAs(path));
    EXPECT_EQ(m_document.shownName(), QStringLiteral("garden"));
    EXPECT_EQ(moves.count(), 1);
}

TEST_F(Document, GivesBackWhatItSaved) {
    edit();
    ASSERT_TRUE(m_document.saveAs(path));
    EXPECT_TRUE(m_session.isClean());
    const Sketch saved = m_session.sketch();
    m_document.startNew(blankSketch());
    EXPECT_TRUE(m_document.path().isEmpty());
    EXPECT_EQ(m_session.sketch(), blankSketch());
    const auto warnings = m_document.open(path);
    ASSERT_TRUE(warnings);
    EXPECT_TRUE(warnings->isEmpty());
    EXPECT_EQ(m_session.sketch(), saved);
    EXPECT_EQ(m_document.path(), path);
    EXPECT_TRUE(m_session.isClean());
}

TEST_F(Document, HandsOnTheReadersWarnings) {
    edit();
    ASSERT_TRUE(m_document.saveAs(path));
    // A part of the model from some later version.
    const auto at = bytes().find("/>", bytes().find(sketchNamespace));
    ASSERT_NE(at, std::string::npos);
    bytes().insert(at, " sparkle=\"3\"");
    const auto warnings = m_document.open(path);
    ASSERT_TRUE(warnings) << warnings.error().text();
    ASSERT_EQ(warnings->size(), 1);
    EXPECT_TRUE(warnings->first().contains(QStringLiteral("sparkle")));
}

TEST_F(Document, LeavesTheOpenWorkAloneWhenAFileCannotBeOpened) {
    ASSERT_TRUE(m_document.saveAs(path));
    edit();
    const Sketch before = m_session.sketch();
    m_store.files["/broken.sketch.svg"] = "<svg";
    for (const char* other : {"/broken.sketch.svg", "/missing.sketch.svg"}) {
        const auto opened = m_document.open(QString::fromUtf8(other));
        ASSERT_FALSE(opened);
        EXPECT_FALSE(opened.error().sentence.empty());
        EXPECT_EQ(m_session.sketch(), before);
        EXPECT_EQ(m_document.path(), path);
        EXPECT_FALSE(m_session.isClean());
        EXPECT_TRUE(m_session.undoStack().canUndo());
    }
}

TEST_F(Document, NamesTheFileThatIsBroken) {
    m_store.files["/broken.sketch.svg"] = "<svg";
    const auto opened = m_document.open(QStringLiteral("/broken.sketch.svg"));
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().where.find("broken.sketch.svg"), 0u);
}

TEST_F(Document, StaysOpenAndUnsavedWhenTheDiskRefuses) {
    ASSERT_TRUE(m_document.saveAs(path));
    const std::string old = bytes();
    edit();
    for (const char* why : {"The disk is full.", "The folder is read-only.", "No such folder."}) {
        m_store.failReplacesWith = Error{ErrorCode::WriteFailed, why, path.toStdString()};
        const auto saved = m_document.save();
        ASSERT_FALSE(saved);
        EXPECT_EQ(saved.error().sentence, why);
        EXPECT_FALSE(m_session.isClean());
        EXPECT_EQ(m_session.sketch().pieces.size(), 1u);
        EXPECT_EQ(bytes(), old);
        EXPECT_EQ(m_document.path(), path);
    }
    m_store.failReplacesWith.reset();
    EXPECT_TRUE(m_document.save());
    EXPECT_TRUE(m_session.isClean());
}

TEST_F(Document, KeepsItsNameWhenSavingUnderAnotherFails) {
    ASSERT_TRUE(m_document.saveAs(path));
    m_store.failReplacesWith = Error{ErrorCode::WriteFailed, "No.", {}};
    EXPECT_FALSE(m_document.saveAs(QStringLiteral("/other.sketch.svg")));
    EXPECT_EQ(m_document.path(), path);
}

TEST_F(Document, IsNotSavedWhereItCouldNotBeOpenedAgain) {
    Sketch sketch = blankSketch();
    Piece note = photo();
    note.note = std::string(maxTextBytes, 'x');
    for (std::uint32_t id = 1; id * maxTextBytes <= maxSketchFileBytes; ++id) {
        sketch.pieces.emplace(PieceId{id}, note);
        sketch.order.push_back(PieceId{id});
    }
    bytes() = "the old one";
    m_document.startNew(std::move(sketch));
    m_session.markUnsaved();
    const auto saved = m_document.saveAs(path);
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, ErrorCode::TooLarge);
    EXPECT_EQ(saved.error().where, "garden.sketch.svg");
    EXPECT_EQ(bytes(), "the old one");
    EXPECT_FALSE(m_session.isClean());
}

TEST_F(Document, GoesBesideWhatSomebodyElseHasWrittenAndIsThatFileFromNowOn) {
    ASSERT_TRUE(m_document.saveAs(path));
    edit();
    bytes() += '\n';
    const std::string theirs = bytes();
    const auto saved = m_document.save();
    ASSERT_TRUE(saved) << saved.error().text();
    EXPECT_TRUE(saved->keptBoth);
    EXPECT_FALSE(saved->said.empty());
    EXPECT_EQ(bytes(), theirs);
    EXPECT_EQ(m_document.shownName(), QStringLiteral("garden (2)"));
    EXPECT_TRUE(m_session.isClean());
    edit();
    const auto again = m_document.save();
    ASSERT_TRUE(again);
    EXPECT_FALSE(again->keptBoth);
    EXPECT_EQ(m_document.shownName(), QStringLiteral("garden (2)"));
}

TEST_F(Document, ReplacesAnotherFileThatWasChosen) {
    bytes() = writeSketch(blankSketch());
    edit();
    const auto saved = m_document.saveAs(path);
    ASSERT_TRUE(saved);
    EXPECT_FALSE(saved->keptBoth);
    EXPECT_EQ(bytes(), writeSketch(m_session.sketch()));
}

TEST_F(Document, BringsBackAVanishedFileAndSaysSo) {
    ASSERT_TRUE(m_document.saveAs(path));
    m_store.files.clear();
    const auto saved = m_document.save();
    ASSERT_TRUE(saved);
    EXPECT_FALSE(saved->said.empty());
    EXPECT_TRUE(m_store.files.contains(path.toStdString()));
}

TEST_F(Document, LeavesTheFileOfRecoveredWorkAlone) {
    ASSERT_TRUE(m_document.saveAs(path));
    const std::string original = bytes();
    edit();
    const Sketch latest = m_session.sketch();
    m_store.files["/state/1.sketch.svg"] = writeSketch(latest);

    Session other;
    SketchDocument recovered(other, m_store);
    ASSERT_TRUE(recovered.openRecovered(QStringLiteral("/state/1.sketch.svg"), path));
    EXPECT_EQ(other.sketch(), latest);
    EXPECT_FALSE(other.isClean());
    EXPECT_EQ(recovered.path(), path);
    const auto saved = recovered.save();
    ASSERT_TRUE(saved);
    EXPECT_TRUE(saved->keptBoth);
    EXPECT_EQ(bytes(), original);
    EXPECT_TRUE(other.isClean());
}

}  // namespace
}  // namespace matwright::app
