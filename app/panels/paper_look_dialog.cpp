// SPDX-License-Identifier: MIT
#include "app/panels/paper_look_dialog.h"

#include <QColorDialog>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>
#include <utility>

#include "app/panels/length_field.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/rendering/colours.h"
#include "app/rendering/paper_picture.h"

namespace matwright::app {

namespace {

constexpr QSize sampleSize(300, 150);
constexpr Length usualWidth = Length::inches(12);  // of a sheet of scrapbook paper
constexpr Length leastWidth = Length::inches(0, 1, 4);
constexpr Length mostWidth = Length::inches(60);
constexpr Length sampleWidth = Length::inches(6);
constexpr int keptSide = 1'600;  // pixels

PaperLook plainWhite() {
    return {{255, 255, 255}, {}, {}, {}};
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
    connect(&m_reader, &QFutureWatcherBase::finished, this, [this] { take(m_reader.result()); });
    if (look && !look->picture.empty()) {
        beginReading(QString::fromStdString(look->picture), false);
    }
    showLook();
}

void PaperLookDialog::build(const QString& paper, Scale scale) {
    auto* column = new QVBoxLayout(this);
    auto* title = new QLabel(tr("Every piece of “%1” looks alike.").arg(paper.left(60)));
    title->setTextFormat(Qt::PlainText);
    title->setWordWrap(true);
    column->addWidget(title);
    m_sample->setObjectName(QStringLiteral("sample"));
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
    m_ok = buttons->button(QDialogButtonBox::Ok);
    column->addWidget(buttons);
    connect(colour, &QPushButton::clicked, this, &PaperLookDialog::chooseColour);
    connect(picture, &QPushButton::clicked, this, &PaperLookDialog::choosePicture);
    connect(m_noPicture, &QPushButton::clicked, this, &PaperLookDialog::takePictureAway);
    connect(m_noLook, &QPushButton::clicked, this, [this] {
        m_look.reset();
        QDialog::accept();
    });
    connect(m_width, &LengthField::valueChanged, this, [this](Length width) {
        if (m_look && !m_look->picture.empty()) {
            m_look->pictureWidth = width;
            showLook();
        }
    });
    connect(buttons, &QDialogButtonBox::accepted, this, &PaperLookDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

void PaperLookDialog::chooseColour() {
    const QColor now = toColor(m_look.value_or(plainWhite()).colour);
    const QColor chosen = QColorDialog::getColor(now, this, tr("Colour of the paper"));
    if (chosen.isValid()) {
        setColour(chosen);
    }
}

void PaperLookDialog::setColour(const QColor& colour) {
    m_look = PaperLook{toColour(colour), {}, {}, {}};
    m_picture = {};
    m_isComing = false;
    complain({});
    showLook();
}

void PaperLookDialog::choosePicture() {
    const QString path = QFileDialog::getOpenFileName(
        this, tr("Picture of the paper"), {}, tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp)"));
    if (!path.isEmpty()) {
        setPicture(path);
    }
}

void PaperLookDialog::setPicture(const QString& path) {
    complain({});
    m_isComing = true;
    beginReading(path, true);
    showLook();
}

// What was being read before is not taken any more.
void PaperLookDialog::beginReading(const QString& path, bool isChosen) {
    m_reader.setFuture(QtConcurrent::run(&PaperLookDialog::read, path, isChosen));
}

PaperLookDialog::Held PaperLookDialog::read(const QString& path, bool isChosen) {
    Held held{path, {}, {}, false, isChosen};
    QFile file(path);
    if (!QFileInfo(path).isFile() || file.size() > maxPaperPictureBytes ||
        !file.open(QIODevice::ReadOnly)) {
        return held;
    }
    const QByteArray bytes = file.readAll();
    held.wasRead = true;
    held.content = contentKeyOf({bytes.constData(), static_cast<std::size_t>(bytes.size())});
    held.picture = paperPictureIn(bytes, keptSide);
    return held;
}

void PaperLookDialog::take(const Held& held) {
    const QString name = QFileInfo(held.path).fileName();
    if (!held.isChosen) {
        m_picture = held.picture;
    } else if (!std::exchange(m_isComing, false)) {
        return;  // something else was chosen meanwhile
    } else if (held.picture.isNull()) {
        complain(
            held.wasRead
                ? tr("%1 is no picture that can be shown; choose a JPEG or PNG file.").arg(name)
                : tr("%1 cannot be read.").arg(name));
    } else {
        m_picture = held.picture;
        const Length width =
            m_look && m_look->pictureWidth.isPositive() ? m_look->pictureWidth : usualWidth;
        m_look = PaperLook{meanColour(held.picture), held.path.toStdString(), held.content, width};
    }
    showLook();
}

void PaperLookDialog::takePictureAway() {
    if (m_look) {
        setColour(toColor(m_look->colour));
    }
}

void PaperLookDialog::accept() {
    m_width->commitTyped();
    if (m_width->isEnabled() && m_width->hasError()) {
        return m_width->lineEdit()->setFocus();
    }
    if (!isReading()) {
        QDialog::accept();
    }
}

void PaperLookDialog::complain(const QString& sentence) {
    m_problem->setText(sentence);
    m_problem->setVisible(!sentence.isEmpty());
}

QString PaperLookDialog::problem() const {
    return m_problem->text();
}

// Six inches of the paper, so that the width can be judged.
void PaperLookDialog::showLook() {
    const bool hasPicture = m_look && !m_look->picture.empty();
    QPixmap sample(sampleSize * devicePixelRatioF());
    sample.setDevicePixelRatio(devicePixelRatioF());
    sample.fill(toColor(m_look.value_or(plainWhite()).colour));
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
    m_ok->setEnabled(!isReading());
    m_name->setText(isReading() ? tr("Reading the picture…")
                    : hasPicture
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
