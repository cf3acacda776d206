// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "core/checks/amount_text.h"
#include "core/checks/finders.h"
#include "core/measure/catalogue.h"

namespace matwright {

namespace {

// A part of a piece that is cut on the trimmer.
struct CutPart {
    std::string name;
    Size size;
};

std::vector<CutPart> cutParts(const Piece& piece) {
    if (piece.kind != PieceKind::PhotoSlot) {
        return isPaper(piece) ? std::vector<CutPart>{{"it", piece.size}} : std::vector<CutPart>{};
    }
    std::vector<CutPart> parts{{"its trim", piece.size}};
    for (std::size_t i = 0; i < piece.mats.size(); ++i) {
        const bool only = piece.mats.size() == 1;
        parts.push_back({only     ? "its mat"
                         : i == 0 ? "its first mat"
                                  : "its second mat",
                         matBox(piece, i).size()});
    }
    return parts;
}

// The nearest length on the scale that can be cut.
Length onScale(Length length, Length step) {
    return std::max(length.roundedTo(step), step);
}

std::string offScaleText(const CutPart& part, Length step) {
    std::vector<std::string> is;
    std::vector<std::string> make;
    const auto add = [&](Length side, const char* way) {
        if (!side.isMultipleOf(step)) {
            is.push_back(fmt::format("{} {}", closeText(side), way));
            make.push_back(fmt::format("{} {}", steppedText(onScale(side, step), step), way));
        }
    };
    add(part.size.width, "wide");
    add(part.size.height, "tall");
    return fmt::format("{} is {}, which a trimmer marked in {} does not show; make it {}",
                       part.name, listText(is), steppedText(step, step), listText(make));
}

std::string printText(Size size, Scale scale) {
    const NamedSize* named = printSizeOf(size);
    return named ? std::string(named->name) : sizeText(size, scale);
}

}  // namespace

void findOffScale(const CheckContext& context, const CheckedPiece& checked, Findings& findings) {
    const Length step = context.settings.trimmerStep;
    for (const CutPart& part : cutParts(checked.piece)) {
        if (!part.size.width.isMultipleOf(step) || !part.size.height.isMultipleOf(step)) {
            findings.push_back(
                {CheckKind::OffScale,
                 {checked.id},
                 fmt::format("{}: {}.", context.label(checked.id), offScaleText(part, step))});
            return;
        }
    }
}

void findNoSuchPrintSize(const CheckContext& context, const CheckedPiece& checked,
                         Findings& findings) {
    const Piece& piece = checked.piece;
    if (!piece.printSize || printSizeOf(*piece.printSize)) {
        return;
    }
    const Scale scale = context.settings.scale;
    const std::optional<Size> better = smallestPrintFor(piece.size);
    findings.push_back(
        {CheckKind::NoSuchPrintSize,
         {checked.id},
         fmt::format("{}: {} is not a usual print size; {}.", context.label(checked.id),
                     sizeText(*piece.printSize, scale),
                     better ? fmt::format("print it {} and trim it", printText(*better, scale))
                            : "choose one from the list, or have it printed to measure")});
}

void findTrimOverPrint(const CheckContext& context, const CheckedPiece& checked,
                       Findings& findings) {
    const Piece& piece = checked.piece;
    if (!piece.printSize || piece.printSize->contains(piece.size)) {
        return;
    }
    std::vector<std::string> parts;
    const auto add = [&](Length by, const char* way) {
        if (by.isPositive()) {
            parts.push_back(fmt::format("{} {}", amountText(by, context.settings.scale), way));
        }
    };
    add(piece.size.width - piece.printSize->width, "wider");
    add(piece.size.height - piece.printSize->height, "taller");
    findings.push_back({CheckKind::TrimOverPrint,
                        {checked.id},
                        fmt::format("{}: its trim is {} than its print; {}.",
                                    context.label(checked.id), listText(parts),
                                    piece.printSize->turned().contains(piece.size)
                                        ? "turn the print the other way"
                                        : "trim it smaller or choose a larger print")});
}

}  // namespace matwright
