// SPDX-License-Identifier: MIT
#include "app/window/tool_actions.h"

#include <QToolButton>

#include "app/window/new_action.h"

namespace matwright::app {

PolygonShape sixCorners() {
    // In a box of 4 x 2 in; drawing it scales the corners to the box drawn.
    const auto corner = [](int x, int y) { return Point{Length::inches(x), Length::inches(y)}; };
    return {{corner(1, 0), corner(3, 0), corner(4, 1), corner(3, 2), corner(1, 2), corner(0, 1)}};
}

ToolActions::ToolActions(Canvas& canvas)
    : QObject(&canvas),
      m_canvas(canvas),
      m_tools(this),
      m_shapes(this),
      m_shapeMenu(tr("Embellishment s&hape")) {
    using Tool = Canvas::Tool;
    const auto key = [](Qt::Key digit) { return QKeySequence(Qt::ALT | digit); };
    addTool(Tool::Select, {tr("&Select"), tr("Select, move, resize and turn pieces"),
                           key(Qt::Key_1), QStringLiteral("select"), tr("Select")});
    addTool(Tool::Photo, {tr("&Photo slot"), tr("Draw a photo slot on the page"), key(Qt::Key_2),
                          QStringLiteral("photo"), tr("Photo slot")});
    addTool(Tool::Strip, {tr("S&trip"), tr("Draw a strip of paper on the page"), key(Qt::Key_3),
                          QStringLiteral("strip"), tr("Strip")});
    addTool(Tool::Block, {tr("&Block"), tr("Draw a block of paper on the page"), key(Qt::Key_4),
                          QStringLiteral("block"), tr("Block")});
    addTool(Tool::Title, {tr("Tit&le"), tr("Draw a place for the title"), key(Qt::Key_5),
                          QStringLiteral("title"), tr("Title")});
    addTool(Tool::Journaling, {tr("&Journaling"), tr("Draw a place for written text"),
                               key(Qt::Key_6), QStringLiteral("journaling"), tr("Journaling")});
    addTool(Tool::Embellishment,
            {tr("&Embellishment"), tr("Draw a place for an ornament"), key(Qt::Key_7),
             QStringLiteral("embellishment"), tr("Embellishment")});
    addShape(tr("&Rectangle"), RectangleShape{});
    addShape(tr("R&ounded rectangle"), RoundedRectangleShape{Length::inches(0, 1, 4)});
    addShape(tr("O&val"), OvalShape{});
    addShape(tr("&Six corners"), sixCorners());
    m_shapes.actions().constFirst()->setChecked(true);
    connect(&canvas, &Canvas::toolChanged, this, &ToolActions::showTool);
    showTool(canvas.tool());
}

void ToolActions::addTo(QMenu& menu) {
    menu.addActions(m_tools.actions());
    menu.addSeparator();
    menu.addMenu(&m_shapeMenu);
}

void ToolActions::addTo(QToolBar& bar) {
    for (const Entry& entry : m_entries) {
        bar.addAction(entry.action);
    }
    auto* button = qobject_cast<QToolButton*>(bar.widgetForAction(m_entries.back().action));
    button->setMenu(&m_shapeMenu);
    button->setPopupMode(QToolButton::MenuButtonPopup);
}

QAction* ToolActions::addTool(Canvas::Tool tool, const ActionLook& look) {
    QAction* action = newAction(this, look, [this, tool] { useTool(tool); });
    action->setCheckable(true);
    m_tools.addAction(action);
    m_entries.push_back({tool, action});
    return action;
}

void ToolActions::addShape(const QString& text, const Shape& shape) {
    QAction* action =
        newAction(this, {text, tr("Draw embellishments in this shape"), {}, {}, {}}, [this, shape] {
            m_shape = shape;
            useTool(Canvas::Tool::Embellishment);
        });
    action->setCheckable(true);
    m_shapes.addAction(action);
    m_shapeMenu.addAction(action);
}

void ToolActions::useTool(Canvas::Tool tool) {
    m_canvas.setDrawShape(tool == Canvas::Tool::Embellishment ? m_shape : RectangleShape{});
    m_canvas.setTool(tool);
    m_canvas.setFocus();
}

void ToolActions::showTool(Canvas::Tool tool) {
    for (const Entry& entry : m_entries) {
        entry.action->setChecked(entry.tool == tool);
    }
}

}  // namespace matwright::app
