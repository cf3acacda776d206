// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>

#include "app/editing/session.h"
#include "core/paperplan/paper_pieces.h"
#include "core/papers/paper_on_hand.h"

namespace matwright::app {

// What the cutting window does to the papers of the open page; each one undo step of the session,
// `along` part of it: how the paper looks (lookFromHome).

// The piece itself or its mat is cut from this paper.
Result<void> namePaper(Session& session, const PaperPiece& piece, const QString& paper,
                       const PhotoEdit& along = {});
// Whether the hidden middle of this mat is used.
Result<void> useMiddle(Session& session, const PaperPiece& piece, bool used);
// Those of `pieces` that name no paper are cut from this one.
Result<void> fillPapers(Session& session, const std::vector<PaperPiece>& pieces,
                        const QString& paper, const PhotoEdit& along = {});

// What can be chosen: the names of papers on hand, then those that only pages name; each once.
QStringList paperChoices(std::span<const PaperOnHand> onHand,
                         const std::vector<PaperPiece>& pieces);

// How the papers of a page look, for its plan.
std::map<std::string, Colour> paperColours(const PhotoWork& work);

}  // namespace matwright::app
