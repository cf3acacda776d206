// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <vector>

#include "core/photo/photo_words.h"
#include "core/prints/print_job.h"

namespace matwright::app {

// A print as a line of a list, in words.
struct PrintRow {
    std::size_t print = 0;  // index into the prints
    QString name;           // "2 Focal photo"
    QString photo;          // "harbour.jpg"
    QString size;           // "4 × 6 in, trimmed to 3 1/2 × 5 in"
    QString fineness;       // "412 ppi"; a whole sentence where it is too coarse
    Sharpness sharpness = Sharpness::Fine;
    QString loss;  // "takes off 1/9 of this photo"
};
std::vector<PrintRow> printRows(const Making& making, const std::vector<Print>& prints);

// What is to be known before anything is printed: how many prints, and how many of them are coarse.
QString summaryOf(const std::vector<PrintRow>& rows, std::size_t freeSlots);

// Photo slots without a photo.
std::size_t freeSlotsOf(const Making& making);

// The page with this white border around every photo: each crop fits its new window. A border that
// would leave less than 1/8 in of a trim is left out there.
Making withBorders(Making making, Length border);

}  // namespace matwright::app
