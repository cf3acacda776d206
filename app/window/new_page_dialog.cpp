// SPDX-License-Identifier: MIT
#include "app/window/new_page_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <algorithm>

#include "app/files/paths.h"
#include "core/measure/catalogue.h"
#include "core/sketch/soundness.h"

namespace matwright::app {

PageSetup pageOf(Size size, bool doublePage) {
    PageSetup page;
    page.size = size;
    page.doublePage = doublePage;
    const Length shorter = std::min(size.width, size.height);
    page.margins = Margins::all(std::min(
        page.margins.left, shorter.scaledRounded(1, 8).roundedTo(Length::inches(0, 1, 16))));
    return page;
}

NewPageDialog::NewPageDialog(Scale scale, QWidget* parent)
    : QDialog(parent),
      m_scale(scale),
      m_sizes(new QComboBox),
      m_width(new LengthField(tr("Page width"))),
      m_height(new LengthField(tr("Page height"))),
      m_double(new QCheckBox(tr("&Double page: two facing pages planned as one"))),
      m_otherUnits(new QCheckBox),
      m_fault(new QLabel) {
    setWindowTitle(tr("New sketch"));
    for (const NamedSize& named : pageSizes()) {
        m_sizes->addItem(QString::fromUtf8(named.name));
    }
    m_sizes->addItem(tr("Custom size"));
    m_sizes->setAccessibleName(tr("Page size"));
    for (LengthField* field : {m_width, m_height}) {
        field->setScale(scale);
        field->setRange(Length::inches(1), Length::inches(100));
        connect(field, &LengthField::valueChanged, this, &NewPageDialog::showFault);
    }
    m_fault->setWordWrap(true);
    QSizePolicy kept = m_otherUnits->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    m_otherUnits->setSizePolicy(kept);
    m_otherUnits->setText(unitOf(scale) == Unit::Inch ? tr("Show figures in &millimetres")
                                                      : tr("Show figures in &inches"));
    connect(m_otherUnits, &QCheckBox::toggled, this, &NewPageDialog::showScale);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_create = buttons->addButton(tr("&Create"), QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_sizes, &QComboBox::currentIndexChanged, this, &NewPageDialog::showSize);
    connect(m_double, &QCheckBox::toggled, this, &NewPageDialog::showFault);

    auto* form = new QFormLayout(this);
    form->addRow(tr("Page &size"), m_sizes);
    form->addRow(tr("&Width"), m_width);
    form->addRow(tr("&Height"), m_height);
    form->addRow(m_double);
    form->addRow(m_otherUnits);
    form->addRow(m_fault);
    form->addRow(buttons);
    // Only inside the dialog: a button outside of one cannot become its default.
    m_create->setDefault(true);
    showSize();
}

Result<PageSetup> NewPageDialog::page() const {
    PageSetup page = pageOf({m_width->value(), m_height->value()}, m_double->isChecked());
    if (unitOf(scale()) == Unit::Millimetre) {
        const Length step = Length::millimetres(1);
        page.margins = Margins::all(page.margins.left.roundedTo(step));
        page.gutter = page.gutter.roundedTo(step);
    }
    if (auto fault = findFault(page)) {
        return std::unexpected(std::move(*fault));
    }
    return page;
}

Scale NewPageDialog::scale() const {
    if (!m_otherUnits->isChecked()) {
        return m_scale;
    }
    return unitOf(m_scale) == Unit::Inch ? Scale::WholeMillimetre : Scale::SixteenthInch;
}

// A page in whole millimetres is almost always measured so; people who count in millimetres use
// inch pages all the time, so to them inches are only offered.
void NewPageDialog::offerUnits() {
    const Size size = {m_width->value(), m_height->value()};
    const auto isOn = [size](Length step) {
        return size.width.isMultipleOf(step) && size.height.isMultipleOf(step);
    };
    const bool isMetric = isOn(Length::millimetres(1)) && !isOn(Length::inches(0, 1, 32));
    const bool isOther = !isCustom() && isMetric == (unitOf(m_scale) == Unit::Inch);
    m_otherUnits->setVisible(isOther);
    m_otherUnits->setChecked(isOther && isMetric);
}

void NewPageDialog::showScale() {
    for (LengthField* field : {m_width, m_height}) {
        field->setScale(scale());
    }
    showFault();
}

bool NewPageDialog::isCustom() const {
    return m_sizes->currentIndex() == m_sizes->count() - 1;
}

void NewPageDialog::showSize() {
    m_width->setEnabled(isCustom());
    m_height->setEnabled(isCustom());
    if (!isCustom()) {
        const Size size = pageSizes()[static_cast<std::size_t>(m_sizes->currentIndex())].size;
        m_width->setValue(size.width);
        m_height->setValue(size.height);
    }
    offerUnits();
    showFault();
}

void NewPageDialog::showFault() {
    const auto chosen = page();
    m_fault->setText(chosen ? QString() : shownText(chosen.error()));
    m_create->setEnabled(chosen.has_value());
}

}  // namespace matwright::app
