// SPDX-License-Identifier: MIT
#include "app/cutting/paper_dialog.h"

#include <QColorDialog>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>

#include "app/files/paths.h"
#include "app/panels/length_field.h"
#include "app/panels/paper_pictures.h"
#include "app/panels/section.h"
#include "app/rendering/colours.h"
#include "app/rendering/paper_picture.h"

namespace matwright::app {

namespace {

constexpr QSize sampleSide(72, 72);
constexpr Length usualPictureWidth = Length::inches(12);  // of a sheet of scrapbook paper
constexpr Length leastPictureWidth = Length::inches(0, 1, 4);
constexpr Length mostPictureWidth = Length::inches(200);

LengthField* lengthField(Section& section, const QString& label, Length value, Scale scale,
                         Length low, Length high) {
    auto* field = new LengthField;
    field->setScale(scale);
    field->setRange(low, high);
    field->setValue(value);
    section.addRow(label, field);
    return field;
}

QComboBox* choice(Section& section, const QString& label, const QStringList& texts, int current) {
    auto* box = new QComboBox;
    box->addItems(texts);
    box->setCurrentIndex(current);
    section.addRow(label, box);
    return box;
}

QLineEdit* words(Section& section, const QString& label, const std::string& text,
                 const QString& hint) {
    auto* edit = new QLineEdit(QString::fromStdString(text));
    edit->setPlaceholderText(hint);
    section.addRow(label, edit);
    return edit;
}

}  // namespace

PaperDialog::PaperDialog(const QString& title, PaperOnHand paper, Scale scale,
                         const CuttingAsks& asks, PaperPictures& pictures, QWidget* parent)
    : QDialog(parent),
      m_paper(std::move(paper)),
      m_asks(asks),
      m_pictures(pictures),
      m_section(new Section({})),
      m_sample(new QLabel),
      m_noPicture(new QPushButton(tr("N&o picture"))) {
    setWindowTitle(title);
    build(scale);
    connect(&m_pictures, &PaperPictures::ready, this, &PaperDialog::takePicture);
    showLook();
    m_name->setFocus();
    setMinimumWidth(430);
}

void PaperDialog::build(Scale scale) {
    Section& rows = *m_section;
    m_name = words(rows, tr("&Name"), m_paper.name, tr("kraft cardstock"));
    m_name->setToolTip(tr("As you name it on your pages."));
    m_width = lengthField(rows, tr("&Width"), m_paper.size.width, scale, smallestPaperSide,
                          largestPaperSide);
    m_height = lengthField(rows, tr("&Height"), m_paper.size.height, scale, smallestPaperSide,
                           largestPaperSide);
    m_count = new QSpinBox;
    m_count->setRange(0, maxPaperCount);
    m_count->setValue(m_paper.count);
    rows.addRow(tr("Shee&ts"), m_count);
    m_kind = choice(rows, tr("&Kind"), {tr("Whole sheet"), tr("Scrap: left over from a sheet")},
                    m_paper.kind == PaperKind::Scrap ? 1 : 0);
    m_pattern = choice(rows, tr("&Pattern"),
                       {tr("Any way up"), tr("Has an up: it stands along the height")},
                       m_paper.pattern == PaperPattern::HasUp ? 1 : 0);
    m_sides = choice(rows, tr("&Good side"), {tr("One side"), tr("Both sides")},
                     m_paper.sides == PaperSides::Two ? 1 : 0);
    m_thickness = words(rows, tr("Th&ickness"), m_paper.thickness, tr("216 gsm, or 80 lb"));
    rows.addRow(tr("Look"), makeLookButtons());
    m_pictureWidth = lengthField(rows, tr("Pict&ure width"),
                                 m_paper.picture.empty() ? usualPictureWidth : m_paper.pictureWidth,
                                 scale, leastPictureWidth, mostPictureWidth);
    m_pictureWidth->setToolTip(tr("How wide what the picture shows is in truth."));
    auto* column = new QVBoxLayout(this);
    column->addWidget(m_section);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    for (QAbstractButton* button : buttons->buttons()) {
        settle(button);
    }
    m_ok = buttons->button(QDialogButtonBox::Ok);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &PaperDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

QWidget* PaperDialog::makeLookButtons() {
    auto* look = new QWidget;
    auto* row = new QHBoxLayout(look);
    row->setContentsMargins({});
    m_sample->setFixedSize(sampleSide);
    m_sample->setAlignment(Qt::AlignCenter);
    row->addWidget(m_sample);
    auto* column = new QVBoxLayout;
    auto* colour = new QPushButton(tr("&Colour…"));
    auto* picture = new QPushButton(tr("Pictu&re…"));
    picture->setToolTip(tr("A scan or photo of the paper, JPEG or PNG"));
    for (QPushButton* button : {colour, picture, m_noPicture}) {
        settle(button);
        button->setAutoDefault(false);
        column->addWidget(button);
    }
    row->addLayout(column, 1);
    connect(colour, &QPushButton::clicked, this, &PaperDialog::chooseColour);
    connect(picture, &QPushButton::clicked, this, &PaperDialog::choosePicture);
    connect(m_noPicture, &QPushButton::clicked, this, [this] {
        m_coming.clear();
        m_paper.picture.clear();
        showLook();
    });
    return look;
}

void PaperDialog::chooseColour() {
    const QColor chosen =
        QColorDialog::getColor(toColor(m_paper.colour), this, tr("Colour of the paper"));
    if (chosen.isValid()) {
        setColour(chosen);
    }
}

void PaperDialog::choosePicture() {
    const QString path = m_asks.open(this, tr("Picture of the paper"),
                                     tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp)"));
    if (!path.isEmpty()) {
        setPicture(path);
    }
}

void PaperDialog::setColour(const QColor& colour) {
    m_coming.clear();
    m_paper.colour = toColour(colour);
    m_paper.picture.clear();
    showLook();
}

void PaperDialog::setPicture(const QString& path) {
    complain({});
    m_coming = path;
    m_pictures.forget(path);
    m_pictures.find(path);
    showLook();
}

// The mean of a picture is its colour in the plan.
void PaperDialog::takePicture(const QString& path) {
    if (path == m_coming) {
        m_coming.clear();
        const QImage picture = m_pictures.find(path);
        if (picture.isNull()) {
            complain(tr("%1 is no picture that can be shown; choose a JPEG or PNG file.")
                         .arg(QFileInfo(path).fileName()));
        } else {
            m_paper.picture = path.toStdString();
            m_paper.colour = meanColour(picture);
        }
    }
    showLook();
}

QPixmap PaperDialog::sample() const {
    const QImage picture = m_paper.picture.empty()
                               ? QImage()
                               : m_pictures.find(QString::fromStdString(m_paper.picture));
    return paperSwatch(m_paper.colour, picture, sampleSide, devicePixelRatioF());
}

void PaperDialog::showLook() {
    if (isReading()) {
        m_sample->setText(tr("Reading…"));
    } else {
        m_sample->setPixmap(sample());
    }
    m_sample->setAccessibleName(
        m_paper.picture.empty()
            ? tr("Colour %1").arg(toColor(m_paper.colour).name())
            : tr("Picture %1").arg(QFileInfo(QString::fromStdString(m_paper.picture)).fileName()));
    m_ok->setEnabled(!isReading());
    m_noPicture->setEnabled(!m_paper.picture.empty());
    m_section->setRowShown(m_pictureWidth, !m_paper.picture.empty());
}

// A row or a sentence that comes makes the dialog larger, not everything else smaller.
bool PaperDialog::event(QEvent* event) {
    const bool done = QDialog::event(event);
    if (event->type() == QEvent::LayoutRequest) {
        const int wanted = layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width())
                                                         : layout()->totalSizeHint().height();
        resize(width(), std::max(height(), wanted));
    }
    return done;
}

void PaperDialog::complain(const QString& sentence) {
    m_problem = sentence;
    m_section->complain(sentence);
}

void PaperDialog::accept() {
    if (isReading()) {
        return;
    }
    for (LengthField* field : {m_width, m_height, m_pictureWidth}) {
        field->commitTyped();
        if (field->isVisibleTo(this) && field->hasError()) {
            m_problem = field->errorText();
            return field->lineEdit()->setFocus();
        }
    }
    // What nobody has touched stays as it is, to the last blank: pages name the paper so.
    if (m_name->isModified()) {
        m_paper.name = m_name->text().simplified().toStdString();
    }
    if (m_paper.name.empty()) {
        m_name->setFocus();
        return complain(tr("Give the paper a name, as you name it on your pages."));
    }
    m_paper.size = {m_width->value(), m_height->value()};
    m_paper.count = m_count->value();
    m_paper.kind = m_kind->currentIndex() == 1 ? PaperKind::Scrap : PaperKind::WholeSheet;
    m_paper.pattern = m_pattern->currentIndex() == 1 ? PaperPattern::HasUp : PaperPattern::None;
    m_paper.sides = m_sides->currentIndex() == 1 ? PaperSides::Two : PaperSides::One;
    if (m_thickness->isModified()) {
        m_paper.thickness = m_thickness->text().simplified().toStdString();
    }
    m_paper.pictureWidth = m_paper.picture.empty() ? Length() : m_pictureWidth->value();
    if (const auto fault = findFault(m_paper)) {
        return complain(shownText(*fault));
    }
    complain({});
    QDialog::accept();
}

}  // namespace matwright::app
