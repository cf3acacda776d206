// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <stop_token>
#include <vector>

#include "core/library/index_file.h"
#include "core/library/index_rows.h"

namespace matwright {

// Brings the rows of label files in step with the library's folder of labels: reads those that are
// new or changed and forgets those that are gone. What has to be written is appended to `changes`.
void updateLabelRows(const std::filesystem::path& library, const std::stop_token& stop,
                     IndexRows& rows, IndexFile::Changes& changes);

// Gives every sketch the labels that the label files have for it.
void assignLabels(IndexRows& rows, IndexFile::Changes& changes);

}  // namespace matwright
