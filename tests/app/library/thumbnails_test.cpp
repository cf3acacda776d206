// SPDX-License-Identifier: MIT
#include "app/library/thumbnails.h"

#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "app/files/paths.h"
#include "app/library/thumbnail_drawing.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

Sketch sketchNumber(int number) {
    Sketch sketch = blankSketch();
    sketch.name = "Sketch " + std::to_string(number);
    Piece piece;
    piece.kind = PieceKind::PhotoSlot;
    piece.size = {Length::inches(4), Length::inches(6)};
    piece.printSize = piece.size;
    piece.place = {Length::inches(number % 8), Length::inches(1)};
    sketch.pieces.emplace(PieceId{1}, piece);
    sketch.order.push_back(PieceId{1});
    return sketch;
}

TEST(PictureSize, KeepsThePagesProportions) {
    PageSetup page;
    EXPECT_EQ(pictureSize(page, 100), QSize(100, 100));
    page.size = {Length::inches(8, 1, 2), Length::inches(11)};
    EXPECT_EQ(pictureSize(page, 110), QSize(85, 110));
    page.size = {Length::inches(12), Length::inches(12)};
    page.doublePage = true;
    EXPECT_EQ(pictureSize(page, 100), QSize(100, 50));
    EXPECT_EQ(pictureSize(page, 1), QSize(1, 1));
}

TEST(ThumbnailDrawing, ShowsAPieceWhereItLies) {
    const QImage image = thumbnailOf(sketchNumber(0), 120);
    ASSERT_EQ(image.size(), QSize(120, 120));
    EXPECT_EQ(image.pixelColor(20, 20), QColor(214, 226, 234));  // a photo slot
    EXPECT_EQ(image.pixelColor(80, 20), QColor(Qt::white));
}

class ThumbnailsTest : public testing::Test {
  protected:
    WantedThumbnail put(int number, int side = 64) {
        const QString path = folder.filePath(QStringLiteral("%1.sketch.svg").arg(number));
        const std::string bytes = writeSketch(sketchNumber(number));
        DiskFileStore store;
        EXPECT_TRUE(store.replace(toPath(path), bytes));
        return {contentKeyOf(bytes), path.toStdString(), side};
    }
    QString cache() const { return folder.filePath(QStringLiteral("cache")); }
    static bool waitIdle(Thumbnails& thumbnails) {
        return QTest::qWaitFor([&] { return thumbnails.isIdle(); }, 10'000);
    }
    int keptFiles() const {
        int count = 0;
        for (QDirIterator files(cache(), QDir::Files, QDirIterator::Subdirectories);
             files.hasNext(); files.next()) {
            ++count;
        }
        return count;
    }

    QTemporaryDir folder;
};

TEST_F(ThumbnailsTest, AreDrawnInTheBackgroundAndKept) {
    const WantedThumbnail wanted = put(1);
    Thumbnails thumbnails(cache());
    EXPECT_TRUE(thumbnails.find(wanted.content, 64).isNull());
    thumbnails.want({wanted});
    EXPECT_TRUE(thumbnails.find(wanted.content, 64).isNull());
    ASSERT_TRUE(waitIdle(thumbnails));
    EXPECT_EQ(thumbnails.find(wanted.content, 64).size(), QSize(64, 64));
    EXPECT_TRUE(thumbnails.find(wanted.content, 32).isNull());
    EXPECT_FALSE(thumbnails.findAnySize(wanted.content).isNull());
    EXPECT_EQ(keptFiles(), 1);
}

TEST_F(ThumbnailsTest, ComeFromTheDiskWithoutTheSketch) {
    const WantedThumbnail wanted = put(1);
    {
        Thumbnails first(cache());
        first.want({wanted});
        ASSERT_TRUE(waitIdle(first));
    }
    QFile::remove(QString::fromStdString(wanted.path));
    Thumbnails second(cache());
    second.want({wanted});
    ASSERT_TRUE(waitIdle(second));
    EXPECT_EQ(second.find(wanted.content, 64), thumbnailOf(sketchNumber(1), 64));
}

TEST_F(ThumbnailsTest, AreDrawnAnewWhereTheKeptOneIsTorn) {
    const WantedThumbnail wanted = put(1);
    const ThumbnailFiles files(cache(), 1 << 20, {});
    {
        Thumbnails first(cache());
        first.want({wanted});
        ASSERT_TRUE(waitIdle(first));
    }
    QFile kept(files.pathOf(wanted.content, 64));
    for (const qint64 length : {qint64{0}, qint64{20}, kept.size() / 2, kept.size() - 20}) {
        ASSERT_TRUE(kept.resize(length));
        Thumbnails again(cache());
        again.want({wanted});
        ASSERT_TRUE(waitIdle(again));
        EXPECT_EQ(again.find(wanted.content, 64), thumbnailOf(sketchNumber(1), 64)) << length;
        ASSERT_TRUE(files.find(wanted.content, 64)) << length;
    }
}

TEST_F(ThumbnailsTest, AreNeverOfAnotherContentThanAskedFor) {
    WantedThumbnail wanted = put(1);
    put(2);
    wanted.path = folder.filePath(QStringLiteral("2.sketch.svg")).toStdString();
    Thumbnails thumbnails(cache());
    thumbnails.want({wanted});
    ASSERT_TRUE(waitIdle(thumbnails));
    EXPECT_TRUE(thumbnails.find(wanted.content, 64).isNull());
    EXPECT_TRUE(thumbnails.hasFailed(wanted.content));
    EXPECT_EQ(keptFiles(), 0);
    // The file is put right.
    wanted.path = folder.filePath(QStringLiteral("1.sketch.svg")).toStdString();
    thumbnails.forgetFailures();
    thumbnails.want({wanted});
    ASSERT_TRUE(waitIdle(thumbnails));
    EXPECT_FALSE(thumbnails.find(wanted.content, 64).isNull());
}

TEST_F(ThumbnailsTest, DropTheOldestWhereMemoryIsUsedUp) {
    Thumbnails thumbnails(cache(), {.memoryBytes = 3 * 64 * 64 * 4, .diskBytes = 1 << 20});
    std::vector<WantedThumbnail> all;
    for (int i = 0; i < 6; ++i) {
        all.push_back(put(i));
        thumbnails.want({all.back()});
        ASSERT_TRUE(waitIdle(thumbnails));
        thumbnails.find(all.front().content, 64);  // used again and again
    }
    EXPECT_LE(thumbnails.memoryUsed(), 3 * 64 * 64 * 4);
    EXPECT_FALSE(thumbnails.find(all.front().content, 64).isNull());
    EXPECT_FALSE(thumbnails.find(all.back().content, 64).isNull());
    EXPECT_TRUE(thumbnails.find(all[1].content, 64).isNull());
}

TEST_F(ThumbnailsTest, KeepTheFolderOnTheDiskBounded) {
    ThumbnailFiles files(cache(), 20'000, {});
    QImage noise(32, 32, QImage::Format_RGB32);
    for (int i = 0; i < 60; ++i) {
        for (int at = 0; at < 32 * 32; ++at) {
            noise.setPixel(at % 32, at / 32, static_cast<QRgb>(at * 2654435761U * (i + 1)));
        }
        files.keep(contentKeyOf(std::to_string(i)), 32, noise);
    }
    files.prune();
    qint64 bytes = 0;
    for (QDirIterator all(cache(), QDir::Files, QDirIterator::Subdirectories); all.hasNext();) {
        bytes += all.nextFileInfo().size();
    }
    EXPECT_GT(bytes, 0);
    EXPECT_LE(bytes, 20'000);
    EXPECT_TRUE(files.find(contentKeyOf("59"), 32));
}

TEST_F(ThumbnailsTest, AreNotDrawnWhereTheyAreNotWantedAnyMore) {
    std::vector<WantedThumbnail> many;
    for (int i = 0; i < 300; ++i) {
        many.push_back(put(i, 300));
    }
    Thumbnails thumbnails(cache(), {.threads = 1});
    thumbnails.want(many);
    thumbnails.want({many.back()});
    ASSERT_TRUE(waitIdle(thumbnails));
    EXPECT_FALSE(thumbnails.find(many.back().content, 300).isNull());
    EXPECT_LT(keptFiles(), 20);
}

}  // namespace
}  // namespace matwright::app
