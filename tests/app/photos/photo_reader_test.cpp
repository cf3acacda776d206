// SPDX-License-Identifier: MIT
#include "app/photos/reading/photo_reader.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <filesystem>
#include <map>
#include <set>

#include "tests/support/painted_photos.h"

namespace matwright::app {
namespace {

class Reader : public testing::Test {
  protected:
    Reader() {
        QObject::connect(&reader, &PhotoService::lookedAt,
                         [this](const std::vector<LookedAt>& files) {
                             for (const LookedAt& file : files) {
                                 looked.emplace(file.path, file);
                             }
                         });
    }
    std::string at(const char* name) const {
        return m_folder.filePath(QString::fromUtf8(name)).toStdString();
    }
    std::string paint(const char* name, int scene, const test::PhotoTags& tags = {},
                      QSize size = {800, 600}) const {
        test::writeJpeg(at(name), test::paintedPhoto(scene, size), tags);
        return at(name);
    }
    void write(const char* name, const QByteArray& bytes) const {
        QFile file(QString::fromStdString(at(name)));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return reader.isIdle(); }, 20'000));
        QCoreApplication::processEvents();
    }
    Photo look(const std::string& path) {
        reader.lookAt({path});
        settle();
        EXPECT_TRUE(looked.contains(path));
        EXPECT_TRUE(looked.at(path).photo) << looked.at(path).photo.error().text();
        return looked.at(path).photo.value_or(Photo{});
    }
    WantedPhoto wantedOf(const Photo& photo) const {
        return {photo.content, photo.path, photo.bytes};
    }
    QString cache() const { return m_folder.filePath(QStringLiteral("cache")); }

    QTemporaryDir m_folder;
    PhotoReader reader{cache()};
    std::map<std::string, LookedAt> looked;
};

TEST_F(Reader, ReadsWhatAPhotoSaysOfItself) {
    const Photo photo = look(paint("boat.jpg", 3, {"2026:07:16 20:41:05", 6, 4, 80}, {600, 800}));
    EXPECT_EQ(photo.upright, (PixelSize{600, 800}));
    EXPECT_EQ(photo.taken, "2026-07-16 20:41:05");
    EXPECT_EQ(photo.rating, 4);
}

TEST_F(Reader, TurnsAllEightOrientationsUpright) {
    const QImage painted = test::paintedPhoto(6, {240, 320});
    for (int orientation = 1; orientation <= 8; ++orientation) {
        const std::string name = "turned" + std::to_string(orientation) + ".jpg";
        const Photo photo = look(paint(name.c_str(), 6, {"", orientation, -2, 92}, {240, 320}));
        EXPECT_EQ(photo.upright, (PixelSize{240, 320})) << orientation;
        EXPECT_TRUE(reader.thumbnail(wantedOf(photo)).isNull());
        settle();
        const QImage thumbnail = reader.thumbnail(wantedOf(photo));
        ASSERT_EQ(thumbnail.height(), PhotoService::thumbnailSide) << orientation;
        // The lighthouse's dark roof is in the upper half, its light wall below.
        const auto grey = [&](const QImage& image, double x, double y) {
            return qGray(image.pixel(int(x * image.width()), int(y * image.height())));
        };
        for (const auto& [x, y] : {std::pair(0.5, 0.27), {0.5, 0.5}, {0.1, 0.95}, {0.9, 0.1}}) {
            EXPECT_NEAR(grey(thumbnail, x, y), grey(painted, x, y), 40) << orientation;
        }
    }
}

TEST_F(Reader, LooksThroughAFolderAndTellsOfEachFileOnce) {
    QDir().mkpath(QString::fromStdString(at("in/below")));
    paint("in/a.jpg", 0);
    paint("in/below/b.jpeg", 1);
    paint("in/.hidden.jpg", 2);
    write("in/letter.txt", "no photo");
    const QSignalSpy all(&reader, &PhotoService::lookedAtAll);
    reader.lookAt({at("in")});
    settle();
    EXPECT_EQ(looked.size(), 2u);
    EXPECT_EQ(all.count(), 1);
}

TEST_F(Reader, GivesASentenceForEveryKindOfBadFile) {
    const std::string good = paint("good.jpg", 0);
    QFile file(QString::fromStdString(good));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray whole = file.readAll();
    write("empty.jpg", {});
    write("noise.png", QByteArray(5'000, '\x5a'));
    write("text.heic", "This is a letter.");
    write("half.jpg", whole.first(whole.size() / 2));
    for (const char* name : {"empty.jpg", "noise.png", "text.heic", "not-there.jpg"}) {
        reader.lookAt({at(name)});
        settle();
        ASSERT_TRUE(looked.contains(at(name))) << name;
        ASSERT_FALSE(looked.at(at(name)).photo) << name;
        EXPECT_TRUE(looked.at(at(name)).photo.error().sentence.ends_with('.')) << name;
    }
    // The header of half a file is whole; decoding it is not.
    reader.lookAt({at("half.jpg")});
    settle();
    if (const auto& half = looked.at(at("half.jpg")).photo) {
        EXPECT_TRUE(reader.thumbnail(wantedOf(*half)).isNull());
        settle();
        EXPECT_EQ(reader.stateOf(half->content), PhotoState::Broken);
        EXPECT_FALSE(reader.faultOf(half->content).isEmpty());
    }
}

TEST_F(Reader, TakesThumbnailsFromTheDiskWhenThePhotoIsGone) {
    const Photo photo = look(paint("boat.jpg", 3));
    reader.makeThumbnails({wantedOf(photo)});
    settle();
    std::filesystem::remove(photo.path);
    PhotoReader later(cache());
    EXPECT_TRUE(later.thumbnail(wantedOf(photo)).isNull());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !later.thumbnail(wantedOf(photo)).isNull(); }, 5'000));
    EXPECT_EQ(later.stateOf(photo.content), PhotoState::Missing);
}

// As prints on hand are shown; the same photo may lie on the page and be where it was.
TEST_F(Reader, APhotoWhosePlaceIsNotKnownIsNotSaidToBeMissing) {
    const Photo photo = look(paint("boat.jpg", 3));
    const WantedPhoto placeless{photo.content, "", 0};
    PhotoReader later(cache());
    const QSignalSpy told(&later, &PhotoService::stateChanged);
    later.thumbnail(placeless);  // not on the disk yet
    ASSERT_TRUE(QTest::qWaitFor([&] { return later.isIdle(); }, 20'000));
    QCoreApplication::processEvents();
    reader.makeThumbnails({wantedOf(photo)});
    settle();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !later.thumbnail(placeless).isNull(); }, 5'000));
    EXPECT_EQ(later.stateOf(photo.content), PhotoState::Unknown);
    EXPECT_EQ(told.count(), 0);
}

TEST_F(Reader, NoticesThatAFileHoldsAnotherPictureNow) {
    const Photo photo = look(paint("boat.jpg", 3));
    paint("boat.jpg", 4);
    reader.showOnPage({wantedOf(photo)});
    settle();
    EXPECT_EQ(reader.stateOf(photo.content), PhotoState::Changed);
    EXPECT_TRUE(reader.workingCopy(photo.content).isNull());
}

TEST_F(Reader, FindsAMovedPhotoByWhatItHolds) {
    const Photo photo = look(paint("boat.jpg", 3));
    QDir().mkpath(QString::fromStdString(at("away")));
    paint("away/another.jpg", 4);
    std::filesystem::rename(photo.path, at("away/renamed.jpg"));
    reader.checkStates({wantedOf(photo)});
    settle();
    EXPECT_EQ(reader.stateOf(photo.content), PhotoState::Missing);
    QString place;
    QObject::connect(&reader, &PhotoService::found,
                     [&](const ContentKey&, const QString& path) { place = path; });
    reader.search({wantedOf(photo)}, {at("away")});
    settle();
    EXPECT_EQ(place.toStdString(), at("away/renamed.jpg"));
    EXPECT_EQ(reader.stateOf(photo.content), PhotoState::There);
}

TEST_F(Reader, LooksForEachOfTwoThatTurnOutMissingOneAfterTheOther) {
    const Photo one = look(paint("one.jpg", 0));
    const Photo two = look(paint("two.jpg", 1));
    QDir().mkpath(QString::fromStdString(at("away")));
    std::filesystem::rename(one.path, at("away/first.jpg"));
    std::filesystem::rename(two.path, at("away/second.jpg"));
    std::set<QString> places;
    QObject::connect(&reader, &PhotoService::found,
                     [&](const ContentKey&, const QString& path) { places.insert(path); });
    for (const Photo& photo : {one, two, one}) {
        reader.search({wantedOf(photo)}, {at("away")});
    }
    settle();
    EXPECT_EQ(places.size(), 2u);
}

TEST_F(Reader, EndsEverySearchOnceEvenWhenItIsGivenUp) {
    const Photo photo = look(paint("boat.jpg", 3));
    std::map<int, int> ends;
    int cancelled = 0;
    QObject::connect(&reader, &PhotoService::searchEnded, [&](int search, int, bool wasCancelled) {
        ++ends[search];
        cancelled += wasCancelled ? 1 : 0;
    });
    const WantedPhoto nowhere{ContentKey{{1}}, "/nowhere/a.jpg"};
    const int first = reader.search({nowhere}, {at("")});
    const int second = reader.search({nowhere}, {at("")});
    reader.cancel();
    const int third = reader.search({wantedOf(photo)}, {at("")});
    settle();
    EXPECT_EQ(ends, (std::map<int, int>{{first, 1}, {second, 1}, {third, 1}}));
    EXPECT_EQ(cancelled, 2);
}

TEST_F(Reader, EndsTheProgressOfThumbnailsThatAreAskedForTwice) {
    std::vector<WantedPhoto> photos;
    for (int i = 0; i < 6; ++i) {
        photos.push_back(wantedOf(look(paint(("p" + std::to_string(i) + ".jpg").c_str(), i))));
    }
    int total = -1;
    QObject::connect(&reader, &PhotoService::progressed, [&](int, int all) { total = all; });
    reader.makeThumbnails(photos);
    reader.makeThumbnails(photos);
    settle();
    EXPECT_EQ(total, 0);
}

TEST_F(Reader, TriesAFileAgainThatWasMended) {
    const std::string path = paint("boat.jpg", 3);
    const Photo photo = look(path);
    const QByteArray whole = [&] {
        QFile file(QString::fromStdString(path));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }();
    write("boat.jpg", "no photo any more");
    reader.showOnPage({wantedOf(photo)});
    settle();
    EXPECT_EQ(reader.stateOf(photo.content), PhotoState::Broken);
    reader.checkStates({wantedOf(photo)});  // nothing was mended
    settle();
    EXPECT_EQ(reader.stateOf(photo.content), PhotoState::Broken);
    write("boat.jpg", whole);
    reader.checkStates({wantedOf(photo)});
    EXPECT_TRUE(
        QTest::qWaitFor([&] { return !reader.workingCopy(photo.content).isNull(); }, 5'000));
    EXPECT_EQ(reader.stateOf(photo.content), PhotoState::There);
    EXPECT_EQ(reader.faultOf(photo.content), QString());
}

TEST_F(Reader, NoticesThatAFileIsWrittenToWhileThePageShowsIt) {
    const Photo photo = look(paint("boat.jpg", 3));
    reader.showOnPage({wantedOf(photo)});
    settle();
    EXPECT_EQ(reader.stateOf(photo.content), PhotoState::There);
    paint("boat.jpg", 4);
    reader.checkStates({wantedOf(photo)});
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return reader.stateOf(photo.content) == PhotoState::Changed; }, 5'000));
    EXPECT_FALSE(reader.workingCopy(photo.content).isNull());  // as it was
}

TEST_F(Reader, StaysSureOfAnotherPictureWhenItsThumbnailIsRemembered) {
    const Photo photo = look(paint("boat.jpg", 3));
    reader.makeThumbnails({wantedOf(photo)});
    settle();
    paint("boat.jpg", 4);
    PhotoReader later(cache());
    later.showOnPage({wantedOf(photo)});
    ASSERT_TRUE(QTest::qWaitFor([&] { return later.isIdle(); }, 20'000));
    QCoreApplication::processEvents();
    EXPECT_EQ(later.stateOf(photo.content), PhotoState::Changed);
    later.thumbnail(wantedOf(photo));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !later.thumbnail(wantedOf(photo)).isNull(); }, 5'000));
    EXPECT_EQ(later.stateOf(photo.content), PhotoState::Changed);
}

TEST_F(Reader, KeepsWorkingCopiesOfWhatThePageShowsOnly) {
    const Photo one = look(paint("one.jpg", 0));
    const Photo two = look(paint("two.jpg", 1));
    reader.showOnPage({wantedOf(one)});
    settle();
    EXPECT_EQ(reader.workingCopy(one.content).size(), QSize(800, 600));
    reader.showOnPage({wantedOf(two)});
    settle();
    EXPECT_TRUE(reader.workingCopy(one.content).isNull());
    EXPECT_EQ(reader.workingCopy(two.content).size(), QSize(800, 600));
    reader.showOnPage({});
    EXPECT_EQ(reader.memoryUsed(), 0);
}

TEST_F(Reader, MakesCopiesOfManyPhotosSmaller) {
    EXPECT_EQ(PhotoReader::sideFor(1, 260LL << 20), PhotoService::workingSide);
    for (const std::size_t photos : {1u, 10u, 30u, 100u, 300u}) {
        const qint64 side = PhotoReader::sideFor(photos, 260LL << 20);
        EXPECT_GE(side, 450);
        if (photos <= 200) {
            EXPECT_LE(4 * side * side * qint64(photos), 260LL << 20) << photos;
        }
    }
}

TEST_F(Reader, GivesUpWhatItHasNotBegun) {
    std::vector<std::string> paths;
    for (int i = 0; i < 40; ++i) {
        paths.push_back(paint(("many" + std::to_string(i) + ".jpg").c_str(), i));
    }
    const QSignalSpy all(&reader, &PhotoService::lookedAtAll);
    reader.lookAt(paths);
    reader.cancel();
    EXPECT_EQ(all.count(), 1);
    settle();
    EXPECT_LT(looked.size(), paths.size());
    // And begins anew as if nothing had been.
    looked.clear();
    reader.lookAt({paths[39]});
    settle();
    EXPECT_EQ(looked.size(), 1u);
}

TEST_F(Reader, MakesASmallPictureOfWhatShowsInASlot) {
    const Photo photo = look(paint("boat.jpg", 3));
    const Size window{Length::inches(4), Length::inches(6)};
    const Placement placement{PhotoId{1}, startingCrop(photo.upright, window), {}};
    EXPECT_TRUE(reader.smallPicture(photo, placement, window).empty());
    reader.showOnPage({wantedOf(photo)});
    settle();
    const std::string jpeg = reader.smallPicture(photo, placement, window);
    const QImage picture = QImage::fromData(reinterpret_cast<const uchar*>(jpeg.data()),
                                            static_cast<int>(jpeg.size()));
    EXPECT_EQ(picture.size(), QSize(267, 400));
    EXPECT_LT(jpeg.size(), 60'000u);
}

}  // namespace
}  // namespace matwright::app
