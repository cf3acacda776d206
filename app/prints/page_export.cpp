// SPDX-License-Identifier: MIT
#include "app/prints/page_export.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
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
#include "core/content/content_key.h"
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
        const auto decoded = read(photo, longSide);
        if (!decoded) {
            note(photo.path, QString::fromStdString(decoded.error().sentence));
            return {};
        }
        const QImage shown =
            croppedPicture(imageOf(decoded->picture), fill.crop, photo.upright, window, side);
        return shareOf(toned(photo.tone, decoded->sample, shown), fill.from, fill.to);
    }

    QImage paperPicture(const PaperLook& look) override {
        auto [known, isNew] = m_papers.try_emplace(look.picture);
        if (isNew) {
            known->second = readPaper(look);
        }
        return known->second;
    }

    const QStringList& missing() const { return m_missing; }

  private:
    struct PhotoPixels {
        Raster picture;
        Histogram sample;  // nothing where it is not needed
    };
    Result<PhotoPixels> read(const Photo& photo, int longSide) const {
        if (auto other = findOtherPicture(photo.path, photo.content)) {
            return std::unexpected(*std::move(other));
        }
        auto picture = decodePhoto(photo.path, longSide, m_stop);
        if (!picture) {
            return std::unexpected(picture.error());
        }
        if (!photo.tone.evenOut) {
            return PhotoPixels{*std::move(picture), {}};
        }
        const auto sample = toneSample(photo.path, m_stop);
        return sample ? Result<PhotoPixels>(PhotoPixels{*std::move(picture), *sample})
                      : std::unexpected(sample.error());
    }

    QImage readPaper(const PaperLook& look) {
        QFile file(QString::fromStdString(look.picture));
        file.open(QIODevice::ReadOnly);
        QByteArray bytes = file.readAll();
        const std::string_view held(bytes.constData(), static_cast<std::size_t>(bytes.size()));
        if (file.isOpen() && look.content != ContentKey{} && contentKeyOf(held) != look.content) {
            note(look.picture, QCoreApplication::translate(
                                   "Page", "This file holds another picture of a paper now."));
            return {};
        }
        QBuffer buffer(&bytes);
        QImageReader reader(&buffer);
        reader.setAutoTransform(true);
        QImage paper = reader.read();
        if (paper.isNull()) {
            note(look.picture, file.isOpen() ? reader.errorString() : file.errorString());
        }
        return paper;
    }

    static QImage toned(const Tone& tone, const Histogram& sample, QImage picture) {
        if (tone == Tone{}) {
            return picture;
        }
        Raster raster = rasterOf(picture);
        apply(toneMapOf(tone, sample), raster);
        return imageOf(raster).convertToFormat(QImage::Format_RGB32);
    }

    void note(const std::string& path, const QString& why) {
        const QString sentence =
            QFileInfo(QString::fromStdString(path)).fileName() + QStringLiteral(": ") + why;
        if (!m_missing.contains(sentence)) {
            m_missing.append(sentence);
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
