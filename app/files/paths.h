// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <filesystem>

#include "core/error/error.h"

namespace matwright::app {

std::filesystem::path toPath(const QString& path);

// `path` with the suffix of sketch files, ".sketch.svg", added where it is missing: "a", "a.svg"
// and "a.sketch" all become "a.sketch.svg".
QString withSketchSuffix(const QString& path);
// The file's name without folder and sketch suffix.
QString sketchNameOf(const QString& path);

// The error as a person reads it.
QString shownText(const Error& error);

}  // namespace matwright::app
