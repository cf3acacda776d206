// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "app/panels/length_field.h"
#include "app/panels/piece_changes.h"
#include "app/panels/section.h"
#include "app/settings/settings.h"
#include "core/sketch/soundness.h"

namespace matwright::app {

using Pieces = std::span<const Piece* const>;

// A part of the piece panel: shows what the selected pieces have in common, and turns what is typed
// and clicked into edits of all of them.
class PieceSection : public Section {
    Q_OBJECT

  public:
    PieceSection(const QString& heading, Session& session, SettingsStore& settings,
                 QWidget* parent = nullptr);

    // The selected pieces, at least one; emits no edit. Hides itself where it has nothing to offer.
    virtual void showPieces(Pieces pieces) = 0;

  signals:
    // An edit was refused; the pieces are to be shown again.
    void refreshAsked();

  protected:
    Scale scale() const { return m_settings.value().scale; }
    const Session& session() const { return m_session; }
    // Changes the selected pieces. A refusal puts the old figures back and is told in `field`, or
    // at the section's end where there is none. `along` is part of the same step.
    void change(const QString& label, int gesture, const PieceChange& change,
                TypedField* field = nullptr, const PhotoEdit& along = {});
    // A field in the settings' scale with this range.
    LengthField* newLength(Length low, Length high);

  private:
    Session& m_session;
    SettingsStore& m_settings;
};

// Shows the length they have in common, or that they differ.
template <typename Get>
void showLength(LengthField* field, Pieces pieces, Get get) {
    if (const std::optional<Length> common = commonOf(pieces, get)) {
        field->setValue(*common);
    } else {
        field->setMixed();
    }
}

}  // namespace matwright::app
