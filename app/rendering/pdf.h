// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "core/drawing/drawing.h"
#include "core/error/error.h"

namespace matwright::app {

// A JPEG that is laid on a page, over its drawing.
struct PdfPicture {
    Rect place;  // on the drawing
    std::string jpeg;
};

struct PdfPage {
    Drawing drawing;
    Size media;                // the sheet: 1/72 in up to maxPdfSide each way
    std::optional<Rect> trim;  // on the sheet, y down; the whole sheet where there is none
    Point offset;              // of the drawing's top left corner on the sheet
    std::vector<PdfPicture> pictures = {};
};

// The largest side of a page every PDF reader takes (14,400 points; ISO 32000-1, annex C).
inline constexpr Length maxPdfSide = Length::inches(200);

// The pages as one PDF 1.7 file, true to size: MediaBox and TrimBox to 1/100,000 pt, the drawing
// within 1/7,200 in, text as text in embedded fonts, no pixels but those of `pictures`. It asks
// readers not to scale it when printing (PrintScaling None) and to choose the tray by the page
// size. No date inside: equal pages give equal bytes. Needs a QGuiApplication. Errors: Unsupported
// for no pages and for a sheet outside the limits.
Result<QByteArray> pdfBytes(const std::vector<PdfPage>& pages, const QString& title);

// What printers of this place hold: A4 where lengths are metric, else Letter.
Size sheetOfThisPlace();

}  // namespace matwright::app
