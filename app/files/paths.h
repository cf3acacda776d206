// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <filesystem>

#include "core/error/error.h"

namespace matwright::app {

std::filesystem::path toPath(const QString& path);

// A document is a sketch, or a page in the making as soon as there are photos or papers with it.
enum class DocumentKind { Sketch, Page };
// ".sketch.svg" and ".page.svg".
QString suffixOf(DocumentKind kind);
// A page where the path ends so, else a sketch.
DocumentKind kindOfPath(const QString& path);
// `path` with that suffix in place of what there is of either: "a", "a.svg", "a.sketch" and
// "a.page.svg" all become "a.sketch.svg".
QString withSuffix(const QString& path, DocumentKind kind);
QString withSketchSuffix(const QString& path);
// The file's name without folder and suffix.
QString documentNameOf(const QString& path);

// Where a file dialog begins: the folder where it is there, else the person's home.
QString folderThatIsThere(const QString& folder);

// The error as a person reads it.
QString shownText(const Error& error);

}  // namespace matwright::app
