// SPDX-License-Identifier: MIT
#include "app/photos/photo_tray_model.h"

#include <gtest/gtest.h>

#include <QMimeData>
#include <QSignalSpy>

#include "app/photos/photo_commands.h"
#include "app/photos/photo_mime.h"
#include "app/photos/photo_tray_delegate.h"

namespace matwright::app {
namespace {

class Tray : public testing::Test {
  protected:
    PhotoId add(const char* name, const char* taken, std::optional<int> rating = {}) {
        Photo photo;
        photo.path = std::string("/photos/") + name;
        photo.content.bytes[0] = ++m_mark;
        photo.upright = {4032, 3024};
        photo.taken = taken;
        photo.rating = rating;
        EXPECT_TRUE(session.perform(addPhotos(session.work(), {&photo, 1}), {}));
        return PhotoId{m_mark};
    }
    QStringList shown() const {
        QStringList names;
        for (int row = 0; row < model.rowCount(); ++row) {
            names << model.index(row).data().toString();
        }
        return names;
    }

    Session session;
    PhotoAccess access{QStringLiteral("/nowhere"), QStringLiteral("/nowhere")};
    PhotoTrayModel model{session, access};

  private:
    std::uint8_t m_mark = 0;
};

TEST_F(Tray, SortsByTimeRatingAndName) {
    add("IMG_10.jpg", "2026-07-14 16:03:22", 2);
    add("IMG_9.jpg", "2026-01-18 11:20:41", 5);
    add("scan.png", "");
    const PhotoId favourite = add("a.jpg", "2026-10-11 13:37:19");
    EXPECT_EQ(shown(), (QStringList{"IMG_9.jpg", "IMG_10.jpg", "a.jpg", "scan.png"}));
    model.setSort(TraySort::Name);
    EXPECT_EQ(shown(), (QStringList{"a.jpg", "IMG_9.jpg", "IMG_10.jpg", "scan.png"}));
    model.setSort(TraySort::Rating);
    EXPECT_EQ(shown(), (QStringList{"IMG_9.jpg", "IMG_10.jpg", "a.jpg", "scan.png"}));
    setFavourite(session, {&favourite, 1}, true);
    EXPECT_EQ(shown(), (QStringList{"a.jpg", "IMG_9.jpg", "IMG_10.jpg", "scan.png"}));
    session.undoStack().undo();
    EXPECT_EQ(shown(), (QStringList{"IMG_9.jpg", "IMG_10.jpg", "a.jpg", "scan.png"}));
}

TEST_F(Tray, KeepsHoldOfAPhotoWhileOthersComeAndGo) {
    const PhotoId later = add("b.jpg", "2026-07-02 00:00:00");
    const QPersistentModelIndex held(model.index(0));
    const PhotoId earlier = add("a.jpg", "2026-07-01 00:00:00");
    EXPECT_EQ(held.row(), 1);
    EXPECT_EQ(model.idAt(held), later);
    removeFromTray(session, {&earlier, 1});
    EXPECT_EQ(held.row(), 0);
    EXPECT_EQ(shown(), QStringList{"b.jpg"});
}

TEST_F(Tray, SaysInWordsWhatItsMarksSay) {
    const PhotoId id = add("a.jpg", "");
    setFavourite(session, {&id, 1}, true);
    setFocal(session, id);
    const QString words = model.index(0).data(Qt::AccessibleTextRole).toString();
    EXPECT_TRUE(words.contains(QStringLiteral("favourite"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("focal photo")));
    EXPECT_FALSE(words.contains(QStringLiteral("on the page")));
}

TEST_F(Tray, ShowsThePagesSmallPictureWherePhotosCannotBeRead) {
    add("a.jpg", "");
    EXPECT_TRUE(model.thumbnailAt(model.index(0)).isNull());
    int asked = 0;
    model.setStandIn([&](PhotoId) {
        ++asked;
        return QImage(8, 6, QImage::Format_RGB32);
    });
    EXPECT_EQ(model.thumbnailAt(model.index(0)).size(), QSize(8, 6));
    EXPECT_EQ(model.thumbnailAt(model.index(0)).size(), QSize(8, 6));
    EXPECT_EQ(asked, 1);
}

TEST_F(Tray, TakesPhotosAlongForThisWindowAndFilesForOthers) {
    const PhotoId id = add("a.jpg", "");
    const std::unique_ptr<QMimeData> mime(model.mimeData({model.index(0)}));
    EXPECT_EQ(photosFromMime(mime.get()), std::vector{id});
    EXPECT_EQ(filesFromMime(mime.get()), QStringList{"/photos/a.jpg"});
    QMimeData foreign;
    foreign.setData(QLatin1StringView(photosMimeType), "1 7");  // of another program
    EXPECT_TRUE(photosFromMime(&foreign).empty());
    EXPECT_TRUE(photosFromMime(nullptr).empty());
}

TEST_F(Tray, SaysShortlyHowLargeAPhotoMayBePrinted) {
    // 3000 x 2400 is 10 x 8 in at 300 ppi exactly.
    EXPECT_TRUE(shortPrintText(3000, 2400).startsWith(QStringLiteral("up to ")));
    EXPECT_TRUE(shortPrintText(3000, 2400).contains(QStringLiteral("10")));
    EXPECT_EQ(shortPrintText(40, 30), QStringLiteral("too small to print"));
}

}  // namespace
}  // namespace matwright::app
