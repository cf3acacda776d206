// SPDX-License-Identifier: MIT
#include "core/making/copies.h"

#include <algorithm>
#include <set>

namespace matwright {

namespace {

std::set<std::string> papersOf(const Sketch& sketch) {
    std::set<std::string> papers;
    for (const auto& [id, piece] : sketch.pieces) {
        papers.insert(piece.paper);
        for (const Mat& mat : piece.mats) {
            papers.insert(mat.paper);
        }
    }
    return papers;
}

// What the photos of `copy` are called on the page once `added` are there too.
std::map<PhotoId, PhotoId> newNames(const Making& making, const PhotoEdit& added,
                                    const Making& copy) {
    std::map<ContentKey, PhotoId> byContent;
    for (const auto& [id, photo] : making.work.photos) {
        byContent.emplace(photo.content, id);
    }
    for (const auto& [id, photo] : added.photos) {
        byContent.emplace(photo->content, id);
    }
    std::map<PhotoId, PhotoId> names;
    for (const auto& [id, photo] : copy.work.photos) {
        names.emplace(id, byContent.at(photo.content));
    }
    return names;
}

}  // namespace

Making copyOf(const Making& making, std::span<const PieceId> ids) {
    const std::set<PieceId> wanted(ids.begin(), ids.end());
    Making copy;
    copy.sketch.page = making.sketch.page;
    for (const PieceId id : making.sketch.order) {
        if (!wanted.contains(id)) {
            continue;
        }
        copy.sketch.order.push_back(id);
        copy.sketch.pieces.emplace(id, making.sketch.pieces.at(id));
        if (const Placement* there = find(making.work, id)) {
            copy.work.placements.emplace(id, *there);
            copy.work.photos.emplace(there->photo, making.work.photos.at(there->photo));
        }
    }
    for (const std::string& paper : papersOf(copy.sketch)) {
        if (const auto look = making.work.papers.find(paper); look != making.work.papers.end()) {
            copy.work.papers.insert(*look);
        }
    }
    return copy;
}

PageEdit addCopy(const Making& making, const Making& copy) {
    std::vector<Piece> pieces;
    pieces.reserve(copy.sketch.order.size());
    for (const PieceId id : copy.sketch.order) {
        pieces.push_back(copy.sketch.pieces.at(id));
    }
    std::vector<Photo> photos;
    photos.reserve(copy.work.photos.size());
    for (const auto& [id, photo] : copy.work.photos) {
        photos.push_back(photo);
    }
    PageEdit edit{addPieces(making.sketch, pieces), addPhotos(making.work, photos)};
    const std::map<PhotoId, PhotoId> names = newNames(making, edit.photos, copy);
    for (auto to = edit.sketch.pieces.begin(); const PieceId from : copy.sketch.order) {
        if (const Placement* there = find(copy.work, from)) {
            Placement placement = *there;
            placement.photo = names.at(there->photo);
            edit.photos.placements.emplace(to->first, placement);
        }
        ++to;
    }
    for (const auto& [paper, look] : copy.work.papers) {
        if (!making.work.papers.contains(paper)) {
            edit.photos.papers.emplace(paper, look);
        }
    }
    return edit;
}

}  // namespace matwright
