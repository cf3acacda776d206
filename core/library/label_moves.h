// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "core/content/content_key.h"
#include "core/filestore/file_store.h"

namespace matwright {

// How the labels follow a sketch file that this program has changed; the caller holds the library's
// lock. Each returns one sentence where they could not be brought up to date, else nothing: by then
// the sketch itself has its place.

// `sketch` was saved with new content; `before` is what it held, nothing where it was made.
std::string labelsAfterSave(FileStore& store, const std::filesystem::path& library,
                            const std::string& sketch, std::optional<ContentKey> before,
                            ContentKey content);
// Its file is at `to` now.
std::string labelsAfterMove(FileStore& store, const std::filesystem::path& library,
                            const std::string& from, const std::string& to, ContentKey content);
// `to` was made from `from`: it takes the tags and the note.
std::string labelsAfterCopy(FileStore& store, const std::filesystem::path& library,
                            const std::string& from, const std::string& to, ContentKey content);

}  // namespace matwright
