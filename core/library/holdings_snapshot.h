// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <memory>
#include <optional>

#include "core/content/content_key.h"
#include "core/library/holdings.h"

namespace matwright {

// Whole Holdings in one file, laid out as they are in memory: what a start reads instead of all
// rows of the index, which takes ten times as long. Like the index it is a cache: a snapshot may be
// behind the index, and the update after the start brings everything up to date.
struct HoldingsSnapshot {
    std::shared_ptr<const Holdings> holdings;
    ContentKey fingerprint;  // see HoldingsBuilder
};

// Nothing where there is none, or it is damaged, of another version or of another kind of machine.
std::optional<HoldingsSnapshot> readSnapshot(const std::filesystem::path& file);

// Replaces the file as a whole. Not flushed to the disk: a snapshot lost in a power cut, or one
// that cannot be written, costs a slower start and nothing else. Where another program is writing
// at the same time, nothing is done.
void writeSnapshot(const std::filesystem::path& file, const HoldingsSnapshot& snapshot);

}  // namespace matwright
