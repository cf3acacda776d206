// SPDX-License-Identifier: MIT
#include "app/photos/photo_intake.h"

#include <gtest/gtest.h>

#include <QTest>

#include "app/photos/photo_care.h"
#include "tests/app/photos/fake_photo_service.h"

namespace matwright::app {
namespace {

LookedAt seen(const std::string& path, std::uint8_t content) {
    Photo photo;
    photo.path = path;
    photo.content.bytes[0] = content;
    photo.upright = {4032, 3024};
    return {path, photo, {}};
}

LookedAt refused(const std::string& path) {
    return {path, std::unexpected(Error{ErrorCode::WrongFormat, "This is no picture.", path}), {}};
}

class Intake : public testing::Test {
  protected:
    void answer(std::vector<LookedAt> files) {
        emit service.lookedAt(files);
        emit service.lookedAtAll();
    }

    Session session;
    FakePhotoService& service = *new FakePhotoService;
    PhotoAccess access{std::unique_ptr<PhotoService>(&service)};
    QString said;
    PhotoIntake intake{session, access, [this](const QString& sentence) { said = sentence; }};
};

TEST_F(Intake, AddsHandfulsAsOneStep) {
    intake.add({QStringLiteral("/photos")});
    EXPECT_EQ(service.askedToLookAt, std::vector<std::string>{"/photos"});
    emit service.lookedAt({seen("/photos/a.jpg", 1)});
    answer({seen("/photos/b.jpg", 2), seen("/photos/c.jpg", 3)});
    EXPECT_EQ(session.work().photos.size(), 3u);
    EXPECT_EQ(said, QStringLiteral("3 photos added."));
    session.undoStack().undo();
    EXPECT_TRUE(session.work().isEmpty());
    EXPECT_FALSE(session.undoStack().canUndo());
}

TEST_F(Intake, NoticesTheSamePictureTwice) {
    intake.add({QStringLiteral("/a.jpg")});
    answer({seen("/a.jpg", 1)});
    intake.add({QStringLiteral("/copy of a.jpg"), QStringLiteral("/b.jpg")});
    answer({seen("/copy of a.jpg", 1), seen("/b.jpg", 2)});
    EXPECT_EQ(session.work().photos.size(), 2u);
    EXPECT_TRUE(said.contains(QStringLiteral("One photo added."))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("already"))) << said.toStdString();
}

TEST_F(Intake, TellsOfFilesThatAreNoPhotos) {
    intake.add({QStringLiteral("/a.jpg"), QStringLiteral("/letter.jpg")});
    answer({seen("/a.jpg", 1), refused("/letter.jpg")});
    EXPECT_EQ(session.work().photos.size(), 1u);
    EXPECT_TRUE(
        said.contains(QStringLiteral("One file could not be added. letter.jpg: This is no "
                                     "picture.")))
        << said.toStdString();
}

TEST_F(Intake, PutsADroppedPhotoIntoItsSlot) {
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.size = {Length::inches(6), Length::inches(4)};
    slot.printSize = slot.size;
    ASSERT_TRUE(session.perform(addPieces(session.sketch(), {&slot, 1}), {}));
    intake.add({QStringLiteral("/a.jpg")}, PieceId{1});
    answer({seen("/a.jpg", 1)});
    EXPECT_EQ(session.work().placements.at(PieceId{1}).photo, PhotoId{1});
    EXPECT_TRUE(said.contains(QStringLiteral("takes off 1/9"))) << said.toStdString();
}

TEST_F(Intake, GivesUpWhenAnotherPageIsOpened) {
    intake.add({QStringLiteral("/photos")});
    session.reset(blankSketch());
    EXPECT_EQ(service.cancelled, 1);
    emit service.lookedAt({seen("/photos/late.jpg", 9)});
    EXPECT_TRUE(session.work().isEmpty());
}

TEST_F(Intake, BringsNothingIntoAnotherPageThatIsToldWhileGivingUp) {
    service.toldOnCancel = {seen("/photos/early.jpg", 8)};
    intake.add({QStringLiteral("/photos")});
    session.reset(blankSketch());
    EXPECT_EQ(service.cancelled, 1);
    EXPECT_TRUE(session.work().isEmpty());
    EXPECT_EQ(session.undoStack().count(), 0);
}

TEST_F(Intake, SaysWhyWhereThePartIsMissing) {
    PhotoAccess none(QStringLiteral("/nowhere"), QStringLiteral("/nowhere"));
    PhotoIntake without(session, none, [this](const QString& sentence) { said = sentence; });
    without.add({QStringLiteral("/a.jpg")});
    EXPECT_TRUE(said.contains(QStringLiteral("Photos cannot be read"))) << said.toStdString();
    EXPECT_TRUE(session.work().isEmpty());
}

class Care : public Intake {
  protected:
    PhotoCare care{session, access, [] { return QStringList{"/pages"}; },
                   [this](const QString& sentence) { said = sentence; }};
};

TEST_F(Care, LooksForWhatIsMissingAndKeepsTheCrop) {
    Making making{blankSketch(), {}};
    const Photo photo = *seen("/stick/a.jpg", 1).photo;
    ASSERT_TRUE(apply(making, PageEdit{{}, addPhotos(making.work, {&photo, 1})}));
    session.reset(making);
    service.setState(photo.content, PhotoState::Missing);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !service.searched.empty(); }, 2'000));
    EXPECT_EQ(service.searched.front().content, photo.content);
    emit service.found(photo.content, QStringLiteral("/pages/a.jpg"));
    emit service.searchEnded(1, 1, false);
    EXPECT_EQ(session.work().photos.at(PhotoId{1}).path, "/pages/a.jpg");
    EXPECT_TRUE(said.contains(QStringLiteral("found again")));
}

TEST_F(Care, SaysHowTheSearchThatWasAskedForEndedAndNoOther) {
    Making making{blankSketch(), {}};
    const Photo photo = *seen("/stick/a.jpg", 1).photo;
    ASSERT_TRUE(apply(making, PageEdit{{}, addPhotos(making.work, {&photo, 1})}));
    session.reset(making);
    service.setState(photo.content, PhotoState::Missing);
    ASSERT_TRUE(QTest::qWaitFor([&] { return service.searches == 1; }, 2'000));
    care.searchIn(QStringLiteral("/stick"));
    ASSERT_EQ(service.searches, 2);
    emit service.searchEnded(1, 0, false);
    EXPECT_EQ(said, QString());
    emit service.searchEnded(2, 0, true);
    EXPECT_TRUE(said.contains(QStringLiteral("stopped"))) << said.toStdString();
    care.searchIn(QStringLiteral("/stick"));
    emit service.searchEnded(3, 0, false);
    EXPECT_TRUE(said.contains(QStringLiteral("None of the missing"))) << said.toStdString();
}

TEST_F(Intake, MeetsAllPhotosAgainThatWereMissing) {
    Making making{blankSketch(), {}};
    const std::vector<Photo> photos{*seen("/stick/a.jpg", 1).photo, *seen("/stick/b.jpg", 2).photo};
    ASSERT_TRUE(apply(making, PageEdit{{}, addPhotos(making.work, photos)}));
    session.reset(making);
    for (const Photo& photo : photos) {
        service.setState(photo.content, PhotoState::Missing);
    }
    intake.add({QStringLiteral("/home/a.jpg"), QStringLiteral("/home/b.jpg")});
    emit service.lookedAt({seen("/home/a.jpg", 1), seen("/home/b.jpg", 2)});
    // Asked about in one go, so that no question takes another's place.
    ASSERT_EQ(service.checked.size(), 1U);
    EXPECT_EQ(service.checked.front().size(), 2U);
    EXPECT_EQ(session.work().photos.at(PhotoId{2}).path, "/home/b.jpg");
}

}  // namespace
}  // namespace matwright::app
