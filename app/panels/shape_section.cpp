// SPDX-License-Identifier: MIT
#include "app/panels/shape_section.h"

#include <QComboBox>
#include <QSignalBlocker>
#include <algorithm>

#include "app/panels/corner_table.h"

namespace matwright::app {

namespace {

const RoundedRectangleShape* roundedOf(const Piece& piece) {
    return std::get_if<RoundedRectangleShape>(&piece.shape);
}

}  // namespace

ShapeSection::ShapeSection(Session& session, SettingsStore& settings, QWidget* parent)
    : PieceSection(tr("Shape"), session, settings, parent),
      m_shape(new QComboBox(this)),
      m_radius(newLength(Length::fromTicks(1), largestSide)),
      m_corners(new CornerTable(this)) {
    // In the order of ShapeKind.
    m_shape->addItems(
        {tr("Rectangle"), tr("Rounded corners"), tr("Circle or oval"), tr("Polygon")});
    m_shape->setPlaceholderText(tr("differ"));
    addRow(tr("Shape"), m_shape);
    addRow(tr("Corner radius"), m_radius);
    addWide(m_corners);
    connect(m_shape, &QComboBox::activated, this, &ShapeSection::shapeChosen);
    connect(m_radius, &LengthField::valueChanged, this, [this](Length to, int gesture) {
        const auto set = [to](Piece& p) {
            if (roundedOf(p)) {
                p.shape = RoundedRectangleShape{to};
            }
        };
        change(tr("Change corner radius"), gesture, set, m_radius);
    });
    connect(m_corners, &CornerTable::cornersTyped, this, &ShapeSection::setCorners);
    connect(m_corners, &CornerTable::textRefused, this, &ShapeSection::complain);
}

void ShapeSection::shapeChosen(int index) {
    const auto kind = static_cast<ShapeKind>(index);
    change(tr("Change shape"), 0, [kind](Piece& p) {
        if (shapeKindOf(p.shape) != kind && !p.locked) {
            p.shape = beginningShape(kind, p.size);
        }
    });
}

void ShapeSection::setCorners(const std::vector<Point>& corners) {
    const auto set = [&](Piece& p) {
        if (std::holds_alternative<PolygonShape>(p.shape) && !p.locked) {
            p.shape = PolygonShape{corners};
        }
    };
    change(tr("Change corners"), 0, set);
}

void ShapeSection::showPieces(Pieces pieces) {
    const auto kind = commonOf(pieces, [](const Piece& p) { return shapeKindOf(p.shape); });
    const QSignalBlocker quiet(m_shape);
    m_shape->setCurrentIndex(kind ? static_cast<int>(*kind) : -1);
    showRadius(pieces, kind == ShapeKind::Rounded);
    showCorners(pieces, kind == ShapeKind::Polygon && pieces.size() == 1);
    const bool free = !std::ranges::all_of(pieces, [](const Piece* p) { return p->locked; });
    for (QWidget* widget : std::initializer_list<QWidget*>{m_shape, m_radius, m_corners}) {
        widget->setEnabled(free);
    }
}

void ShapeSection::showRadius(Pieces pieces, bool shown) {
    setRowShown(m_radius, shown);
    if (shown) {
        showLength(m_radius, pieces, [](const Piece& p) { return roundedOf(p)->radius; });
    }
}

void ShapeSection::showCorners(Pieces pieces, bool shown) {
    setRowShown(m_corners, shown);
    if (shown) {
        m_corners->showCorners(std::get<PolygonShape>(pieces.front()->shape).corners, scale());
    }
}

}  // namespace matwright::app
