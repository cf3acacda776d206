// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QObject>
#include <QToolBar>
#include <vector>

#include "app/canvas/canvas.h"

namespace matwright::app {

// The Draw menu: what a drag on the page does, and in which shape an embellishment is drawn.
class ToolActions final : public QObject {
    Q_OBJECT

  public:
    explicit ToolActions(Canvas& canvas);

    void addTo(QMenu& menu);
    void addTo(QToolBar& bar);

  private:
    QAction* addTool(Canvas::Tool tool, const struct ActionLook& look);
    void addShape(const QString& text, const Shape& shape);
    void useTool(Canvas::Tool tool);
    void showTool(Canvas::Tool tool);

    struct Entry {
        Canvas::Tool tool;
        QAction* action;
    };
    Canvas& m_canvas;
    QActionGroup m_tools;
    QActionGroup m_shapes;
    QMenu m_shapeMenu;
    std::vector<Entry> m_entries;
    Shape m_shape;  // of the next embellishment
};

// A regular six-sided outline, pointing left and right, that fills a box.
PolygonShape sixCorners();

}  // namespace matwright::app
