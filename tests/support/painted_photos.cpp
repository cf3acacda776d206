// SPDX-License-Identifier: MIT
#include "tests/support/painted_photos.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>
#include <random>
#include <vips/vips8>

namespace matwright::test {

namespace {

// Scenes are painted on a ground of 4 x 3; of an upright picture its sides are not seen.
class Scene {
  public:
    Scene(QImage& image, int seed) : m_painter(&image), m_random(static_cast<unsigned>(seed)) {
        m_painter.setRenderHint(QPainter::Antialiasing);
        const double scale = std::max(image.width() / width, image.height() / height);
        m_painter.translate(image.width() / 2.0, image.height() / 2.0);
        m_painter.scale(scale, scale);
        m_painter.translate(-width / 2, -height / 2);
        m_painter.setPen(Qt::NoPen);
    }

    static constexpr double width = 4;
    static constexpr double height = 3;

    void sky(QColor top, QColor low) {
        QLinearGradient gradient(0, 0, 0, height);
        gradient.setColorAt(0, top);
        gradient.setColorAt(1, low);
        m_painter.fillRect(QRectF(0, 0, width, height), gradient);
    }
    void disc(QPointF at, double radius, QColor colour) {
        m_painter.setBrush(colour);
        m_painter.drawEllipse(at, radius, radius);
    }
    // A rolling edge at `y`, filled down to the bottom.
    void hills(double y, double swing, QColor colour) {
        const double phase = any(0, 6);
        const double pace = any(1, 2.2);
        QPainterPath path(QPointF(0, height));
        for (int i = 0; i <= 80; ++i) {
            const double x = width * i / 80;
            path.lineTo(x, y + swing * (std::sin(x * pace + phase) +
                                        0.4 * std::sin(x * pace * 2.7 + 2 * phase)));
        }
        path.lineTo(width, height);
        m_painter.fillPath(path, colour);
    }
    void shape(std::initializer_list<QPointF> corners, QColor colour) {
        m_painter.setBrush(colour);
        m_painter.drawPolygon(QPolygonF(QList<QPointF>(corners)));
    }
    void fir(QPointF foot, double tall, QColor colour) {
        for (int i = 0; i < 3; ++i) {
            const double low = foot.y() - tall * 0.28 * i;
            const double half = tall * (0.26 - 0.06 * i);
            shape({{foot.x() - half, low}, {foot.x() + half, low}, {foot.x(), low - tall * 0.48}},
                  colour);
        }
    }
    void roundTree(QPointF foot, double tall, QColor colour) {
        shape({foot + QPointF(-0.04, 0), foot + QPointF(0.04, 0), foot + QPointF(0.03, -tall * 0.5),
               foot + QPointF(-0.03, -tall * 0.5)},
              QColor(92, 66, 48));
        for (int i = 0; i < 9; ++i) {
            disc(foot + QPointF(any(-0.22, 0.22), -tall * any(0.5, 0.95)), tall * 0.17,
                 colour.lighter(static_cast<int>(any(88, 116))));
        }
    }
    // Somebody seen from far away.
    void figure(QPointF foot, double tall, QColor coat) {
        disc(foot + QPointF(0, -tall * 0.86), tall * 0.13, QColor(226, 186, 156));
        shape(
            {foot + QPointF(-tall * 0.16, -tall * 0.35), foot + QPointF(tall * 0.16, -tall * 0.35),
             foot + QPointF(tall * 0.1, -tall * 0.74), foot + QPointF(-tall * 0.1, -tall * 0.74)},
            coat);
        for (const double side : {-0.08, 0.08}) {
            m_painter.setBrush(QColor(52, 56, 74));
            m_painter.drawRect(QRectF(foot.x() + tall * (side - 0.045), foot.y() - tall * 0.36,
                                      tall * 0.09, tall * 0.36));
        }
    }
    void speckles(int count, QRectF where, double radius, std::initializer_list<QColor> colours) {
        for (int i = 0; i < count; ++i) {
            disc({any(where.left(), where.right()), any(where.top(), where.bottom())},
                 radius * any(0.6, 1.3),
                 *(colours.begin() + static_cast<int>(any(0, double(colours.size()) - 0.01))));
        }
    }
    double any(double low, double high) {
        return std::uniform_real_distribution(low, high)(m_random);
    }

  private:
    QPainter m_painter;
    std::mt19937 m_random;
};

void winterHill(Scene& s) {
    s.sky({120, 164, 206}, {230, 236, 244});
    s.hills(1.7, 0.2, {206, 220, 234});
    s.hills(2.1, 0.16, {240, 244, 248});
    for (const double x : {0.5, 0.9, 3.1, 3.5}) {
        s.fir({x, 2.15 + s.any(0, 0.2)}, 0.8, {38, 84, 72});
    }
    s.figure({1.8, 2.55}, 0.62, {196, 52, 46});
    s.figure({2.3, 2.6}, 0.44, {238, 176, 46});
    s.speckles(160, {0, 0, 4, 3}, 0.012, {Qt::white});
}

void springMeadow(Scene& s) {
    s.sky({96, 170, 222}, {222, 240, 246});
    s.disc({3.2, 0.6}, 0.26, {255, 232, 140});
    s.hills(1.8, 0.14, {122, 174, 92});
    s.hills(2.2, 0.1, {92, 152, 70});
    s.roundTree({0.8, 2.2}, 1.1, {236, 176, 196});
    s.speckles(220, {0, 2.35, 4, 0.6}, 0.022,
               {{250, 214, 60}, {238, 96, 120}, {250, 250, 250}, {150, 104, 196}});
    s.figure({2.5, 2.6}, 0.7, {60, 110, 180});
}

void beach(Scene& s) {
    s.sky({86, 166, 226}, {214, 236, 246});
    s.disc({0.7, 0.55}, 0.24, {255, 238, 170});
    s.hills(1.5, 0.006, {34, 126, 164});
    s.hills(1.9, 0.02, {70, 170, 186});
    s.hills(2.05, 0.05, {238, 214, 164});
    s.shape({{2.3, 1.75}, {3.5, 1.75}, {2.9, 1.25}}, {214, 62, 60});
    s.shape({{2.88, 1.5}, {2.93, 1.5}, {2.93, 2.5}, {2.88, 2.5}}, {120, 92, 70});
    s.figure({1.3, 2.6}, 0.6, {246, 170, 60});
    s.figure({1.75, 2.66}, 0.42, {52, 150, 140});
}

void lakeBoat(Scene& s) {
    s.sky({244, 176, 116}, {250, 226, 186});
    s.disc({2.7, 1.15}, 0.3, {255, 244, 200});
    s.hills(1.35, 0.18, {112, 104, 132});
    s.hills(1.6, 0.004, {176, 142, 132});
    s.hills(2.3, 0.01, {126, 112, 124});
    s.shape({{1.2, 2.1}, {2.3, 2.1}, {2.05, 2.32}, {1.4, 2.32}}, {106, 52, 44});
    s.shape({{1.72, 2.08}, {1.72, 1.0}, {2.3, 1.95}}, {250, 246, 236});
    s.figure({1.5, 2.22}, 0.5, {50, 90, 120});
}

void kite(Scene& s) {
    s.sky({70, 150, 216}, {206, 232, 244});
    s.speckles(26, {0.2, 0.3, 3.4, 0.7}, 0.16, {{255, 255, 255, 150}});
    s.hills(2.15, 0.12, {126, 178, 84});
    s.hills(2.5, 0.06, {98, 154, 66});
    s.shape({{2.8, 0.4}, {3.2, 0.75}, {2.8, 1.35}, {2.45, 0.75}}, {222, 60, 70});
    s.shape({{2.8, 0.4}, {3.2, 0.75}, {2.8, 0.75}}, {250, 200, 60});
    s.figure({1.2, 2.75}, 0.62, {74, 96, 170});
}

void autumnWood(Scene& s) {
    s.sky({206, 214, 220}, {244, 236, 218});
    s.hills(2.2, 0.05, {150, 108, 62});
    for (int i = 0; i < 9; ++i) {
        const QColor leaves[] = {{206, 106, 40}, {226, 160, 50}, {176, 62, 44}};
        s.roundTree({0.25 + i * 0.45, 2.2 + s.any(0, 0.3)}, s.any(1.2, 1.7),
                    leaves[static_cast<std::size_t>(i) % 3]);
    }
    s.speckles(240, {0, 2.35, 4, 0.65}, 0.026, {{206, 106, 40}, {226, 160, 50}, {176, 62, 44}});
}

void lighthouse(Scene& s) {
    s.sky({104, 156, 200}, {236, 224, 206});
    s.hills(2.1, 0.008, {50, 100, 132});
    s.hills(2.45, 0.08, {110, 112, 104});
    s.shape({{1.75, 2.5}, {2.25, 2.5}, {2.14, 0.9}, {1.86, 0.9}}, {246, 244, 238});
    for (const double y : {1.2, 1.75, 2.25}) {
        s.shape({{1.8, y + 0.18}, {2.2, y + 0.18}, {2.19, y}, {1.81, y}}, {202, 50, 46});
    }
    s.shape({{1.82, 0.9}, {2.18, 0.9}, {2, 0.6}}, {60, 60, 70});
    s.figure({2.9, 2.75}, 0.4, {230, 180, 60});
}

void tentAtNight(Scene& s) {
    s.sky({14, 22, 52}, {58, 66, 108});
    s.speckles(180, {0, 0, 4, 1.8}, 0.011, {{255, 255, 240}, {200, 214, 255}});
    s.disc({3.1, 0.7}, 0.2, {246, 240, 214});
    s.hills(2.1, 0.12, {20, 34, 40});
    s.hills(2.45, 0.05, {28, 44, 38});
    s.shape({{1.2, 2.6}, {2.6, 2.6}, {1.9, 1.7}}, {240, 170, 70});
    s.shape({{1.8, 2.6}, {2.0, 2.6}, {1.9, 1.95}}, {110, 60, 40});
    for (const double x : {0.4, 3.0, 3.5}) {
        s.fir({x, 2.5}, 0.9, {10, 24, 28});
    }
}

struct Painted {
    const char* name;
    void (*paint)(Scene&);
};
constexpr std::array<Painted, paintedScenes> scenes = {{{"winter-hill", winterHill},
                                                        {"spring-meadow", springMeadow},
                                                        {"beach", beach},
                                                        {"lake-boat", lakeBoat},
                                                        {"kite", kite},
                                                        {"autumn-wood", autumnWood},
                                                        {"lighthouse", lighthouse},
                                                        {"tent", tentAtNight}}};

// What has to be stored so that a reader that follows the orientation sees `upright` (Exif 2.32,
// tag 0x0112: where the stored first row and column lie in what is seen).
QImage storedFor(const QImage& upright, int orientation) {
    switch (orientation) {
        case 2:
            return upright.mirrored(true, false);
        case 3:
            return upright.mirrored(true, true);
        case 4:
            return upright.mirrored(false, true);
        case 5:
            return upright.transformed(QTransform().rotate(-90)).mirrored(false, true);
        case 6:
            return upright.transformed(QTransform().rotate(-90));
        case 7:
            return upright.transformed(QTransform().rotate(90)).mirrored(false, true);
        case 8:
            return upright.transformed(QTransform().rotate(90));
        default:
            return upright;
    }
}

std::string xmpOf(int rating) {
    return "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF "
           "xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description "
           "rdf:about=\"\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmp:Rating=\"" +
           std::to_string(rating) + "\"/></rdf:RDF></x:xmpmeta>";
}

}  // namespace

std::string sceneName(int scene) {
    return scenes[static_cast<std::size_t>(scene % paintedScenes)].name;
}

QImage paintedPhoto(int scene, QSize size) {
    QImage image(size, QImage::Format_RGB888);
    Scene canvas(image, scene);
    scenes[static_cast<std::size_t>(scene % paintedScenes)].paint(canvas);
    return image;
}

void writeJpeg(const std::filesystem::path& file, const QImage& upright, const PhotoTags& tags) {
    const QImage stored =
        storedFor(upright, tags.orientation).convertToFormat(QImage::Format_RGB888);
    // vips takes rows without padding.
    std::string pixels;
    for (int y = 0; y < stored.height(); ++y) {
        pixels.append(reinterpret_cast<const char*>(stored.constScanLine(y)),
                      std::size_t{3} * static_cast<std::size_t>(stored.width()));
    }
    vips::VImage image =
        vips::VImage::new_from_memory(pixels.data(), pixels.size(), stored.width(), stored.height(),
                                      3, VIPS_FORMAT_UCHAR)
            .copy(vips::VImage::option()->set("interpretation", VIPS_INTERPRETATION_sRGB));
    image.set("orientation", tags.orientation);
    if (!tags.taken.empty()) {
        image.set("exif-ifd2-DateTimeOriginal", tags.taken.c_str());
    }
    if (tags.rating >= -1) {
        const std::string xmp = xmpOf(tags.rating);
        vips_image_set_blob_copy(image.get_image(), VIPS_META_XMP_NAME, xmp.data(), xmp.size());
    }
    image.jpegsave(file.c_str(), vips::VImage::option()->set("Q", tags.quality));
}

}  // namespace matwright::test
