// SPDX-License-Identifier: MIT
#include "app/panels/piece_section.h"

namespace matwright::app {

PieceSection::PieceSection(const QString& heading, Session& session, SettingsStore& settings,
                           QWidget* parent)
    : Section(heading, parent), m_session(session), m_settings(settings) {}

void PieceSection::change(const QString& label, int gesture, const PieceChange& change,
                          TypedField* field, const PhotoEdit& along) {
    const auto done = changeSelected(m_session, label, gesture, change, along);
    if (done) {
        return;
    }
    emit refreshAsked();
    const QString sentence = QString::fromStdString(done.error().sentence);
    if (field) {
        field->showError(sentence);
    } else {
        complain(sentence);
    }
}

LengthField* PieceSection::newLength(Length low, Length high) {
    auto* field = new LengthField({}, this);
    field->setScale(scale());
    field->setRange(low, high);
    return field;
}

}  // namespace matwright::app
