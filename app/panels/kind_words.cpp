// SPDX-License-Identifier: MIT
#include "app/panels/kind_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace matwright::app {

namespace {

QString kindWord(const char* text) {
    return QCoreApplication::translate("PieceKind", text);
}

QString oneOf(PieceKind kind) {
    switch (kind) {
        case PieceKind::PhotoSlot:
            return kindWord("1 photo slot");
        case PieceKind::Strip:
            return kindWord("1 strip");
        case PieceKind::Block:
            return kindWord("1 block");
        case PieceKind::Title:
            return kindWord("1 title");
        case PieceKind::Journaling:
            return kindWord("1 journaling place");
        case PieceKind::Embellishment:
            return kindWord("1 embellishment");
    }
    return {};
}

QString manyOf(PieceKind kind) {
    switch (kind) {
        case PieceKind::PhotoSlot:
            return kindWord("%1 photo slots");
        case PieceKind::Strip:
            return kindWord("%1 strips");
        case PieceKind::Block:
            return kindWord("%1 blocks");
        case PieceKind::Title:
            return kindWord("%1 titles");
        case PieceKind::Journaling:
            return kindWord("%1 journaling places");
        case PieceKind::Embellishment:
            return kindWord("%1 embellishments");
    }
    return {};
}

}  // namespace

QString kindTitle(PieceKind kind) {
    switch (kind) {
        case PieceKind::PhotoSlot:
            return kindWord("Photo slot");
        case PieceKind::Strip:
            return kindWord("Strip");
        case PieceKind::Block:
            return kindWord("Block");
        case PieceKind::Title:
            return kindWord("Title");
        case PieceKind::Journaling:
            return kindWord("Journaling");
        case PieceKind::Embellishment:
            return kindWord("Embellishment");
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
