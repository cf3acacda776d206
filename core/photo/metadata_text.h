// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <string_view>

// Reads single values of a photo's metadata. Any bytes may come; what is not sound is nothing.

namespace matwright {

// More than any camera or program writes.
inline constexpr std::size_t maxXmpBytes = 4'000'000;

// "2026:07:14 16:03:22", as Exif keeps it (Exif 2.32, tag 0x9003), to "2026-07-14 16:03:22". What
// stands behind is passed over. Nothing for a day or time that is none ("0000:00:00 00:00:00").
std::optional<std::string> exifTime(std::string_view text);

// "2026-07-14T16:03:22.5+02:00", as XMP keeps it (XMP specification part 1, 8.2.1.2), to
// "2026-07-14 16:03:22": the time of the place, as it is written. The seconds may be missing, the
// day and the minutes may not.
std::optional<std::string> xmpTime(std::string_view text);

struct XmpFacts {
    std::optional<int> rating;         // xmp:Rating, -1 .. 5
    std::optional<std::string> taken;  // exif:DateTimeOriginal, else xmp:CreateDate
    friend bool operator==(const XmpFacts&, const XmpFacts&) = default;
};

// Of an XMP packet in UTF-8, UTF-16 or UTF-32. A property may be an attribute or an element and of
// any prefix. Nothing is read of a packet that is no well-formed XML, is longer than maxXmpBytes or
// has a document type declaration.
XmpFacts readXmp(std::string_view packet);

}  // namespace matwright
