// SPDX-License-Identifier: MIT
#include "app/crop/crop_dialog.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QToolButton>
#include <QVBoxLayout>
#include <utility>

#include "app/crop/crop_panel.h"
#include "app/crop/final_pixels.h"
#include "app/crop/tone_panel.h"
#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"

namespace matwright::app {

namespace {

constexpr int sideWidth = 324;
constexpr int finalDelayMs = 250;  // after the last change while the final pixels are shown

}  // namespace

CropDialog::CropDialog(CropTask task, QWidget* parent)
    : QDialog(parent),
      m_task(std::move(task)),
      m_history(m_task.start),
      m_view(new CropView(m_task.subject)),
      m_panel(new CropPanel(m_task.subject, m_task.scale)),
      m_final(new FinalPixels(this)),
      m_finalButton(new QPushButton(tr("Look at &100 %"))),
      m_news(new TintedLabel(Tint::Quiet)) {
    setWindowTitle(tr("Crop: %1").arg(m_task.photoName));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins({});
    row->setSpacing(0);
    row->addWidget(m_view, 1);
    row->addWidget(makeSide());
    addUndo();
    connectView();
    connectPanel();
    m_finalTimer.setSingleShot(true);
    m_finalTimer.setInterval(finalDelayMs);
    connect(&m_finalTimer, &QTimer::timeout, this, &CropDialog::makeFinal);
    const QSize available = screen()->availableSize();
    resize((available * 0.9).boundedTo({1500, 1000}));
    m_view->setFocus();
    showHint();
    showState();
}

CropDialog::~CropDialog() = default;

QWidget* CropDialog::makeSide() {
    auto* side = new QWidget;
    side->setFixedWidth(sideWidth);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 10, 0, 10);
    column->setSpacing(6);
    auto* title = new QLabel(m_task.slotName.left(1).toUpper() + m_task.slotName.mid(1));
    QFont strong = title->font();
    strong.setBold(true);
    strong.setPointSizeF(strong.pointSizeF() * 1.15);
    title->setFont(strong);
    title->setWordWrap(true);
    title->setTextFormat(Qt::PlainText);
    title->setContentsMargins(12, 0, 12, 0);
    column->addWidget(title);
    auto* scrolled = new QWidget;
    addScrolled(scrolled, m_panel);
    column->addWidget(scrolled, 1);
    m_news->setContentsMargins(12, 0, 12, 0);
    column->addWidget(m_news);
    column->addWidget(makeButtons());
    return side;
}

QWidget* CropDialog::makeButtons() {
    auto* buttons = new QWidget;
    auto* grid = new QGridLayout(buttons);
    grid->setContentsMargins(12, 4, 12, 0);
    grid->setSpacing(6);
    m_finalButton->setCheckable(true);
    m_finalButton->setToolTip(
        tr("The print's own pixels, exactly as they go into the file, at %1 ppi").arg(m_task.ppi));
    m_finalButton->setVisible(bool(m_task.finalPixels));
    auto* cancel = new QPushButton(tr("Cancel"));
    cancel->setToolTip(tr("Leave the photo as it was (Esc)"));
    auto* done = new PrimaryButton(tr("&Done"));
    done->setToolTip(tr("Keep this crop (Enter)"));
    for (QPushButton* button : {m_finalButton, cancel}) {
        button->setAutoDefault(false);
        button->setMinimumHeight(controlHeight);
    }
    done->setDefault(true);
    done->setMinimumHeight(controlHeight + 6);
    grid->addWidget(m_finalButton, 0, 0, 1, 2);
    grid->addWidget(cancel, 1, 0);
    grid->addWidget(done, 1, 1);
    connect(m_finalButton, &QPushButton::toggled, this, &CropDialog::changeWhatIsShown);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(done, &QPushButton::clicked, this, &QDialog::accept);
    return buttons;
}

void CropDialog::addUndo() {
    m_undo = new QAction(tr("Undo"), this);
    m_redo = new QAction(tr("Redo"), this);
    m_undo->setShortcuts(QKeySequence::Undo);
    m_redo->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    connect(m_undo, &QAction::triggered, this, [this] {
        m_view->cancelDrag();
        m_history.undo();
        showState();
    });
    connect(m_redo, &QAction::triggered, this, [this] {
        m_view->cancelDrag();
        m_history.redo();
        showState();
    });
    addActions({m_undo, m_redo});
}

void CropDialog::connectView() {
    connect(m_view, &CropView::cropped, this,
            [this](const Crop& crop, const QString& label, int gesture) {
                CropState state = m_history.now();
                state.crop = crop;
                take(state, label, gesture);
            });
    connect(m_final, &FinalPixels::ready, this, [this](const QImage& print) {
        m_view->showFinal(print);
        m_news->setText(
            tr("The print's own pixels at %1 ppi. Drag to look around.").arg(m_task.ppi));
    });
    connect(m_final, &FinalPixels::failed, this, [this](const QString& sentence) {
        m_finalButton->setChecked(false);
        m_news->setText(sentence);
    });
}

void CropDialog::connectPanel() {
    connect(m_panel, &CropPanel::angleTyped, this, &CropDialog::takeAngle);
    connect(m_panel, &CropPanel::borderTyped, this, &CropDialog::takeBorder);
    connect(m_panel, &CropPanel::zoomSlid, this, &CropDialog::takeZoom);
    connect(m_panel, &CropPanel::startAgainAsked, m_view, &CropView::startAgain);
    connect(m_panel, &CropPanel::leftTurnAsked, m_view, &CropView::turnLeft);
    connect(m_panel, &CropPanel::rightTurnAsked, m_view, &CropView::turnRight);
    connect(m_panel, &CropPanel::linesChosen, m_view, &CropView::setLines);
    connect(&m_panel->tone(), &TonePanel::toneChanged, this,
            [this](const Tone& tone, const QString& label, int gesture) {
                CropState state = m_history.now();
                state.tone = tone;
                take(state, label, gesture);
            });
    connect(&m_panel->tone(), &TonePanel::beforeShown, this, &CropDialog::showBefore);
}

void CropDialog::setCopy(const QImage& copy) {
    m_view->setCopy(copy);
}

void CropDialog::setSample(const Histogram& sample) {
    m_sample = sample;
    showTone();
}

void CropDialog::setMissing(const QString& sentence) {
    m_view->setNotice(sentence);
}

void CropDialog::take(const CropState& state, const QString& label, int gesture) {
    m_history.take(state, label, gesture);
    showState();
}

void CropDialog::takeZoom(int zoom, int gesture) {
    CropState state = m_history.now();
    const double factor = double(zoom) / state.crop.zoom;
    state.crop = zoomedAbout(state.crop, m_task.subject.upright,
                             windowSize(m_task.subject, state.border), factor, {});
    take(state, tr("Zoom photo"), gesture);
}

void CropDialog::takeAngle(Angle angle, int gesture) {
    CropState state = m_history.now();
    state.crop = straightened(state.crop, m_task.subject.upright,
                              windowSize(m_task.subject, state.border), angle);
    take(state, tr("Straighten photo"), gesture);
}

void CropDialog::takeBorder(Length border, int gesture) {
    CropState state = m_history.now();
    state.border = border;
    state.crop = settled(state.crop, m_task.subject.upright, windowSize(m_task.subject, border));
    take(state, tr("Change white border"), gesture);
}

void CropDialog::showState() {
    const CropState& state = m_history.now();
    m_view->showCrop(state.crop, state.border);
    m_panel->showState(state);
    m_undo->setEnabled(m_history.canUndo());
    m_redo->setEnabled(m_history.canRedo());
    showTone();
    if (showsFinal()) {
        m_finalTimer.start();
    }
}

void CropDialog::showTone() {
    const Tone& tone = m_history.now().tone;
    if (m_isBefore || !m_sample || tone == Tone{}) {
        m_view->setTone(std::nullopt);
    } else {
        m_view->setTone(toneMapOf(tone, *m_sample));
    }
}

void CropDialog::showBefore(bool shown) {
    if (std::exchange(m_isBefore, shown) != shown) {
        showTone();
        if (showsFinal()) {
            makeFinal();
        }
    }
}

bool CropDialog::showsFinal() const {
    return m_finalButton->isChecked();
}

void CropDialog::setShowsFinal(bool on) {
    m_finalButton->setChecked(on);
}

void CropDialog::changeWhatIsShown(bool on) {
    m_finalTimer.stop();
    m_finalButton->setText(on ? tr("&Back to the frame") : tr("Look at &100 %"));
    if (on) {
        makeFinal();
        return;
    }
    m_final->cancel();
    m_view->showFinal({});
    showHint();
}

void CropDialog::showHint() {
    m_news->setText(
        tr("Drag the photo under the frame, or push it with the arrow keys. The wheel zooms, the "
           "round handle straightens. Hold B to see the photo as it was."));
}

void CropDialog::makeFinal() {
    if (!m_task.finalPixels) {
        return;
    }
    m_news->setText(tr("Making the final pixels…"));
    CropState state = m_history.now();
    if (m_isBefore) {
        state.tone = {};
    }
    m_final->want([make = m_task.finalPixels, state](std::stop_token stop) {
        return make(state, std::move(stop));
    });
}

void CropDialog::changeLines() {
    auto* lines = m_panel->findChild<QComboBox*>(QStringLiteral("lines"));
    lines->setCurrentIndex((lines->currentIndex() + 1) % lines->count());
}

void CropDialog::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_B && event->modifiers() == Qt::NoModifier) {
        showBefore(true);
    } else if (event->key() == Qt::Key_G && event->modifiers() == Qt::NoModifier) {
        changeLines();
    } else {
        QDialog::keyPressEvent(event);
    }
}

void CropDialog::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_B && !event->isAutoRepeat()) {
        showBefore(m_panel->tone().showsBefore());
    }
    QDialog::keyReleaseEvent(event);
}

}  // namespace matwright::app
