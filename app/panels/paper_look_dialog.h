// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <QImage>

#include "core/making/making.h"
#include "core/measure/length_text.h"

class QLabel;
class QPushButton;

namespace matwright::app {

class LengthField;
class TintedLabel;

// How a paper looks on the page: a plain colour, or a picture of it (a scan, a photo, a maker's
// pattern) with the width that the picture has in truth.
class PaperLookDialog final : public QDialog {
    Q_OBJECT

  public:
    // `paper` is what it is called; without a look it begins white.
    PaperLookDialog(const QString& paper, const std::optional<PaperLook>& look, Scale scale,
                    QWidget* parent = nullptr);

    // Nothing: the paper has no look of its own (any more).
    const std::optional<PaperLook>& look() const { return m_look; }
    void setColour(const QColor& colour);
    // A sentence where the file is no picture that can be shown; then nothing changes.
    QString setPicture(const QString& path);
    void takePictureAway();

  private:
    void build(const QString& paper, Scale scale);
    void chooseColour();
    void choosePicture();
    void showLook();

    std::optional<PaperLook> m_look;
    QImage m_picture;
    QLabel* m_sample;
    QLabel* m_name;
    TintedLabel* m_problem;
    LengthField* m_width;
    QPushButton* m_noPicture;
    QPushButton* m_noLook;
};

}  // namespace matwright::app
