// SPDX-License-Identifier: MIT
#include "app/cutting/piece_table.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <algorithm>

#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "core/papers/paper_on_hand.h"

namespace matwright::app {

namespace {

constexpr int lineHeight = 50;
constexpr int paperBoxWidth = 142;
constexpr int middleWidth = 72;

bool isGutted(const PaperPage& page, const PaperPiece& piece) {
    const Piece& owner = page.sketch.pieces.at(piece.piece);
    return piece.mat && owner.mats[*piece.mat].gutted;
}

bool isSamePiece(const PieceLine& a, const PieceLine& b) {
    return a.isOwn == b.isOwn && a.piece.page == b.piece.page && a.piece.piece == b.piece.piece &&
           a.piece.mat == b.piece.mat && a.piece.side == b.piece.side;
}

}  // namespace

std::vector<PieceLine> tableLines(std::span<const PaperPage> pages,
                                  const std::vector<PaperPiece>& pieces, Scale scale) {
    std::vector<PieceLine> lines;
    lines.reserve(pieces.size());
    for (const PaperPiece& piece : pieces) {
        lines.push_back({piece, piece.page == 0, isGutted(pages[piece.page], piece),
                         QString::fromStdString(piece.name),
                         QString::fromStdString(sizeText(piece.size, scale))});
    }
    return lines;
}

PieceTable::PieceTable(QWidget* parent)
    : QTableWidget(parent), m_papers(new QStringListModel(this)) {
    setColumnCount(Columns);
    setHorizontalHeaderLabels({tr("Cut from paper"), tr("Paper"), tr("Middle")});
    horizontalHeaderItem(Middle)->setToolTip(
        tr("Use the hidden middle of a mat: what the photo covers is cut out and used"));
    verticalHeader()->hide();
    // A long name takes another line rather than the size.
    verticalHeader()->setMinimumSectionSize(lineHeight);
    verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setSectionResizeMode(Name, QHeaderView::Stretch);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    setColumnWidth(Paper, paperBoxWidth);
    setColumnWidth(Middle, middleWidth);
    setShowGrid(false);
    setWordWrap(true);
    setSelectionMode(QAbstractItemView::NoSelection);
    setFocusPolicy(Qt::NoFocus);
    setTabKeyNavigation(false);
    setAccessibleName(tr("What is cut from paper"));
}

bool PieceTable::hasSamePieces(const std::vector<PieceLine>& lines) const {
    return std::ranges::equal(m_lines, lines, isSamePiece);
}

void PieceTable::setLines(std::vector<PieceLine> lines, const QStringList& papers) {
    const bool isSame = hasSamePieces(lines);
    m_lines = std::move(lines);
    if (m_papers->stringList() != papers) {
        m_papers->setStringList(papers);
    }
    if (!isSame) {
        build();
    }
    fill();
}

// A box that goes with the focus in it would still be asked for its text.
void PieceTable::forgetBoxes() {
    for (int row = 0; row < rowCount(); ++row) {
        if (QComboBox* box = paperBox(row)) {
            box->disconnect(this);
            box->lineEdit()->disconnect(this);
        }
    }
    setRowCount(0);
}

void PieceTable::build() {
    forgetBoxes();
    setRowCount(static_cast<int>(m_lines.size()));
    for (int row = 0; row < rowCount(); ++row) {
        auto* item = new QTableWidgetItem;
        item->setFlags(Qt::ItemIsEnabled);
        setItem(row, Name, item);
        setCellWidget(row, Paper, makePaperBox(row));
        if (m_lines[static_cast<std::size_t>(row)].piece.mat) {
            setCellWidget(row, Middle, makeSwitch(row));
        }
    }
}

QWidget* PieceTable::makePaperBox(int row) {
    auto* place = new QWidget;
    auto* layout = new QHBoxLayout(place);
    layout->setContentsMargins(0, 0, 4, 0);
    auto* box = new QComboBox;
    layout->addWidget(box);
    box->setEditable(true);
    box->setInsertPolicy(QComboBox::NoInsert);
    box->setModel(m_papers);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->lineEdit()->setPlaceholderText(tr("needs a paper"));
    box->installEventFilter(this);
    box->lineEdit()->installEventFilter(this);
    settle(box);
    connect(box, &QComboBox::activated, this, [this, row] { takePaper(row); });
    connect(box->lineEdit(), &QLineEdit::editingFinished, this, [this, row] { takePaper(row); });
    return place;
}

QWidget* PieceTable::makeSwitch(int row) {
    auto* place = new QWidget;
    auto* layout = new QHBoxLayout(place);
    layout->setContentsMargins(6, 0, 0, 0);
    auto* box = new QCheckBox(tr("Use"));
    settle(box);
    layout->addWidget(box);
    connect(box, &QCheckBox::clicked, this,
            [this, row](bool used) { emit middleSwitched(row, used); });
    return place;
}

QComboBox* PieceTable::paperBox(int row) const {
    const QWidget* place = cellWidget(row, Paper);
    return place ? place->findChild<QComboBox*>() : nullptr;
}

QCheckBox* PieceTable::middleSwitch(int row) const {
    const QWidget* place = cellWidget(row, Middle);
    return place ? place->findChild<QCheckBox*>() : nullptr;
}

void PieceTable::takePaper(int row) {
    const PieceLine& line = m_lines[static_cast<std::size_t>(row)];
    const QString typed = paperBox(row)->currentText();
    // What was not touched stays as it is, odd blanks and all.
    if (line.isOwn && typed != QString::fromStdString(line.piece.paper)) {
        emit paperNamed(row, typed.simplified());
    }
}

void PieceTable::finishTyping() {
    for (int row = 0; row < rowCount(); ++row) {
        if (paperBox(row)->lineEdit()->hasFocus()) {
            return takePaper(row);
        }
    }
}

bool PieceTable::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
            event->ignore();
            return true;
        }
    }
    return QTableWidget::eventFilter(watched, event);
}

void PieceTable::fill() {
    for (int row = 0; row < rowCount(); ++row) {
        const PieceLine& line = m_lines[static_cast<std::size_t>(row)];
        const QString paper = QString::fromStdString(line.piece.paper);
        item(row, Name)->setText(line.name + u'\n' + line.size);
        item(row, Name)->setToolTip(line.name + u'\n' + line.size);
        item(row, Name)->setForeground(paperKey(line.piece.paper).empty()
                                           ? tintOf(palette(), Tint::Wrong)
                                           : palette().color(QPalette::Text));
        QComboBox* box = paperBox(row);
        if (box->currentText() != paper) {
            box->setCurrentIndex(box->findText(paper, Qt::MatchExactly));
            box->setEditText(paper);
            box->lineEdit()->setCursorPosition(0);
        }
        box->setEnabled(line.isOwn);
        box->setAccessibleName(tr("Paper: %1").arg(line.name));
        box->setToolTip(line.isOwn ? paper : tr("Open that page to choose its papers."));
        if (QCheckBox* middle = middleSwitch(row)) {
            middle->setChecked(line.gutted);
            // One that is on for nothing can still be switched off.
            middle->setEnabled(line.isOwn && (line.piece.noMiddle.empty() || line.gutted));
            middle->setAccessibleName(tr("Use the hidden middle: %1").arg(line.name));
            middle->setToolTip(
                line.piece.noMiddle.empty()
                    ? tr("Cut out what is hidden under the next layer, and cut smaller pieces from "
                         "it")
                    : QString::fromStdString(line.piece.noMiddle));
            middle->setAccessibleDescription(middle->toolTip());
        }
    }
}

void PieceTable::changeEvent(QEvent* event) {
    QTableWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) {
        fill();
    }
}

}  // namespace matwright::app
