// SPDX-License-Identifier: MIT
#include "app/panels/ready_pieces.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/panels/piece_changes.h"
#include "core/measure/catalogue.h"

namespace matwright::app {

namespace {

QString trayWord(const char* text) {
    return QCoreApplication::translate("Tray", text);
}

Piece pieceOf(PieceKind kind, Size size) {
    Piece piece;
    piece.kind = kind;
    piece.size = size;
    return piece;
}

// "4 × 6", "10 × 15 cm": inches go without saying.
QString shortName(Size size) {
    QString name = printName(size);
    if (name.endsWith(QStringLiteral(" in"))) {
        name.chop(3);
    }
    return name;
}

ReadyPiece photoSlot(Size print) {
    Piece piece = pieceOf(PieceKind::PhotoSlot, print);
    piece.printSize = print;
    const QString way = print.width == print.height ? trayWord("Photo slot %1")
                        : print.isUpright()         ? trayWord("Photo slot %1, upright")
                                                    : trayWord("Photo slot %1, lying");
    return {piece, shortName(print), way.arg(printName(print))};
}

ReadyPiece paper(PieceKind kind, Size size, const char* caption, const char* description) {
    return {pieceOf(kind, size), trayWord(caption), trayWord(description).arg(printName(size))};
}

constexpr Size inches(std::int64_t width, std::int64_t height) {
    return {Length::inches(width), Length::inches(height)};
}

}  // namespace

std::vector<ReadyPiece> readyPhotoSlots() {
    const auto catalogue = printSizes();
    std::vector<NamedSize> prints(catalogue.begin(), catalogue.end());
    std::ranges::stable_sort(prints, {}, [](const NamedSize& known) {
        return std::pair(known.id.ends_with("cm"), known.size.height);
    });
    std::vector<ReadyPiece> ready;
    for (const NamedSize& known : prints) {
        ready.push_back(photoSlot(known.size));
        if (known.size.isUpright()) {
            ready.push_back(photoSlot(known.size.turned()));
        }
    }
    return ready;
}

std::vector<ReadyPiece> readyPapers() {
    std::vector<ReadyPiece> ready{
        paper(PieceKind::Block, inches(4, 4), "Block", "Block %1"),
        paper(PieceKind::Block, inches(4, 4), "Circle", "Round block %1"),
        paper(PieceKind::Journaling, inches(3, 4), "Journaling", "Journaling card %1"),
        paper(PieceKind::Embellishment, inches(1, 1), "Embellishment", "Embellishment %1"),
        paper(PieceKind::Title, inches(6, 1), "Title", "Title %1"),
        paper(PieceKind::Strip, inches(12, 1), "Strip", "Strip %1, lying"),
        paper(PieceKind::Block, inches(6, 6), "Block", "Block %1"),
        paper(PieceKind::Strip, inches(1, 12), "Strip", "Strip %1, upright"),
    };
    ready[1].piece.shape = OvalShape{};
    for (ReadyPiece& offered : ready) {
        if (offered.piece.kind != PieceKind::Embellishment &&
            offered.piece.kind != PieceKind::Journaling) {
            offered.caption += QLatin1Char(' ') + shortName(offered.piece.size);
        }
    }
    return ready;
}

}  // namespace matwright::app
