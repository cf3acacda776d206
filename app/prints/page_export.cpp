// SPDX-License-Identifier: MIT
#include "app/prints/page_export.h"

#include <QFileInfo>
#include <QImageReader>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "app/photos/cropped_picture.h"
#include "app/photos/rasters.h"
#include "app/rendering/page_parts.h"
#include "core/photo/photo_source.h"
#include "core/prints/picture_file.h"
#include "core/prints/picture_pdf.h"

namespace matwright::app {

namespace {

constexpr int largestWindow = 12'000;  // pixels on the longer side

// Reads what is painted, each photo as large as its slot needs it.
class ExportPictures final : public PartPictures {
  public:
    ExportPictures(const Making& making, std::stop_token stop)
        : m_making(making), m_stop(std::move(stop)) {}

    QImage windowPicture(PieceId, const PhotoFill& fill, double pixelsPerTick) override {
        const Photo& photo = m_making.work.photos.at(fill.photo);
        const Size window = fill.whole;
        const Length longer = std::max(window.width, window.height);
        const int wish =
            static_cast<int>(std::lround(static_cast<double>(longer.ticks()) * pixelsPerTick));
        const int side = std::clamp(wish, 1, largestWindow);
        // Of the whole photo as many pixels as make the window's.
        const double share = std::max(fill.shown.width, fill.shown.height);
        const int whole = std::max(photo.upright.width, photo.upright.height);
        const int longSide = std::min(whole, static_cast<int>(std::ceil(side * whole / share)));
        const auto decoded = decodePhoto(photo.path, longSide, m_stop);
        if (!decoded) {
            note(photo.path);
            return {};
        }
        const QImage shown =
            croppedPicture(imageOf(*decoded), fill.crop, photo.upright, window, side);
        return shareOf(toned(photo, shown), fill.from, fill.to);
    }

    QImage paperPicture(const PaperLook& look) override {
        auto [known, isNew] = m_papers.try_emplace(look.picture);
        if (isNew) {
            QImageReader reader(QString::fromStdString(look.picture));
            reader.setAutoTransform(true);
            known->second = reader.read();
            if (known->second.isNull()) {
                note(look.picture);
            }
        }
        return known->second;
    }

    const QStringList& missing() const { return m_missing; }

  private:
    QImage toned(const Photo& photo, QImage picture) {
        if (photo.tone == Tone{}) {
            return picture;
        }
        const auto sample = toneSample(photo.path, m_stop);
        if (!sample) {
            return picture;
        }
        Raster raster = rasterOf(picture);
        apply(toneMapOf(photo.tone, *sample), raster);
        return imageOf(raster).convertToFormat(QImage::Format_RGB32);
    }
    void note(const std::string& path) {
        const QString name = QFileInfo(QString::fromStdString(path)).fileName();
        if (!m_missing.contains(name)) {
            m_missing.append(name);
        }
    }

    const Making& m_making;
    std::stop_token m_stop;
    std::map<std::string, QImage> m_papers;
    QStringList m_missing;
};

Error stopped() {
    return {ErrorCode::Unsupported, "It was stopped.", ""};
}

int pixelsOf(Length length, int ppi) {
    return static_cast<int>(std::lround(length.toInches() * ppi));
}

}  // namespace

Result<PageImage> pageImage(const Making& making, int ppi, const std::stop_token& stop) {
    if (ppi < 1 || ppi > mostPagePpi) {
        return std::unexpected(
            Error{ErrorCode::OutOfRange, "A picture of the page has 1 to 600 pixels an inch.", ""});
    }
    const Size page = surface(making.sketch.page).size();
    const QSize size(std::max(1, pixelsOf(page.width, ppi)),
                     std::max(1, pixelsOf(page.height, ppi)));
    QImage picture;
    if (qint64(size.width()) * size.height() <= maxPagePixels) {
        picture = QImage(size, QImage::Format_RGB32);
    }
    if (picture.isNull()) {
        return std::unexpected(Error{ErrorCode::TooLarge,
                                     "The picture would be too large; choose fewer pixels an inch.",
                                     ""});
    }
    picture.fill(Qt::white);
    const double perTick = ppi / static_cast<double>(Length::ticksPerInch);
    ExportPictures pictures(making, stop);
    QPainter painter(&picture);
    painter.scale(perTick, perTick);
    for (const PagePiece& part : pagePicture(making)) {
        if (stop.stop_requested()) {
            return std::unexpected(stopped());
        }
        paintPart(painter, part, pictures, perTick);
    }
    painter.end();
    if (stop.stop_requested()) {
        return std::unexpected(stopped());
    }
    return PageImage{std::move(picture), pictures.missing()};
}

Result<std::string> pageFile(const Making& making, const PageImage& page, PrintFormat format,
                             int ppi, const std::string& title) {
    PrintOptions options;
    options.format = format;
    options.ppi = ppi;
    const Raster raster = rasterOf(page.picture);
    Result<std::string> bytes = pictureFile(raster, {}, options);
    if (!bytes || format != PrintFormat::Pdf) {
        return bytes;
    }
    const Size size = surface(making.sketch.page).size();
    return picturePdf({{size, Rect::at({}, size), std::nullopt, std::move(*bytes), raster.size}},
                      title);
}

}  // namespace matwright::app
