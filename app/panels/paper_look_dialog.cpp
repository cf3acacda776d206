// SPDX-License-Identifier: MIT
#include "app/panels/paper_look_dialog.h"

#include <QColorDialog>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QImageReader>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/panels/length_field.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"

namespace matwright::app {

namespace {

constexpr QSize sampleSize(300, 150);
constexpr Length usualWidth = Length::inches(12);  // of a sheet of scrapbook paper
constexpr Length leastWidth = Length::inches(0, 1, 4);
constexpr Length mostWidth = Length::inches(60);
constexpr Length sampleWidth = Length::inches(6);
constexpr qint64 mostBytes = 200LL << 20;

QColor colourOf(Colour colour) {
    return {colour.red, colour.green, colour.blue};
}

Colour colourOf(const QColor& colour) {
    return {static_cast<std::uint8_t>(colour.red()), static_cast<std::uint8_t>(colour.green()),
            static_cast<std::uint8_t>(colour.blue())};
}

PaperLook plainWhite() {
    return {{255, 255, 255}, {}, {}, {}};
}

// The colour that stands in for the picture where it cannot be shown.
Colour meanOf(const QImage& picture) {
    return colourOf(
        picture.scaled(1, 1, Qt::IgnoreAspectRatio, Qt::SmoothTransformation).pixelColor(0, 0));
}

}  // namespace

PaperLookDialog::PaperLookDialog(const QString& paper, const std::optional<PaperLook>& look,
                                 Scale scale, QWidget* parent)
    : QDialog(parent),
      m_look(look),
      m_sample(new QLabel),
      m_name(new QLabel),
      m_problem(new TintedLabel(Tint::Wrong)),
      m_width(new LengthField(tr("Width of the picture"))),
      m_noPicture(new QPushButton(tr("&No picture"))),
      m_noLook(new QPushButton(tr("&As in the sketch"))) {
    setWindowTitle(tr("Look of the paper"));
    build(paper, scale);
    if (look && !look->picture.empty()) {
        m_picture = QImage(QString::fromStdString(look->picture));
    }
    showLook();
}

void PaperLookDialog::build(const QString& paper, Scale scale) {
    auto* column = new QVBoxLayout(this);
    auto* title = new QLabel(tr("Every piece of “%1” looks alike.").arg(paper.left(60)));
    title->setTextFormat(Qt::PlainText);
    title->setWordWrap(true);
    column->addWidget(title);
    m_sample->setFixedSize(sampleSize);
    m_sample->setFrameShape(QFrame::StyledPanel);
    column->addWidget(m_sample, 0, Qt::AlignHCenter);
    m_name->setTextFormat(Qt::PlainText);
    column->addWidget(m_name, 0, Qt::AlignHCenter);
    auto* row = new QHBoxLayout;
    auto* colour = new QPushButton(tr("&Colour…"));
    auto* picture = new QPushButton(tr("&Picture…"));
    picture->setToolTip(tr("A scan or photo of the paper, JPEG or PNG"));
    m_noLook->setToolTip(tr("The paper has no look of its own any more"));
    for (QPushButton* button : {colour, picture, m_noPicture, m_noLook}) {
        settle(button);
        button->setAutoDefault(false);
        row->addWidget(button);
    }
    column->addLayout(row);
    auto* section = new Section({});
    m_width->setScale(scale);
    m_width->setRange(leastWidth, mostWidth);
    m_width->setToolTip(tr("How wide what the picture shows is in truth: 12 in for a whole sheet"));
    section->addRow(tr("&Width in truth"), m_width);
    column->addWidget(section);
    column->addWidget(m_problem);
    m_problem->hide();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    column->addWidget(buttons);
    connect(colour, &QPushButton::clicked, this, &PaperLookDialog::chooseColour);
    connect(picture, &QPushButton::clicked, this, &PaperLookDialog::choosePicture);
    connect(m_noPicture, &QPushButton::clicked, this, &PaperLookDialog::takePictureAway);
    connect(m_noLook, &QPushButton::clicked, this, [this] {
        m_look.reset();
        accept();
    });
    connect(m_width, &LengthField::valueChanged, this, [this](Length width) {
        if (m_look && !m_look->picture.empty()) {
            m_look->pictureWidth = width;
            showLook();
        }
    });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void PaperLookDialog::chooseColour() {
    const QColor now = colourOf(m_look.value_or(plainWhite()).colour);
    const QColor chosen = QColorDialog::getColor(now, this, tr("Colour of the paper"));
    if (chosen.isValid()) {
        setColour(chosen);
    }
}

void PaperLookDialog::setColour(const QColor& colour) {
    m_look = PaperLook{colourOf(colour), {}, {}, {}};
    m_picture = {};
    showLook();
}

void PaperLookDialog::choosePicture() {
    const QString path = QFileDialog::getOpenFileName(
        this, tr("Picture of the paper"), {}, tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp)"));
    if (!path.isEmpty()) {
        const QString problem = setPicture(path);
        m_problem->setText(problem);
        m_problem->setVisible(!problem.isEmpty());
    }
}

QString PaperLookDialog::setPicture(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > mostBytes) {
        return tr("%1 cannot be read.").arg(QFileInfo(path).fileName());
    }
    const QByteArray bytes = file.readAll();
    QImageReader reader(path);
    reader.setAutoTransform(true);
    const QImage picture = reader.read();
    if (picture.isNull()) {
        return tr("%1 is no picture that can be shown; choose a JPEG or PNG file.")
            .arg(QFileInfo(path).fileName());
    }
    m_picture = picture;
    const Length width =
        m_look && m_look->pictureWidth.isPositive() ? m_look->pictureWidth : usualWidth;
    m_look =
        PaperLook{meanOf(picture), path.toStdString(),
                  contentKeyOf({bytes.constData(), static_cast<std::size_t>(bytes.size())}), width};
    showLook();
    return {};
}

void PaperLookDialog::takePictureAway() {
    if (m_look) {
        setColour(colourOf(m_look->colour));
    }
}

// Six inches of the paper, so that the width can be judged.
void PaperLookDialog::showLook() {
    const bool hasPicture = m_look && !m_look->picture.empty();
    QPixmap sample(sampleSize * devicePixelRatioF());
    sample.setDevicePixelRatio(devicePixelRatioF());
    sample.fill(colourOf(m_look.value_or(plainWhite()).colour));
    if (hasPicture && !m_picture.isNull()) {
        const double scale =
            ratio(m_look->pictureWidth, sampleWidth) * sampleSize.width() / m_picture.width();
        QBrush brush(m_picture);
        brush.setTransform(QTransform::fromScale(scale, scale));
        QPainter painter(&sample);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.fillRect(QRect({}, sampleSize), brush);
    }
    m_sample->setPixmap(sample);
    m_name->setText(hasPicture
                        ? tr("%1; 6 in of it are shown")
                              .arg(QFileInfo(QString::fromStdString(m_look->picture)).fileName())
                    : m_look ? tr("A plain colour")
                             : tr("No look yet: as in the sketch"));
    m_width->setEnabled(hasPicture);
    m_width->setValue(hasPicture ? m_look->pictureWidth : usualWidth);
    m_noPicture->setEnabled(hasPicture);
    m_noLook->setEnabled(m_look.has_value());
}

}  // namespace matwright::app
