// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/error/error.h"
#include "core/measure/rect.h"
#include "core/raster/raster.h"

namespace matwright {

// A sheet of a PDF that one picture fills from edge to edge.
struct PicturePage {
    Size media;
    Rect trim;                  // on the sheet, y down
    std::optional<Rect> bleed;  // where the picture goes beyond the trim
    std::string jpeg;           // three colours, sRGB; goes in as it is, to the byte
    PixelSize pixels;
};

// One PDF 1.7 file: MediaBox, TrimBox and BleedBox to 1/100,000 pt, an ICC profile of sRGB as the
// pictures' colour space, PrintScaling None and PickTrayByPDFSize (ISO 32000-1, table 150), no
// dates and no random ids, so that equal pages give equal bytes. Errors: Unsupported for no page,
// WriteFailed.
Result<std::string> picturePdf(const std::vector<PicturePage>& pages, const std::string& title);

}  // namespace matwright
