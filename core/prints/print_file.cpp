// SPDX-License-Identifier: MIT
#include <mutex>
#include <optional>
#include <utility>

#include "core/prints/on_all_cores.h"
#include "core/prints/picture_file.h"
#include "core/prints/picture_pdf.h"
#include "core/prints/rendering.h"
#include "core/prints/within_memory.h"

namespace matwright {

namespace {

std::optional<Rect> bleedBoxOf(const Print& print, const PrintOptions& options) {
    if (options.bleed.isZero()) {
        return std::nullopt;
    }
    const Rect wished = print.trim.expanded(options.bleed);
    const Rect paper = Rect::at({}, print.paper);
    return Rect{{std::max(wished.left(), paper.left()), std::min(wished.right(), paper.right())},
                {std::max(wished.top(), paper.top()), std::min(wished.bottom(), paper.bottom())}};
}

Result<PicturePage> pageOf(const Print& print, const Photo& photo, const PrintOptions& options,
                           const std::stop_token& stop) {
    const Result<Raster> raster = renderPrint(print, photo, options, stop);
    if (!raster) {
        return std::unexpected(raster.error());
    }
    Result<std::string> jpeg =
        pictureFile(*raster, captureFacts(photo, options.keepPlace), options);
    if (!jpeg) {
        return std::unexpected(jpeg.error());
    }
    return PicturePage{print.paper, print.trim, bleedBoxOf(print, options), *std::move(jpeg),
                       raster->size};
}

CaptureFacts factsOf(const Gang& gang, const std::vector<Print>& prints,
                     const std::function<const Photo&(PhotoId)>& photoOf, bool keepPlace) {
    std::optional<CaptureFacts> facts;
    for (const Gang::Place& place : gang.places) {
        const CaptureFacts next = captureFacts(photoOf(prints.at(place.print).photo), keepPlace);
        facts = facts ? common(*std::move(facts), next) : next;
    }
    return facts.value_or(CaptureFacts{});
}

Result<std::string> fileOf(const Print& print, const Photo& photo, const PrintOptions& options,
                           const std::stop_token& stop) {
    if (options.format == PrintFormat::Pdf) {
        Result<PicturePage> page = pageOf(print, photo, options, stop);
        return page ? picturePdf({*std::move(page)}, print.name)
                    : Result<std::string>(std::unexpected(page.error()));
    }
    const Result<Raster> raster = renderPrint(print, photo, options, stop);
    return raster ? pictureFile(*raster, captureFacts(photo, options.keepPlace), options)
                  : Result<std::string>(std::unexpected(raster.error()));
}

Result<std::string> fileOf(const Gang& gang, const std::vector<Print>& prints,
                           const std::function<const Photo&(PhotoId)>& photoOf,
                           const PrintOptions& options, const std::stop_token& stop) {
    const Result<Raster> raster = renderGang(gang, prints, photoOf, options, stop);
    if (!raster) {
        return std::unexpected(raster.error());
    }
    Result<std::string> file =
        pictureFile(*raster, factsOf(gang, prints, photoOf, options.keepPlace), options);
    if (!file || options.format != PrintFormat::Pdf) {
        return file;
    }
    return picturePdf(
        {{gang.sheet, Rect::at({}, gang.sheet), std::nullopt, *std::move(file), raster->size}},
        gang.places.size() == 1 ? prints.at(gang.places.front().print).name
                                : "Prints of one sheet");
}

Result<std::string> pdfOf(const std::vector<Print>& prints, const std::string& title,
                          const std::function<const Photo&(PhotoId)>& photoOf,
                          const PrintOptions& options, const std::stop_token& stop) {
    PrintOptions asPdf = options;
    asPdf.format = PrintFormat::Pdf;
    std::vector<std::optional<Result<PicturePage>>> rendered(prints.size());
    const Result<void> done = onAllCores(prints.size(), [&](std::size_t i) {
        rendered[i] = pageOf(prints[i], photoOf(prints[i].photo), asPdf, stop);
    });
    if (!done) {
        return std::unexpected(done.error());
    }
    std::vector<PicturePage> pages;
    pages.reserve(prints.size());
    for (std::optional<Result<PicturePage>>& page : rendered) {
        if (!*page) {
            return std::unexpected(page->error());
        }
        pages.push_back(*std::move(*page));
    }
    return picturePdf(pages, title);
}

}  // namespace

Result<std::string> printFile(const Print& print, const Photo& photo, const PrintOptions& options,
                              const std::stop_token& stop) {
    return withinMemory([&] { return fileOf(print, photo, options, stop); });
}

Result<std::string> gangFile(const Gang& gang, const std::vector<Print>& prints,
                             const std::function<const Photo&(PhotoId)>& photoOf,
                             const PrintOptions& options, const std::stop_token& stop) {
    return withinMemory([&] { return fileOf(gang, prints, photoOf, options, stop); });
}

Result<std::string> printsPdf(const std::vector<Print>& prints, const std::string& title,
                              const std::function<const Photo&(PhotoId)>& photoOf,
                              const PrintOptions& options, const std::stop_token& stop) {
    return withinMemory([&] { return pdfOf(prints, title, photoOf, options, stop); });
}

}  // namespace matwright
