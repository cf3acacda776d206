// SPDX-License-Identifier: MIT
#include "app/panels/place_section.h"

#include <QCheckBox>
#include <algorithm>

#include "app/panels/angle_field.h"

namespace matwright::app {

PlaceSection::PlaceSection(Session& session, SettingsStore& settings, QWidget* parent)
    : PieceSection(tr("Place and size"), session, settings, parent) {
    const Length limit = Length::coordinateLimit();
    const Set setLeft = [](Piece& p, Length to) { p.place.x = to; };
    const Set setTop = [](Piece& p, Length to) { p.place.y = to; };
    const Set setWidth = [this](Piece& p, Length to) {
        p = withWidth(p, to, m_keepRatio->isChecked());
    };
    const Set setHeight = [this](Piece& p, Length to) {
        p = withHeight(p, to, m_keepRatio->isChecked());
    };
    m_left = addLengthRow(tr("From &left edge"), tr("Move"), -limit, limit, setLeft);
    m_top = addLengthRow(tr("From top ed&ge"), tr("Move"), -limit, limit, setTop);
    m_width = addLengthRow(tr("&Width"), tr("Change width"), smallestSide, largestSide, setWidth);
    m_height =
        addLengthRow(tr("Heigh&t"), tr("Change height"), smallestSide, largestSide, setHeight);
    // Tab goes through controls in the order they are made.
    m_keepRatio = new QCheckBox(tr("&Keep ratio"), this);
    m_rotation = new AngleField({}, this);
    settle(m_keepRatio);
    addBelow(m_keepRatio);
    m_keepRatio->setToolTip(tr("Width and height change together."));
    addRow(tr("&Rotation"), m_rotation);
    m_rotation->setToolTip(tr("Degrees, clockwise, about the middle of the trim."));
    connect(m_rotation, &AngleField::valueChanged, this, [this](Angle to, int gesture) {
        const auto turn = [to](Piece& p) { p.rotation = p.locked ? p.rotation : to; };
        change(tr("Turn"), gesture, turn, m_rotation);
    });
}

LengthField* PlaceSection::addLengthRow(const QString& label, const QString& undoLabel, Length low,
                                        Length high, const Set& set) {
    LengthField* field = newLength(low, high);
    addRow(label, field);
    connect(field, &LengthField::valueChanged, this,
            [this, field, undoLabel, set](Length to, int gesture) {
                const auto unlessLocked = [&](Piece& p) {
                    if (!p.locked) {
                        set(p, to);
                    }
                };
                change(undoLabel, gesture, unlessLocked, field);
            });
    return field;
}

void PlaceSection::showPieces(Pieces pieces) {
    showLength(m_left, pieces, [](const Piece& p) { return p.place.x; });
    showLength(m_top, pieces, [](const Piece& p) { return p.place.y; });
    showLength(m_width, pieces, [](const Piece& p) { return p.size.width; });
    showLength(m_height, pieces, [](const Piece& p) { return p.size.height; });
    if (const auto turn = commonOf(pieces, [](const Piece& p) { return p.rotation; })) {
        m_rotation->setValue(*turn);
    } else {
        m_rotation->setMixed();
    }
    const bool movable = !std::ranges::all_of(pieces, [](const Piece* p) { return p->locked; });
    for (QWidget* field : std::initializer_list<QWidget*>{m_left, m_top, m_width, m_height,
                                                          m_keepRatio, m_rotation}) {
        field->setEnabled(movable);
    }
}

}  // namespace matwright::app
