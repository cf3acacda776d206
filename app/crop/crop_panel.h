// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include "app/crop/crop_state.h"
#include "app/crop/crop_view.h"
#include "core/measure/length_text.h"

class QComboBox;
class QLabel;
class QPushButton;
class QSlider;

namespace matwright::app {

class AngleField;
class LengthField;
class TintedLabel;
class TonePanel;

// The figures beside the photo: how finely it prints, what is lost, and everything that can be
// done to it without the mouse.
class CropPanel final : public QWidget {
    Q_OBJECT

  public:
    CropPanel(const CropSubject& subject, Scale scale, QWidget* parent = nullptr);

    // Emits nothing.
    void showState(const CropState& state);
    TonePanel& tone() { return *m_tone; }
    // For tests and assistive technology: what the panel says.
    QString finenessText() const;
    QString lossText() const;

  signals:
    void angleTyped(matwright::Angle angle, int gesture);
    void borderTyped(matwright::Length border, int gesture);
    // From the slider: the crop's zoom in millionths.
    void zoomSlid(int zoom, int gesture);
    void startAgainAsked();
    void leftTurnAsked();
    void rightTurnAsked();
    void linesChosen(matwright::app::CropView::Lines lines);

  private:
    void addCropRows();
    QWidget* turnButtons();
    QWidget* zoomRow();
    void slide(int position);

    CropSubject m_subject;
    QLabel* m_fineness;
    TintedLabel* m_warning;
    QLabel* m_loss;
    AngleField* m_angle;
    LengthField* m_border;
    QSlider* m_zoom;
    QPushButton* m_startAgain;
    TonePanel* m_tone;
    int m_gesture = 0;
};

}  // namespace matwright::app
