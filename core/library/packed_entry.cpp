// SPDX-License-Identifier: MIT
#include "core/library/packed_entry.h"

#include <algorithm>
#include <chrono>

#include "core/library/names.h"
#include "core/library/packing.h"
#include "core/library/printable.h"

namespace matwright {

namespace {

void packSize(Packer& packer, Size size) {
    packer.signedNumber(size.width.ticks());
    packer.signedNumber(size.height.ticks());
}

Size unpackedSize(Unpacker& unpacker) {
    const Length width = Length::fromTicks(unpacker.signedNumber());
    return {width, Length::fromTicks(unpacker.signedNumber())};
}

int unpackedInt(Unpacker& unpacker) {
    return static_cast<int>(unpacker.signedNumber());
}

// Whether the labels are others than those of a sketch without a record.
bool says(const Labels& labels) {
    return !labels.tags.empty() || labels.favourite || !labels.note.empty() ||
           labels.useCount != 0 || labels.lastUsed.has_value();
}

void unpackFacts(std::string_view bytes, EntryView& view, bool& good) {
    Unpacker unpacker(bytes);
    view.name = unpacker.text();
    view.note = unpacker.text();
    view.pageSize = unpackedSize(unpacker);
    view.doublePage = unpacker.number() != 0;
    view.upright = unpackedInt(unpacker);
    view.lying = unpackedInt(unpacker);
    view.square = unpackedInt(unpacker);
    view.titles = unpackedInt(unpacker);
    view.journalings = unpackedInt(unpacker);
    view.prints.clear();
    for (std::uint64_t left = unpacker.number(); left > 0 && !unpacker.failed(); --left) {
        const Size size = unpackedSize(unpacker);
        view.prints.push_back({size, unpackedInt(unpacker)});
    }
    good = good && !unpacker.failed() && unpacker.atEnd();
}

void unpackLabelsInto(std::string_view bytes, EntryView& view, bool& good) {
    view.tags.clear();
    view.favourite = false;
    view.labelsNote = {};
    view.useCount = 0;
    view.lastUsed.reset();
    if (bytes.empty()) {
        return;
    }
    Unpacker unpacker(bytes);
    view.favourite = unpacker.number() != 0;
    view.labelsNote = unpacker.text();
    view.useCount = unpackedInt(unpacker);
    if (unpacker.number() != 0) {
        view.lastUsed = Timestamp(std::chrono::seconds(unpacker.signedNumber()));
    }
    for (std::uint64_t left = unpacker.number(); left > 0 && !unpacker.failed(); --left) {
        view.tags.push_back(unpacker.text());
    }
    good = good && !unpacker.failed() && unpacker.atEnd();
}

Labels labelsOf(const EntryView& view) {
    return {{view.tags.begin(), view.tags.end()},
            view.favourite,
            std::string(view.labelsNote),
            view.useCount,
            view.lastUsed};
}

std::string nameFor(std::string_view name, std::string_view path) {
    const std::string shown = shownSketchName(name, path);
    return shown == name ? shown : printablePath(shown);
}

}  // namespace

std::string packedFacts(const SketchFacts& facts) {
    std::string bytes;
    Packer packer(bytes);
    packer.text(facts.name);
    packer.text(facts.note);
    packSize(packer, facts.pageSize);
    packer.number(facts.doublePage ? 1 : 0);
    for (const int count : {facts.uprightPhotos, facts.lyingPhotos, facts.squarePhotos,
                            facts.titles, facts.journalings}) {
        packer.signedNumber(count);
    }
    packer.number(facts.prints.size());
    for (const PrintNeed& need : facts.prints) {
        packSize(packer, need.size);
        packer.signedNumber(need.count);
    }
    return bytes;
}

std::string packedLabels(const Labels& labels) {
    if (!says(labels)) {
        return {};
    }
    std::string bytes;
    Packer packer(bytes);
    packer.number(labels.favourite ? 1 : 0);
    packer.text(labels.note);
    packer.signedNumber(labels.useCount);
    packer.number(labels.lastUsed ? 1 : 0);
    if (labels.lastUsed) {
        packer.signedNumber(labels.lastUsed->time_since_epoch().count());
    }
    packer.number(labels.tags.size());
    for (const std::string& tag : labels.tags) {
        packer.text(tag);
    }
    return bytes;
}

bool unpackLabels(std::string_view bytes, Labels& labels) {
    EntryView view;
    bool good = true;
    unpackLabelsInto(bytes, view, good);
    labels = labelsOf(view);
    return good;
}

void appendPacked(const PackedEntry& entry, std::string& to) {
    Packer packer(to);
    packer.text(entry.path);
    packer.text(rawBytes(entry.content));
    packer.number(entry.size);
    packer.signedNumber(entry.modifiedNanoseconds);
    packer.text(entry.facts);
    packer.text(entry.labels);
}

bool unpack(std::string_view packed, EntryView& view) {
    Unpacker unpacker(packed);
    view.path = unpacker.text();
    const bool hasKey = setRawBytes(unpacker.text(), view.content);
    view.size = unpacker.number();
    view.modifiedNanoseconds = unpacker.signedNumber();
    const std::string_view facts = unpacker.text();
    const std::string_view labels = unpacker.text();
    bool good = hasKey && !unpacker.failed() && unpacker.atEnd();
    unpackFacts(facts, view, good);
    unpackLabelsInto(labels, view, good);
    return good;
}

std::string_view packedPath(std::string_view packed) {
    return Unpacker(packed).text();
}

LibraryEntry entryOf(const EntryView& view) {
    LibraryEntry entry;
    entry.path = view.path;
    entry.content = view.content;
    entry.size = view.size;
    entry.modifiedNanoseconds = view.modifiedNanoseconds;
    entry.facts = {std::string(view.name),
                   std::string(view.note),
                   view.pageSize,
                   view.doublePage,
                   view.photos(),
                   view.upright,
                   view.lying,
                   view.square,
                   view.prints,
                   view.titles,
                   view.journalings};
    entry.labels = labelsOf(view);
    return entry;
}

std::string shownName(const EntryView& view) {
    return nameFor(view.name, view.path);
}

std::string shownName(const LibraryEntry& entry) {
    return nameFor(entry.facts.name, entry.path);
}

std::string_view folderOf(std::string_view path) {
    const std::size_t slash = path.rfind('/');
    return slash == std::string_view::npos ? std::string_view() : path.substr(0, slash);
}

}  // namespace matwright
