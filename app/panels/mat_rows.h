// SPDX-License-Identifier: MIT
#pragma once

#include "app/panels/piece_section.h"

class QCheckBox;
class QLabel;
class QPushButton;

namespace matwright::app {

class PaperLookButton;
class PaperNames;
class TextField;
class TintedLabel;

// One mat of the selected photo slots: border, bottom border, paper, its size, and a way to take
// it off. Changes only those that have such a mat.
class MatRows final : public PieceSection {
    Q_OBJECT

  public:
    // `index` 0 is the mat right under the photo.
    MatRows(std::size_t index, Session& session, SettingsStore& settings, PaperNames& papers,
            QWidget* parent = nullptr);
    void showPieces(Pieces pieces) override;

  private:
    void changeMat(const QString& label, int gesture, const std::function<void(Mat&)>& set,
                   TypedField* field = nullptr, const PhotoEdit& along = {});
    void showBottom(Pieces withMat);
    QString sizeSentence(Pieces withMat, std::size_t of) const;

    std::size_t m_index;
    TintedLabel* m_size;
    QPushButton* m_remove;
    LengthField* m_border;
    QCheckBox* m_bottomDiffers;
    LengthField* m_bottom;
    TextField* m_paper;
    PaperLookButton* m_look;
};

// All mats and the button that adds one to every selected photo slot with room for it.
class MatsSection final : public PieceSection {
    Q_OBJECT

  public:
    MatsSection(Session& session, SettingsStore& settings, PaperNames& papers,
                QWidget* parent = nullptr);
    void showPieces(Pieces pieces) override;

  private:
    QString gapSentence() const;

    QPushButton* m_add;
    TintedLabel* m_gap;  // told where a mat leaves less than the gutter
    std::vector<MatRows*> m_rows;
};

}  // namespace matwright::app
