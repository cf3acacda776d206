// SPDX-License-Identifier: MIT
#include "tests/app/library/wall_probe.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QEvent>
#include <QFile>
#include <QScrollBar>
#include <QTimer>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>

#include "app/library/library_view.h"
#include "app/settings/theme.h"

namespace matwright::test {
namespace {

using Clock = std::chrono::steady_clock;

// What this thread has worked, without the time that others had the processor.
double busyMilliseconds() {
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

// Times every event that comes from the event loop itself.
class TimedApplication final : public QApplication {
  public:
    using QApplication::QApplication;

    bool notify(QObject* receiver, QEvent* event) override {
        if (m_depth++ > 0) {
            const bool done = QApplication::notify(receiver, event);
            --m_depth;
            return done;
        }
        const int type = event->type();
        const double busyBefore = busyMilliseconds();
        const auto before = Clock::now();
        const bool done = QApplication::notify(receiver, event);
        --m_depth;
        const double ms = std::chrono::duration<double, std::milli>(Clock::now() - before).count();
        if (isOn && ms > worst) {
            worst = ms;
            worstType = type;
        }
        if (isOn) {
            worstBusy = std::max(worstBusy, busyMilliseconds() - busyBefore);
        }
        return done;
    }

    bool isOn = false;
    double worst = 0;
    double worstBusy = 0;
    int worstType = 0;

  private:
    int m_depth = 0;
};

class SilentAsks final : public app::LibraryAsks {
  public:
    std::optional<QString> newName(const QString&) override { return {}; }
    std::optional<QString> folderToMoveTo(const QStringList&) override { return {}; }
    QStringList filesToAdd() override { return {}; }
    std::optional<QString> folderToAdd() override { return {}; }
    std::optional<QString> libraryFolder(const QString&) override { return {}; }
    std::optional<QString> zipFile(const QString&) override { return {}; }
    std::optional<QString> pdfFile(const QString&) override { return {}; }
    std::optional<Sketch> carriedOver(const Sketch&, Length) override { return {}; }
    void list(const QString&, const QStringList&) override {}
    void tell(const QString&, const QString&) override {}
};

class SilentHost final : public app::LibraryHost {
  public:
    bool openSketch(const QString&) override { return false; }
    bool startPage(Sketch) override { return false; }
    void showPage() override {}
    void say(const QString&) override {}
};

double residentMegabytes() {
    QFile status(QStringLiteral("/proc/self/status"));
    (void)status.open(QIODevice::ReadOnly);
    for (const QByteArray& line : status.readAll().split('\n')) {
        if (line.startsWith("VmRSS:")) {
            return line.mid(6).trimmed().split(' ').constFirst().toDouble() / 1024;
        }
    }
    return 0;
}

// Runs events until `condition` holds, at most two minutes.
template <typename Condition>
bool waitUntil(Condition condition) {
    QElapsedTimer clock;
    clock.start();
    while (!condition() && clock.elapsed() < 120'000) {
        QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 50);
    }
    return condition();
}

bool isFilled(app::LibraryView& view) {
    return view.finder().holdings()->size() > 0 && view.wall().isComplete();
}

int measureStart(app::LibraryView& view, Clock::time_point start) {
    // Painted once more with all pictures: they are on the screen then.
    if (!waitUntil([&] { return isFilled(view); })) {
        return 2;
    }
    view.wall().viewport()->repaint();
    const double ms = std::chrono::duration<double, std::milli>(Clock::now() - start).count();
    if (!waitUntil([&] { return view.isKnown(); })) {
        return 2;
    }
    std::printf("{\"ms\": %.2f, \"mb\": %.1f, \"sketches\": %zu}\n", ms, residentMegabytes(),
                view.finder().holdings()->size());
    return 0;
}

int measureScroll(TimedApplication& app, app::LibraryView& view) {
    if (!waitUntil([&] { return isFilled(view) && view.isKnown(); })) {
        return 2;
    }
    QScrollBar& bar = *view.wall().verticalScrollBar();
    app.isOn = true;
    double worstGap = 0;
    auto last = Clock::now();
    int steps = 0;
    QTimer step;
    step.setInterval(0);
    QObject::connect(&step, &QTimer::timeout, &view, [&] {
        const auto now = Clock::now();
        worstGap =
            std::max(worstGap, std::chrono::duration<double, std::milli>(now - last).count());
        last = now;
        bar.setValue(bar.value() + 360);
        ++steps;
        if (bar.value() == bar.maximum()) {
            step.stop();
        }
    });
    step.start();
    const bool isThere = waitUntil([&] { return bar.value() == bar.maximum(); });
    // And back for a while as a person does it, so that pictures come in and go.
    QElapsedTimer leisure;
    leisure.start();
    QTimer back;
    QObject::connect(&back, &QTimer::timeout, &view, [&] { bar.setValue(bar.value() - 90); });
    back.start(8);
    waitUntil([&] { return leisure.elapsed() > 5'000; });
    back.stop();
    app.isOn = false;
    std::printf(
        "{\"worst\": %.2f, \"busy\": %.2f, \"type\": %d, \"gap\": %.2f, \"steps\": %d, \"mb\": "
        "%.1f}\n",
        app.worst, app.worstBusy, app.worstType, worstGap, steps, residentMegabytes());
    return isThere ? 0 : 2;
}

}  // namespace

int runProbe(int argc, char** argv) {
    TimedApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    const QString folder = arguments.value(2);
    const QString cache = arguments.value(3);
    app::SettingsStore settings(cache + QStringLiteral("/settings.ini"));
    app::Settings chosen = settings.value();
    chosen.libraryFolder = folder;
    chosen.theme = app::Settings::Theme::Light;
    settings.set(chosen);
    app::keepTheme(app, settings);
    SilentHost host;
    SilentAsks asks;
    app::LibraryView view(host, settings, asks, {folder, cache, {}});
    view.resize(1280, 760);
    view.show();
    if (arguments.value(1) == QLatin1StringView("scroll")) {
        return measureScroll(app, view);
    }
    const Clock::time_point start{Clock::duration(arguments.value(4).toLongLong())};
    return measureStart(view, start);
}

}  // namespace matwright::test
