// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QStringList>
#include <stop_token>
#include <string>

#include "core/making/making.h"
#include "core/prints/print_job.h"

namespace matwright::app {

inline constexpr int mostPagePpi = 600;
// A page picture above this is refused.
inline constexpr qint64 maxPagePixels = 200'000'000;

// The finished page, both pages of a double one with the fold between them, as a picture at `ppi`
// (1 .. mostPagePpi): photos read from their files, toned; for looking at and sharing, not for
// printing photos from. What cannot be read, or is another picture now, is grey and named in
// `missing`. Any thread that may use
// QPainter on images. Errors: OutOfRange, TooLarge, Unsupported when it was stopped.
struct PageImage {
    QImage picture;
    QStringList missing;  // sentences, the file's name first
};
Result<PageImage> pageImage(const Making& making, int ppi, const std::stop_token& stop = {});

// The picture as the bytes of a file: PNG, JPEG, or a PDF page of exactly the page's size.
Result<std::string> pageFile(const Making& making, const PageImage& page, PrintFormat format,
                             int ppi, const std::string& title);

}  // namespace matwright::app
