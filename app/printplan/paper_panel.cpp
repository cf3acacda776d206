// SPDX-License-Identifier: MIT
#include "app/printplan/paper_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

#include "app/panels/length_field.h"
#include "app/panels/section.h"
#include "core/measure/catalogue.h"

namespace matwright::app {

namespace {

constexpr Length mostMargin = Length::inches(2);
constexpr std::array<Length SheetMargin::*, 4> marginSides{
    &SheetMargin::left, &SheetMargin::top, &SheetMargin::right, &SheetMargin::bottom};

std::vector<const NamedSize*> paperSizes() {
    std::vector<const NamedSize*> sizes;
    for (const auto& catalogue : {printSizes(), sheetSizes()}) {
        for (const NamedSize& size : catalogue) {
            sizes.push_back(&size);
        }
    }
    return sizes;
}

// Either way up; -1 where it is another one.
int catalogueIndexOf(Size size) {
    const auto sizes = paperSizes();
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        if (sizes[i]->size == size || sizes[i]->size.turned() == size) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

QString catalogueName(Size size) {
    const int index = catalogueIndexOf(size);
    return index < 0 ? QString()
                     : QString::fromUtf8(paperSizes()[static_cast<std::size_t>(index)]->name);
}

LengthField* lengthFieldOf(Scale scale, Length low, Length high) {
    auto* field = new LengthField;
    field->setScale(scale);
    field->setRange(low, high);
    return field;
}

}  // namespace

PaperPanel::PaperPanel(Scale scale, QWidget* parent)
    : QWidget(parent),
      m_section(new Section(tr("This paper"))),
      m_name(new QLineEdit),
      m_catalogue(new QComboBox),
      m_width(lengthFieldOf(scale, smallestPhotoPaperSide, largestPhotoPaperSide)),
      m_height(lengthFieldOf(scale, smallestPhotoPaperSide, largestPhotoPaperSide)),
      m_borders(new QComboBox),
      m_price(new QSpinBox),
      m_counted(new QCheckBox(tr("&Count the sheets at hand"))),
      m_atHand(new QSpinBox) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    column->addWidget(m_section);
    m_name->setAccessibleName(tr("Name of the paper"));
    m_section->addRow(tr("Na&me"), m_name);
    connect(m_name, &QLineEdit::editingFinished, this, [this] {
        edit([this](PrinterPaper& paper) { paper.name = m_name->text().trimmed().toStdString(); });
    });
    addSize(scale);
    addMargins(scale);
    addStock();
}

template <typename Change>
void PaperPanel::edit(Change change) {
    PrinterPaper after = m_paper;
    change(after);
    if (!m_showing && after != m_paper) {
        m_paper = after;
        refresh();
        emit changed(after);
    }
}

void PaperPanel::addSize(Scale) {
    for (const NamedSize* size : paperSizes()) {
        m_catalogue->addItem(QString::fromUtf8(size->name));
    }
    m_catalogue->addItem(tr("Another size"));
    m_catalogue->setMinimumContentsLength(14);
    m_section->addRow(tr("&Size"), m_catalogue);
    m_section->addRow(tr("&Width"), m_width);
    m_section->addRow(tr("&Height"), m_height);
    m_width->setToolTip(tr("As the paper goes into the printer and as it is drawn here"));
    connect(m_catalogue, &QComboBox::activated, this, [this](int index) {
        const auto sizes = paperSizes();
        if (static_cast<std::size_t>(index) < sizes.size()) {
            takeSize(sizes[static_cast<std::size_t>(index)]->size);
        } else {
            m_width->setFocus();
        }
    });
    connect(m_width, &LengthField::valueChanged, this,
            [this](Length width) { takeSize({width, m_paper.size.height}); });
    connect(m_height, &LengthField::valueChanged, this,
            [this](Length height) { takeSize({m_paper.size.width, height}); });
}

// A paper that is called after its size goes on being so.
void PaperPanel::takeSize(Size size) {
    edit([size](PrinterPaper& paper) {
        const QString before = catalogueName(paper.size);
        const QString after = catalogueName(size);
        if (!before.isEmpty() && !after.isEmpty()) {
            QString name = QString::fromStdString(paper.name);
            paper.name = name.replace(before, after).toStdString();
        }
        paper.size = size;
    });
}

void PaperPanel::addMargins(Scale scale) {
    m_borders->addItems({tr("Up to the edge"), tr("With a border")});
    m_borders->setToolTip(
        tr("Whether the printer can print this paper up to its edges, or leaves a border free"));
    m_section->addRow(tr("&Prints"), m_borders);
    connect(m_borders, &QComboBox::activated, this, [this](int index) {
        edit([index](PrinterPaper& paper) { paper.borderless = index == 0; });
    });
    const std::array words{tr("Border left"), tr("Border top"), tr("Border right"),
                           tr("Border bottom")};
    for (std::size_t i = 0; i < m_margins.size(); ++i) {
        m_margins[i] = lengthFieldOf(scale, {}, mostMargin);
        m_section->addRow(words[i], m_margins[i]);
        connect(m_margins[i], &LengthField::valueChanged, this, [this, i](Length length) {
            edit([&](PrinterPaper& paper) { paper.margin.*marginSides[i] = length; });
        });
    }
}

void PaperPanel::addStock() {
    m_price->setRange(0, static_cast<int>(maxSheetPrice));
    m_price->setToolTip(
        tr("Cents, or any figure that is the same kind for all papers. Dearer paper is used only "
           "where it saves cheaper sheets; a high figure keeps good paper back."));
    m_section->addRow(tr("&Cost of one"), m_price);
    connect(m_price, &QSpinBox::editingFinished, this,
            [this] { edit([this](PrinterPaper& paper) { paper.price = m_price->value(); }); });
    settle(m_counted);
    m_counted->setToolTip(tr("Otherwise there are as many as are needed."));
    m_section->addWide(m_counted);
    m_atHand->setRange(0, maxPapersAtHand);
    m_section->addRow(tr("Shee&ts left"), m_atHand);
    const auto take = [this] {
        edit([this](PrinterPaper& paper) {
            paper.atHand = m_counted->isChecked() ? std::optional(m_atHand->value()) : std::nullopt;
        });
    };
    connect(m_counted, &QCheckBox::clicked, this, take);
    connect(m_atHand, &QSpinBox::editingFinished, this, take);
}

void PaperPanel::show(const PrinterPaper& paper) {
    m_paper = paper;
    refresh();
}

void PaperPanel::refresh() {
    m_showing = true;
    m_name->setText(QString::fromStdString(m_paper.name));
    const int index = catalogueIndexOf(m_paper.size);
    m_catalogue->setCurrentIndex(index < 0 ? m_catalogue->count() - 1 : index);
    m_width->setValue(m_paper.size.width);
    m_height->setValue(m_paper.size.height);
    m_borders->setCurrentIndex(m_paper.borderless ? 0 : 1);
    for (std::size_t i = 0; i < m_margins.size(); ++i) {
        m_margins[i]->setValue(m_paper.margin.*marginSides[i]);
        m_section->setRowShown(m_margins[i], !m_paper.borderless);
    }
    m_price->setValue(static_cast<int>(m_paper.price));
    m_counted->setChecked(m_paper.atHand.has_value());
    m_atHand->setValue(m_paper.atHand.value_or(0));
    m_section->setRowShown(m_atHand, m_paper.atHand.has_value());
    m_showing = false;
}

}  // namespace matwright::app
