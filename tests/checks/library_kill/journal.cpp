// SPDX-License-Identifier: MIT
#include "tests/checks/library_kill/journal.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <fstream>
#include <sstream>

#include "core/sketchfile/sketch_file.h"

namespace matwright::check {

Sketch versionSketch(int number, const std::string& name) {
    Sketch sketch = blankSketch();
    sketch.name = name;
    sketch.note = fmt::format("version {}", number);
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.size = {Length::inches(4), Length::inches(6)};
    slot.printSize = slot.size;
    // Some files are long, so that writing them takes a while.
    for (int i = 1; i <= 1 + number % 80; ++i) {
        slot.place.x = Length::inches(0, i, 16);
        sketch.pieces.emplace(PieceId{static_cast<std::uint32_t>(i)}, slot);
        sketch.order.push_back(PieceId{static_cast<std::uint32_t>(i)});
    }
    return sketch;
}

std::optional<int> versionOf(std::string_view sketchFileBytes) {
    const auto read = readSketch(sketchFileBytes);
    int number = 0;
    const bool isOurs = read && std::sscanf(read->sketch.note.c_str(), "version %d", &number) == 1;
    return isOurs ? std::optional(number) : std::nullopt;
}

void Journal::write(const JournalLine& line) const {
    const std::string text = fmt::format("{} {} {} {}\n", static_cast<int>(line.deed), line.version,
                                         line.other, line.sentence);
    const int file = ::open(m_file.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
    if (file < 0 || ::write(file, text.data(), text.size()) != static_cast<ssize_t>(text.size())) {
        std::perror("the journal");
        ::_exit(2);
    }
    ::close(file);
}

std::vector<JournalLine> Journal::read() const {
    std::vector<JournalLine> lines;
    std::ifstream file(m_file);
    for (std::string text; std::getline(file, text);) {
        std::istringstream words(text);
        int deed = 0;
        JournalLine line{Deed::DidOther, 0, 0, ""};
        words >> deed >> line.version >> line.other;
        std::getline(words, line.sentence);
        line.deed = static_cast<Deed>(deed);
        lines.push_back(std::move(line));
    }
    return lines;
}

}  // namespace matwright::check
