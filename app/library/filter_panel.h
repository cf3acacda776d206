// SPDX-License-Identifier: MIT
#pragma once

#include <QCheckBox>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "app/library/choice_group.h"
#include "app/library/finder.h"

namespace matwright::app {

// What one looks for: words, and every filter with how many sketches each choice would leave.
class FilterPanel final : public QWidget {
    Q_OBJECT

  public:
    // The finder outlives the panel.
    explicit FilterPanel(Finder& finder, QWidget* parent = nullptr);

    QLineEdit& words() { return *m_words; }
    // 0 is the choice of sketches without photos.
    ChoiceButton& photoChoice(int photos) { return m_photos->button(photos); }
    // Puts the keyboard into the words, with this behind what is there.
    void beginTyping(const QString& text);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  signals:
    // Down was pressed in the words: on to the sketches.
    void wallWanted();

  private:
    void makeWords();
    QWidget* makeGroups();
    void connectGroups();
    void showFound();
    void showLabels();
    void showCounts();
    void change(const std::function<void(Query&)>& change);

    Finder& m_finder;
    QLineEdit* m_words;
    QCheckBox* m_wholeWords;
    QCheckBox* m_orFewer;
    QPushButton* m_showAll;
    ChoiceGroup* m_photos;
    ChoiceGroup* m_kept;  // favourites
    ChoiceGroup* m_pages;
    ChoiceGroup* m_pageSizes;
    ChoiceGroup* m_prints;
    ChoiceGroup* m_ways;
    ChoiceGroup* m_room;
    ChoiceGroup* m_tags;
    ChoiceGroup* m_folders;
    std::shared_ptr<const Holdings> m_labelled;  // whose values the groups show
};

}  // namespace matwright::app
