// SPDX-License-Identifier: MIT
#include "app/panels/piece_panel.h"

#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <map>

#include "app/panels/kind_words.h"
#include "app/panels/mat_rows.h"
#include "app/panels/photo_section.h"
#include "app/panels/place_section.h"
#include "app/panels/shape_section.h"
#include "app/panels/tint.h"
#include "app/panels/words_section.h"

namespace matwright::app {

PiecePanel::PiecePanel(Session& session, SettingsStore& settings, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_title(new QLabel(this)),
      m_subtitle(new TintedLabel(Tint::Quiet, {}, this)),
      m_papers(new PaperNames(session, this)) {
    build(settings);
    connect(&session, &Session::changed, this, &PiecePanel::sessionChanged);
    connect(&settings, &SettingsStore::changed, this, [this, &settings] {
        for (LengthField* field : findChildren<LengthField*>()) {
            field->setScale(settings.value().scale);
        }
        refresh();
    });
    refresh();
}

void PiecePanel::build(SettingsStore& settings) {
    setAccessibleName(tr("Selected piece"));
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(12, 10, 12, 12);
    layout->setSpacing(6);
    QFont font = m_title->font();
    font.setBold(true);
    font.setPointSizeF(font.pointSizeF() * 1.15);
    m_title->setFont(font);
    m_title->setWordWrap(true);
    m_title->setTextFormat(Qt::PlainText);
    layout->addWidget(m_title);
    layout->addWidget(m_subtitle);
    m_photo = new PhotoSection(m_session, settings);
    connect(m_photo, &PhotoSection::cropRequested, this, &PiecePanel::cropRequested);
    m_words = new WordsSection(m_session, settings, *m_papers);
    m_sections = {m_photo, new MatsSection(m_session, settings, *m_papers),
                  new PlaceSection(m_session, settings), new ShapeSection(m_session, settings),
                  m_words};
    for (PieceSection* section : m_sections) {
        layout->addWidget(section);
        connect(section, &PieceSection::refreshAsked, this, &PiecePanel::refresh);
    }
    layout->addStretch(1);
    m_area = addScrolled(this, content);
}

void PiecePanel::startOnName() {
    if (!m_session.selection().empty()) {
        m_words->startOnName();
        m_area->ensureWidgetVisible(m_words);
    }
}

void PiecePanel::sessionChanged(const Change& change) {
    if (change.has(Change::Pieces) || change.has(Change::Selection) ||
        change.has(Change::Placements) || change.has(Change::Photos)) {
        refresh();
    }
}

void PiecePanel::refresh() {
    if (m_shown != m_session.selection()) {
        m_shown = m_session.selection();
        forgetTyping();
    }
    std::vector<const Piece*> pieces;
    for (const PieceId id : m_session.selection()) {
        pieces.push_back(matwright::find(m_session.sketch(), id));
    }
    showHead(pieces);
    m_subtitle->setVisible(!m_subtitle->text().isEmpty());
    for (PieceSection* section : m_sections) {
        section->complain({});
        section->setVisible(!pieces.empty());
        if (!pieces.empty()) {
            section->showPieces(pieces);
        }
    }
}

void PiecePanel::showHead(const std::vector<const Piece*>& pieces) {
    if (pieces.empty()) {
        m_title->setText(tr("Nothing selected"));
        m_subtitle->setText(
            tr("Click a piece on the page to see and change its figures here, or "
               "drag a slot from the tray onto the page."));
        return;
    }
    if (pieces.size() > 1) {
        m_title->setText(tr("%1 pieces").arg(pieces.size()));
        m_subtitle->setText(countedKinds(pieces) +
                            tr("\nWhat you change here changes in all of them."));
        return;
    }
    const Piece& piece = *pieces.front();
    const auto number = pieceNumber(m_session.sketch(), m_session.onlySelected());
    m_title->setText(tr("%1. %2").arg(number).arg(kindTitle(piece.kind)));
    m_subtitle->setText(piece.locked ? tr("Locked: it stays where it is until you unlock it below.")
                                     : QString::fromStdString(piece.name));
}

void PiecePanel::forgetTyping() {
    for (TypedField* field : findChildren<TypedField*>()) {
        field->discardTyped();
    }
    m_photo->forgetWishes();
}

}  // namespace matwright::app
