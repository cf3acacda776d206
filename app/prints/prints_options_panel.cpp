// SPDX-License-Identifier: MIT
#include "app/prints/prints_options_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "app/panels/length_field.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"

namespace matwright::app {

namespace {

constexpr std::array densities{300, 360, 600};
constexpr Length mostBleed = Length::inches(0, 1, 2);
constexpr Length mostBorder = Length::inches(2);

template <typename Changed>
QCheckBox* addSwitch(Section& section, const QString& text, const QString& hint, bool on,
                     QObject* owner, Changed changed) {
    auto* box = new QCheckBox(text);
    box->setToolTip(hint);
    box->setChecked(on);
    settle(box);
    section.addWide(box);
    QObject::connect(box, &QCheckBox::toggled, owner, changed);
    return box;
}

}  // namespace

PrintsOptionsPanel::PrintsOptionsPanel(const PrintsChoice& choice, Scale scale, QWidget* parent)
    : QWidget(parent),
      m_choice(choice),
      m_quality(new QSpinBox),
      m_border(new LengthField(tr("White border"))),
      m_notes(new TintedLabel(Tint::Quiet)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* file = new Section(tr("Files"));
    auto* print = new Section(tr("Prints"));
    addFile(*file);
    addPrint(*print, scale);
    column->addWidget(file);
    column->addWidget(print);
    m_notes->setContentsMargins(0, 4, 0, 0);
    m_notes->hide();
    column->addWidget(m_notes);
    column->addStretch(1);
    showEnabled();
}

void PrintsOptionsPanel::addFile(Section& section) {
    auto* format = new QComboBox;
    format->addItems({tr("JPEG, for any printer"), tr("PNG, without loss"),
                      tr("TIFF, without loss"), tr("PDF of exact size")});
    format->setCurrentIndex(static_cast<int>(m_choice.options.format));
    format->setMinimumContentsLength(12);
    section.addRow(tr("&Kind"), format);
    m_quality->setRange(1, 100);
    m_quality->setValue(m_choice.options.quality);
    m_quality->setToolTip(tr("95 cannot be told from the original; below 80 it begins to show."));
    section.addRow(tr("&Quality"), m_quality);
    auto* density = new QComboBox;
    for (const int ppi : densities) {
        density->addItem(tr("%1 ppi").arg(ppi), ppi);
    }
    density->setCurrentIndex(std::max(0, density->findData(m_choice.options.ppi)));
    density->setToolTip(
        tr("Pixels an inch of the file. 300 is what photo printers and shops ask "
           "for."));
    section.addRow(tr("&Fineness"), density);
    connect(format, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_choice.options.format = static_cast<PrintFormat>(index);
        showEnabled();
        emit changed();
    });
    connect(m_quality, &QSpinBox::valueChanged, this, [this](int quality) {
        m_choice.options.quality = quality;
        emit changed();
    });
    connect(density, &QComboBox::currentIndexChanged, this, [this, density] {
        m_choice.options.ppi = density->currentData().toInt();
        emit changed();
    });
    addSwitch(section, tr("Keep the p&lace and the camera's numbers"),
              tr("Where a photo was taken, and serial numbers, are left out of the files unless "
                 "you want them. The date always stays."),
              m_choice.options.keepPlace, this, [this](bool on) {
                  m_choice.options.keepPlace = on;
                  emit changed();
              });
}

void PrintsOptionsPanel::addPrint(Section& section, Scale scale) {
    addSwitch(section, tr("&Two small prints on one sheet"),
              tr("Two 3 × 4 prints fill one 4 × 6 sheet exactly: one cut between them."),
              m_choice.ganged, this, [this](bool on) {
                  m_choice.ganged = on;
                  emit changed();
              });
    auto* bleed = new LengthField(tr("Bleed"));
    bleed->setScale(scale);
    bleed->setRange({}, mostBleed);
    bleed->setValue(m_choice.options.bleed);
    bleed->setToolTip(
        tr("Picture beyond the trim on every side, so that a cut that is a little "
           "off leaves no white edge."));
    section.addRow(tr("&Bleed"), bleed);
    connect(bleed, &LengthField::valueChanged, this, [this](Length length) {
        m_choice.options.bleed = length;
        emit changed();
    });
    addSwitch(section, tr("Cut &marks"),
              tr("Fine lines outside the trim, where the print has room for them"),
              m_choice.options.cutMarks, this, [this](bool on) {
                  m_choice.options.cutMarks = on;
                  emit changed();
              });
    m_sameBorder = addSwitch(section, tr("The same &white border on all"),
                             tr("Otherwise each photo has the border it was cropped with."),
                             !m_choice.ownBorders, this, [this](bool on) {
                                 m_choice.ownBorders = !on;
                                 showEnabled();
                                 emit changed();
                             });
    m_border->setScale(scale);
    m_border->setRange({}, mostBorder);
    m_border->setValue(m_choice.border);
    section.addRow(tr("B&order"), m_border);
    connect(m_border, &LengthField::valueChanged, this, [this](Length length) {
        m_choice.border = length;
        emit changed();
    });
}

void PrintsOptionsPanel::showNotes(const QStringList& sentences) {
    m_notes->setText(sentences.join(QStringLiteral("\n\n")));
    m_notes->setVisible(!sentences.isEmpty());
}

QString PrintsOptionsPanel::notes() const {
    return m_notes->text();
}

void PrintsOptionsPanel::showEnabled() {
    const PrintFormat format = m_choice.options.format;
    m_quality->setEnabled(format == PrintFormat::Jpeg || format == PrintFormat::Pdf);
    m_border->setEnabled(!m_choice.ownBorders);
}

}  // namespace matwright::app
