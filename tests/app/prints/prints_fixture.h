// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <filesystem>

#include "core/making/making.h"
#include "core/photo/photo_source.h"
#include "core/sketch/edit.h"
#include "tests/support/painted_photos.h"

namespace matwright::app {

// A page with painted photos in its slots, on the disk in a folder of its own.
class PrintsFixture : public testing::Test {
  protected:
    std::filesystem::path folder() const { return m_folder.path().toStdString(); }

    PhotoId addPhoto(int scene, QSize size) {
        const PhotoId id = PhotoId{static_cast<std::uint32_t>(making.work.photos.size() + 1)};
        const auto file = folder() / (test::sceneName(scene) + ".jpg");
        test::writeJpeg(file, test::paintedPhoto(scene, size), {"2026:07:14 16:03:22"});
        const auto facts = photoFacts(file);
        EXPECT_TRUE(facts);
        Photo photo;
        photo.path = file;
        photo.content = facts->content;
        photo.upright = facts->upright;
        making.work.photos[id] = photo;
        return id;
    }
    PieceId addSlot(Point place, Size size) {
        Piece piece;
        piece.kind = PieceKind::PhotoSlot;
        piece.place = place;
        piece.size = size;
        piece.printSize = size;
        const PieceId id = nextId(making.sketch);
        EXPECT_TRUE(apply(making.sketch, addPieces(making.sketch, std::span(&piece, 1))));
        return id;
    }
    void put(PhotoId photo, PieceId slot) {
        const Size window = making.sketch.pieces.at(slot).size;
        making.work.placements[slot] = {
            photo, startingCrop(making.work.photos.at(photo).upright, window), {}};
    }

    Making making{blankSketch(), {}};

  private:
    QTemporaryDir m_folder;
};

}  // namespace matwright::app
