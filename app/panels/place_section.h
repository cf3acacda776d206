// SPDX-License-Identifier: MIT
#pragma once

#include "app/panels/piece_section.h"

class QCheckBox;

namespace matwright::app {

class AngleField;
class TintedLabel;

// Place, trim size and turn. Locked pieces are shown and left alone.
class PlaceSection final : public PieceSection {
    Q_OBJECT

  public:
    PlaceSection(Session& session, SettingsStore& settings, QWidget* parent = nullptr);
    void showPieces(Pieces pieces) override;

  private:
    // A row whose figure, typed or stepped, goes into each piece through `set`.
    using Set = std::function<void(Piece&, Length)>;
    LengthField* addLengthRow(const QString& label, const QString& undoLabel, Length low,
                              Length high, const Set& set);

    Rect pageOfPiece(const Piece& piece) const;
    void showPage(Pieces pieces);

    TintedLabel* m_page;
    LengthField* m_left;
    LengthField* m_top;
    LengthField* m_width;
    LengthField* m_height;
    QCheckBox* m_keepRatio;
    AngleField* m_rotation;
};

}  // namespace matwright::app
