// SPDX-License-Identifier: MIT
#include "core/drawing/svg.h"

#include <fmt/format.h>

#include <pugixml.hpp>
#include <sstream>

#include "core/drawing/colour_text.h"

namespace matwright {

namespace {

std::string number(Length length) {
    return svgNumber(static_cast<double>(length.ticks()));
}

void append(std::string& out, Vertex at) {
    out += svgNumber(at.x);
    out += ' ';
    out += svgNumber(at.y);
}

std::string dashText(const std::vector<Length>& dash) {
    std::string text;
    for (const Length part : dash) {
        text += text.empty() ? "" : " ";
        text += number(part);
    }
    return text;
}

void set(pugi::xml_node node, const char* name, const std::string& value) {
    node.append_attribute(name).set_value(value.c_str());
}

void appendItem(pugi::xml_node group, const PathItem& item) {
    const pugi::xml_node path = group.append_child("path");
    set(path, "d", svgPathData(item.paths));
    set(path, "fill", item.fill ? colourText(*item.fill) : "none");
    if (item.fill) {
        set(path, "fill-rule", "evenodd");
    }
    if (item.stroke) {
        set(path, "stroke", colourText(item.stroke->colour));
        set(path, "stroke-width", number(item.stroke->width));
        if (!item.stroke->dash.empty()) {
            set(path, "stroke-dasharray", dashText(item.stroke->dash));
        }
    }
}

void appendItem(pugi::xml_node group, const TextItem& item) {
    pugi::xml_node text = group.append_child("text");
    const std::string x = svgNumber(item.at.x);
    const std::string y = svgNumber(item.at.y);
    set(text, "x", x);
    set(text, "y", y);
    set(text, "font-size", number(item.height));
    if (item.anchor != TextAnchor::Start) {
        set(text, "text-anchor", item.anchor == TextAnchor::Middle ? "middle" : "end");
    }
    if (item.bold) {
        set(text, "font-weight", "bold");
    }
    if (!item.rotation.isZero()) {
        set(text, "transform", fmt::format("rotate({} {} {})", item.rotation.toDegrees(), x, y));
    }
    set(text, "fill", colourText(item.colour));
    text.append_child(pugi::node_pcdata).set_value(item.text.c_str());
}

void appendLayer(pugi::xml_node svg, const Layer& layer) {
    pugi::xml_node group = svg.append_child("g");
    set(group, "id", layer.id);
    set(group, "font-family", drawingFontFamily);
    group.append_child("title").append_child(pugi::node_pcdata).set_value(layer.label.c_str());
    appendSvgItems(group, layer.items);
}

void appendText(pugi::xml_node svg, const char* name, const std::string& text) {
    if (!text.empty()) {
        svg.append_child(name).append_child(pugi::node_pcdata).set_value(text.c_str());
    }
}

void setSize(pugi::xml_node svg, Size size) {
    const std::string width = number(size.width);
    const std::string height = number(size.height);
    for (const char* name : {"width", "height", "viewBox"}) {
        svg.remove_attribute(name);
    }
    set(svg, "width", width + "mm");
    set(svg, "height", height + "mm");
    set(svg, "viewBox", fmt::format("0 0 {} {}", width, height));
}

}  // namespace

std::string svgNumber(double ticks) {
    std::string text =
        fmt::format("{:.4f}", ticks / static_cast<double>(Length::ticksPerMillimetre));
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') {
        text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

std::string svgPathData(const std::vector<Path>& paths) {
    std::string data;
    for (const Path& path : paths) {
        data += 'M';
        append(data, path.start);
        for (const PathSegment& segment : path.segments) {
            data += segment.curved ? 'C' : 'L';
            if (segment.curved) {
                append(data, segment.control1);
                data += ' ';
                append(data, segment.control2);
                data += ' ';
            }
            append(data, segment.end);
        }
        if (path.closed) {
            data += 'Z';
        }
    }
    return data;
}

void appendSvgItems(pugi::xml_node& group, const std::vector<DrawingItem>& items) {
    for (const DrawingItem& item : items) {
        std::visit([&](const auto& it) { appendItem(group, it); }, item);
    }
}

void appendSvg(pugi::xml_node& svgElement, const Drawing& drawing) {
    setSize(svgElement, drawing.size);
    for (const Layer& layer : drawing.layers) {
        appendLayer(svgElement, layer);
    }
}

std::string svgText(const Drawing& drawing) {
    pugi::xml_document document;
    const pugi::xml_node declaration = document.append_child(pugi::node_declaration);
    set(declaration, "version", "1.0");
    set(declaration, "encoding", "UTF-8");
    pugi::xml_node svg = document.append_child("svg");
    set(svg, "xmlns", "http://www.w3.org/2000/svg");
    set(svg, "version", "1.1");
    appendText(svg, "title", drawing.title);
    appendText(svg, "desc", drawing.description);
    appendSvg(svg, drawing);
    std::ostringstream out;
    document.save(out, " ", pugi::format_indent, pugi::encoding_utf8);
    return std::move(out).str();
}

}  // namespace matwright
