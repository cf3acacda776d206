// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include "app/cutting/cutting_run.h"

class QLabel;
class QListWidget;

namespace matwright::app {

class SheetPictureView;
class TintedLabel;

// A cutting plan to look at: how many sheets and what to buy, the sheets, the chosen one as a
// picture, its pieces and its steps. The chosen step is marked in the picture.
class PlanPanel final : public QWidget {
    Q_OBJECT

  public:
    explicit PlanPanel(QWidget* parent = nullptr);

    // Keeps the chosen sheet where it is still there, and the chosen step where it is the same cut.
    // Without a plan the sentence says what to do.
    void setPlan(FoundPlan plan, const QString& instead);
    // -1 where none is.
    int chosenSheet() const;
    void chooseSheet(int index);
    QListWidget& sheets() { return *m_sheets; }
    QListWidget& steps() { return *m_steps; }
    const SheetPictureView& picture() const { return *m_picture; }
    QString heading() const;
    // The bound, and what is missing or to be bought.
    QString words() const;

  private:
    QWidget* makeMiddle();
    QWidget* makeRight();
    const PaperPlan& plan() const { return **m_plan; }
    // The sheet of this place is the same one, cut the same way.
    bool isSameSheet(const PaperPlan& before, int sheet) const;
    void showWords();
    void listSheets();
    void showSheet();
    void showStep();

    FoundPlan m_plan;  // null, or a plan (never an error)
    QLabel* m_bound;
    QLabel* m_buy;
    TintedLabel* m_missing;
    QListWidget* m_sheets;
    QLabel* m_heading;
    SheetPictureView* m_picture;
    QLabel* m_instead;
    QLabel* m_caution;
    QListWidget* m_pieces;
    QListWidget* m_steps;
    SheetPictureView* m_stepPicture;
    QWidget* m_right = nullptr;
};

}  // namespace matwright::app
