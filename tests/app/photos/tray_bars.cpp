// SPDX-License-Identifier: MIT
// Bar: 200 photos of 12 megapixels into the tray. Prints the longest time the window's thread is
// held up by one event (and how long it was busy itself), and the most memory the program took.
#include <time.h>

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimer>
#include <algorithm>
#include <cstdio>

#include "app/photos/photo_care.h"
#include "app/photos/photo_intake.h"
#include "app/photos/photo_tray_panel.h"
#include "app/photos/reading/photo_reader.h"
#include "tests/support/painted_photos.h"
#include "tests/support/timed_bar.h"

namespace matwright::app {
namespace {

constexpr int photos = 200;
constexpr double blockBar = 50;    // ms
constexpr double memoryBar = 600;  // MB
constexpr QSize twelveMegapixels(4'000, 3'000);

double threadMs() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

// Times every event that the loop hands out, the innermost ones with those around them.
class TimedApplication final : public QApplication {
  public:
    using QApplication::QApplication;
    bool notify(QObject* receiver, QEvent* event) override {
        if (m_depth > 0) {
            return QApplication::notify(receiver, event);
        }
        ++m_depth;
        QElapsedTimer wall;
        wall.start();
        const double before = threadMs();
        const bool taken = QApplication::notify(receiver, event);
        longest = std::max(longest, static_cast<double>(wall.nsecsElapsed()) / 1e6);
        busiest = std::max(busiest, threadMs() - before);
        --m_depth;
        return taken;
    }
    double longest = 0;
    double busiest = 0;

  private:
    int m_depth = 0;
};

double peakMegabytes() {
    QFile status(QStringLiteral("/proc/self/status"));
    if (status.open(QIODevice::ReadOnly)) {
        for (const QByteArray& line : status.readAll().split('\n')) {
            if (line.startsWith("VmHWM:")) {
                return line.mid(6).trimmed().split(' ').first().toDouble() / 1024;
            }
        }
    }
    return 0;
}

// A few painted photos, and copies that differ in the bytes behind the picture.
void paintAll(const QString& folder) {
    std::vector<QByteArray> painted;
    for (int scene = 0; scene < test::paintedScenes; ++scene) {
        const QString file = folder + QStringLiteral("/painted.jpg");
        test::writeJpeg(file.toStdString(), test::paintedPhoto(scene, twelveMegapixels),
                        {"2026:07:14 16:03:22", scene % 2 == 0 ? 1 : 6, -2, 90});
        QFile read(file);
        if (read.open(QIODevice::ReadOnly)) {
            painted.push_back(read.readAll());
        }
        read.remove();
    }
    for (int i = 0; i < photos; ++i) {
        QFile copy(QStringLiteral("%1/photo%2.jpg").arg(folder).arg(i, 3, 10, QLatin1Char('0')));
        if (copy.open(QIODevice::WriteOnly)) {
            copy.write(painted[static_cast<std::size_t>(i) % painted.size()]);
            copy.write(QByteArray::number(i));
        }
    }
}

int fillTray(TimedApplication& app, const QString& folder, const QString& cache) {
    Session session;
    SettingsStore settings(cache + QStringLiteral("/settings.ini"));
    PhotoAccess access(std::make_unique<PhotoReader>(cache));
    QString said;
    const auto say = [&](const QString& sentence) { said = sentence; };
    PhotoIntake intake(session, access, say);
    PhotoCare care(session, access, [] { return QStringList(); }, say);
    PhotoTrayPanel panel(session, access, settings, {});
    panel.resize(280, 620);
    panel.show();
    QElapsedTimer clock;
    clock.start();
    intake.add({folder});
    QTimer watch;
    QObject::connect(&watch, &QTimer::timeout, &app, [&] {
        if (!intake.isBusy() && access.ifOpen()->isIdle()) {
            QCoreApplication::quit();
        }
    });
    watch.start(100);
    QTimer::singleShot(600'000, &app, &QCoreApplication::quit);
    QCoreApplication::exec();
    const double memory = peakMegabytes();
    std::printf("%s %d thumbnails in %.1f s\n", said.toUtf8().constData(), panel.model().rowCount(),
                static_cast<double>(clock.elapsed()) / 1e3);
    std::printf(
        "window's thread: longest event %.1f ms, busy itself for at most %.1f ms (bar %.0f "
        "ms: %s)\n",
        app.longest, app.busiest, blockBar, app.longest <= blockBar ? "met" : "missed");
    std::printf("most memory: %.0f MB (bar %.0f MB: %s)\n", memory, memoryBar,
                memory > 0 && memory <= memoryBar ? "met" : "missed");
    const bool isWhole = panel.model().rowCount() == photos;
    return isWhole && app.longest <= blockBar && memory > 0 && memory <= memoryBar ? 0 : 1;
}

}  // namespace
}  // namespace matwright::app

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    using namespace matwright::app;
    TimedApplication app(argc, argv);
    if (argc > 1) {  // painting takes memory of its own, so it is another process
        paintAll(QString::fromLocal8Bit(argv[1]));
        return 0;
    }
    if (matwright::test::timingsMeanNothing()) {
        return matwright::test::skippedBar;
    }
    const QTemporaryDir folder;
    const QString photosFolder = folder.filePath(QStringLiteral("photos"));
    QDir().mkpath(photosFolder);
    if (QProcess::execute(QCoreApplication::applicationFilePath(), {photosFolder}) != 0) {
        return 2;
    }
    return fillTray(app, photosFolder, folder.filePath(QStringLiteral("cache")));
}
