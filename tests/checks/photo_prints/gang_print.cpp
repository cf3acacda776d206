// SPDX-License-Identifier: MIT
// Two photos as two 3x4 prints side by side on one 4x6: what the speed of prints is measured with.
// gang_print LEFT.jpg RIGHT.jpg OUT.jpg
#include <cstdio>
#include <fstream>

#include "core/prints/rendering.h"

namespace {

using namespace matwright;

constexpr Size paper{Length::inches(3), Length::inches(4)};

Print printOf(PhotoId photo) {
    Print print;
    print.photo = photo;
    print.paper = paper;
    print.trim = Rect::at({}, paper);
    print.window = paper;
    return print;
}

}  // namespace

int main(int count, char** arguments) {
    if (count != 4) {
        std::puts("gang_print LEFT.jpg RIGHT.jpg OUT.jpg");
        return 2;
    }
    Photo left;
    Photo right;
    left.path = arguments[1];
    right.path = arguments[2];
    const std::vector<Print> prints{printOf({1}), printOf({2})};
    const std::vector<Gang> gangs = simpleGangs(prints);
    const auto photoOf = [&](PhotoId id) -> const Photo& { return id.value == 1 ? left : right; };
    const auto file = gangFile(gangs.front(), prints, photoOf, PrintOptions{});
    if (!file) {
        std::puts(file.error().text().c_str());
        return 1;
    }
    std::ofstream(arguments[3], std::ios::binary) << *file;
    return 0;
}
