// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <QFutureWatcher>
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
    // Reads it in the background; the dialog is not accepted meanwhile. Where it is no picture that
    // can be shown nothing changes and problem() says so.
    void setPicture(const QString& path);
    bool isReading() const { return m_isComing; }
    QString problem() const;
    void takePictureAway();

  public slots:
    void accept() override;

  private:
    // What a picture's file holds.
    struct Held {
        QString path;
        QImage picture;  // small enough for the sample; null where there is none
        ContentKey content;
        bool wasRead = false;
        bool isChosen = false;  // just now; else it is the look's own
    };
    static Held read(const QString& path, bool isChosen);
    void beginReading(const QString& path, bool isChosen);
    void take(const Held& held);
    void complain(const QString& sentence);
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
    QPushButton* m_ok = nullptr;
    QFutureWatcher<Held> m_reader;
    bool m_isComing = false;  // a picture that was chosen
};

}  // namespace matwright::app
