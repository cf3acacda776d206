// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>

#include "app/cutting/cutting_asks.h"
#include "app/cutting/paper_words.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace matwright::app {

class LengthField;
class PaperPictures;
class Section;

// All that is known of one paper on hand, to be typed.
class PaperDialog final : public QDialog {
    Q_OBJECT

  public:
    // `asks` and `pictures` outlive the dialog.
    PaperDialog(const QString& title, PaperOnHand paper, Scale scale, const CuttingAsks& asks,
                PaperPictures& pictures, QWidget* parent = nullptr);

    // Sound once the dialog was accepted.
    const PaperOnHand& paper() const { return m_paper; }
    // Why it cannot be accepted; empty where nothing is in the way.
    QString problem() const { return m_problem; }

    void setColour(const QColor& colour);
    // Reads it in the background; it is not accepted meanwhile. Where it cannot be shown nothing
    // changes and problem() says so.
    void setPicture(const QString& path);
    bool isReading() const { return !m_coming.isEmpty(); }

  public slots:
    void accept() override;

  protected:
    bool event(QEvent* event) override;

  private:
    void build(Scale scale);
    QWidget* makeLookButtons();
    void chooseColour();
    void choosePicture();
    void takePicture(const QString& path);
    QPixmap sample() const;
    void showLook();
    void complain(const QString& sentence);

    PaperOnHand m_paper;
    const CuttingAsks& m_asks;
    PaperPictures& m_pictures;
    QString m_coming;  // the path of a picture that was chosen and is being read
    QString m_problem;
    Section* m_section;
    QLineEdit* m_name;
    LengthField* m_width;
    LengthField* m_height;
    QSpinBox* m_count;
    QComboBox* m_kind;
    QComboBox* m_pattern;
    QComboBox* m_sides;
    QLineEdit* m_thickness;
    QLabel* m_sample;
    LengthField* m_pictureWidth;
    QPushButton* m_noPicture;
    QPushButton* m_ok = nullptr;
};

}  // namespace matwright::app
