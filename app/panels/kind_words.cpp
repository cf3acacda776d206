// SPDX-License-Identifier: MIT
#include "app/panels/kind_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace matwright::app {

namespace {

QString say(const char* text) {
    return QCoreApplication::translate("PieceKind", text);
}

QString oneOf(PieceKind kind) {
    switch (kind) {
        case PieceKind::PhotoSlot:
            return say("1 photo slot");
        case PieceKind::Strip:
            return say("1 strip");
        case PieceKind::Block:
            return say("1 block");
        case PieceKind::Title:
            return say("1 title");
        case PieceKind::Journaling:
            return say("1 journaling place");
        case PieceKind::Embellishment:
            return say("1 embellishment");
    }
    return {};
}

QString manyOf(PieceKind kind) {
    switch (kind) {
        case PieceKind::PhotoSlot:
            return say("%1 photo slots");
        case PieceKind::Strip:
            return say("%1 strips");
        case PieceKind::Block:
            return say("%1 blocks");
        case PieceKind::Title:
            return say("%1 titles");
        case PieceKind::Journaling:
            return say("%1 journaling places");
        case PieceKind::Embellishment:
            return say("%1 embellishments");
    }
    return {};
}

}  // namespace

QString kindTitle(PieceKind kind) {
    switch (kind) {
        case PieceKind::PhotoSlot:
            return say("Photo slot");
        case PieceKind::Strip:
            return say("Strip");
        case PieceKind::Block:
            return say("Block");
        case PieceKind::Title:
            return say("Title");
        case PieceKind::Journaling:
            return say("Journaling");
        case PieceKind::Embellishment:
            return say("Embellishment");
    }
    return {};
}

QString countedKinds(std::span<const Piece* const> pieces) {
    QStringList parts;
    for (const PieceKind kind : allPieceKinds) {
        const auto count = std::ranges::count(pieces, kind, &Piece::kind);
        if (count == 1) {
            parts << oneOf(kind);
        } else if (count > 1) {
            parts << manyOf(kind).arg(count);
        }
    }
    return parts.join(QStringLiteral(", "));
}

}  // namespace matwright::app
