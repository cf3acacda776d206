// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <vector>

#include "core/error/error.h"
#include "core/measure/rect.h"

namespace matwright::app {

struct PdfBoxes {
    Size media;
    Rect trim;  // y down, from the media's top left corner
};

// What Qt's PDF writer cannot set: the same PDF with exact boxes for each page, the wish not to be
// scaled in print, version 1.7, and without dates or random ids. `boxes` has one entry a page.
// Errors: WriteFailed when `pdf` is not a sound PDF of so many pages.
Result<QByteArray> withTrueBoxes(const QByteArray& pdf, const std::vector<PdfBoxes>& boxes);

}  // namespace matwright::app
