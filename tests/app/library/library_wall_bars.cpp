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

struct Warm {
    double ms;
    double mb;
};

Warm warmStart(const QString& library, const QString& cache) {
    const QJsonObject one = probe(QStringLiteral("start"), library, cache);
    return {one[QLatin1StringView("ms")].toDouble(), one[QLatin1StringView("mb")].toDouble()};
}

// Both libraries in turns; prints and judges both ratios.
bool startsWarm(const QString& small, const QString& smallCache, const QString& large,
                const QString& largeCache) {
    std::vector<double> smallMs, largeMs, smallMb, largeMb;
    const double ratio = matwright::test::bestRatio(startBar, [&] {
        smallMs.clear();
        largeMs.clear();
        for (int run = 0; run < runs; ++run) {
            const Warm a = warmStart(small, smallCache);
            const Warm b = warmStart(large, largeCache);
            smallMs.push_back(a.ms);
            largeMs.push_back(b.ms);
            smallMb.push_back(a.mb);
            largeMb.push_back(b.mb);
        }
        return median(largeMs) / median(smallMs);
    });
    const double memory = median(largeMb) / median(smallMb);
    std::printf(
        "warm start to the first screen of thumbnails: 100 sketches %.1f ms, 10,000 "
        "sketches %.1f ms, ratio %.2f (bar %.1f: %s)\n",
        median(smallMs), median(largeMs), ratio, startBar, ratio <= startBar ? "met" : "missed");
    std::printf("memory after it: %.1f MB, %.1f MB, ratio %.2f (bar %.1f: %s)\n", median(smallMb),
                median(largeMb), memory, memoryBar, memory <= memoryBar ? "met" : "missed");
    return ratio <= startBar && memory <= memoryBar;
}

bool scrolls(const char* how, const QString& library, const QString& cache, int attempts) {
    QJsonObject best;
    const auto worstOf = [](const QJsonObject& one) {
        return one[QLatin1StringView("worst")].toDouble();
    };
    for (int i = 0; i < attempts && (best.isEmpty() || worstOf(best) > blockBar); ++i) {
        const QJsonObject one = probe(QStringLiteral("scroll"), library, cache);
        if (best.isEmpty() || worstOf(one) < worstOf(best)) {
            best = one;
        }
    }
    std::printf(
        "scrolling 10,000 %s: longest event %.1f ms (the thread itself busy for at most "
        "%.1f ms), longest from step to step %.1f ms, %d steps, %.1f MB (bar %.0f ms: "
        "%s)\n",
        how, worstOf(best), best[QLatin1StringView("busy")].toDouble(),
        best[QLatin1StringView("gap")].toDouble(), best[QLatin1StringView("steps")].toInt(),
        best[QLatin1StringView("mb")].toDouble(), blockBar,
        worstOf(best) <= blockBar ? "met" : "missed");
    return worstOf(best) <= blockBar;
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
    // The indexes are made.
    warmStart(small, smallCache);
    warmStart(large, largeCache);
    const bool scrollsCold = scrolls("while pictures are drawn", large, largeCache, 1);
    const bool starts = startsWarm(small, smallCache, large, largeCache);
    const bool scrollsWarm = scrolls("with kept pictures", large, largeCache, 3);
    return scrollsCold && starts && scrollsWarm ? 0 : 1;
}
