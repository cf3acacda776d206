// SPDX-License-Identifier: MIT
#include "app/crop/crop_panel.h"

#include <QAccessible>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>
#include <cmath>

#include "app/crop/crop_words.h"
#include "app/crop/tone_panel.h"
#include "app/editing/session.h"
#include "app/panels/angle_field.h"
#include "app/panels/length_field.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"

namespace matwright::app {

namespace {

// The slider's whole way, each step the same factor: up to 10 times larger. The wheel goes further.
constexpr int zoomSteps = 200;
constexpr double zoomReach = 10;
constexpr Length leastTrim = Length::inches(0, 1, 8);  // what a border leaves, see findFault()

int positionOf(std::int32_t zoom) {
    return static_cast<int>(
        std::lround(std::log10(double(zoom) / Crop::one) / std::log10(zoomReach) * zoomSteps));
}

int zoomAt(int position) {
    return static_cast<int>(
        std::lround(Crop::one * std::pow(zoomReach, double(position) / zoomSteps)));
}

QPushButton* plainButton(const QString& text, const QString& hint) {
    auto* button = new QPushButton(text);
    settle(button);
    button->setAutoDefault(false);
    button->setToolTip(hint);
    return button;
}

}  // namespace

CropPanel::CropPanel(const CropSubject& subject, Scale scale, QWidget* parent)
    : QWidget(parent),
      m_subject(subject),
      m_fineness(new QLabel),
      m_warning(new TintedLabel(Tint::Wrong)),
      m_loss(new QLabel),
      m_angle(new AngleField(tr("Straighten"))),
      m_border(new LengthField(tr("White border"))),
      m_zoom(new QSlider(Qt::Horizontal)),
      m_startAgain(plainButton(tr("Start &again"), tr("The crop it began with (Home)"))),
      m_tone(new TonePanel) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 6, 12, 6);
    column->setSpacing(6);
    for (QLabel* label : {m_fineness, m_loss}) {
        label->setWordWrap(true);
    }
    // Two lines, so that nothing below moves while a photo is zoomed.
    m_loss->setMinimumHeight(2 * fontMetrics().lineSpacing());
    m_loss->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    column->addWidget(m_fineness);
    column->addWidget(m_warning);
    column->addWidget(m_loss);
    const Length shorter = std::min(subject.trim.width, subject.trim.height);
    m_border->setRange({}, (shorter - leastTrim).halfRoundedDown());
    m_border->setScale(scale);
    addCropRows();
    auto* tone = new Section(tr("Light and colour"));
    tone->addWide(m_tone);
    column->addWidget(tone);
    column->addStretch(1);
}

void CropPanel::addCropRows() {
    auto* crop = new Section(tr("Crop"));
    crop->addRow(tr("&Zoom"), zoomRow());
    crop->addRow(tr("&Straighten"), m_angle);
    crop->addWide(turnButtons());
    auto* lines = new QComboBox;
    lines->addItems({tr("None"), tr("Thirds"), tr("Golden section")});
    lines->setCurrentIndex(1);
    lines->setToolTip(tr("Lines to place what matters on (G changes them)"));
    lines->setObjectName(QStringLiteral("lines"));
    crop->addRow(tr("&Lines"), lines);
    crop->addRow(tr("White b&order"), m_border);
    m_border->setToolTip(tr("White paper inside the trim, on every side"));
    static_cast<QVBoxLayout*>(layout())->addWidget(crop);
    connect(lines, &QComboBox::currentIndexChanged, this,
            [this](int index) { emit linesChosen(static_cast<CropView::Lines>(index)); });
    connect(m_angle, &AngleField::valueChanged, this, &CropPanel::angleTyped);
    connect(m_border, &LengthField::valueChanged, this, &CropPanel::borderTyped);
}

QWidget* CropPanel::zoomRow() {
    m_zoom->setRange(0, zoomSteps);
    m_zoom->setPageStep(zoomSteps / 10);
    m_zoom->setToolTip(tr("Larger: less of the photo shows (wheel over the photo, + and −)"));
    connect(m_zoom, &QSlider::sliderPressed, this, [this] { m_gesture = Session::newGesture(); });
    connect(m_zoom, &QSlider::valueChanged, this, &CropPanel::slide);
    return m_zoom;
}

void CropPanel::slide(int position) {
    emit zoomSlid(zoomAt(position), m_zoom->isSliderDown() ? m_gesture : 0);
}

QWidget* CropPanel::turnButtons() {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins({});
    layout->setSpacing(6);
    auto* left = plainButton(tr("↺ Left"), tr("Turn the photo a quarter to the left"));
    auto* right = plainButton(tr("↻ Right"), tr("Turn the photo a quarter to the right"));
    left->setAccessibleName(tr("Turn left"));
    right->setAccessibleName(tr("Turn right"));
    for (QPushButton* button : {left, right, m_startAgain}) {
        layout->addWidget(button, 1);
    }
    connect(left, &QPushButton::clicked, this, &CropPanel::leftTurnAsked);
    connect(right, &QPushButton::clicked, this, &CropPanel::rightTurnAsked);
    connect(m_startAgain, &QPushButton::clicked, this, &CropPanel::startAgainAsked);
    return row;
}

void CropPanel::showState(const CropState& state) {
    const FinenessWords fineness = finenessOf(state.crop, m_subject, state.border);
    const bool isFine = fineness.sharpness == Sharpness::Fine;
    m_fineness->setText(isFine ? tr("Prints at %1.").arg(fineness.text) : QString());
    m_fineness->setVisible(isFine);
    const QString before = m_warning->text();
    QString warning = isFine ? QString() : fineness.text;
    if (!warning.isEmpty()) {
        warning[0] = warning[0].toUpper();
        warning += warning.endsWith(QLatin1Char('.')) ? QString() : QStringLiteral(".");
    }
    m_warning->setText(warning);
    m_warning->setVisible(!isFine);
    if (before.isEmpty() && !warning.isEmpty()) {
        QAccessibleEvent alert(m_warning, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
    m_loss->setText(lossWords(state.crop, m_subject, state.border));
    m_angle->setValue(state.crop.straighten);
    m_border->setValue(state.border);
    if (!m_zoom->isSliderDown()) {
        const QSignalBlocker quiet(m_zoom);
        m_zoom->setValue(positionOf(state.crop.zoom));
    }
    m_startAgain->setEnabled(state.crop !=
                             startingCrop(m_subject.upright, windowSize(m_subject, state.border)));
    m_tone->setTone(state.tone);
}

QString CropPanel::finenessText() const {
    return m_warning->text().isEmpty() ? m_fineness->text() : m_warning->text();
}

QString CropPanel::lossText() const {
    return m_loss->text();
}

}  // namespace matwright::app
