// SPDX-License-Identifier: MIT
#include "app/panels/words_section.h"

#include <QCheckBox>
#include <algorithm>

#include "app/panels/paper_look_button.h"
#include "app/panels/paper_names.h"
#include "app/panels/text_field.h"

namespace matwright::app {

namespace {

bool takesPaper(const Piece* piece) {
    return piece->kind != PieceKind::PhotoSlot;
}

template <typename Field>
void showWords(Field* field, Pieces pieces, std::string Piece::* words) {
    const auto common = commonOf(pieces, [words](const Piece& p) { return p.*words; });
    field->showText(QString::fromStdString(common.value_or("")), !common);
}

}  // namespace

WordsSection::WordsSection(Session& session, SettingsStore& settings, PaperNames& papers,
                           QWidget* parent)
    : PieceSection(tr("Paper and words"), session, settings, parent),
      m_paper(new TextField(this)),
      m_look(new PaperLookButton(session, settings, this)),
      m_name(new TextField(this)),
      m_note(new NoteField(this)),
      m_locked(new QCheckBox(tr("Lo&cked in place"), this)) {
    addRow(tr("Paper"), m_paper);
    addBelow(m_look);
    addRow(tr("Name"), m_name);
    addRow(tr("N&ote"), m_note);
    settle(m_locked);
    addBelow(m_locked);
    m_paper->setAccessibleName(tr("Paper"));
    m_paper->setToolTip(tr("What it is cut from, in your own words."));
    papers.offerIn(m_paper);
    connect(m_paper, &TextField::typed, this, [this, &papers](const QString& text, int gesture) {
        change(
            tr("Change paper"), gesture,
            [&](Piece& p) { p.paper = takesPaper(&p) ? text.toStdString() : p.paper; }, nullptr,
            papers.lookOf(text));
    });
    connect(m_name, &TextField::typed, this, [this](const QString& text, int gesture) {
        change(tr("Change name"), gesture, [&](Piece& p) { p.name = text.toStdString(); });
    });
    connect(m_note, &NoteField::typed, this, [this](const QString& text, int gesture) {
        change(tr("Change note"), gesture, [&](Piece& p) { p.note = text.toStdString(); });
    });
    connect(m_locked, &QCheckBox::clicked, this, [this](bool on) {
        m_locked->setTristate(false);
        change(on ? tr("Lock") : tr("Unlock"), 0, [on](Piece& p) { p.locked = on; });
    });
}

void WordsSection::startOnName() {
    m_name->setFocus(Qt::ShortcutFocusReason);
    m_name->selectAll();
}

void WordsSection::showPieces(Pieces pieces) {
    std::vector<const Piece*> papers;
    std::ranges::copy_if(pieces, std::back_inserter(papers), takesPaper);
    setRowShown(m_paper, !papers.empty());
    setRowShown(m_look, !papers.empty());
    if (!papers.empty()) {
        m_look->showPaper(commonOf(Pieces(papers), [](const Piece& piece) { return piece.paper; }));
        showWords(m_paper, papers, &Piece::paper);
    }
    showWords(m_name, pieces, &Piece::name);
    showWords(m_note, pieces, &Piece::note);
    const auto locked = commonOf(pieces, [](const Piece& p) { return p.locked; });
    m_locked->setTristate(!locked);
    m_locked->setCheckState(!locked ? Qt::PartiallyChecked : *locked ? Qt::Checked : Qt::Unchecked);
}

}  // namespace matwright::app
