// SPDX-License-Identifier: MIT
#include "core/library/sketch_reading.h"

#include <fmt/format.h>
#include <sys/stat.h>

#include <chrono>

#include "core/family/family.h"
#include "core/library/facts.h"
#include "core/library/packed_entry.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

std::int64_t nanosecondsOf(const timespec& moment) {
    return std::int64_t{moment.tv_sec} * 1'000'000'000 + moment.tv_nsec;
}

void fillFrom(const Sketch& sketch, IndexedSketch& row) {
    row.facts = packedFacts(factsOf(sketch));
    const FamilyTraits traits = familyTraits(sketch);
    row.familyKey = traits.key();
    row.traits = traits.toBytes();
    row.family = unknownFamily;
}

}  // namespace

std::int64_t nowNanoseconds() {
    return std::chrono::duration_cast<std::chrono::nanoseconds>(
               std::chrono::system_clock::now().time_since_epoch())
        .count();
}

std::optional<FileSignature> signatureOf(const std::filesystem::path& file) {
    struct stat facts = {};
    if (::stat(file.c_str(), &facts) != 0) {
        return std::nullopt;
    }
    return FileSignature{static_cast<std::uint64_t>(facts.st_size), nanosecondsOf(facts.st_mtim),
                         nanosecondsOf(facts.st_ctim), facts.st_ino};
}

std::string problemSentence(const Error& error, const std::filesystem::path& file) {
    return error.where.empty() || error.where == file.string()
               ? error.sentence
               : fmt::format("{} ({})", error.sentence, error.where);
}

std::optional<IndexReading> readForIndex(FileStore& store, const std::filesystem::path& library,
                                         const ScannedFile& file,
                                         const std::optional<ContentKey>& known) {
    const std::filesystem::path path = library / file.path;
    const std::int64_t begun = nowNanoseconds();
    const Result<std::string> bytes = store.read(path, maxSketchFileBytes);
    if (!bytes && bytes.error().code == ErrorCode::NotFound) {
        return std::nullopt;
    }
    IndexReading reading;
    IndexedSketch& row = reading.row;
    row.signature = file.signature;
    // What was read may be newer than what the walk saw.
    row.isSuspect = mayHaveChanged(file.signature, begun) || signatureOf(path) != file.signature;
    if (!bytes) {
        row.problem = problemSentence(bytes.error(), path);
        return reading;
    }
    row.content = contentKeyOf(*bytes);
    reading.isKnownContent = row.content == known;
    if (reading.isKnownContent) {
        return reading;
    }
    const Result<LoadedSketch> loaded = readSketch(*bytes);
    if (loaded) {
        fillFrom(loaded->sketch, row);
    } else {
        row.problem = problemSentence(loaded.error(), path);
    }
    return reading;
}

}  // namespace matwright
