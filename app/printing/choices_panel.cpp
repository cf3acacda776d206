// SPDX-License-Identifier: MIT
#include "app/printing/choices_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QRadioButton>
#include <QVBoxLayout>

#include "app/panels/length_field.h"

namespace matwright::app {

namespace {

constexpr int controlHeight = 28;

struct ScaleChoice {
    Scale scale;
    const char* text;
};
constexpr ScaleChoice scales[] = {
    {Scale::EighthInch, QT_TRANSLATE_NOOP("matwright::app::ChoicesPanel", "Inches, to 1/8")},
    {Scale::SixteenthInch, QT_TRANSLATE_NOOP("matwright::app::ChoicesPanel", "Inches, to 1/16")},
    {Scale::ThirtySecondInch, QT_TRANSLATE_NOOP("matwright::app::ChoicesPanel", "Inches, to 1/32")},
    {Scale::WholeMillimetre,
     QT_TRANSLATE_NOOP("matwright::app::ChoicesPanel", "Millimetres, to 1")},
    {Scale::HalfMillimetre,
     QT_TRANSLATE_NOOP("matwright::app::ChoicesPanel", "Millimetres, to 1/2")},
};

}  // namespace

ChoicesPanel::ChoicesPanel(TemplateChoice choice, QWidget* parent)
    : QWidget(parent),
      m_choice(std::move(choice)),
      m_inParts(new QRadioButton(tr("In par&ts, on sheets for a home printer"))),
      m_whole(new QRadioButton(tr("The &whole page in one piece"))),
      m_sheet(new QComboBox),
      m_margin(new LengthField(tr("Printer margin"))),
      m_overlap(new LengthField(tr("Overlap"))),
      m_scale(new QComboBox) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 8, 0);
    column->addWidget(makeHow());
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    column->addLayout(form);
    addPaper(form);
    addLook(form);
    for (int row = 0; row < form->rowCount(); ++row) {
        if (QLayoutItem* label = form->itemAt(row, QFormLayout::LabelRole)) {
            label->widget()->setMinimumHeight(controlHeight);
        }
    }
    column->addStretch();
    showEnabled();
}

QWidget* ChoicesPanel::makeHow() {
    auto* how = new QWidget;
    how->setAccessibleName(tr("In parts or whole"));
    auto* column = new QVBoxLayout(how);
    column->setContentsMargins(0, 0, 0, 8);
    for (QRadioButton* button : {m_inParts, m_whole}) {
        button->setMinimumHeight(controlHeight);
        column->addWidget(button);
    }
    (m_choice.tiled ? m_inParts : m_whole)->setChecked(true);
    connect(m_inParts, &QRadioButton::toggled, this, [this](bool tiled) {
        changePaper([tiled](TemplateChoice& choice) {
            choice.tiled = tiled;
            choice.howChosen = true;
        });
    });
    return how;
}

void ChoicesPanel::addPaper(QFormLayout* form) {
    for (const NamedSize& sheet : sheetSizes()) {
        m_sheet->addItem(
            QString::fromUtf8(sheet.name.data(), static_cast<qsizetype>(sheet.name.size())));
        if (&sheet == m_choice.sheet) {
            m_sheet->setCurrentIndex(m_sheet->count() - 1);
        }
    }
    m_sheet->setMinimumHeight(controlHeight);
    form->addRow(tr("P&aper"), m_sheet);
    connect(m_sheet, &QComboBox::currentIndexChanged, this, [this](int index) {
        changePaper([index](TemplateChoice& choice) {
            choice.sheet = &sheetSizes()[static_cast<std::size_t>(index)];
        });
    });

    m_margin->setValue(m_choice.printerMargin);
    m_margin->setToolTip(tr("What the printer cannot reach along the edges of the paper"));
    m_overlap->setValue(m_choice.overlap);
    m_overlap->setToolTip(tr("What neighbouring sheets both show, to join them"));
    for (LengthField* field : {m_margin, m_overlap}) {
        field->setRange({}, largestSheetMargin);
        field->setScale(m_choice.look.scale);
    }
    form->addRow(tr("Printer &margin"), m_margin);
    form->addRow(tr("&Overlap"), m_overlap);
    connect(m_margin, &LengthField::valueChanged, this, [this](Length value) {
        changePaper([value](TemplateChoice& choice) { choice.printerMargin = value; });
    });
    connect(m_overlap, &LengthField::valueChanged, this, [this](Length value) {
        changePaper([value](TemplateChoice& choice) { choice.overlap = value; });
    });
}

void ChoicesPanel::addLook(QFormLayout* form) {
    for (const ScaleChoice& one : scales) {
        m_scale->addItem(tr(one.text));
        if (one.scale == m_choice.look.scale) {
            m_scale->setCurrentIndex(m_scale->count() - 1);
        }
    }
    m_scale->setMinimumHeight(controlHeight);
    form->addRow(tr("&Figures in"), m_scale);
    connect(m_scale, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_choice.look.scale = scales[index].scale;
        m_margin->setScale(m_choice.look.scale);
        m_overlap->setScale(m_choice.look.scale);
        emit lookChanged();
    });
    addPart(form, tr("&Numbers, names and sizes"), &TemplateOptions::labels);
    addPart(form, tr("&Dimension lines"), &TemplateOptions::dimensions);
    addPart(form, tr("Mar&gins and centre ticks"), &TemplateOptions::guides);
    addPart(form, tr("&Check squares"), &TemplateOptions::checkSquares);
}

void ChoicesPanel::addPart(QFormLayout* form, const QString& text, bool TemplateOptions::* part) {
    auto* box = new QCheckBox(text);
    box->setMinimumHeight(controlHeight);
    box->setChecked(m_choice.look.*part);
    form->addRow(part == &TemplateOptions::labels ? tr("Draw") : QString(), box);
    connect(box, &QCheckBox::toggled, this, [this, part](bool on) {
        m_choice.look.*part = on;
        emit lookChanged();
    });
}

void ChoicesPanel::changePaper(const std::function<void(TemplateChoice&)>& change) {
    change(m_choice);
    showEnabled();
    emit paperChanged();
}

// Margin and overlap mean nothing to a whole page.
void ChoicesPanel::showEnabled() {
    m_margin->setEnabled(m_choice.tiled);
    m_overlap->setEnabled(m_choice.tiled);
}

}  // namespace matwright::app
