// SPDX-License-Identifier: MIT
#include "tests/app/rendering/read_back.h"

#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

namespace matwright::app {

QByteArray outputOf(const QString& program, const QStringList& arguments, int* exitCode) {
    QProcess process;
    process.start(program, arguments);
    const bool ended = process.waitForFinished(120'000);
    if (exitCode) {
        *exitCode = ended ? process.exitCode() : -1;
    }
    return process.readAllStandardOutput();
}

bool isInstalled(const QString& program) {
    return !QStandardPaths::findExecutable(program).isEmpty();
}

QImage renderedPage(const QString& pdfPath, int page, int ppi) {
    const QTemporaryDir folder;
    const QString number = QString::number(page);
    const QString picture = folder.filePath(QStringLiteral("page"));
    outputOf(QStringLiteral("pdftoppm"),
             {QStringLiteral("-r"), QString::number(ppi), QStringLiteral("-gray"),
              QStringLiteral("-singlefile"), QStringLiteral("-f"), number, QStringLiteral("-l"),
              number, pdfPath, picture});
    return QImage(picture + QStringLiteral(".pgm"));
}

namespace {

template <typename At>
std::optional<DarkRun> darkIn(int count, double ppi, At isDark) {
    int first = 0;
    while (first < count && !isDark(first)) {
        ++first;
    }
    if (first == count) {
        return std::nullopt;
    }
    int end = count;
    while (!isDark(end - 1)) {
        --end;
    }
    return DarkRun{first / ppi, end / ppi};
}

}  // namespace

std::optional<DarkRun> darkInRow(const QImage& image, int y, double ppi) {
    return darkIn(image.width(), ppi, [&](int x) { return qGray(image.pixel(x, y)) < 128; });
}

std::optional<DarkRun> darkInColumn(const QImage& image, int x, double ppi) {
    return darkIn(image.height(), ppi, [&](int y) { return qGray(image.pixel(x, y)) < 128; });
}

}  // namespace matwright::app
