// SPDX-License-Identifier: MIT
#include "app/printplan/paper_panel.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include "app/panels/length_field.h"
#include "app/panels/section.h"
#include "app/panels/window_foot.h"
#include "core/measure/catalogue.h"

namespace matwright::app {

namespace {

constexpr Length mostMargin = Length::inches(2);
constexpr std::chrono::milliseconds stepsRest{300};
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

QString sizeWords(Size size) {
    const int index = catalogueIndexOf(size);
    return index < 0 ? QString::fromStdString(naturalSizeText(size))
                     : QString::fromUtf8(paperSizes()[static_cast<std::size_t>(index)]->name);
}

// A paper that is called after its size goes on being so.
PrinterPaper inSize(const PrinterPaper& paper, Size size) {
    PrinterPaper after = resized(paper, size);
    QString name = QString::fromStdString(paper.name);
    after.name = name.replace(sizeWords(paper.size), sizeWords(size)).toStdString();
    return after;
}

// Two fields in one row, each with its label.
QWidget* addPair(Section* section, const QString& first, LengthField* one, const QString& second,
                 LengthField* other) {
    auto* pair = new QWidget;
    auto* row = new QHBoxLayout(pair);
    row->setContentsMargins({});
    auto* label = new QLabel(second);
    label->setBuddy(other);
    label->setMinimumWidth(label->fontMetrics().horizontalAdvance(PaperPanel::tr("bottom")) + 4);
    other->lineEdit()->setAccessibleName(QString(second).remove(u'&'));
    one->lineEdit()->setAccessibleName(QString(first).remove(u'&'));
    settle(one);
    settle(other);
    row->addWidget(one, 1, Qt::AlignTop);
    row->addSpacing(8);
    row->addWidget(label);
    row->addWidget(other, 1, Qt::AlignTop);
    pair->setFocusProxy(one);
    section->addRow(first, pair);
    return pair;
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
      m_counted(new QCheckBox(tr("Co&unt the sheets at hand"))),
      m_atHand(new QSpinBox) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    column->addWidget(m_section);
    m_name->setAccessibleName(tr("Name of the paper"));
    m_section->addRow(tr("Na&me"), m_name);
    connect(m_name, &QLineEdit::editingFinished, this, [this] {
        edit([this](PrinterPaper& paper) { paper.name = m_name->text().trimmed().toStdString(); });
    });
    m_soon.setSingleShot(true);
    m_soon.setInterval(stepsRest);
    connect(&m_soon, &QTimer::timeout, this, &PaperPanel::takeWanted);
    addSize();
    addMargins(scale);
    addStock();
}

template <typename Change>
void PaperPanel::edit(Change change, int gesture) {
    if (m_showing) {
        return;
    }
    change(m_wanted);
    if (gesture == 0) {
        takeWanted();
    } else {
        m_soon.start();
    }
}

// Sizes on the way to another one have no say: only the last counts for what was measured.
void PaperPanel::takeWanted() {
    m_soon.stop();
    const Size size = m_wanted.size;
    m_wanted.size = m_paper.size;
    m_wanted = inSize(m_wanted, size);
    if (m_wanted != m_paper) {
        m_paper = m_wanted;
        refresh();
        emit changed(PrinterPaper(m_paper));  // show() may come before this is over
    }
}

void PaperPanel::turn() {
    edit([](PrinterPaper& paper) { paper.size = paper.size.turned(); });
}

void PaperPanel::addSize() {
    for (const NamedSize* size : paperSizes()) {
        m_catalogue->addItem(QString::fromUtf8(size->name));
    }
    m_catalogue->addItem(tr("Another size"));
    m_catalogue->setMinimumContentsLength(14);
    m_section->addRow(tr("&Size"), m_catalogue);
    auto* turned = new QPushButton(tr("&Quarter turn"));
    turned->setToolTip(tr("Width and height change places, and what was measured with them."));
    connect(turned, &QPushButton::clicked, this, &PaperPanel::turn);
    QWidget* sides = addPair(m_section, tr("&Width"), m_width, tr("&Height"), m_height);
    addButton(static_cast<QBoxLayout*>(sides->layout()), turned)
        ->setMinimumWidth(turned->sizeHint().width() + 20);
    m_width->setToolTip(tr("Across, as sheets of this paper are drawn"));
    connect(m_catalogue, &QComboBox::activated, this, [this](int index) {
        const auto sizes = paperSizes();
        if (static_cast<std::size_t>(index) < sizes.size()) {
            edit([&](PrinterPaper& paper) {
                paper.size = sizes[static_cast<std::size_t>(index)]->size;
            });
        } else {
            m_width->setFocus();
        }
    });
    connect(m_width, &LengthField::valueChanged, this, [this](Length width, int gesture) {
        edit([width](PrinterPaper& paper) { paper.size.width = width; }, gesture);
    });
    connect(m_height, &LengthField::valueChanged, this, [this](Length height, int gesture) {
        edit([height](PrinterPaper& paper) { paper.size.height = height; }, gesture);
    });
    for (LengthField* field : {m_width, m_height}) {
        connect(field->lineEdit(), &QLineEdit::editingFinished, this, &PaperPanel::takeWanted);
    }
}

void PaperPanel::addMargins(Scale scale) {
    m_borders->addItems({tr("Without borders"), tr("With borders")});
    m_borders->setToolTip(
        tr("Whether the printer can print this paper up to its edges, or leaves a border free"));
    m_section->addRow(tr("&Prints"), m_borders);
    connect(m_borders, &QComboBox::activated, this, [this](int index) {
        edit([index](PrinterPaper& paper) { paper.borderless = index == 0; });
    });
    for (std::size_t i = 0; i < m_margins.size(); ++i) {
        m_margins[i] = lengthFieldOf(scale, {}, mostMargin);
        connect(
            m_margins[i], &LengthField::valueChanged, this, [this, i](Length length, int gesture) {
                edit([&](PrinterPaper& paper) { paper.margin.*marginSides[i] = length; }, gesture);
            });
        connect(m_margins[i]->lineEdit(), &QLineEdit::editingFinished, this,
                &PaperPanel::takeWanted);
    }
    m_marginPairs = {
        addPair(m_section, tr("Border le&ft"), m_margins[0], tr("ri&ght"), m_margins[2]),
        addPair(m_section, tr("B&order top"), m_margins[1], tr("&bottom"), m_margins[3])};
    m_margins[2]->lineEdit()->setAccessibleName(tr("Border right"));
    m_margins[3]->lineEdit()->setAccessibleName(tr("Border bottom"));
}

void PaperPanel::addStock() {
    m_price->setRange(0, static_cast<int>(maxSheetPrice));
    m_price->setToolTip(
        tr("Any figure will do that is of the same kind for all papers. Dearer paper is used only "
           "where it saves cheaper sheets; a high figure keeps good paper back."));
    m_section->addRow(tr("&Cost of one, cents"), m_price);
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
    connect(m_counted, &QCheckBox::clicked, this, [this, take](bool counted) {
        take();
        if (counted) {
            m_atHand->setFocus();
            m_atHand->selectAll();
        }
    });
    connect(m_atHand, &QSpinBox::editingFinished, this, take);
}

void PaperPanel::show(const PrinterPaper& paper) {
    m_soon.stop();
    m_paper = paper;
    m_wanted = paper;
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
    }
    for (QWidget* pair : m_marginPairs) {
        m_section->setRowShown(pair, !m_paper.borderless);
    }
    m_price->setValue(static_cast<int>(m_paper.price));
    m_counted->setChecked(m_paper.atHand.has_value());
    m_atHand->setValue(m_paper.atHand.value_or(0));
    m_section->setRowShown(m_atHand, m_paper.atHand.has_value());
    m_showing = false;
}

}  // namespace matwright::app
