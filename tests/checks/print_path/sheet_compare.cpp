// SPDX-License-Identifier: MIT
// Whether a page of a PDF file shows the same picture as an image of the whole sheet at 300 ppi, in
// the same place and size.
//   sheet_compare EXPECTED.jpg PRINTED.pdf
#include <QDir>
#include <QGuiApplication>
#include <QImage>
#include <QProcess>
#include <QTemporaryDir>
#include <QTransform>
#include <cstdio>
#include <cstdlib>

namespace {

constexpr int ppi = 300;
constexpr double allowed = 0.8;  // mean difference in levels: two JPEG codings
// What 0.5 % of scaling must stand out by; else the picture is too plain to tell anything.
constexpr double telling = 2;

QImage firstPageOf(const QString& pdf) {
    const QTemporaryDir folder;
    QProcess::execute(
        QStringLiteral("pdftoppm"),
        {QStringLiteral("-r"), QString::number(ppi), QStringLiteral("-f"), QStringLiteral("1"),
         QStringLiteral("-l"), QStringLiteral("1"), pdf, folder.filePath(QStringLiteral("sheet"))});
    const QStringList names = QDir(folder.path()).entryList(QDir::Files, QDir::Name);
    return names.isEmpty()
               ? QImage()
               : QImage(folder.filePath(names.front())).convertToFormat(QImage::Format_RGB888);
}

double meanDifference(const QImage& a, const QImage& b) {
    qint64 sum = 0;
    for (int y = 0; y < a.height(); ++y) {
        const uchar* left = a.constScanLine(y);
        const uchar* right = b.constScanLine(y);
        for (int x = 0; x < 3 * a.width(); ++x) {
            sum += std::abs(left[x] - right[x]);
        }
    }
    return static_cast<double>(sum) / (3.0 * a.width() * a.height());
}

// About its middle, as a printer scales.
QImage enlarged(const QImage& sheet, double factor) {
    const QImage larger = sheet.scaled((QSizeF(sheet.size()) * factor).toSize(),
                                       Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    return larger.copy((larger.width() - sheet.width()) / 2, (larger.height() - sheet.height()) / 2,
                       sheet.width(), sheet.height());
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::puts("sheet_compare EXPECTED.jpg PRINTED.pdf");
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    const QImage expected =
        QImage(QString::fromLocal8Bit(argv[1])).convertToFormat(QImage::Format_RGB888);
    QImage printed = firstPageOf(QString::fromLocal8Bit(argv[2]));
    // A lying sheet is fed upright.
    if ((expected.width() > expected.height()) != (printed.width() > printed.height())) {
        printed = printed.transformed(QTransform().rotate(90));
    }
    if (expected.isNull() || expected.size() != printed.size()) {
        std::printf("%d x %d pixels expected, %d x %d printed\n", expected.width(),
                    expected.height(), printed.width(), printed.height());
        return 1;
    }
    const double found = meanDifference(expected, printed);
    const double scaled = meanDifference(enlarged(expected, 1.005), printed);
    std::printf("mean difference %.2f levels; %.2f if it had been enlarged by 0.5 %%\n", found,
                scaled);
    return found <= allowed && scaled >= telling * found ? 0 : 1;
}
