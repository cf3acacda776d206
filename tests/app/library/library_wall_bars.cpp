// SPDX-License-Identifier: MIT
// Bars of the library's wall, each run a process of its own, 100 and 10,000 sketches in turns:
// from the start of the program to the first screen of thumbnails painted, the memory then, and the
// longest the window's thread is busy while 10,000 sketches are scrolled at full speed.
#include <QCoreApplication>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "tests/app/library/wall_probe.h"
#include "tests/support/generated_library.h"
#include "tests/support/timed_bar.h"

namespace {

constexpr double startBar = 1.3;
constexpr double memoryBar = 1.5;
constexpr double blockBar = 30;  // ms
constexpr std::uint64_t seed = 20'261'125;
constexpr int runs = 9;

QJsonObject probe(const QString& mode, const QString& library, const QString& cache) {
    const auto now = std::chrono::steady_clock::now().time_since_epoch().count();
    QProcess process;
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    process.start(QCoreApplication::applicationFilePath(),
                  {mode, library, cache, QString::number(now)});
    if (!process.waitForFinished(180'000) || process.exitCode() != 0) {
        std::fprintf(stderr, "the %s probe did not end well\n", qPrintable(mode));
        std::exit(2);
    }
    return QJsonDocument::fromJson(process.readAllStandardOutput()).object();
}

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

bool told(const char* what, double small, double large, const char* unit, double bar) {
    const double ratio = large / small;
    std::printf("%s: 100 sketches %.1f %s, 10,000 sketches %.1f %s, ratio %.2f (bar %.1f: %s)\n",
                what, small, unit, large, unit, ratio, bar, ratio <= bar ? "met" : "missed");
    return ratio <= bar;
}

}  // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    if (argc > 1) {
        return matwright::test::runProbe(argc, argv);
    }
    if (matwright::test::timingsMeanNothing()) {
        return matwright::test::skippedBar;
    }
    const QCoreApplication app(argc, argv);
    const QTemporaryDir folder;
    const QString small = folder.filePath(QStringLiteral("small"));
    const QString large = folder.filePath(QStringLiteral("large"));
    matwright::test::writeGeneratedLibrary(small.toStdString(), seed, 100, true);
    matwright::test::writeGeneratedLibrary(large.toStdString(), seed, 10'000, true);
    const QString smallCache = folder.filePath(QStringLiteral("small-cache"));
    const QString largeCache = folder.filePath(QStringLiteral("large-cache"));
    // Indexes and thumbnails are made; with them the first scrolling, which draws every picture.
    probe(QStringLiteral("start"), small, smallCache);
    probe(QStringLiteral("start"), large, largeCache);
    const QJsonObject cold = probe(QStringLiteral("scroll"), large, largeCache);
    std::vector<double> smallMs, largeMs, smallMb, largeMb;
    for (int run = 0; run < runs; ++run) {
        const QJsonObject a = probe(QStringLiteral("start"), small, smallCache);
        const QJsonObject b = probe(QStringLiteral("start"), large, largeCache);
        smallMs.push_back(a[QLatin1StringView("ms")].toDouble());
        largeMs.push_back(b[QLatin1StringView("ms")].toDouble());
        smallMb.push_back(a[QLatin1StringView("mb")].toDouble());
        largeMb.push_back(b[QLatin1StringView("mb")].toDouble());
    }
    bool isMet = told("warm start to first screen of thumbnails", median(smallMs), median(largeMs),
                      "ms", startBar);
    isMet &= told("memory after it", median(smallMb), median(largeMb), "MB", memoryBar);
    const QJsonObject warm = probe(QStringLiteral("scroll"), large, largeCache);
    for (const auto& [name, one] :
         {std::pair{"drawing every picture", cold}, std::pair{"with kept pictures", warm}}) {
        const double worst = one[QLatin1StringView("worst")].toDouble();
        isMet &= worst <= blockBar;
        std::printf(
            "scrolling 10,000 at full speed, %s: longest event %.1f ms, longest from step "
            "to step %.1f ms, %d steps, %.1f MB (bar %.0f ms: %s)\n",
            name, worst, one[QLatin1StringView("gap")].toDouble(),
            one[QLatin1StringView("steps")].toInt(), one[QLatin1StringView("mb")].toDouble(),
            blockBar, worst <= blockBar ? "met" : "missed");
    }
    return isMet ? 0 : 1;
}
