// SPDX-License-Identifier: MIT
#include "app/window/icons.h"

#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>
#include <QPixmapCache>

#include "app/window/icon_shapes.h"

namespace matwright::app {
namespace {

using Drawing = std::span<const IconShape>;

Drawing drawingOf(const QString& name) {
    return iconShapes(name.toStdString());
}

QPainterPath pathOf(const IconShape& shape) {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    const auto& points = shape.path;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const QPointF at(points[i].x, points[i].y);
        switch (points[i].step) {
            case IconShape::Step::Move:
                path.moveTo(at);
                break;
            case IconShape::Step::Line:
                path.lineTo(at);
                break;
            case IconShape::Step::Curve:
                path.cubicTo(at, {points[i + 1].x, points[i + 1].y},
                             {points[i + 2].x, points[i + 2].y});
                break;
            case IconShape::Step::CurveData:  // belongs to the curve before
                break;
        }
    }
    return path;
}

// In `colour`; in the drawing's own colours where that is invalid.
QPixmap painted(Drawing drawing, const QSize& size, const QColor& colour = {}) {
    QPixmap pixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(size.width() / double(iconSide), size.height() / double(iconSide));
    for (const IconShape& shape : drawing) {
        painter.fillPath(pathOf(shape), colour.isValid() ? colour : QColor::fromRgba(shape.argb));
    }
    return pixmap;
}

class LineIcon final : public QIconEngine {
  public:
    LineIcon(QString name, Drawing drawing, QPalette::ColorRole role)
        : m_name(std::move(name)), m_drawing(drawing), m_role(role) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode,
               QIcon::State state) override {
        const double ratio = painter->device()->devicePixelRatio();
        painter->drawPixmap(rect, pixmap(rect.size() * ratio, mode, state));
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State) override {
        const QString key = QStringLiteral("line-icon/%1/%2x%3/%4")
                                .arg(m_name)
                                .arg(size.width())
                                .arg(size.height())
                                .arg(colour(mode).name());
        QPixmap pixmap;
        if (!QPixmapCache::find(key, &pixmap)) {
            pixmap = painted(m_drawing, size, colour(mode));
            QPixmapCache::insert(key, pixmap);
        }
        return pixmap;
    }

    QIconEngine* clone() const override { return new LineIcon(*this); }
    bool isNull() override { return false; }

  private:
    QColor colour(QIcon::Mode mode) const {
        const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
        const auto role = mode == QIcon::Selected ? QPalette::HighlightedText : m_role;
        return QGuiApplication::palette().color(group, role);
    }

    QString m_name;
    Drawing m_drawing;
    QPalette::ColorRole m_role;
};

}  // namespace

QIcon lineIcon(const QString& name) {
    return lineIcon(name, QPalette::ButtonText);
}

QIcon lineIcon(const QString& name, QPalette::ColorRole role) {
    const Drawing drawing = drawingOf(name);
    return drawing.empty() ? QIcon() : QIcon(new LineIcon(name, drawing, role));
}

QIcon programIcon() {
    return painted(drawingOf(QStringLiteral("matwright")), {64, 64});
}

}  // namespace matwright::app
