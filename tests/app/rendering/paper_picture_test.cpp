// SPDX-License-Identifier: MIT
#include "app/rendering/paper_picture.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QFile>
#include <QImageWriter>
#include <QPainter>
#include <QTemporaryDir>

namespace matwright::app {
namespace {

QImage halves(int width, int height) {
    QImage picture(width, height, QImage::Format_RGB32);
    picture.fill(Qt::red);
    QPainter(&picture).fillRect(0, 0, width / 2, height, Qt::blue);
    return picture;
}

TEST(PaperPicture, IsMadeSmallAndNeverLarger) {
    const QTemporaryDir folder;
    for (const char* name : {"paper.png", "paper.jpg"}) {
        ASSERT_TRUE(halves(800, 200).save(folder.filePath(name)));
        EXPECT_EQ(readPaperPicture(folder.filePath(name), 100).size(), QSize(100, 25)) << name;
        EXPECT_EQ(readPaperPicture(folder.filePath(name), 5000).size(), QSize(800, 200)) << name;
    }
}

// Exif 2.32, tag 0112H.
TEST(PaperPicture, IsTurnedAsItsMetadataSay) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("turned.jpg");
    QImageWriter writer(path);
    writer.setTransformation(QImageIOHandler::TransformationRotate90);
    ASSERT_TRUE(writer.write(halves(800, 200)));
    const QImage picture = readPaperPicture(path, 100);
    EXPECT_EQ(picture.size(), QSize(25, 100));
    EXPECT_GT(picture.pixelColor(12, 10).blue(), 200);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(paperPictureIn(file.readAll(), 100), picture);
}

TEST(PaperPicture, WhatIsNoPictureIsNull) {
    const QTemporaryDir folder;
    QFile words(folder.filePath("words.png"));
    ASSERT_TRUE(words.open(QIODevice::WriteOnly));
    words.write("no picture");
    words.close();
    const QString pipe = folder.filePath("pipe.png");
    ASSERT_EQ(::mkfifo(pipe.toUtf8().constData(), 0600), 0);
    for (const QString& path : {words.fileName(), pipe, folder.path(), folder.filePath("none")}) {
        EXPECT_TRUE(readPaperPicture(path, 100).isNull()) << path.toStdString();
    }
    EXPECT_TRUE(paperPictureIn({}, 100).isNull());
}

TEST(PaperPicture, MeanIsTheColourThatStandsForIt) {
    QImage plain(64, 32, QImage::Format_RGB32);
    plain.fill(QColor(40, 90, 140));
    EXPECT_EQ(meanColour(plain), (Colour{40, 90, 140}));
}

}  // namespace
}  // namespace matwright::app
