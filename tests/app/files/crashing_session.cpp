// SPDX-License-Identifier: MIT
// A session without a window that edits without end until it is killed: piece N is N sixteenths
// of an inch from the left. Arguments: recovery folder, original path, milliseconds between edits,
// milliseconds from an edit to the recovery copy. Prints a line once the first copy is written.
#include <QCoreApplication>
#include <QDir>
#include <QTimer>
#include <cstdio>

#include "app/files/open_work.h"

using namespace matwright;

int main(int argc, char** argv) {
    const QCoreApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    DiskFileStore files;
    const std::chrono::milliseconds pace(arguments.at(4).toInt());
    app::OpenWork work(files, arguments.at(1), {pace, pace});
    if (!work.document.open(arguments.at(2))) {
        return 1;
    }
    QTimer edits;
    QObject::connect(&edits, &QTimer::timeout, [&work] {
        Piece piece;
        piece.size = {Length::inches(1), Length::inches(1)};
        piece.place.x =
            Length::inches(0, 1, 16) * static_cast<int>(work.session.sketch().pieces.size());
        (void)work.session.perform(addPieces(work.session.sketch(), {&piece, 1}), {});
    });
    edits.start(arguments.at(3).toInt());
    QTimer watch;
    QObject::connect(&watch, &QTimer::timeout, [&] {
        if (!QDir(arguments.at(1)).entryList({QStringLiteral("*.sketch.svg")}).isEmpty()) {
            watch.stop();
            std::puts("copied");
            std::fflush(stdout);
        }
    });
    watch.start(1);
    return QCoreApplication::exec();
}
