// SPDX-License-Identifier: MIT
#pragma once

#include <pugixml.hpp>
#include <string>

#include "core/sketch/sketch.h"

namespace matwright {

// Parts of a model as they are written.
void set(pugi::xml_node node, const char* name, const char* value);
void set(pugi::xml_node node, const char* name, const std::string& value);
void set(pugi::xml_node node, const char* name, Length value);
void set(pugi::xml_node node, Size size);
// Texts are elements: an attribute would lose line breaks. Nothing for an empty one.
void appendText(pugi::xml_node parent, const char* name, const std::string& text);

// The sketch's model element.
void appendModel(pugi::xml_node parent, const Sketch& sketch);

}  // namespace matwright
