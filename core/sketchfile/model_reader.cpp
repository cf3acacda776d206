// SPDX-License-Identifier: MIT
#include "core/sketchfile/model_reader.h"

#include <fmt/format.h>

#include "core/sketch/soundness.h"
#include "core/sketchfile/document.h"
#include "core/sketchfile/sketch_file.h"
#include "core/sketchfile/vocabulary.h"

namespace matwright {

namespace {

Margins readMargins(ModelElement& element) {
    return {element.length(words::left), element.length(words::top), element.length(words::right),
            element.length(words::bottom)};
}

PageSetup readPage(ModelElement& element) {
    PageSetup page;
    page.size = element.size(words::width, words::height);
    page.gutter = element.length(words::gutter);
    const auto foldGap = element.optionalLength(words::foldGap);
    page.doublePage = foldGap.has_value();
    page.foldGap = foldGap.value_or(Length());
    element.exactlyOnce(words::margins,
                        [&](ModelElement& margins) { page.margins = readMargins(margins); });
    if (auto fault = findFault(page); fault && !element.hasFailed()) {
        element.fail(*fault);
    }
    return page;
}

void addPiece(Sketch& sketch, ModelElement& element) {
    const std::int64_t id = element.whole(words::id, 1, maxPieceId.value);
    const auto [added, isNew] =
        sketch.pieces.emplace(PieceId{static_cast<std::uint32_t>(id)}, readPiece(element));
    if (!isNew) {
        element.fail(
            fmt::format("A second piece has the id {}; each piece needs an id of its own. "
                        "Give it another one, or open an earlier copy of the file.",
                        id));
    } else if (sketch.pieces.size() > maxPieces) {
        element.fail(
            fmt::format("The sketch has more than the {} pieces one can hold. Split it "
                        "in two, or open an earlier copy of the file.",
                        maxPieces));
    } else if (auto fault = findFault(added->second); fault && !element.hasFailed()) {
        element.fail(*fault);
    }
    sketch.order.push_back(added->first);
}

}  // namespace

Sketch readModel(ModelElement& model) {
    Sketch sketch;
    sketch.name = model.childText(words::name);
    sketch.note = model.childText(words::note);
    model.exactlyOnce(words::page, [&](ModelElement& page) { sketch.page = readPage(page); });
    model.exactlyOnce(words::pieces, [&](ModelElement& pieces) {
        pieces.forEach(words::piece, [&](ModelElement& piece) { addPiece(sketch, piece); });
    });
    // The pieces were looked at one by one, with their lines; ids and order are sound by now.
    if (auto fault = findFault(Sketch{sketch.name, sketch.note, sketch.page, {}, {}});
        fault && !model.hasFailed()) {
        model.fail(*fault);
    }
    return sketch;
}

Sketch readWholeModel(ModelElement& model, Reading& reading) {
    checkVersion(model, reading, "sketch", sketchFormatVersion);
    if (const auto unit = model.word(words::unit); unit != words::unitValue) {
        model.fail(
            fmt::format("The sketch counts in {} instead of {}. Open an earlier copy of "
                        "the file.",
                        inQuotes(unit), inQuotes(words::unitValue)));
    }
    return reading.hasFailed() ? Sketch() : readModel(model);
}

}  // namespace matwright
