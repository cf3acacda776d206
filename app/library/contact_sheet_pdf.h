// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>
#include <filesystem>
#include <string>
#include <vector>

#include "core/error/error.h"

namespace matwright::app {

// A PDF to leaf through on paper, true to size on Letter sheets (or A4 where people measure in
// millimetres): the sketches of a library in this order. Errors: those of the PDF. Any thread.
struct ContactSheetPdf {
    QByteArray bytes;
    // Those that could not be read, and why.
    std::vector<Error> leftOut;
};
Result<ContactSheetPdf> contactSheetPdf(const std::filesystem::path& library,
                                        const std::vector<std::string>& sketches,
                                        const QString& title);

}  // namespace matwright::app
