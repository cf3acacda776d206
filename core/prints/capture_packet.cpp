// SPDX-License-Identifier: MIT
#include "core/prints/capture_packet.h"

#include <pugixml.hpp>
#include <sstream>

namespace matwright {

namespace {

constexpr std::size_t dateLength = 10;  // "2026-07-14"

}  // namespace

std::string exifDate(const std::string& taken) {
    std::string text = taken;
    for (std::size_t i = 0; i < text.size() && i < dateLength; ++i) {
        text[i] = text[i] == '-' ? ':' : text[i];
    }
    return text;
}

std::string capturePacket(const std::string& taken) {
    if (taken.empty()) {
        return "";
    }
    std::string date = taken;
    if (date.size() > dateLength) {
        date[dateLength] = 'T';
    }
    pugi::xml_document document;
    pugi::xml_node meta = document.append_child("x:xmpmeta");
    meta.append_attribute("xmlns:x") = "adobe:ns:meta/";
    pugi::xml_node rdf = meta.append_child("rdf:RDF");
    rdf.append_attribute("xmlns:rdf") = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    pugi::xml_node description = rdf.append_child("rdf:Description");
    description.append_attribute("rdf:about") = "";
    description.append_attribute("xmlns:exif") = "http://ns.adobe.com/exif/1.0/";
    description.append_child("exif:DateTimeOriginal").text() = date.c_str();
    std::ostringstream text;
    document.save(text, " ", pugi::format_indent | pugi::format_no_declaration);
    return "<?xpacket begin=\"\xef\xbb\xbf\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n" + text.str() +
           "<?xpacket end=\"r\"?>";
}

}  // namespace matwright
