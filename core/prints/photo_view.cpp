// SPDX-License-Identifier: MIT
#include "core/prints/photo_view.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <numbers>
#include <utility>

#include "core/photo/photo_source.h"
#include "core/photo/vips_loading.h"
#include "core/prints/reduce.h"
#include "core/prints/vips_seam.h"
#include "core/prints/way_round.h"

namespace matwright {

using vips::VImage;

namespace {

// The picture's pixels in the window's own directions, from the window's middle: photo pixels.
struct Reach {
    double left = 0;
    double top = 0;
    double width = 0;
    double height = 0;
};

Reach reachOf(const PhotoView& view, const CropWindow& window) {
    const double part = view.to - view.from;
    const double perPixelAcross = window.width * part / view.shown.size().width;
    const double perPixelDown = window.height / view.shown.size().height;
    return {
        window.width * (view.from - 0.5) - (view.shown.left - view.picture.left) * perPixelAcross,
        -window.height / 2 - (view.shown.top - view.picture.top) * perPixelDown,
        view.picture.size().width * perPixelAcross, view.picture.size().height * perPixelDown};
}

// The bleed, and what it takes of the corners where the window is turned.
double beyondOf(const PhotoView& view, const Reach& reach) {
    const int most =
        std::max({view.shown.left - view.picture.left, view.picture.right - view.shown.right,
                  view.shown.top - view.picture.top, view.picture.bottom - view.shown.bottom});
    const double perPixel = std::max(reach.width / view.picture.size().width,
                                     reach.height / view.picture.size().height);
    return 2 * most * perPixel;
}

// One photo on its way to pixels.
struct Work {
    WayRound way;
    PixelSize stored;  // the photo's full size as it lies in the file
    CropWindow window;
    Reach reach;
    double beyond = 0;  // how far that goes past what is shown, at most, on any side
    PixelSize pixels;   // what is wanted
    int shrink = 1;     // the decoded picture is this many times smaller
};

PixelPart smallerBy(const PixelPart& part, double shrink) {
    return {part.left / shrink, part.top / shrink, part.width / shrink, part.height / shrink};
}

VImage uprightPixels(const Work& work, const VImage& picture) {
    const PixelPart shown{work.window.centreX + work.reach.left,
                          work.window.centreY + work.reach.top, work.reach.width,
                          work.reach.height};
    const PixelPart part = smallerBy(storedPart(work.way, shown, work.stored), work.shrink);
    const PixelSize lying = turned(work.way, work.pixels);  // as it lies in the file
    const VImage small = resampled(picture, {part.left, part.width, lying.width},
                                   {part.top, part.height, lying.height});
    return turned(work.way, work.way.quarters == 0 ? small : small.copy_memory());
}

// The smallest upright part of the photo around the turned window, with room for the interpolation.
PixelPart around(const CropWindow& window, const Reach& reach) {
    constexpr double room = 8;
    const double c = std::cos(window.radians);
    const double s = std::sin(window.radians);
    const double middleX = reach.left + reach.width / 2;
    const double middleY = reach.top + reach.height / 2;
    const double width = reach.width * c + reach.height * std::abs(s) + 2 * room;
    const double height = reach.width * std::abs(s) + reach.height * c + 2 * room;
    return {window.centreX + middleX * c + middleY * s - width / 2,
            window.centreY + middleY * c - middleX * s - height / 2, width, height};
}

// `part` grown to whole pixels of the picture and cut to them and to what of the bleed may lie
// beyond them.
PixelPart wholePixels(const PixelPart& part, const VImage& picture, double beyond) {
    const double left = std::clamp(std::floor(part.left), -beyond, picture.width() - 1.0);
    const double top = std::clamp(std::floor(part.top), -beyond, picture.height() - 1.0);
    const double right =
        std::clamp<double>(std::ceil(part.left + part.width), left + 1, picture.width() + beyond);
    const double bottom =
        std::clamp<double>(std::ceil(part.top + part.height), top + 1, picture.height() + beyond);
    return {left, top, right - left, bottom - top};
}

// Turned about the window's middle at its own resolution, then brought to size; where the print is
// finer than the photo, both at once.
VImage straightenedPixels(const Work& work, const VImage& picture) {
    const PixelSize decoded{picture.width(), picture.height()};
    const PixelPart part = wholePixels(
        smallerBy(storedPart(work.way, around(work.window, work.reach), work.stored), work.shrink),
        picture, std::ceil(work.beyond / work.shrink));
    const VImage kept =
        turned(work.way, cutOut(picture, static_cast<int>(part.left), static_cast<int>(part.top),
                                static_cast<int>(part.width), static_cast<int>(part.height))
                             .copy_memory());
    const PixelPart place = shownPart(work.way, part, decoded);
    const double across = work.reach.width / work.shrink;
    const double down = work.reach.height / work.shrink;
    const bool shrinks = across >= work.pixels.width && down >= work.pixels.height;
    const double zoomX = shrinks ? 1 : work.pixels.width / across;
    const double zoomY = shrinks ? 1 : work.pixels.height / down;
    const int room = shrinks ? 4 : 0;
    const double c = std::cos(work.window.radians);
    const double s = std::sin(work.window.radians);
    const std::vector<int> area{-room, -room,
                                static_cast<int>(std::ceil(across * zoomX - 1e-6)) + 2 * room,
                                static_cast<int>(std::ceil(down * zoomY - 1e-6)) + 2 * room};
    const VImage level =
        kept.affine({zoomX * c, -zoomX * s, zoomY * s, zoomY * c},
                    VImage::option()
                        ->set("interpolate", vips::VInterpolate::new_from_name("bicubic"))
                        ->set("oarea", area)
                        ->set("idx", 0.5 - work.window.centreX / work.shrink + place.left)
                        ->set("idy", 0.5 - work.window.centreY / work.shrink + place.top)
                        ->set("odx", -work.reach.left / work.shrink * zoomX - 0.5)
                        ->set("ody", -work.reach.top / work.shrink * zoomY - 0.5)
                        ->set("extend", VIPS_EXTEND_COPY));
    return shrinks ? resampled(level, {double(room), across, work.pixels.width},
                               {double(room), down, work.pixels.height})
                   : level;
}

Raster rasterOf(const VImage& image, const std::stop_token& stop) {
    const std::stop_callback stopping(stop, [&] { image.get_image()->kill = TRUE; });
    const VImage held = image.copy_memory();
    Raster raster{{held.width(), held.height()}, {}};
    const auto* first = static_cast<const std::uint8_t*>(held.data());
    raster.pixels.assign(first, first + VIPS_IMAGE_SIZEOF_IMAGE(held.get_image()));
    return raster;
}

Error stopped() {
    return {ErrorCode::Unsupported, "The work was stopped.", ""};
}

// By the longer side: of a few pixels the decoder's rounding would say anything.
int shrinkOf(PixelSize stored, const VImage& picture) {
    const double longer = std::max(stored.width, stored.height);
    return static_cast<int>(std::lround(longer / std::max(picture.width(), picture.height())));
}

Work workOf(const LoadedPhoto& photo, const PhotoView& view) {
    Work work;
    work.way = wayRound(photo.orientation, view.crop.quarterTurns);
    work.stored = photo.weight.stored;
    const PixelSize upright = turned(wayRound(photo.orientation, 0), work.stored);
    work.window = windowIn(view.crop, upright, view.window);
    work.reach = reachOf(view, work.window);
    work.beyond = beyondOf(view, work.reach);
    work.pixels = view.picture.size();
    return work;
}

}  // namespace

int decoderShrink(double scale) {
    int shrink = 1;
    while (shrink < 8 && scale / (2 * shrink) >= shrunkEnough) {
        shrink *= 2;
    }
    return shrink;
}

Result<Raster> photoPixels(const Photo& wanted, const PhotoView& view, std::stop_token stop) {
    preparePhotoReading();
    const std::filesystem::path path = wanted.path;
    const Result<PhotoFile> file = PhotoFile::open(path);
    if (!file) {
        return std::unexpected(file.error());
    }
    if (std::optional<Error> other = file->findOther(wanted.content)) {
        return std::unexpected(*std::move(other));
    }
    Result<LoadedPhoto> photo = loadPhoto(*file);
    if (!photo) {
        return std::unexpected(photo.error());
    }
    Work work = workOf(*photo, view);
    if (const std::optional<Error> error = findTooLarge(photo->weight, work.pixels, path)) {
        return std::unexpected(*error);
    }
    const int shrink = decoderShrink(
        std::min(work.reach.width / work.pixels.width, work.reach.height / work.pixels.height));
    if (shrink > 1) {
        photo = loadPhoto(*file, shrink);
        if (!photo) {
            return std::unexpected(photo.error());
        }
    }
    const Result<Raster> raster = guarded(
        ErrorCode::Malformed, "The photo is damaged or cut short; copy it from the camera anew",
        path.string(), [&] {
            const VImage picture = onWhite(*photo);
            work.shrink = shrinkOf(work.stored, picture);
            const VImage pixels = work.window.radians == 0 ? uprightPixels(work, picture)
                                                           : straightenedPixels(work, picture);
            return rasterOf(toSrgb(*photo, pixels), stop);
        });
    if (stop.stop_requested()) {
        return std::unexpected(stopped());
    }
    if (raster) {
        if (const std::optional<Error> change = file->findChange()) {
            return std::unexpected(*change);
        }
    }
    return raster;
}

}  // namespace matwright
