// SPDX-License-Identifier: MIT
#include "app/cutting/cutting_side.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QUndoStack>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/length_field.h"
#include "app/panels/section.h"
#include "core/papers/paper_on_hand.h"

namespace matwright::app {

namespace {

QPushButton* addQuiet(QHBoxLayout* row, const QString& text, const QString& hint) {
    auto* button = new QPushButton(text);
    button->setToolTip(hint);
    button->setAutoDefault(false);
    settle(button);
    row->addWidget(button);
    return button;
}

}  // namespace

CuttingSide::CuttingSide(const CuttingChoice& choice, Scale scale, QUndoStack& undoStack,
                         QWidget* parent)
    : QWidget(parent),
      m_choice(choice),
      m_undoStack(undoStack),
      m_undoFloor(undoStack.index()),
      m_redoTop(undoStack.index()),
      m_pages(new QLabel),
      m_table(new PieceTable),
      m_empty(new QLabel(tr("Nothing on this page is cut from paper yet.\n\nAdd a mat under a "
                            "photo, a strip or a block."))),
      m_fillPaper(new QComboBox) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    column->setSpacing(6);
    column->addWidget(makeHead());
    column->addWidget(m_table, 1);
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setMargin(16);
    column->addWidget(m_empty, 1);
    m_fill = makeFill();
    column->addWidget(m_fill);
    column->addWidget(makeOptions(scale));
    connect(&m_undoStack, &QUndoStack::indexChanged, this, &CuttingSide::showUndo);
    showUndo();
}

QWidget* CuttingSide::makeHead() {
    auto* head = new QWidget;
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins({});
    column->setSpacing(4);
    m_pages->setTextFormat(Qt::PlainText);
    m_pages->setWordWrap(true);
    column->addWidget(m_pages);
    auto* row = new QHBoxLayout;
    auto* more =
        addQuiet(row, tr("Add pa&ges…"), tr("Plan the papers of other pages together with this"));
    m_onlyThis = addQuiet(row, tr("Onl&y this page"), tr("Leave the other pages out again"));
    row->addStretch(1);
    m_undo = addQuiet(row, tr("&Undo"), {});
    m_redo = addQuiet(row, tr("&Redo"), {});
    column->addLayout(row);
    connect(more, &QPushButton::clicked, this, &CuttingSide::pagesAsked);
    connect(m_onlyThis, &QPushButton::clicked, this, &CuttingSide::onlyThisPageAsked);
    connect(m_undo, &QPushButton::clicked, this, &CuttingSide::undo);
    connect(m_redo, &QPushButton::clicked, this, &CuttingSide::redo);
    return head;
}

QWidget* CuttingSide::makeFill() {
    auto* fill = new QWidget;
    auto* row = new QHBoxLayout(fill);
    row->setContentsMargins({});
    auto* label = new QLabel(tr("&Those without:"));
    label->setBuddy(m_fillPaper);
    row->addWidget(label);
    m_fillPaper->setEditable(true);
    m_fillPaper->setInsertPolicy(QComboBox::NoInsert);
    m_fillPaper->lineEdit()->setPlaceholderText(tr("a paper"));
    m_fillPaper->setAccessibleName(tr("Paper for every piece without one"));
    settle(m_fillPaper);
    row->addWidget(m_fillPaper, 1);
    auto* give = addQuiet(row, tr("Gi&ve to all"), tr("Every piece without a paper gets this one"));
    connect(give, &QPushButton::clicked, this, &CuttingSide::askToFill);
    return fill;
}

void CuttingSide::askToFill() {
    const QString paper = m_fillPaper->currentText().simplified();
    if (paper.isEmpty()) {
        m_fillPaper->setFocus();
        return;
    }
    emit fillAsked(paper);
}

QWidget* CuttingSide::makeOptions(Scale scale) {
    auto* section = new Section(tr("How to plan"));
    addLengths(*section, scale);
    auto* seconds = new QSpinBox;
    seconds->setRange(1, mostSeconds);
    seconds->setSuffix(tr(" s"));
    seconds->setValue(m_choice.seconds);
    seconds->setKeyboardTracking(false);
    seconds->setToolTip(tr("A longer search may save a sheet where many pieces are cut."));
    section->addRow(tr("Look &for up to"), seconds);
    connect(seconds, &QSpinBox::valueChanged, this, [this](int value) {
        m_choice.seconds = value;
        emit choiceChanged();
    });
    auto* buy = new QCheckBox(tr("&Buy 12 × 12 in sheets where there are too few"));
    buy->setChecked(m_choice.mayBuy);
    settle(buy);
    section->addWide(buy);
    connect(buy, &QCheckBox::toggled, this, [this](bool on) {
        m_choice.mayBuy = on;
        emit choiceChanged();
    });
    return section;
}

void CuttingSide::addLengths(Section& section, Scale scale) {
    const auto add = [&](const QString& label, const QString& hint, Length CuttingChoice::* value,
                         Length low, Length high) {
        auto* field = new LengthField;
        field->setScale(scale);
        field->setRange(low, high);
        field->setValue(m_choice.*value);
        field->setToolTip(hint);
        section.addRow(label, field);
        connect(field, &LengthField::valueChanged, this, [this, value](Length length) {
            m_choice.*value = length;
            emit choiceChanged();
        });
    };
    add(tr("S&mallest scrap"), tr("What is narrower is waste and does not go back on the list."),
        &CuttingChoice::usefulSide, leastUsefulSide, mostUsefulSide);
    add(tr("Glue &edge"),
        tr("What stays of a mat under the edges of the photo when its middle is used."),
        &CuttingChoice::glueEdge, {}, mostGlueEdge);
}

void CuttingSide::setPages(const QStringList& names) {
    m_pages->setText(names.size() == 1 ? tr("Page: %1").arg(names.front())
                                       : tr("Pages: %1").arg(names.join(QStringLiteral(", "))));
    m_onlyThis->setVisible(names.size() > 1);
}

void CuttingSide::setLines(std::vector<PieceLine> lines, const QStringList& papers) {
    const bool lacks = std::ranges::any_of(lines, [](const PieceLine& line) {
        return line.isOwn && paperKey(line.piece.paper).empty();
    });
    m_table->setVisible(!lines.empty());
    m_empty->setVisible(lines.empty());
    m_fill->setVisible(lacks);
    m_table->setLines(std::move(lines), papers);
    const QString typed = m_fillPaper->currentText();
    m_fillPaper->clear();
    m_fillPaper->addItems(papers);
    m_fillPaper->setCurrentIndex(
        typed.isEmpty() && !papers.isEmpty() ? 0 : static_cast<int>(papers.indexOf(typed)));
    if (!typed.isEmpty()) {
        m_fillPaper->setEditText(typed);
    }
}

void CuttingSide::showUndo() {
    const int now = m_undoStack.index();
    m_redoTop = m_undoStack.canRedo() ? std::max(m_redoTop, now) : now;
    m_undo->setEnabled(m_undoStack.canUndo() && now > m_undoFloor);
    m_redo->setEnabled(m_undoStack.canRedo() && now < m_redoTop);
    m_undo->setToolTip(m_undo->isEnabled() ? tr("Undo: %1 (Ctrl+Z)").arg(m_undoStack.undoText())
                                           : QString());
    m_redo->setToolTip(m_redo->isEnabled()
                           ? tr("Redo: %1 (Ctrl+Shift+Z)").arg(m_undoStack.redoText())
                           : QString());
}

void CuttingSide::undo() {
    if (m_undo->isEnabled()) {
        m_undoStack.undo();
    }
}

void CuttingSide::redo() {
    if (m_redo->isEnabled()) {
        m_undoStack.redo();
    }
}

}  // namespace matwright::app
