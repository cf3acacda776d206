// SPDX-License-Identifier: MIT
#include <cassert>

#include "core/drawing/svg.h"
#include "core/picture/picture.h"
#include "core/sketch/soundness.h"
#include "core/sketchfile/document.h"
#include "core/sketchfile/model_writer.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

std::string writeSketch(const Sketch& sketch) {
    assert(!findFault(sketch));
    pugi::xml_document document;
    pugi::xml_node svg = appendSvgRoot(document);
    appendModel(svg, sketch);
    appendSvg(svg, sketchPicture(sketch));
    return documentText(document);
}

}  // namespace matwright
