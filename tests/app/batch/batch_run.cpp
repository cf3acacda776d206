// SPDX-License-Identifier: MIT
#include "tests/app/batch/batch_run.h"

#include "core/sketch/edit.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

void BatchRun::addSketch(const std::string& name, const Sketch& sketch) {
    files.files[name] = writeSketch(sketch);
}

int BatchRun::run(const std::vector<std::string>& arguments) {
    std::ostringstream results;
    std::ostringstream complaints;
    BatchPorts ports{
        disk ? *disk : files, results,     complaints,     [this] { ++paintingStarts; },
        libraryFolder,        cacheFolder, libraryIsChosen};
    if (photoCommands) {
        ports.photoCommands = [this] { return photoCommands; };
    }
    ports.dataFolder = dataFolder;
    const int code = runBatch(arguments, ports);
    out = results.str();
    err = complaints.str();
    return code;
}

Sketch smallSketch() {
    Piece photo;
    photo.kind = PieceKind::PhotoSlot;
    photo.name = "lighthouse";
    photo.place = {Length::inches(1), Length::inches(1)};
    photo.size = {Length::inches(6), Length::inches(4)};
    photo.printSize = photo.size;
    photo.mats = {{Length::inches(0, 1, 8), {}, "white"},
                  {Length::inches(0, 1, 4), Length::inches(0, 1, 2), "navy"}};
    Piece strip;
    strip.kind = PieceKind::Strip;
    strip.place = {Length::inches(0), Length::inches(9, 1, 2)};
    strip.size = {Length::inches(12), Length::inches(0, 3, 4)};
    strip.paper = "wave";
    Sketch sketch = blankSketch();
    sketch.name = "Small";
    const Piece both[] = {photo, strip};
    (void)apply(sketch, addPieces(sketch, both));
    return sketch;
}

}  // namespace matwright::app
