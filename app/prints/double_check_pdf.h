// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>

#include "core/error/error.h"
#include "core/measure/length_text.h"
#include "core/prints/print_job.h"

namespace matwright::app {

// The double-check sheets of these prints as one PDF on sheets of this size. Reads the photos; for
// another thread than the window's. Needs a QGuiApplication. Errors: those of pdfBytes().
Result<QByteArray> doubleCheckPdf(const Making& making, const PrintOptions& options, Size sheet,
                                  Scale scale);

}  // namespace matwright::app
