// SPDX-License-Identifier: MIT
// Writes the photos of examples/ and a page in the making that uses them. Argument: that folder.
#include <QDir>
#include <QEventLoop>
#include <QFile>
#include <QGuiApplication>
#include <cstdio>

#include "app/files/sketch_document.h"
#include "app/photos/photo_access.h"
#include "app/photos/photo_commands.h"
#include "app/photos/reading/photo_reader.h"
#include "tests/support/painted_photos.h"

using namespace matwright;
using namespace matwright::app;

namespace {

struct Taken {
    int scene;
    const char* when;
    int orientation;
    bool isUpright;
    int rating;
};
// A phone stores every photo lying and says how it was held: 1 and 3 lying, 6 and 8 upright.
constexpr Taken year[] = {
    {0, "2026:01:18 11:20:41", 1, false, 3}, {1, "2026:04:26 15:02:10", 6, true, -2},
    {2, "2026:07:14 16:03:22", 1, false, 5}, {3, "2026:07:16 20:41:05", 3, false, 4},
    {4, "2026:08:02 14:12:55", 8, true, -2}, {5, "2026:10:11 13:37:19", 1, false, -2},
    {6, "2026:09:05 10:55:31", 6, true, 4},  {7, "2026:07:17 22:10:08", 1, false, -2}};

QStringList paintPhotos(const QString& folder) {
    QDir().mkpath(folder);
    QStringList files;
    for (const Taken& taken : year) {
        const QString file = QStringLiteral("%1/%2.jpg")
                                 .arg(folder, QString::fromStdString(test::sceneName(taken.scene)));
        const QSize size = taken.isUpright ? QSize(1200, 1600) : QSize(1600, 1200);
        test::writeJpeg(file.toStdString(), test::paintedPhoto(taken.scene, size),
                        {taken.when, taken.orientation, taken.rating, 74});
        files << file;
    }
    return files;
}

void waitFor(const PhotoService& service) {
    while (!service.isIdle()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 20);
    }
    QCoreApplication::processEvents();
}

void addToTray(Session& session, PhotoService& service, const QStringList& files) {
    QObject::connect(&service, &PhotoService::lookedAt, [&](const std::vector<LookedAt>& looked) {
        std::vector<Photo> photos;
        for (const LookedAt& file : looked) {
            photos.push_back(file.photo.value());
        }
        (void)session.perform(addPhotos(session.work(), photos), {});
    });
    std::vector<std::string> paths;
    for (const QString& file : files) {
        paths.push_back(file.toStdString());
    }
    service.lookAt(std::move(paths));
    waitFor(service);
}

}  // namespace

int main(int argc, char** argv) {
    const QGuiApplication app(argc, argv);
    const QDir examples(QString::fromLocal8Bit(argv[argc - 1]));
    DiskFileStore disk;
    Session session;
    SketchDocument document(session, disk);
    PhotoReader service(QDir::tempPath() + QStringLiteral("/matwright-example-page"));
    const QString sketch =
        examples.absoluteFilePath(QStringLiteral("one-4x6-three-3x4.sketch.svg"));
    if (!document.open(sketch)) {
        return 1;
    }
    addToTray(session, service, paintPhotos(examples.absoluteFilePath(QStringLiteral("photos"))));
    for (const auto& [id, photo] : session.work().photos) {
        if (photo.path.ends_with("kite.jpg")) {
            const PhotoId focal = id;
            std::puts(setFocal(session, focal).toUtf8().constData());
            break;
        }
    }
    std::puts(fillSlots(session).toUtf8().constData());
    std::vector<WantedPhoto> shown;
    for (const auto& entry : session.work().placements) {
        shown.push_back(wanted(*matwright::find(session.work(), entry.second.photo)));
    }
    service.showOnPage(std::move(shown));
    waitFor(service);
    document.setPictures([&](PieceId slot) {
        const Placement& placement = session.work().placements.at(slot);
        return service.smallPicture(session.work().photos.at(placement.photo), placement,
                                    windowOf(session.sketch().pieces.at(slot), placement.border));
    });
    const QString page = examples.absoluteFilePath(QStringLiteral("a-year-outdoors.page.svg"));
    QFile::remove(page);
    const auto saved = document.saveAs(page);
    std::puts(saved ? "saved" : saved.error().text().c_str());
    return saved ? 0 : 1;
}
