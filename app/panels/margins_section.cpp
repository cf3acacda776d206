// SPDX-License-Identifier: MIT
#include "app/panels/margins_section.h"

#include <QCheckBox>

namespace matwright::app {

MarginsSection::MarginsSection(QWidget* parent) : Section(tr("Margins and gutter"), parent) {
    const QString label = tr("Change margins");
    m_all = addField(tr("&Margin"), label,
                     [](PageSetup& p, Length to) { p.margins = Margins::all(to); });
    m_left = addField(tr("&Left"), label, [](PageSetup& p, Length to) { p.margins.left = to; });
    m_top = addField(tr("&Top"), label, [](PageSetup& p, Length to) { p.margins.top = to; });
    m_right = addField(tr("&Right"), label, [](PageSetup& p, Length to) { p.margins.right = to; });
    m_bottom =
        addField(tr("&Bottom"), label, [](PageSetup& p, Length to) { p.margins.bottom = to; });
    m_sameBox = new QCheckBox(tr("&Same on all sides"), this);
    settle(m_sameBox);
    addBelow(m_sameBox);
    m_gutter = addField(tr("G&utter"), tr("Change gutter"),
                        [](PageSetup& p, Length to) { p.gutter = to; });
    m_gutter->setRange(Length(), Length::inches(10));
    m_gutter->setToolTip(tr("The gap between neighbours that pieces snap to."));
    connect(m_sameBox, &QCheckBox::clicked, this, &MarginsSection::sameClicked);
    showPage({});
}

LengthField* MarginsSection::addField(const QString& label, const QString& undoLabel,
                                      const Set& set) {
    auto* field = new LengthField({}, this);
    field->setRange(Length(), Length::inches(100));
    addRow(label, field);
    connect(field, &LengthField::valueChanged, this,
            [this, field, undoLabel, set](Length to, int gesture) {
                PageSetup after = m_page;
                set(after, to);
                emit pageChanged(undoLabel, gesture, after, field);
            });
    return field;
}

void MarginsSection::showPage(const PageSetup& page) {
    m_page = page;
    const Margins& m = page.margins;
    const bool equal = m == Margins::all(m.left);
    m_same = m_same && equal;
    m_sameBox->setChecked(m_same);
    m_all->setValue(m.left);
    m_left->setValue(m.left);
    m_top->setValue(m.top);
    m_right->setValue(m.right);
    m_bottom->setValue(m.bottom);
    m_gutter->setValue(page.gutter);
    showRows();
}

// Ticking it brings all sides to the left one's figure; unticking only offers the four fields.
void MarginsSection::sameClicked(bool on) {
    m_same = on;
    showRows();
    PageSetup after = m_page;
    after.margins = Margins::all(m_page.margins.left);
    if (on && after != m_page) {
        emit pageChanged(tr("Change margins"), 0, after, nullptr);
    }
}

void MarginsSection::showRows() {
    setRowShown(m_all, m_same);
    for (LengthField* side : {m_left, m_top, m_right, m_bottom}) {
        setRowShown(side, !m_same);
    }
}

}  // namespace matwright::app
