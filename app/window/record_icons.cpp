// SPDX-License-Identifier: MIT
// Part of the build: turns drawings into filled shapes and writes iconShapes() (icon_shapes.h) with
// all of them. Arguments: RESULT.cpp DRAWING.svg ...
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPathStroker>
#include <QSvgRenderer>
#include <QTextStream>
#include <vector>

#include "app/window/icon_shapes.h"

namespace {

using matwright::app::iconSide;

struct Shape {
    QColor colour;
    QPainterPath path;
};

// Keeps what is painted as filled shapes.
class ShapeEngine final : public QPaintEngine {
  public:
    ShapeEngine() : QPaintEngine(AllFeatures) {}

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {}
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {
        qFatal("an icon holds a picture");
    }
    Type type() const override { return User; }

    void drawPath(const QPainterPath& path) override {
        if (state->brush().style() != Qt::NoBrush) {
            add(state->brush().color(), path.simplified());
        }
        if (const QPen pen = state->pen(); pen.style() != Qt::NoPen) {
            add(pen.color(), QPainterPathStroker(pen).createStroke(path));
        }
    }

    std::vector<Shape> shapes;

  private:
    void add(const QColor& colour, const QPainterPath& path) {
        shapes.push_back({colour, state->transform().map(path)});
    }
};

class ShapeDevice final : public QPaintDevice {
  public:
    QPaintEngine* paintEngine() const override { return &m_engine; }
    const std::vector<Shape>& shapes() const { return m_engine.shapes; }

  protected:
    int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
            case PdmWidth:
            case PdmHeight:
                return iconSide;
            case PdmDpiX:
            case PdmDpiY:
            case PdmPhysicalDpiX:
            case PdmPhysicalDpiY:
                return 96;
            default:
                return QPaintDevice::metric(metric);
        }
    }

  private:
    mutable ShapeEngine m_engine;
};

// Empty where the drawing cannot be read.
std::vector<Shape> shapesOf(const QString& path) {
    QSvgRenderer drawing(path);
    ShapeDevice device;
    if (drawing.isValid()) {
        QPainter painter(&device);
        drawing.render(&painter, QRectF(0, 0, iconSide, iconSide));
    }
    return device.shapes();
}

void writePoints(QTextStream& out, const QPainterPath& path) {
    static constexpr const char* steps[] = {"Move", "Line", "Curve", "CurveData"};
    for (int i = 0; i < path.elementCount(); ++i) {
        const QPainterPath::Element at = path.elementAt(i);
        out << "            {Step::" << steps[at.type] << ", " << QString::number(at.x, 'f', 3)
            << "F, " << QString::number(at.y, 'f', 3) << "F},\n";
    }
}

void writeDrawing(QTextStream& out, const QString& name, const std::vector<Shape>& shapes) {
    out << "    if (name == \"" << name << "\") {\n";
    QString list;
    int number = 0;
    for (const Shape& shape : shapes) {
        out << "        static constexpr IconShape::Point path" << number << "[] = {\n";
        writePoints(out, shape.path);
        out << "        };\n";
        list += QStringLiteral("{0x%1, path%2}, ")
                    .arg(static_cast<uint>(shape.colour.rgba()), 8, 16, QLatin1Char('0'))
                    .arg(number++);
    }
    out << "        static constexpr IconShape shapes[] = {" << list << "};\n"
        << "        return shapes;\n    }\n";
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    QFile file(arguments.value(1));
    if (!file.open(QIODevice::WriteOnly | QIODevice::Text)) {
        qCritical("cannot write %s", qPrintable(file.fileName()));
        return 1;
    }
    QTextStream out(&file);
    out << "// Made by record_icons.cpp.\n#include \"app/window/icon_shapes.h\"\n\n"
           "namespace matwright::app {\n\n"
           "std::span<const IconShape> iconShapes(std::string_view name) {\n"
           "    using Step = IconShape::Step;\n";
    for (const QString& path : arguments.mid(2)) {
        const std::vector<Shape> shapes = shapesOf(path);
        if (shapes.empty()) {
            qCritical("cannot read %s", qPrintable(path));
            file.remove();
            return 1;
        }
        writeDrawing(out, QFileInfo(path).completeBaseName(), shapes);
    }
    out << "    return {};\n}\n\n}  // namespace matwright::app\n";
    return 0;
}
