// SPDX-License-Identifier: MIT
#include "app/files/kept_pictures.h"
#include "core/making/fold.h"

#include <utility>

namespace matwright::app {

std::optional<KeptPictures::Look> KeptPictures::lookOf(const Making& making, PieceId slot) {
    const auto placement = making.work.placements.find(slot);
    const Piece* piece = matwright::find(making.sketch, slot);
    if (placement == making.work.placements.end() || !piece) {
        return {};
    }
    const auto photo = making.work.photos.find(placement->second.photo);
    if (photo == making.work.photos.end()) {
        return {};
    }
    return Look{photo->second.content, photo->second.tone, placement->second,
                shownWindow(*piece, placement->second.border, making.sketch.page)};
}

void KeptPictures::take(const Making& making, std::map<PieceId, std::string> pictures) {
    m_kept.clear();
    for (auto& [slot, jpeg] : pictures) {
        if (auto look = lookOf(making, slot); look && !jpeg.empty()) {
            m_kept.emplace(slot, Kept{*look, std::move(jpeg)});
        }
    }
}

std::string KeptPictures::find(const Making& making, PieceId slot) const {
    const auto kept = m_kept.find(slot);
    const bool isRight = kept != m_kept.end() && kept->second.look == lookOf(making, slot);
    return isRight ? kept->second.jpeg : std::string();
}

std::map<PieceId, std::string> KeptPictures::of(const Making& making) const {
    std::map<PieceId, std::string> pictures;
    for (const auto& [slot, kept] : m_kept) {
        if (std::string jpeg = find(making, slot); !jpeg.empty()) {
            pictures.emplace(slot, std::move(jpeg));
        }
    }
    return pictures;
}

}  // namespace matwright::app
