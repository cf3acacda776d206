// SPDX-License-Identifier: MIT
#include "tests/app/batch/library_run.h"

#include "core/sketch/edit.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

LibraryRun::LibraryRun() {
    libraryFolder = folder / "library";
    cacheFolder = folder / "cache";
    disk = &store;
    std::filesystem::create_directories(libraryFolder);
}

void LibraryRun::keep(const std::string& path, const Sketch& sketch) {
    const std::filesystem::path file = libraryFolder / path;
    std::filesystem::create_directories(file.parent_path());
    test::writeFile(file, writeSketch(sketch));
}

int LibraryRun::library(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "library");
    return run(arguments);
}

std::vector<std::string> LibraryRun::paths() const {
    std::vector<std::string> paths;
    const nlohmann::json all = answer();
    for (const nlohmann::json& sketch : all["sketches"]) {
        paths.push_back(sketch["path"]);
    }
    return paths;
}

Sketch pageOf(const std::string& name, const std::vector<PhotoSpot>& photos) {
    Sketch sketch = blankSketch();
    sketch.name = name;
    std::vector<Piece> pieces;
    for (const PhotoSpot& photo : photos) {
        Piece piece;
        piece.kind = PieceKind::PhotoSlot;
        piece.place = photo.place;
        piece.size = photo.print;
        piece.printSize = photo.print;
        pieces.push_back(piece);
    }
    (void)apply(sketch, addPieces(sketch, pieces));
    return sketch;
}

PhotoSpot spot(int width, int height, int left, int top) {
    return {{Length::inches(width), Length::inches(height)},
            {Length::inches(left), Length::inches(top)}};
}

Sketch withPlaceFor(Sketch sketch, PieceKind kind) {
    Piece piece;
    piece.kind = kind;
    piece.place = {Length::inches(1), Length::inches(10)};
    piece.size = {Length::inches(4), Length::inches(1)};
    const Piece one[] = {piece};
    (void)apply(sketch, addPieces(sketch, one));
    return sketch;
}

}  // namespace matwright::app
