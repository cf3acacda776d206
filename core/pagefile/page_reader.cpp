// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <cassert>
#include <charconv>
#include <pugixml.hpp>

#include "core/pagefile/base64.h"
#include "core/pagefile/page_file.h"
#include "core/pagefile/photo_reader.h"
#include "core/pagefile/vocabulary.h"
#include "core/sketchfile/document.h"
#include "core/sketchfile/model_reader.h"
#include "core/sketchfile/reading.h"
#include "core/sketchfile/sketch_file.h"
#include "core/sketchfile/xml_guard.h"

namespace matwright {

namespace {

using Node = pugi::xml_node;

std::optional<Error> parsePage(std::string_view bytes, pugi::xml_document& document) {
    if (bytes.size() > maxPageFileBytes) {
        return Error{ErrorCode::TooLarge,
                     fmt::format("The file is larger than the {} MB a page may have. Check that it "
                                 "is the right file.",
                                 maxPageFileBytes >> 20),
                     "line 1"};
    }
    if (auto fault = findXmlFault(bytes)) {
        return fault;
    }
    return parseDocument(bytes, document);
}

// The one model in the picture; no node after a failure, or where there is none.
Node findPage(Node root, Reading& reading) {
    Node page;
    for (const Node child : root.children()) {
        if (!isNamed(root, "svg", svgNamespace) ||
            !isNamed(child, pagewords::making, pageNamespace)) {
            continue;
        }
        if (page) {
            reading.fail(child, ErrorCode::Malformed,
                         "The file has a second page in it; only one may be. Open an earlier copy "
                         "of the file.");
            return {};
        }
        page = child;
    }
    return page;
}

LoadedPage readModel(Node node, Reading& reading, const std::string& folder) {
    LoadedPage page;
    ModelElement model(reading, node, prefixOf(node), pageNamespace);
    checkVersion(model, reading, "page", pageFormatVersion);
    if (reading.hasFailed()) {
        return page;
    }
    model.exactlyOnceIn(sketchNamespace, "sketch", [&](ModelElement& sketch) {
        page.making.sketch = readWholeModel(sketch, reading);
    });
    model.once(pagewords::photos, [&](ModelElement& photos) { readPhotos(photos, folder, page); });
    model.once(pagewords::focal, [&](ModelElement& focal) { readFocal(focal, page); });
    model.once(pagewords::placements,
               [&](ModelElement& placements) { readPlacements(placements, page); });
    model.once(pagewords::papers, [&](ModelElement& papers) { readPapers(papers, folder, page); });
    model.finish();
    return page;
}

Result<LoadedPage> readAsSketch(std::string_view bytes) {
    auto sketch = readSketch(bytes);
    if (!sketch) {
        Error& error = sketch.error();
        if (error.code == ErrorCode::WrongFormat) {
            error.sentence =
                "The file has no page in it and no sketch. Choose one that was saved with this "
                "program; another program that saved the picture again may have lost the page.";
        }
        return std::unexpected(std::move(error));
    }
    return LoadedPage{{std::move(sketch->sketch), {}}, std::move(sketch->warnings), {}, {}};
}

// The slot a picture's id names; 0 where it names none.
PieceId slotOf(std::string_view id) {
    const std::string_view start = pagewords::smallPicture;
    std::uint32_t value = 0;
    if (id.starts_with(start)) {
        const auto [end, failure] = std::from_chars(id.begin() + start.size(), id.end(), value);
        value = failure == std::errc() && end == id.end() ? value : 0;
    }
    return PieceId{value};
}

std::optional<std::string> jpegOf(Node image) {
    constexpr std::string_view jpegStart = "\xFF\xD8\xFF";
    std::string_view link = image.attribute("xlink:href").value();
    if (!link.starts_with(pagewords::dataStart)) {
        return std::nullopt;
    }
    link.remove_prefix(std::string_view(pagewords::dataStart).size());
    auto bytes = fromBase64(link);
    return bytes && bytes->starts_with(jpegStart) ? std::move(bytes) : std::nullopt;
}

}  // namespace

Result<LoadedPage> readPage(std::string_view bytes, const std::string& folder) {
    bytes = withoutByteOrderMark(bytes);
    pugi::xml_document document;
    if (auto fault = parsePage(bytes, document)) {
        return std::unexpected(*std::move(fault));
    }
    Reading reading(bytes);
    checkEncoding(document, reading);
    const Node node = findPage(document.document_element(), reading);
    if (reading.hasFailed()) {
        return std::unexpected(reading.error());
    }
    if (!node) {
        return readAsSketch(bytes);
    }
    LoadedPage page = readModel(node, reading, folder);
    if (reading.hasFailed()) {
        return std::unexpected(reading.error());
    }
    assert(!findFault(page.making));
    page.warnings = reading.takeWarnings();
    return page;
}

std::map<PieceId, std::string> smallPicturesIn(std::string_view bytes) {
    std::map<PieceId, std::string> pictures;
    bytes = withoutByteOrderMark(bytes);
    pugi::xml_document document;
    if (parsePage(bytes, document)) {
        return pictures;
    }
    for (const Node group : document.document_element().children()) {
        for (const Node image : group.children("image")) {
            const PieceId slot = slotOf(image.attribute("id").value());
            if (auto jpeg = jpegOf(image); jpeg && slot != PieceId()) {
                pictures.emplace(slot, std::move(*jpeg));
            }
        }
    }
    return pictures;
}

}  // namespace matwright
