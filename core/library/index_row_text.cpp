// SPDX-License-Identifier: MIT
#include "core/library/index_row_text.h"

#include <xxhash.h>

#include <algorithm>
#include <chrono>

#include "core/library/packed_entry.h"
#include "core/library/packing.h"

namespace matwright {

namespace {

constexpr std::size_t checksumBytes = 8;

std::string checksumOf(std::string_view path, std::string_view rest) {
    XXH64_canonical_t canonical = {};
    const XXH64_hash_t ofPath = XXH3_64bits(path.data(), path.size());
    XXH64_canonicalFromHash(&canonical, XXH3_64bits_withSeed(rest.data(), rest.size(), ofPath));
    return {reinterpret_cast<const char*>(canonical.digest), checksumBytes};
}

std::string checked(std::string_view path, const std::string& rest) {
    return checksumOf(path, rest) + rest;
}

// Nothing where the checksum is not right.
std::string_view uncheckedRest(std::string_view path, std::string_view row) {
    if (row.size() < checksumBytes) {
        return {};
    }
    const std::string_view rest = row.substr(checksumBytes);
    return checksumOf(path, rest) == row.substr(0, checksumBytes) ? rest : std::string_view();
}

void packSignature(Packer& packer, const FileSignature& signature, bool isSuspect) {
    packer.number(signature.size);
    packer.signedNumber(signature.modifiedNanoseconds);
    packer.signedNumber(signature.changedNanoseconds);
    packer.number(signature.inode);
    packer.number(isSuspect ? 1 : 0);
}

void unpackSignature(Unpacker& unpacker, FileSignature& signature, bool& isSuspect) {
    signature.size = unpacker.number();
    signature.modifiedNanoseconds = unpacker.signedNumber();
    signature.changedNanoseconds = unpacker.signedNumber();
    signature.inode = unpacker.number();
    isSuspect = unpacker.number() != 0;
}

}  // namespace

std::string sketchRow(std::string_view path, const IndexedSketch& sketch) {
    std::string rest;
    Packer packer(rest);
    packSignature(packer, sketch.signature, sketch.isSuspect);
    packer.text(sketch.problem);
    packer.text(rawBytes(sketch.content));
    packer.text(sketch.facts);
    packer.text(sketch.labels);
    packer.number(sketch.familyKey);
    packer.signedNumber(sketch.family);
    return checked(path, rest);
}

bool readSketchRow(std::string_view path, std::string_view row, IndexedSketch& sketch) {
    Unpacker unpacker(uncheckedRest(path, row));
    unpackSignature(unpacker, sketch.signature, sketch.isSuspect);
    sketch.problem = unpacker.text();
    const bool hasKey = setRawBytes(unpacker.text(), sketch.content);
    sketch.facts = unpacker.text();
    sketch.labels = unpacker.text();
    sketch.familyKey = unpacker.number();
    sketch.family = static_cast<int>(unpacker.signedNumber());
    return hasKey && !unpacker.failed() && unpacker.atEnd();
}

std::string labelRow(std::string_view path, const IndexedLabels& labels) {
    std::string rest;
    Packer packer(rest);
    packSignature(packer, labels.signature, labels.isSuspect);
    packer.text(labels.problem);
    packer.text(labels.record.sketch);
    packer.text(rawBytes(labels.record.content));
    packer.text(packedLabels(labels.record.labels));
    return checked(path, rest);
}

bool readLabelRow(std::string_view path, std::string_view row, IndexedLabels& labels) {
    Unpacker unpacker(uncheckedRest(path, row));
    unpackSignature(unpacker, labels.signature, labels.isSuspect);
    labels.problem = unpacker.text();
    labels.record.sketch = unpacker.text();
    const bool hasKey = setRawBytes(unpacker.text(), labels.record.content);
    const bool hasLabels = unpackLabels(unpacker.text(), labels.record.labels);
    return hasKey && hasLabels && !unpacker.failed() && unpacker.atEnd();
}

}  // namespace matwright
