// SPDX-License-Identifier: MIT
#include "app/settings/palettes.h"

namespace matwright::app {
namespace {

struct Colours {
    QColor window, text, base, alternate, button, faded, disabled;
    QColor accent, onAccent, link, visited, toolTip, onToolTip;
    QColor light, midlight, mid, dark, shadow;
};

QPalette paletteOf(const Colours& c) {
    QPalette palette(c.text, c.button, c.light, c.dark, c.mid, c.text, c.text, c.base, c.window);
    palette.setColor(QPalette::AlternateBase, c.alternate);
    palette.setColor(QPalette::PlaceholderText, c.faded);
    palette.setColor(QPalette::Highlight, c.accent);
    palette.setColor(QPalette::HighlightedText, c.onAccent);
    palette.setColor(QPalette::Link, c.link);
    palette.setColor(QPalette::LinkVisited, c.visited);
    palette.setColor(QPalette::ToolTipBase, c.toolTip);
    palette.setColor(QPalette::ToolTipText, c.onToolTip);
    palette.setColor(QPalette::Midlight, c.midlight);
    palette.setColor(QPalette::Shadow, c.shadow);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText,
                            QPalette::PlaceholderText, QPalette::Link, QPalette::LinkVisited}) {
        palette.setColor(QPalette::Disabled, role, c.disabled);
    }
    palette.setColor(QPalette::Disabled, QPalette::Highlight, c.midlight);
    palette.setColor(QPalette::Disabled, QPalette::HighlightedText, c.disabled);
    return palette;
}

}  // namespace

QPalette lightPalette() {
    return paletteOf({.window = 0xf3f0ea,
                      .text = 0x26231f,
                      .base = 0xffffff,
                      .alternate = 0xf7f4ef,
                      .button = 0xebe6dd,
                      .faded = 0x635d54,
                      .disabled = 0x7c756b,
                      .accent = 0x0c6a6b,
                      .onAccent = 0xffffff,
                      .link = 0x0b5c8a,
                      .visited = 0x6a3d86,
                      .toolTip = 0x2f2b27,
                      .onToolTip = 0xf7f4ef,
                      .light = 0xffffff,
                      .midlight = 0xe3ddd3,
                      .mid = 0xbdb5a8,
                      .dark = 0x8e867a,
                      .shadow = 0x4a453e});
}

QPalette darkPalette() {
    return paletteOf({.window = 0x2a2826,
                      .text = 0xf1ede6,
                      .base = 0x1d1c1a,
                      .alternate = 0x252321,
                      .button = 0x3b3835,
                      .faded = 0xb5aea3,
                      .disabled = 0x98917f,
                      .accent = 0x5cc7bd,
                      .onAccent = 0x0d1f1e,
                      .link = 0x85c5ee,
                      .visited = 0xcfa8e6,
                      .toolTip = 0xf1ede6,
                      .onToolTip = 0x26231f,
                      .light = 0x57534e,
                      .midlight = 0x47433f,
                      .mid = 0x1f1d1b,
                      .dark = 0x171614,
                      .shadow = 0x0b0a0a});
}

QColor edgeColour(const QPalette& palette) {
    const QColor text = palette.color(QPalette::WindowText);
    const QColor window = palette.color(QPalette::Window);
    const auto mixed = [](int a, int b) { return (a * 3 + b * 2) / 5; };
    return {mixed(text.red(), window.red()), mixed(text.green(), window.green()),
            mixed(text.blue(), window.blue())};
}

bool isDark(const QPalette& palette) {
    return palette.color(QPalette::WindowText).lightness() >
           palette.color(QPalette::Window).lightness();
}

}  // namespace matwright::app
