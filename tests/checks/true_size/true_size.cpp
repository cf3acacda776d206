// SPDX-License-Identifier: MIT
// True size: renders the template of each sketch (files given as arguments, and a page of every
// catalogue size with pieces of each shape, turned ones too) as SVG through librsvg and as PDF
// through poppler at 600 ppi, finds every trim line and mat edge in the pixels and compares its
// middle with the model. Only the outline layers are rendered, so that no text or dimension line
// lies near; samples nearer than 1.3 mm to another outline are passed over. PDF page boxes are
// compared with the sheet; of each example the first and last home-printer sheet are measured too.
#include <fmt/format.h>

#include <QFile>
#include <QGuiApplication>
#include <QImageReader>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <cmath>
#include <unordered_map>

#include "app/rendering/pdf.h"
#include "core/drawing/svg.h"
#include "core/measure/catalogue.h"
#include "core/sketch/edit.h"
#include "core/sketchfile/sketch_file.h"
#include "core/template/template.h"
#include "core/template/tiling.h"
#include "tests/checks/true_size/raster.h"

namespace {

using namespace matwright;
using check::ExpectedLine;
using check::Sample;

constexpr double bar = 0.1;        // mm
constexpr double boxBar = 0.01;    // pt
constexpr double clearance = 1.3;  // mm to any other outline
constexpr double reach = 0.6;      // mm of the scan to either side
constexpr int skipped = 77;

struct Worst {
    double millimetres = 0;
    double points = 0;  // of page boxes
    int faults = 0;
};

struct Job {
    std::string name;
    Sketch sketch;
    bool tiles = false;
};

// Dense places of all lines by cells of `clearance`, to know where lines come near each other.
class Neighbours {
  public:
    explicit Neighbours(const std::vector<ExpectedLine>& lines) {
        for (std::size_t i = 0; i < lines.size(); ++i) {
            for (const Sample& sample : lines[i].samples) {
                m_cells[key(cell(sample.x), cell(sample.y))].push_back({i, sample.x, sample.y});
            }
        }
    }
    bool isAlone(std::size_t line, const Sample& at) const {
        for (long dx = -1; dx <= 1; ++dx) {
            for (long dy = -1; dy <= 1; ++dy) {
                const auto found = m_cells.find(key(cell(at.x) + dx, cell(at.y) + dy));
                if (found == m_cells.end()) {
                    continue;
                }
                for (const Place& it : found->second) {
                    if (it.line != line && std::hypot(it.x - at.x, it.y - at.y) < clearance) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

  private:
    struct Place {
        std::size_t line;
        double x, y;
    };
    static long cell(double v) { return std::lround(std::floor(v / clearance)); }
    static long key(long x, long y) { return x * 1'000'003 + y; }
    std::unordered_map<long, std::vector<Place>> m_cells;
};

// The part of the sheet that a picture shows, in mm, and where it lies in the picture.
struct View {
    double left = 0, top = 0, right = 0, bottom = 0;
    double dx = 0, dy = 0;
    bool contains(const Sample& s) const {
        return s.x > left + clearance && s.x < right - clearance && s.y > top + clearance &&
               s.y < bottom - clearance;
    }
};

void measure(const std::string& what, const check::Raster& raster,
             const std::vector<ExpectedLine>& lines, const View& view, Worst& worst) {
    if (raster.isNull()) {
        fmt::print("FAULT {}: no picture\n", what);
        ++worst.faults;
        return;
    }
    const Neighbours neighbours(lines);
    double most = 0;
    std::size_t measured = 0;
    int outlines = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        std::size_t tried = 0;
        std::size_t found = 0;
        for (Sample sample : lines[i].samples) {
            if (sample.nearCorner || !view.contains(sample) || !neighbours.isAlone(i, sample)) {
                continue;
            }
            ++tried;
            sample.x += view.dx;
            sample.y += view.dy;
            if (const auto offset = raster.lineOffset(sample, reach)) {
                ++found;
                most = std::max(most, std::abs(*offset));
            }
        }
        // Dashes show half of a line.
        if (tried >= 20 && found * 4 < tried) {
            fmt::print("FAULT {}: {} found at {} of {} places\n", what, lines[i].name, found,
                       tried);
            ++worst.faults;
        }
        measured += found;
        outlines += found > 0 ? 1 : 0;
    }
    fmt::print("{}: {} of {} outlines, {} places, worst {:.4f} mm\n", what, outlines, lines.size(),
               measured, most);
    worst.millimetres = std::max(worst.millimetres, most);
}

bool run(const QString& program, const QStringList& arguments, QByteArray* output = nullptr) {
    QProcess process;
    process.start(program, arguments);
    const bool done = process.waitForFinished(600'000) && process.exitCode() == 0;
    if (output != nullptr) {
        *output = process.readAllStandardOutput();
    }
    return done;
}

void write(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    if (file.open(QIODevice::WriteOnly)) {
        file.write(bytes);
    }
}

check::Raster svgPicture(const Drawing& drawing, const QTemporaryDir& folder) {
    const QString svg = folder.filePath("page.svg");
    const QString png = folder.filePath("page.png");
    write(svg, QByteArray::fromStdString(svgText(drawing)));
    run("rsvg-convert", {"--dpi-x", "600", "--dpi-y", "600", "-b", "white", svg, "-o", png});
    return check::Raster(QImage(png));
}

void comparePageBox(const std::string& name, const QString& pdf, Size size, Worst& worst) {
    QByteArray text;
    run("pdfinfo", {"-box", pdf}, &text);
    for (const QByteArray& row : text.split('\n')) {
        if (!row.startsWith("MediaBox:")) {
            continue;
        }
        const QList<QByteArray> words = row.simplified().split(' ');
        // pdfinfo prints two decimals, so a hundredth of a point is also its own grain.
        const double width = words.value(3).toDouble() - words.value(1).toDouble();
        const double height = words.value(4).toDouble() - words.value(2).toDouble();
        const double off = std::max(std::abs(width - size.width.toPoints()),
                                    std::abs(height - size.height.toPoints()));
        fmt::print("{} PDF page box: {:.2f} x {:.2f} pt, off by {:.4f} pt\n", name, width, height,
                   off);
        worst.points = std::max(worst.points, off);
        return;
    }
    fmt::print("FAULT {}: no page box\n", name);
    ++worst.faults;
}

check::Raster pdfPicture(const std::string& name, const Drawing& drawing,
                         const QTemporaryDir& folder, Worst& worst) {
    const QString pdf = folder.filePath("page.pdf");
    const auto bytes = app::pdfBytes({{drawing, drawing.size, std::nullopt, {}}}, "True size");
    if (!bytes) {
        fmt::print("FAULT {}: {}\n", name, bytes.error().text());
        ++worst.faults;
        return check::Raster({});
    }
    write(pdf, *bytes);
    comparePageBox(name, pdf, drawing.size, worst);
    run("pdftoppm", {"-r", "600", "-gray", "-png", "-singlefile", pdf, folder.filePath("pdf")});
    return check::Raster(QImage(folder.filePath("pdf.png")));
}

void keepLayers(Drawing& drawing, std::initializer_list<std::string_view> ids) {
    std::erase_if(drawing.layers, [&](const Layer& layer) {
        return std::ranges::find(ids, std::string_view(layer.id)) == ids.end();
    });
}

void measureTiles(const Job& job, const Drawing& outlines, const std::vector<ExpectedLine>& lines,
                  const QTemporaryDir& folder, Worst& worst) {
    const auto plan = planTiles(job.sketch.page, {});
    if (!plan) {
        return;
    }
    for (const Tile& tile : {plan->tiles.front(), plan->tiles.back()}) {
        Drawing sheet = tileDrawing(outlines, *plan, tile);
        keepLayers(sheet, {layerTrim, layerMats, layerHidden, "frame"});
        const Rect& w = tile.window;
        const View view{w.left().toMillimetres(),
                        w.top().toMillimetres(),
                        w.right().toMillimetres(),
                        w.bottom().toMillimetres(),
                        (plan->printerMargin - w.left()).toMillimetres(),
                        (plan->printerMargin - w.top()).toMillimetres()};
        measure(fmt::format("{} tile {} SVG", job.name, tile.name()), svgPicture(sheet, folder),
                lines, view, worst);
    }
}

void checkJob(const Job& job, Worst& worst) {
    TemplateOptions options;
    options.labels = options.dimensions = options.guides = options.checkSquares = false;
    Drawing drawing = templateDrawing(job.sketch, options);
    keepLayers(drawing, {layerTrim, layerMats, layerHidden});
    const QTemporaryDir folder;
    const std::vector<ExpectedLine> lines = check::expectedLines(job.sketch);
    const View view{0, 0, drawing.size.width.toMillimetres(), drawing.size.height.toMillimetres()};
    measure(job.name + " SVG", svgPicture(drawing, folder), lines, view, worst);
    measure(job.name + " PDF", pdfPicture(job.name, drawing, folder, worst), lines, view, worst);
    if (job.tiles) {
        measureTiles(job, drawing, lines, folder, worst);
    }
}

// Pieces of each shape, matted and turned, scaled to the page.
Sketch shapesOn(Size page) {
    Sketch sketch = blankSketch();
    sketch.page.size = page;
    const auto at = [&](int x, int y) {
        return Point{page.width.scaledRounded(x, 100), page.height.scaledRounded(y, 100)};
    };
    const Size size{page.width.scaledRounded(28, 100), page.height.scaledRounded(20, 100)};
    const Shape shapes[] = {RectangleShape{}, RoundedRectangleShape{Length::millimetres(12)},
                            OvalShape{},
                            PolygonShape{{{Length(), size.height.scaledRounded(1, 3)},
                                          {size.width.scaledRounded(1, 2), Length()},
                                          {size.width, size.height.scaledRounded(1, 3)},
                                          {size.width.scaledRounded(4, 5), size.height},
                                          {size.width.scaledRounded(1, 5), size.height}}}};
    std::vector<Piece> pieces;
    for (int i = 0; i < 8; ++i) {
        Piece piece;
        piece.kind = PieceKind::PhotoSlot;
        piece.size = size;
        piece.printSize = size;
        piece.place = at(8 + (i % 2) * 45, 5 + (i / 2) * 23);
        piece.shape = shapes[i / 2];
        piece.mats = {{Length::inches(0, 1, 8), std::nullopt, ""}};
        piece.rotation = Angle::millidegrees(i % 2 == 0 ? 0 : 11'250 + 3'000 * i);
        pieces.push_back(piece);
    }
    Piece strip;
    strip.kind = PieceKind::Strip;
    strip.place = at(4, 48);
    strip.size = {page.width.scaledRounded(90, 100), Length::inches(0, 3, 4)};
    pieces.push_back(strip);
    (void)apply(sketch, addPieces(sketch, pieces));
    return sketch;
}

}  // namespace

int main(int argc, char** argv) {
    for (const char* program : {"rsvg-convert", "pdftoppm", "pdfinfo"}) {
        if (QStandardPaths::findExecutable(program).isEmpty()) {
            fmt::print("SKIPPED: {} is not installed\n", program);
            return skipped;
        }
    }
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    const QGuiApplication application(argc, argv);
    QImageReader::setAllocationLimit(0);
    Worst worst;
    std::vector<Job> jobs;
    for (const QString& path : QGuiApplication::arguments().mid(1)) {
        QFile file(path);
        const bool isOpen = file.open(QIODevice::ReadOnly);
        auto loaded = readSketch(file.readAll().toStdString());
        if (!isOpen || !loaded) {
            fmt::print("FAULT {}: cannot be read\n", path.toStdString());
            ++worst.faults;
            continue;
        }
        jobs.push_back({path.section('/', -1).toStdString(), std::move(loaded->sketch), true});
    }
    for (const NamedSize& page : pageSizes()) {
        jobs.push_back({fmt::format("page {}", page.id), shapesOn(page.size), false});
    }
    for (const Job& job : jobs) {
        checkJob(job, worst);
        std::fflush(stdout);
    }
    fmt::print("WORST: {:.4f} mm (bar {} mm), page boxes {:.4f} pt (bar {} pt), {} faults\n",
               worst.millimetres, bar, worst.points, boxBar, worst.faults);
    return worst.millimetres <= bar && worst.points <= boxBar && worst.faults == 0 ? 0 : 1;
}
