// SPDX-License-Identifier: MIT
// Whether two PDF files show the same lines at the same places, sheet by sheet. Where the sheets of
// one are upright and those of the other lie, the printed ones are turned a quarter first.
//   print_compare EXPECTED.pdf PRINTED.pdf
#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QImageReader>
#include <QProcess>
#include <QTemporaryDir>
#include <QTransform>
#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace {

constexpr int ppi = 600;
constexpr int furthest = 24;     // pixels looked around; what is not found by then is missing
constexpr double allowed = 0.1;  // mm
constexpr int dark = 128;

double toMillimetres(int pixels) {
    return pixels * 25.4 / ppi;
}

QList<QImage> sheetsOf(const QString& pdf) {
    const QTemporaryDir folder;
    QProcess::execute(QStringLiteral("pdftoppm"),
                      {QStringLiteral("-r"), QString::number(ppi), QStringLiteral("-gray"), pdf,
                       folder.filePath(QStringLiteral("sheet"))});
    QList<QImage> sheets;
    for (const QString& name : QDir(folder.path()).entryList(QDir::Files, QDir::Name)) {
        sheets << QImage(folder.filePath(name)).convertToFormat(QImage::Format_Grayscale8);
    }
    return sheets;
}

// Whether a dark pixel lies on the square ring `r` pixels around (x, y).
bool hasDarkAt(const QImage& image, int x, int y, int r) {
    for (int row = std::max(0, y - r); row <= std::min(image.height() - 1, y + r); ++row) {
        const uchar* line = image.constScanLine(row);
        const int step = std::abs(row - y) == r || r == 0 ? 1 : 2 * r;
        for (int column = x - r; column <= x + r; column += step) {
            if (column >= 0 && column < image.width() && line[column] < dark) {
                return true;
            }
        }
    }
    return false;
}

struct Found {
    qint64 pixels = 0;
    int worst = 0;  // pixels to the nearest dark one of the other picture
};

// How far the dark pixels of `from` are from those of `to`.
Found distances(const QImage& from, const QImage& to) {
    Found found;
    for (int y = 0; y < from.height(); ++y) {
        const uchar* line = from.constScanLine(y);
        for (int x = 0; x < from.width(); ++x) {
            if (line[x] >= dark) {
                continue;
            }
            ++found.pixels;
            int r = 0;
            while (r < furthest && !hasDarkAt(to, x, y, r)) {
                ++r;
            }
            found.worst = std::max(found.worst, r);
        }
    }
    return found;
}

struct Difference {
    qint64 pixels;
    double millimetres;
};

Difference difference(const QImage& expected, const QImage& printed) {
    const Found lost = distances(expected, printed);
    const Found added = distances(printed, expected);
    return {lost.pixels, toMillimetres(std::max(lost.worst, added.worst))};
}

Difference differenceEitherWay(const QImage& expected, const QImage& printed) {
    if ((expected.width() > expected.height()) == (printed.width() > printed.height())) {
        return difference(expected, printed);
    }
    const auto turned = [&](double degrees) {
        return difference(expected, printed.transformed(QTransform().rotate(degrees)));
    };
    const Difference right = turned(90);
    return right.millimetres <= allowed ? right : turned(270);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::puts("print_compare EXPECTED.pdf PRINTED.pdf");
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    QImageReader::setAllocationLimit(0);
    const QList<QImage> expected = sheetsOf(QString::fromLocal8Bit(argv[1]));
    const QList<QImage> printed = sheetsOf(QString::fromLocal8Bit(argv[2]));
    bool good = !expected.isEmpty() && expected.size() == printed.size();
    std::printf("%lld sheets expected, %lld printed\n", static_cast<long long>(expected.size()),
                static_cast<long long>(printed.size()));
    for (qsizetype i = 0; good && i < expected.size(); ++i) {
        const Difference found = differenceEitherWay(expected[i], printed[i]);
        std::printf("sheet %lld: %lld dark pixels, worst %.3f mm\n", static_cast<long long>(i + 1),
                    static_cast<long long>(found.pixels), found.millimetres);
        good = found.pixels > 10'000 && found.millimetres <= allowed;
    }
    return good ? 0 : 1;
}
