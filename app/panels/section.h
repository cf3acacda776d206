// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

class QFormLayout;
class QScrollArea;

namespace matwright::app {

class TintedLabel;

// The least height of anything that can be clicked or typed into.
inline constexpr int controlHeight = 28;

// A part of a panel: a heading and rows of a label with its field, all panels' label columns being
// equally wide.
class Section : public QWidget {
    Q_OBJECT

  public:
    // An empty heading shows none.
    explicit Section(const QString& heading, QWidget* parent = nullptr);

    // The label's mnemonic ("&Width") leads to the field, which takes the label as accessible name
    // unless it has one.
    void addRow(const QString& label, QWidget* field);
    // Across both columns.
    void addWide(QWidget* widget);
    // In the field column, without a label.
    void addBelow(QWidget* widget);
    // Shows or hides what addRow, addWide or addBelow put in.
    void setRowShown(QWidget* field, bool shown);
    // The sentence at the section's end, heard by assistive technology; empty takes it away.
    void complain(const QString& sentence);

  private:
    QFormLayout* m_rows;
    TintedLabel* m_complaint = nullptr;  // made when first needed
};

// Makes `content` scroll up and down inside `panel`, which becomes as wide as it needs to be.
QScrollArea* addScrolled(QWidget* panel, QWidget* content);

// Combo boxes and the like inside a scrolling panel: the wheel turns their value only while they
// have the focus, and scrolls the panel otherwise. Also gives the control its height.
void settle(QWidget* control);

}  // namespace matwright::app
