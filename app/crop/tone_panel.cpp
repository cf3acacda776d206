// SPDX-License-Identifier: MIT
#include "app/crop/tone_panel.h"

#include <QCheckBox>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <utility>

#include "app/editing/burst.h"
#include "app/editing/session.h"
#include "app/panels/section.h"

namespace matwright::app {

namespace {

constexpr int most = 100;

QString signedFigure(int value) {
    return value > 0 ? QStringLiteral("+%1").arg(value)
                     : QString::number(value).replace(u'-', QChar(0x2212));
}

}  // namespace

TonePanel::TonePanel(QWidget* parent)
    : QWidget(parent),
      m_evenOut(new QCheckBox(tr("&Even out"))),
      m_before(new QPushButton(tr("&Before"))),
      m_reset(new QPushButton(tr("As it &was"))),
      m_grid(new QGridLayout) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    column->setSpacing(6);
    settle(m_evenOut);
    m_evenOut->setToolTip(
        tr("Brightens and balances the photo a little, by itself. The photo's "
           "own file never changes."));
    column->addWidget(m_evenOut);
    m_grid->setHorizontalSpacing(8);
    m_grid->setVerticalSpacing(2);
    column->addLayout(m_grid);
    addRow(tr("Brightness"), tr("Change brightness"), -most, &Tone::brightness);
    addRow(tr("Contrast"), tr("Change contrast"), -most, &Tone::contrast);
    addRow(tr("Warmth"), tr("Change warmth"), -most, &Tone::warmth);
    addRow(tr("Saturation"), tr("Change saturation"), -most, &Tone::saturation);
    addRow(tr("Sharpen"), tr("Change sharpening"), 0, &Tone::sharpen);
    m_rows.back().slider->setToolTip(
        tr("For the print; to judge it, look at the final pixels at 100 %."));
    auto* buttons = new QHBoxLayout;
    m_before->setToolTip(
        tr("Shows the photo as it is in its file, until you press it again (or hold B)"));
    m_reset->setToolTip(tr("Put the switch and all sliders back"));
    for (QPushButton* button : {m_before, m_reset}) {
        settle(button);
        button->setAutoDefault(false);
        buttons->addWidget(button, 1);
    }
    column->addLayout(buttons);
    connect(m_evenOut, &QCheckBox::clicked, this, [this](bool on) {
        Tone tone = m_tone;
        tone.evenOut = on;
        change(tone, on ? tr("Even out") : tr("Stop evening out"), 0);
    });
    m_before->setCheckable(true);
    connect(m_before, &QPushButton::toggled, this, &TonePanel::beforeShown);
    connect(m_reset, &QPushButton::clicked, this, [this] { change({}, tr("Photo as it was"), 0); });
    showTone();
}

void TonePanel::addRow(const QString& name, const QString& label, int least, int Tone::* part) {
    Row row{part, label, new QLabel(name), new QSlider(Qt::Horizontal), new QLabel};
    row.slider->setRange(least, most);
    row.slider->setPageStep(10);
    row.slider->setAccessibleName(name);
    settle(row.slider);
    row.name->setToolTip(tr("Double-click to put it back to 0"));
    row.name->installEventFilter(this);
    row.figure->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    row.figure->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("+100 ")));
    const int line = m_grid->rowCount();
    m_grid->addWidget(row.name, line, 0);
    m_grid->addWidget(row.slider, line, 1);
    m_grid->addWidget(row.figure, line, 2);
    const std::size_t index = m_rows.size();
    m_rows.push_back(row);
    connect(row.slider, &QSlider::valueChanged, this,
            [this, index](int value) { slid(m_rows[index], value); });
    connect(row.slider, &QSlider::sliderPressed, this, [this] { m_stepped = nullptr; });
}

// One drag of a slider is one gesture, and so is a burst of keys or wheel notches.
void TonePanel::slid(const Row& row, int value) {
    const bool goesOn = m_stepped == row.slider &&
                        (row.slider->isSliderDown() || m_sinceStep.elapsed() <= burstPauseMs);
    if (!goesOn) {
        m_gesture = Session::newGesture();
    }
    m_stepped = row.slider;
    m_sinceStep.start();
    Tone tone = m_tone;
    tone.*row.part = value;
    change(tone, row.label, m_gesture);
}

void TonePanel::change(const Tone& tone, const QString& label, int gesture) {
    m_before->setChecked(false);  // else nothing would be seen of the change
    setTone(tone);
    emit toneChanged(tone, label, gesture);
}

void TonePanel::setTone(const Tone& tone) {
    m_tone = tone;
    showTone();
}

void TonePanel::showTone() {
    m_evenOut->setChecked(m_tone.evenOut);
    for (const Row& row : m_rows) {
        const QSignalBlocker quiet(row.slider);
        row.slider->setValue(m_tone.*row.part);
        row.figure->setText(signedFigure(m_tone.*row.part));
    }
    m_reset->setEnabled(m_tone != Tone{});
    m_before->setEnabled(m_tone != Tone{});
    if (m_tone == Tone{}) {
        m_before->setChecked(false);
    }
}

bool TonePanel::showsBefore() const {
    return m_before->isChecked();
}

bool TonePanel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::MouseButtonDblClick) {
        for (const Row& row : m_rows) {
            if (row.name == watched) {
                Tone tone = m_tone;
                tone.*row.part = 0;
                change(tone, row.label, 0);
                return true;
            }
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace matwright::app
