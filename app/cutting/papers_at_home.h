// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>
#include <filesystem>
#include <optional>

#include "core/making/making_edit.h"

namespace matwright::app {

// Papers on hand as the fields for papers need them. A list that is not there yet is not made, and
// one that cannot be read counts as empty: these are offers only.

// Each name once, in the list's order; used-up papers as well.
QStringList namesAtHome(const std::filesystem::path& file);
// How the first paper of just this name looks; without its picture where that cannot be read, is
// empty, or is longer than 200 MB.
std::optional<PaperLook> lookAtHome(const std::filesystem::path& file, const QString& name);
// Gives the page that look where it has none for this name.
PhotoEdit lookFromHome(const std::filesystem::path& file, const PhotoWork& page,
                       const QString& name);

}  // namespace matwright::app
