// SPDX-License-Identifier: MIT
#include "app/window/icons.h"

#include <QFile>
#include <QGuiApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPixmap>
#include <QPixmapCache>
#include <QSvgRenderer>

static void initialiseIconResources() {
    Q_INIT_RESOURCE(icons);
}

namespace matwright::app {
namespace {

QString resourceOf(const QString& name) {
    initialiseIconResources();
    return QStringLiteral(":/icons/%1.svg").arg(name);
}

class LineIcon final : public QIconEngine {
  public:
    LineIcon(QString name, QByteArray drawing, QPalette::ColorRole role)
        : m_name(std::move(name)), m_drawing(std::move(drawing)), m_role(role) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        QByteArray drawing = m_drawing;
        drawing.replace("currentColor", colour(mode).name().toLatin1());
        QSvgRenderer(drawing).render(painter, rect);
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        const QString key = QStringLiteral("line-icon/%1/%2x%3/%4")
                                .arg(m_name)
                                .arg(size.width())
                                .arg(size.height())
                                .arg(colour(mode).name());
        QPixmap pixmap;
        if (!QPixmapCache::find(key, &pixmap)) {
            pixmap = QPixmap(size);
            pixmap.fill(Qt::transparent);
            QPainter painter(&pixmap);
            paint(&painter, pixmap.rect(), mode, state);
            painter.end();
            QPixmapCache::insert(key, pixmap);
        }
        return pixmap;
    }

    QIconEngine* clone() const override { return new LineIcon(*this); }
    bool isNull() override { return m_drawing.isEmpty(); }

  private:
    QColor colour(QIcon::Mode mode) const {
        const auto group = mode == QIcon::Disabled ? QPalette::Disabled : QPalette::Active;
        const auto role = mode == QIcon::Selected ? QPalette::HighlightedText : m_role;
        return QGuiApplication::palette().color(group, role);
    }

    QString m_name;
    QByteArray m_drawing;
    QPalette::ColorRole m_role;
};

}  // namespace

QIcon lineIcon(const QString& name) {
    return lineIcon(name, QPalette::ButtonText);
}

QIcon lineIcon(const QString& name, QPalette::ColorRole role) {
    QFile file(resourceOf(name));
    return file.open(QIODevice::ReadOnly) ? QIcon(new LineIcon(name, file.readAll(), role))
                                          : QIcon();
}

QIcon programIcon() {
    QPixmap pixmap(64, 64);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    QSvgRenderer(resourceOf(QStringLiteral("matwright"))).render(&painter);
    return pixmap;
}

}  // namespace matwright::app
