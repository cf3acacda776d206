// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <memory>

#include "core/filestore/file_store.h"
#include "core/measure/length_text.h"
#include "core/prints/print_job.h"

namespace matwright::app {

// Saves the double-check sheets of these prints as one PDF, on the paper of this place. Reads the
// photos; for another thread than the window's. Errors: those of pdfBytes() and of the disk.
Result<void> saveDoubleCheckSheet(const Making& making, const PrintOptions& options, Scale scale,
                                  const std::shared_ptr<FileStore>& files, const QString& path);

}  // namespace matwright::app
