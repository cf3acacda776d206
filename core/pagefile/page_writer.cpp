// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <cassert>

#include "core/drawing/colour_text.h"
#include "core/pagefile/page_drawing.h"
#include "core/pagefile/page_file.h"
#include "core/pagefile/page_paths.h"
#include "core/pagefile/vocabulary.h"
#include "core/sketchfile/document.h"
#include "core/sketchfile/file_text.h"
#include "core/sketchfile/model_writer.h"

namespace matwright {

namespace {

using Node = pugi::xml_node;

template <typename Number>
void setNumber(Node node, const char* name, Number value) {
    set(node, name, fmt::to_string(value));
}

template <typename Number>
void setUnlessZero(Node node, const char* name, Number value) {
    if (value != 0) {
        setNumber(node, name, value);
    }
}

void setFlag(Node node, const char* name, bool value) {
    if (value) {
        set(node, name, pagewords::yes);
    }
}

void setPath(Node node, const std::string& path, const std::string& folder) {
    set(node, pagewords::path, path);
    if (const std::string near = nearTo(folder, path); !near.empty()) {
        set(node, pagewords::near, near);
    }
}

void appendTone(Node parent, const Tone& tone) {
    if (tone == Tone()) {
        return;
    }
    const Node element = parent.append_child(pagewords::tone);
    setFlag(element, pagewords::evenOut, tone.evenOut);
    setUnlessZero(element, pagewords::brightness, tone.brightness);
    setUnlessZero(element, pagewords::contrast, tone.contrast);
    setUnlessZero(element, pagewords::warmth, tone.warmth);
    setUnlessZero(element, pagewords::saturation, tone.saturation);
    setUnlessZero(element, pagewords::sharpen, tone.sharpen);
}

void appendPhoto(Node parent, PhotoId id, const Photo& photo, const std::string& folder) {
    Node element = parent.append_child(pagewords::photo);
    setNumber(element, pagewords::id, id.value);
    setPath(element, photo.path, folder);
    set(element, pagewords::content, photo.content.text());
    setUnlessZero(element, pagewords::bytes, photo.bytes);
    setNumber(element, pagewords::width, photo.upright.width);
    setNumber(element, pagewords::height, photo.upright.height);
    if (!photo.taken.empty()) {
        set(element, pagewords::taken, photo.taken);
    }
    if (photo.rating) {
        setNumber(element, pagewords::rating, *photo.rating);
    }
    setFlag(element, pagewords::favourite, photo.favourite);
    if (photo.wish) {
        set(element.append_child(pagewords::wish), *photo.wish);
    }
    appendTone(element, photo.tone);
}

void appendPlacement(Node parent, PieceId slot, const Placement& placement) {
    const Node element = parent.append_child(pagewords::placement);
    setNumber(element, pagewords::slot, slot.value);
    setNumber(element, pagewords::photo, placement.photo.value);
    const Crop& crop = placement.crop;
    setNumber(element, pagewords::x, crop.centreX);
    setNumber(element, pagewords::y, crop.centreY);
    setNumber(element, pagewords::zoom, crop.zoom);
    setUnlessZero(element, pagewords::quarterTurns, crop.quarterTurns);
    if (!crop.straighten.isZero()) {
        set(element, pagewords::straighten, angleToText(crop.straighten));
    }
    if (!placement.border.isZero()) {
        set(element, pagewords::border, placement.border);
    }
}

void appendPaper(Node parent, const std::string& name, const PaperLook& look,
                 const std::string& folder) {
    const Node element = parent.append_child(pagewords::paper);
    set(element, pagewords::name, name);
    set(element, pagewords::colour, colourText(look.colour));
    if (!look.picture.empty()) {
        setPath(element, look.picture, folder);
        set(element, pagewords::content, look.content.text());
        set(element, pagewords::width, look.pictureWidth);
    }
}

// Lists that are empty are left out.
void appendWork(Node page, const PhotoWork& work, const std::string& folder) {
    if (!work.photos.empty()) {
        const Node photos = page.append_child(pagewords::photos);
        for (const auto& [id, photo] : work.photos) {
            appendPhoto(photos, id, photo, folder);
        }
    }
    if (work.focal) {
        setNumber(page.append_child(pagewords::focal), pagewords::photo, work.focal->value);
    }
    if (!work.placements.empty()) {
        const Node placements = page.append_child(pagewords::placements);
        for (const auto& [slot, placement] : work.placements) {
            appendPlacement(placements, slot, placement);
        }
    }
    if (!work.papers.empty()) {
        const Node papers = page.append_child(pagewords::papers);
        for (const auto& [name, look] : work.papers) {
            appendPaper(papers, name, look, folder);
        }
    }
}

}  // namespace

std::string writePage(const Making& making, const SmallPictures& pictures,
                      const std::string& folder) {
    assert(!findFault(making));
    pugi::xml_document document;
    Node svg = appendSvgRoot(document);
    set(svg, "xmlns:xlink", "http://www.w3.org/1999/xlink");
    const Node page = svg.append_child(pagewords::making);
    setNumber(page, pagewords::version, pageFormatVersion);
    set(page, "xmlns", pageNamespace);
    appendModel(page, making.sketch);
    appendWork(page, making.work, folder);
    appendPageDrawing(svg, making, pictures);
    return documentText(document);
}

}  // namespace matwright
