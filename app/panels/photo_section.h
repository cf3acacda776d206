// SPDX-License-Identifier: MIT
#pragma once

#include "app/panels/piece_section.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace matwright::app {

class TintedLabel;

// Print size and trim of the selected photo slots; hidden unless all selected are photo slots.
class PhotoSection final : public PieceSection {
    Q_OBJECT

  public:
    PhotoSection(Session& session, SettingsStore& settings, QWidget* parent = nullptr);
    void showPieces(Pieces pieces) override;
    // Other pieces are selected now: a wish for a custom size was meant for the ones before.
    void forgetWishes();

  signals:
    // The crop window is wanted for the selected slot.
    void cropRequested();

  private:
    void showPhoto(Pieces pieces);
    void fillPrints(Pieces pieces);
    void fillTrims(Pieces pieces);
    void tellPrint(Pieces pieces);
    void showCustom(bool shown);
    void printChosen(int index);
    void trimChosen(int index);
    void setPrint(const PieceChange& set, int gesture, TypedField* field);

    QLabel* m_photo;        // its name and how finely it prints
    TintedLabel* m_coarse;  // the same where it will not look sharp
    QPushButton* m_crop;
    QComboBox* m_print;
    LengthField* m_printWidth;
    LengthField* m_printHeight;
    QComboBox* m_trim;
    QPushButton* m_trimToPrint;
    TintedLabel* m_printNow;  // told when the print followed another change
    std::optional<Size> m_lastPrint;
    bool m_isPrintAsked = false;
    bool m_customAsked = false;
};

}  // namespace matwright::app
