// SPDX-License-Identifier: MIT
#include "app/settings/theme_icons.h"

#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPalette>
#include <QPixmap>

namespace matwright::app {
namespace {

// Polylines in a box of 16 x 16.
QList<QPolygonF> linesOf(QStyle::StandardPixmap which) {
    switch (which) {
        case QStyle::SP_TitleBarCloseButton:
            return {{{4, 4}, {12, 12}}, {{12, 4}, {4, 12}}};
        case QStyle::SP_TitleBarNormalButton:
            return {{{4, 6}, {10, 6}, {10, 12}, {4, 12}, {4, 6}}, {{7, 4}, {12, 4}, {12, 9}}};
        case QStyle::SP_ToolBarHorizontalExtensionButton:
            return {{{3, 4}, {7, 8}, {3, 12}}, {{8, 4}, {12, 8}, {8, 12}}};
        case QStyle::SP_ToolBarVerticalExtensionButton:
            return {{{4, 3}, {8, 7}, {12, 3}}, {{4, 8}, {8, 12}, {12, 8}}};
        default:
            return {};
    }
}

class ThemeIcon final : public QIconEngine {
  public:
    explicit ThemeIcon(QList<QPolygonF> lines) : m_lines(std::move(lines)) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
        const QColor colour = QGuiApplication::palette().color(group, QPalette::WindowText);
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->translate(rect.topLeft());
        painter->scale(rect.width() / 16.0, rect.height() / 16.0);
        painter->setPen(QPen(colour, 1.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        for (const QPolygonF& line : m_lines) {
            painter->drawPolyline(line);
        }
        painter->restore();
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap pixmap(size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        paint(&painter, pixmap.rect(), mode, state);
        return pixmap;
    }

    QIconEngine* clone() const override { return new ThemeIcon(*this); }

  private:
    QList<QPolygonF> m_lines;
};

}  // namespace

QIcon themeIcon(QStyle::StandardPixmap which) {
    QList<QPolygonF> lines = linesOf(which);
    return lines.isEmpty() ? QIcon() : QIcon(new ThemeIcon(std::move(lines)));
}

}  // namespace matwright::app
