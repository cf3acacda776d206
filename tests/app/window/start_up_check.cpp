// SPDX-License-Identifier: MIT
// From start to first painted window, whole processes: the program against a bare QMainWindow
// program, turn and turn about in one run. Prints both medians, their ratio and whether it meets
// the bar; fails above the guard. Arguments: MATWRIGHT BARE_WINDOW [RUNS]. Where there is no
// display it starts an X server of its own: without one a bare window does not even look for a
// font.
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <cstdio>
#include <optional>
#include <vector>

namespace {

constexpr double bar = 1.5;
// What the check fails at: one process start is too short to hold the bar itself on a busy machine.
constexpr double guard = 2.2;

// Milliseconds from start to end of the process; nothing where it fails.
std::optional<double> timed(const QString& program, const QStringList& arguments) {
    QElapsedTimer clock;
    clock.start();
    QProcess process;
    process.setStandardErrorFile(QProcess::nullDevice());
    process.start(program, arguments);
    const bool ended = process.waitForFinished(60'000);
    const double ms = static_cast<double>(clock.nsecsElapsed()) / 1e6;
    const bool well =
        ended && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0;
    return well ? std::optional(ms) : std::nullopt;
}

// Starts Xvfb on a free display and lets the timed programs use it.
bool startServer(QProcess& server) {
    server.setStandardErrorFile(QProcess::nullDevice());
    server.start(QStringLiteral("Xvfb"),
                 {QStringLiteral("-displayfd"), QStringLiteral("1"), QStringLiteral("-screen"),
                  QStringLiteral("0"), QStringLiteral("1280x800x24"), QStringLiteral("-nolisten"),
                  QStringLiteral("tcp")});
    if (!server.waitForStarted() || !server.waitForReadyRead(20'000)) {
        return false;
    }
    qunsetenv("QT_QPA_PLATFORM");
    return qputenv("DISPLAY", ":" + server.readAllStandardOutput().trimmed());
}

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() < 3) {
        std::fputs("usage: start_up_check MATWRIGHT BARE_WINDOW [RUNS]\n", stderr);
        return 2;
    }
    QProcess server;
    if (qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") &&
        !startServer(server)) {
        std::puts("SKIPPED: start-up time: there is no display and no Xvfb");
        return 0;
    }
    const QTemporaryDir home;  // a first start each time, and nobody's settings touched
    for (const char* name : {"XDG_CONFIG_HOME", "XDG_STATE_HOME"}) {
        qputenv(name, home.path().toLocal8Bit());
    }
    const int runs = std::max(arguments.value(3, QStringLiteral("15")).toInt(), 3);
    std::vector<double> ours;
    std::vector<double> bare;
    for (int run = -1; run < runs; ++run) {
        const auto a = timed(arguments.at(1), {QStringLiteral("--leave-after-first-paint")});
        const auto b = timed(arguments.at(2), {});
        if (!a || !b) {
            std::fprintf(stderr, "%s did not start and end well\n",
                         a ? "bare window" : "matwright");
            return 2;
        }
        if (run >= 0) {  // the first pair warms the disk cache
            ours.push_back(*a);
            bare.push_back(*b);
        }
    }
    const double ratio = median(ours) / median(bare);
    std::printf(
        "start to first paint, median of %d: matwright %.1f ms, bare window %.1f ms, "
        "ratio %.2f (bar %.1f: %s; fails above %.1f)\n",
        runs, median(ours), median(bare), ratio, bar, ratio <= bar ? "met" : "missed", guard);
    server.terminate();
    server.waitForFinished();
    return ratio <= guard ? 0 : 1;
}
