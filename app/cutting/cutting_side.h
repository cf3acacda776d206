// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include "app/cutting/cutting_choice.h"
#include "app/cutting/piece_table.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QSpinBox;
class QUndoStack;

namespace matwright::app {

class LengthField;

// The left of the cutting window: which pages, which paper every piece is cut from, and how the
// plan is looked for.
class CuttingSide final : public QWidget {
    Q_OBJECT

  public:
    // What is undone here are the steps of `undoStack` made since now; it outlives the panel.
    CuttingSide(const CuttingChoice& choice, Scale scale, QUndoStack& undoStack,
                QWidget* parent = nullptr);

    const CuttingChoice& choice() const { return m_choice; }
    void setOnA4(bool onA4) { m_choice.onA4 = onA4; }
    PieceTable& table() { return *m_table; }
    void setPages(const QStringList& names);
    void setLines(std::vector<PieceLine> lines, const QStringList& papers);
    void undo();
    void redo();

  signals:
    void choiceChanged();
    void pagesAsked();
    void onlyThisPageAsked();
    // This paper for every piece that has none.
    void fillAsked(const QString& paper);

  private:
    QWidget* makeHead();
    QWidget* makeFill();
    QWidget* makeOptions(Scale scale);
    void addLengths(class Section& section, Scale scale);
    void showUndo();
    void askToFill();

    CuttingChoice m_choice;
    QUndoStack& m_undoStack;
    const int m_undoFloor;
    int m_redoTop;  // steps above were undone before, elsewhere
    QLabel* m_pages;
    QPushButton* m_onlyThis;
    QPushButton* m_undo;
    QPushButton* m_redo;
    PieceTable* m_table;
    QLabel* m_empty;
    QWidget* m_fill = nullptr;
    QComboBox* m_fillPaper;
};

}  // namespace matwright::app
