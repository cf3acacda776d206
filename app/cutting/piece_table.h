// SPDX-License-Identifier: MIT
#pragma once

#include <QStringListModel>
#include <QTableWidget>
#include <vector>

#include "core/measure/length_text.h"
#include "core/paperplan/paper_pieces.h"

class QCheckBox;
class QComboBox;

namespace matwright::app {

// One line of what is cut from paper.
struct PieceLine {
    PaperPiece piece;
    bool isOwn = true;    // of the open page, so that it can be changed here
    bool gutted = false;  // of mats: the hidden middle is used
    QString name;         // with the page's name where there are several
    QString size;
};
std::vector<PieceLine> tableLines(std::span<const PaperPage> pages,
                                  const std::vector<PaperPiece>& pieces, Scale scale);

// What is cut from paper, each with the paper it is cut from and, for mats, whether the hidden
// middle is used. Changes nothing itself.
class PieceTable final : public QTableWidget {
    Q_OBJECT

  public:
    explicit PieceTable(QWidget* parent = nullptr);

    // Fields stay as they are (with the focus) where the pieces are the same ones.
    void setLines(std::vector<PieceLine> lines, const QStringList& papers);
    const std::vector<PieceLine>& lines() const { return m_lines; }
    // Nullptr where the line has none.
    QComboBox* paperBox(int row) const;
    QCheckBox* middleSwitch(int row) const;
    // Takes what is typed in a paper box, as if the box had been left.
    void finishTyping();

  signals:
    void paperNamed(int row, const QString& paper);
    void middleSwitched(int row, bool used);

  protected:
    void changeEvent(QEvent* event) override;
    // Undo and redo are the window's, not the letters' in a box.
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    enum Column { Name, Paper, Middle, Columns };
    bool hasSamePieces(const std::vector<PieceLine>& lines) const;
    void build();
    void forgetBoxes();
    QWidget* makePaperBox(int row);
    QWidget* makeSwitch(int row);
    void fill();
    void takePaper(int row);

    std::vector<PieceLine> m_lines;
    QStringListModel* m_papers;
};

}  // namespace matwright::app
