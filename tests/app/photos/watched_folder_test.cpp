// SPDX-License-Identifier: MIT
#include "app/photos/watched_folder.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

namespace matwright::app {
namespace {

class Watched : public testing::Test {
  protected:
    Watched() { watched.setRest(std::chrono::milliseconds(60)); }
    QString write(const char* name, const QByteArray& bytes) const {
        const QString path = folder.filePath(QString::fromUtf8(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
        return path;
    }
    void begin() {
        watched.watch(folder.path());
        QTest::qWait(150);  // the first look
    }

    QTemporaryDir folder;
    WatchedFolder watched;
    QSignalSpy arrivals{&watched, &WatchedFolder::arrived};
};

TEST_F(Watched, TellsOfWhatComesAndNotOfWhatWasThere) {
    write("old.jpg", "old");
    begin();
    EXPECT_EQ(arrivals.count(), 0);
    const QString path = write("new.JPG", "new");
    write("letter.txt", "no photo");
    ASSERT_TRUE(QTest::qWaitFor([this] { return arrivals.count() == 1; }, 5'000));
    EXPECT_EQ(arrivals.at(0).at(0).toStringList(), QStringList{path});
    write("another.heic", "x");
    ASSERT_TRUE(QTest::qWaitFor([this] { return arrivals.count() == 2; }, 5'000));
}

TEST_F(Watched, WaitsUntilAFileHasStoppedGrowing) {
    begin();
    const QString path = folder.filePath(QStringLiteral("slow.jpg"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    for (int i = 0; i < 8; ++i) {
        file.write(QByteArray(1'000, 'x'));
        file.flush();
        QTest::qWait(25);
    }
    EXPECT_EQ(arrivals.count(), 0);
    file.close();
    ASSERT_TRUE(QTest::qWaitFor([this] { return arrivals.count() == 1; }, 5'000));
}

TEST_F(Watched, WatchesNothingWhenToldSo) {
    begin();
    watched.watch({});
    write("new.jpg", "new");
    QTest::qWait(300);
    EXPECT_EQ(arrivals.count(), 0);
}

}  // namespace
}  // namespace matwright::app
