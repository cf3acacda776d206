// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>

#include "app/files/sketch_document.h"
#include "core/pagefile/page_file.h"
#include "core/sketchfile/sketch_file.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

const QString sketchPath = QStringLiteral("/home/me/garden.sketch.svg");
const QString pagePath = QStringLiteral("/home/me/garden.page.svg");

class PageDocument : public testing::Test {
  protected:
    void addSlot() {
        Piece piece;
        piece.kind = PieceKind::PhotoSlot;
        piece.size = {Length::inches(4), Length::inches(6)};
        piece.printSize = piece.size;
        ASSERT_TRUE(session.perform(addPieces(session.sketch(), {&piece, 1}), {}));
    }
    void addPhoto(const std::string& photoPath) {
        Photo photo;
        photo.path = photoPath;
        photo.content.bytes[0] = 7;
        photo.upright = {3024, 4032};
        ASSERT_TRUE(session.perform(addPhotos(session.work(), {&photo, 1}), {}));
        ASSERT_TRUE(session.perform(placePhoto(session.making(), PieceId{1}, PhotoId{1}), {}));
    }
    std::string& bytes(const QString& path) { return store.files[path.toStdString()]; }

    Session session;
    MemoryFileStore store;
    SketchDocument document{session, store};
};

TEST_F(PageDocument, SavesAPlainSketchByteForByteAsASketchFile) {
    addSlot();
    ASSERT_TRUE(document.saveAs(sketchPath));
    EXPECT_EQ(document.kind(), DocumentKind::Sketch);
    EXPECT_EQ(bytes(sketchPath), writeSketch(session.sketch()));
}

TEST_F(PageDocument, NeedsANameOfItsOwnOnceASketchHasPhotos) {
    addSlot();
    ASSERT_TRUE(document.saveAs(sketchPath));
    EXPECT_FALSE(document.needsName());
    addPhoto("/home/me/photos/boat.jpg");
    EXPECT_EQ(document.kind(), DocumentKind::Page);
    EXPECT_TRUE(document.needsName());
    const std::string sketch = bytes(sketchPath);
    ASSERT_TRUE(document.saveAs(pagePath));
    EXPECT_FALSE(document.needsName());
    EXPECT_EQ(bytes(sketchPath), sketch);
    EXPECT_EQ(document.shownName(), QStringLiteral("garden"));
    session.undoStack().undo();
    session.undoStack().undo();
    EXPECT_TRUE(session.work().isEmpty());
    EXPECT_EQ(document.kind(), DocumentKind::Page);  // the file is one, and stays one
}

TEST_F(PageDocument, GivesBackThePageItSaved) {
    addSlot();
    addPhoto("/home/me/photos/boat.jpg");
    ASSERT_TRUE(document.saveAs(pagePath));
    const Making saved = session.making();
    document.startNew(blankSketch());
    ASSERT_TRUE(document.open(pagePath));
    EXPECT_EQ(session.making(), saved);
    EXPECT_TRUE(session.isClean());
}

TEST_F(PageDocument, TakesPhotosBesideItAlongWhenItMoves) {
    const test::TemporaryFolder stick;
    std::filesystem::create_directory(stick / "photos");
    test::writeFile(stick / "photos/boat.jpg", "a photo");
    const std::string moved = stick / "garden.page.svg";
    addSlot();
    addPhoto("/home/me/photos/boat.jpg");
    ASSERT_TRUE(document.saveAs(pagePath));
    store.files[moved] = bytes(pagePath);
    ASSERT_TRUE(document.open(QString::fromStdString(moved)));
    EXPECT_EQ(session.work().photos.at(PhotoId{1}).path, (stick / "photos/boat.jpg").string());
    EXPECT_EQ(document.foldersOfOld(), QStringList{"/home/me/photos"});
}

TEST_F(PageDocument, MovedAloneStillKnowsWhereItsPhotosAndPapersAre) {
    const QString alone = QStringLiteral("/mnt/stick/garden.page.svg");
    addSlot();
    addPhoto("/home/me/photos/boat.jpg");
    PhotoEdit edit;
    edit.papers["dots"] = PaperLook{
        {90, 120, 60}, "/home/me/papers/dots.png", contentKeyOf("dots"), Length::inches(12)};
    ASSERT_TRUE(session.perform(edit, {}));
    ASSERT_TRUE(document.saveAs(pagePath));
    store.files[alone.toStdString()] = bytes(pagePath);
    ASSERT_TRUE(document.open(alone));
    ASSERT_TRUE(document.save());
    ASSERT_TRUE(document.open(alone));
    EXPECT_EQ(session.work().photos.at(PhotoId{1}).path, "/home/me/photos/boat.jpg");
    EXPECT_EQ(session.work().papers.at("dots").picture, "/home/me/papers/dots.png");
}

TEST_F(PageDocument, KeepsThePathOfAPhotoThatLiesElsewhere) {
    addSlot();
    addPhoto("/media/camera/boat.jpg");
    ASSERT_TRUE(document.saveAs(pagePath));
    store.files["/mnt/stick/garden.page.svg"] = bytes(pagePath);
    ASSERT_TRUE(document.open(QStringLiteral("/mnt/stick/garden.page.svg")));
    EXPECT_EQ(session.work().photos.at(PhotoId{1}).path, "/media/camera/boat.jpg");
}

TEST_F(PageDocument, CarriesSmallPicturesOnAsLongAsTheyAreRight) {
    addSlot();
    addPhoto("/home/me/photos/boat.jpg");
    const std::string jpeg("\xFF\xD8\xFFsmall\xFF\xD9");
    document.setPictures([&](PieceId) { return jpeg; });
    ASSERT_TRUE(document.saveAs(pagePath));
    EXPECT_EQ(smallPicturesIn(bytes(pagePath)).at(PieceId{1}), jpeg);

    document.setPictures({});  // the photo is out of reach
    ASSERT_TRUE(document.open(pagePath));
    EXPECT_EQ(document.keptPictures().find(session.making(), PieceId{1}), jpeg);
    ASSERT_TRUE(document.saveAs(QStringLiteral("/home/me/again.page.svg")));
    EXPECT_EQ(smallPicturesIn(bytes(QStringLiteral("/home/me/again.page.svg"))).at(PieceId{1}),
              jpeg);

    PhotoEdit edit;
    edit.placements[PieceId{1}] = session.work().placements.at(PieceId{1});
    edit.placements[PieceId{1}]->crop.zoom = 2 * Crop::one;
    ASSERT_TRUE(session.perform(edit, {}));
    EXPECT_EQ(document.keptPictures().find(session.making(), PieceId{1}), std::string());
    session.undoStack().undo();
    EXPECT_EQ(document.keptPictures().find(session.making(), PieceId{1}), jpeg);
}

TEST_F(PageDocument, GivesWayToSomebodyElsesPageUnderAPagesName) {
    addSlot();
    addPhoto("/home/me/photos/boat.jpg");
    ASSERT_TRUE(document.saveAs(pagePath));
    bytes(pagePath) += "<!-- somebody else -->";
    Photo another;
    another.path = "/x.jpg";
    another.content.bytes[0] = 9;
    another.upright = {10, 10};
    ASSERT_TRUE(session.perform(addPhotos(session.work(), {&another, 1}), {}));
    const auto saved = document.save();
    ASSERT_TRUE(saved);
    EXPECT_TRUE(saved->keptBoth);
    EXPECT_EQ(document.path(), QStringLiteral("/home/me/garden (2).page.svg"));
    EXPECT_NE(saved->said.find("this page"), std::string::npos) << saved->said;
}

}  // namespace
}  // namespace matwright::app
