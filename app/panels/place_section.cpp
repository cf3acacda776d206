// SPDX-License-Identifier: MIT
#include "app/panels/place_section.h"

#include <QCheckBox>
#include <QLineEdit>
#include <algorithm>

#include "app/panels/angle_field.h"
#include "app/panels/tint.h"

namespace matwright::app {

PlaceSection::PlaceSection(Session& session, SettingsStore& settings, QWidget* parent)
    : PieceSection(tr("Place and size"), session, settings, parent),
      m_page(new TintedLabel(Tint::Quiet, {}, this)) {
    addWide(m_page);
    const Length limit = Length::coordinateLimit();
    const Set setLeft = [this](Piece& p, Length to) { p.place.x = to + pageOfPiece(p).left(); };
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
    m_rotation->setToolTip(tr("Degrees about the middle of the trim: 7.5, or 6 left."));
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

Rect PlaceSection::pageOfPiece(const Piece& piece) const {
    const std::vector<Rect> all = pages(session().sketch().page);
    return all[pageOf(all, trimBounds(piece).left())];
}

// Distances of a double page count from the page the piece lies on, as on the template.
void PlaceSection::showPage(Pieces pieces) {
    const bool isDouble = session().sketch().page.doublePage;
    const auto left = commonOf(pieces, [this](const Piece& p) { return pageOfPiece(p).left(); });
    const QString page = !left            ? tr("On both pages")
                         : left->isZero() ? tr("On the left page")
                                          : tr("On the right page");
    m_page->setText(page);
    setRowShown(m_page, isDouble);
    const QString name = tr("From left edge");
    m_left->lineEdit()->setAccessibleName(isDouble ? name + QStringLiteral(", ") + page.toLower()
                                                   : name);
}

void PlaceSection::showPieces(Pieces pieces) {
    showPage(pieces);
    showLength(m_left, pieces,
               [this](const Piece& p) { return p.place.x - pageOfPiece(p).left(); });
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
