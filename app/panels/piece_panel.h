// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>
#include <vector>

#include "app/editing/session.h"
#include "app/panels/paper_names.h"
#include "app/settings/settings.h"

class QLabel;
class QScrollArea;

namespace matwright::app {

class PhotoSection;
class PieceSection;
class TintedLabel;
class WordsSection;

// The figures of the selected piece, or what several selected pieces have in common, to be read and
// changed. Every change is one undo step; steps and typing that follow each other closely are one
// together. Without a selection it says what to select.
class PiecePanel final : public QWidget {
    Q_OBJECT

  public:
    // Both must outlive the panel.
    PiecePanel(Session& session, SettingsStore& settings, QWidget* parent = nullptr);
    // The person asked for this piece: the focus goes to its name, scrolled into view.
    void startOnName();
    // Offered where a paper is named; the look of one that is chosen comes along.
    void useKnownPapers(KnownPapers known) { m_papers->use(std::move(known)); }

  signals:
    // The crop window is wanted for the selected slot.
    void cropRequested();

  private:
    void build(SettingsStore& settings);
    void sessionChanged(const Change& change);
    void refresh();
    void showHead(const std::vector<const Piece*>& pieces);
    void forgetTyping();

    Session& m_session;
    QLabel* m_title;
    TintedLabel* m_subtitle;
    PaperNames* m_papers;
    PhotoSection* m_photo = nullptr;
    WordsSection* m_words = nullptr;
    QScrollArea* m_area = nullptr;
    std::vector<PieceSection*> m_sections;
    Session::Selection m_shown;
};

}  // namespace matwright::app
