// SPDX-License-Identifier: MIT
#pragma once

#include <QElapsedTimer>
#include <QWidget>
#include <vector>

#include "core/tone/tone.h"

class QCheckBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QSlider;

namespace matwright::app {

// How a photo is evened out: one switch and five sliders. A double click on a slider's name puts
// it back to nothing.
class TonePanel final : public QWidget {
    Q_OBJECT

  public:
    explicit TonePanel(QWidget* parent = nullptr);

    const Tone& tone() const { return m_tone; }
    bool showsBefore() const;
    // Emits nothing.
    void setTone(const Tone& tone);

  signals:
    // By a person; changes of one positive gesture number belong together.
    void toneChanged(const matwright::Tone& tone, const QString& label, int gesture);
    // The photo is to be shown as it is in its file, until further notice; a change of tone ends
    // it.
    void beforeShown(bool shown);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Row {
        int Tone::* part;
        QString label;  // of the undo step
        QLabel* name;
        QSlider* slider;
        QLabel* figure;
    };
    void addRow(const QString& name, const QString& label, int least, int Tone::* part);
    void slid(const Row& row, int value);
    void showTone();
    void change(const Tone& tone, const QString& label, int gesture);

    Tone m_tone;
    QCheckBox* m_evenOut;
    QPushButton* m_before;
    QPushButton* m_reset;
    std::vector<Row> m_rows;
    QGridLayout* m_grid;
    QElapsedTimer m_sinceStep;
    const QSlider* m_stepped = nullptr;
    int m_gesture = 0;
};

}  // namespace matwright::app
