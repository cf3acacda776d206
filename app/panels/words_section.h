// SPDX-License-Identifier: MIT
#pragma once

#include "app/panels/piece_section.h"

class QCheckBox;

namespace matwright::app {

class NoteField;
class PaperLookButton;
class PaperNames;
class TextField;

// Paper, name, note and the lock.
class WordsSection final : public PieceSection {
    Q_OBJECT

  public:
    WordsSection(Session& session, SettingsStore& settings, PaperNames& papers,
                 QWidget* parent = nullptr);
    void showPieces(Pieces pieces) override;
    // Puts the focus into the name, its words selected.
    void startOnName();

  private:
    TextField* m_paper;
    PaperLookButton* m_look;
    TextField* m_name;
    NoteField* m_note;
    QCheckBox* m_locked;
};

}  // namespace matwright::app
