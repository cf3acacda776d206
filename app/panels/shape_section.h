// SPDX-License-Identifier: MIT
#pragma once

#include "app/panels/piece_section.h"

class QComboBox;

namespace matwright::app {

class CornerTable;

// The shape, with the radius of rounded corners or, for one polygon, its corners.
class ShapeSection final : public PieceSection {
    Q_OBJECT

  public:
    ShapeSection(Session& session, SettingsStore& settings, QWidget* parent = nullptr);
    void showPieces(Pieces pieces) override;

  private:
    void shapeChosen(int index);
    void setCorners(const std::vector<Point>& corners);
    void showRadius(Pieces pieces, bool shown);
    void showCorners(Pieces pieces, bool shown);

    QComboBox* m_shape;
    LengthField* m_radius;
    CornerTable* m_corners;
};

}  // namespace matwright::app
