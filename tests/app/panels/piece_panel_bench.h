// SPDX-License-Identifier: MIT
#pragma once

#include <QComboBox>
#include <QPushButton>

#include "app/panels/piece_panel.h"
#include "tests/app/panels/panel_bench.h"

namespace matwright::app {

// The panel of the selected piece on a bench.
class PiecePanelTest : public PanelBench {
  protected:
    PiecePanelTest() : panel(session, settings) { show(panel, {320, 1100}); }

    void select(std::initializer_list<std::uint32_t> ids) {
        Session::Selection selection;
        for (const std::uint32_t id : ids) {
            selection.insert(PieceId{id});
        }
        session.select(selection);
    }
    LengthField* length(const char* name) { return control<LengthField>(panel, name); }
    void click(const char* text) {
        auto* button = labelled<QPushButton>(panel, text);
        ASSERT_NE(button, nullptr) << text;
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void choose(const char* combo, const QString& entry) {
        auto* box = control<QComboBox>(panel, combo);
        ASSERT_NE(box, nullptr) << combo;
        PanelBench::choose(box, box->findText(entry));
    }

    PiecePanel panel;
};

}  // namespace matwright::app
