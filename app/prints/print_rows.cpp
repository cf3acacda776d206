// SPDX-License-Identifier: MIT
#include "app/prints/print_rows.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <algorithm>

#include "app/crop/crop_words.h"
#include "core/making/fold.h"
#include "core/measure/length_text.h"

namespace matwright::app {

namespace {

constexpr Length leastTrim = Length::inches(0, 1, 8);

QString words(const char* text) {
    return QCoreApplication::translate("matwright::app::PrintRows", text);
}

QString sizeWords(const Print& print) {
    QString paper = QString::fromStdString(naturalSizeText(print.paper));
    if (print.trim.size() == print.paper) {
        return paper;
    }
    return words("%1, trimmed to %2")
        .arg(paper, QString::fromStdString(naturalSizeText(print.trim.size())));
}

PrintRow rowOf(const Making& making, const Print& print, std::size_t index) {
    const Photo& photo = making.work.photos.at(print.photo);
    const double ppi = effectivePpi(print.crop, photo.upright, print.window);
    PrintRow row;
    row.print = index;
    row.name = QString::fromStdString(print.name);
    row.photo = QFileInfo(QString::fromStdString(photo.path)).fileName();
    row.size = sizeWords(print);
    row.fineness = QString::fromStdString(ppiText(ppi));
    row.sharpness = sharpnessAt(ppi);
    row.loss = lossWords(print.crop, {photo.upright, print.window, print.window}, {});
    return row;
}

}  // namespace

std::vector<PrintRow> printRows(const Making& making, const std::vector<Print>& prints) {
    std::vector<PrintRow> rows;
    rows.reserve(prints.size());
    for (std::size_t i = 0; i < prints.size(); ++i) {
        rows.push_back(rowOf(making, prints[i], i));
    }
    return rows;
}

std::size_t freeSlotsOf(const Making& making) {
    return static_cast<std::size_t>(
        std::ranges::count_if(making.sketch.pieces, [&](const auto& entry) {
            return entry.second.kind == PieceKind::PhotoSlot &&
                   !making.work.placements.contains(entry.first);
        }));
}

QString summaryOf(const std::vector<PrintRow>& rows, std::size_t freeSlots) {
    if (rows.empty()) {
        return words("No slot has a photo yet. Put photos into the slots first.");
    }
    QString text = rows.size() == 1 ? words("1 print.")
                                    : words("%1 prints.").arg(static_cast<qulonglong>(rows.size()));
    const auto coarse = std::ranges::count_if(
        rows, [](const PrintRow& row) { return row.sharpness != Sharpness::Fine; });
    if (coarse > 0) {
        text += coarse == 1 ? words(" 1 of them will not look sharp.")
                            : words(" %1 of them will not look sharp.").arg(coarse);
    }
    if (freeSlots > 0) {
        text += freeSlots == 1
                    ? words(" 1 slot has no photo yet.")
                    : words(" %1 slots have no photo yet.").arg(static_cast<qulonglong>(freeSlots));
    }
    return text;
}

Making withBorders(Making making, Length border) {
    for (auto& [slot, placement] : making.work.placements) {
        const Piece& piece = making.sketch.pieces.at(slot);
        if (std::min(piece.size.width, piece.size.height) - border * 2 < leastTrim) {
            continue;
        }
        placement.border = border;
        placement.crop = settled(placement.crop, making.work.photos.at(placement.photo).upright,
                                 shownWindow(piece, border, making.sketch.page));
    }
    return making;
}

}  // namespace matwright::app
