// SPDX-License-Identifier: MIT
#include "app/cutting/page_papers.h"

#include <QCoreApplication>
#include <set>

namespace matwright::app {

namespace {

QString paperLabel(const char* text) {
    return QCoreApplication::translate("matwright::app::PagePapers", text);
}

void setPaper(Piece& piece, const PaperPiece& which, const std::string& paper) {
    (which.mat ? piece.mats[*which.mat].paper : piece.paper) = paper;
}

}  // namespace

Result<void> namePaper(Session& session, const PaperPiece& piece, const QString& paper,
                       const PhotoEdit& along) {
    Piece after = session.sketch().pieces.at(piece.piece);
    setPaper(after, piece, paper.toStdString());
    return session.perform({changePiece(piece.piece, std::move(after)), along},
                           piece.mat ? paperLabel("Change mat paper") : paperLabel("Change paper"));
}

Result<void> useMiddle(Session& session, const PaperPiece& piece, bool used) {
    Piece after = session.sketch().pieces.at(piece.piece);
    after.mats[piece.mat.value()].gutted = used;
    return session.perform(
        changePiece(piece.piece, std::move(after)),
        used ? paperLabel("Use the hidden middle") : paperLabel("Keep the mat whole"));
}

Result<void> fillPapers(Session& session, const std::vector<PaperPiece>& pieces,
                        const QString& paper, const PhotoEdit& along) {
    Edit edit;
    for (const PaperPiece& piece : pieces) {
        if (piece.page != 0 || !paperKey(piece.paper).empty()) {
            continue;
        }
        auto& after = edit.pieces[piece.piece];
        if (!after) {
            after = session.sketch().pieces.at(piece.piece);
        }
        setPaper(*after, piece, paper.toStdString());
    }
    return session.perform({edit, edit.isEmpty() ? PhotoEdit() : along},
                           paperLabel("Choose papers"));
}

QStringList paperChoices(std::span<const PaperOnHand> onHand,
                         const std::vector<PaperPiece>& pieces) {
    QStringList choices;
    std::set<std::string> known;
    const auto add = [&](const std::string& name) {
        const std::string key = paperKey(name);
        if (!key.empty() && known.insert(key).second) {
            choices << QString::fromStdString(name);
        }
    };
    for (const PaperOnHand& paper : onHand) {
        add(paper.name);
    }
    for (const PaperPiece& piece : pieces) {
        add(piece.paper);
    }
    return choices;
}

std::map<std::string, Colour> paperColours(const PhotoWork& work) {
    std::map<std::string, Colour> colours;
    for (const auto& [name, look] : work.papers) {
        colours.emplace(name, look.colour);
    }
    return colours;
}

}  // namespace matwright::app
