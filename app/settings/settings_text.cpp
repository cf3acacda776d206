// SPDX-License-Identifier: MIT
#include "app/settings/settings_text.h"

#include <array>
#include <utility>

namespace matwright::app {
namespace {

template <typename T>
using Words = std::initializer_list<std::pair<T, const char*>>;

const Words<Scale> scaleWords = {{Scale::EighthInch, "eighth-inch"},
                                 {Scale::SixteenthInch, "sixteenth-inch"},
                                 {Scale::ThirtySecondInch, "thirty-second-inch"},
                                 {Scale::WholeMillimetre, "millimetre"},
                                 {Scale::HalfMillimetre, "half-millimetre"}};
const Words<Settings::Theme> themeWords = {{Settings::Theme::System, "system"},
                                           {Settings::Theme::Light, "light"},
                                           {Settings::Theme::Dark, "dark"}};

struct SnapFlag {
    const char* key;
    bool SnapSettings::* member;
};
constexpr std::array snapFlags = {
    SnapFlag{"snap/page-edges", &SnapSettings::pageEdges},
    SnapFlag{"snap/margins", &SnapSettings::margins},
    SnapFlag{"snap/page-centres", &SnapSettings::pageCentres},
    SnapFlag{"snap/thirds", &SnapSettings::thirds},
    SnapFlag{"snap/grid", &SnapSettings::grid},
    SnapFlag{"snap/neighbour-edges", &SnapSettings::neighbourEdges},
    SnapFlag{"snap/neighbour-centres", &SnapSettings::neighbourCentres},
    SnapFlag{"snap/gutter", &SnapSettings::gutter},
    SnapFlag{"snap/equal-gaps", &SnapSettings::equalGaps},
    SnapFlag{"snap/mat-edges", &SnapSettings::matEdges},
};

struct LengthKey {
    const char* key;
    Length* value;
};
std::array<LengthKey, 5> lengthKeys(Settings& settings) {
    return {{{"trimmer-step", &settings.trimmerStep},
             {"snap/grid-step", &settings.snap.gridStep},
             {"snap/reach", &settings.snap.reach},
             {"template/printer-margin", &settings.printerMargin},
             {"template/overlap", &settings.overlap}}};
}

QString textAt(const QSettings& file, const char* key) {
    // A value with commas comes back as a list; it was one text in the file.
    const QVariant value = file.value(QLatin1StringView(key));
    return value.typeId() == QMetaType::QStringList ? value.toStringList().join(u',')
                                                    : value.toString();
}

template <typename T>
void readWord(const QSettings& file, const char* key, const Words<T>& words, T& value) {
    const QString text = textAt(file, key);
    for (const auto& [meaning, word] : words) {
        if (text == QLatin1StringView(word)) {
            value = meaning;
        }
    }
}

template <typename T>
QString wordOf(const Words<T>& words, T value) {
    for (const auto& [meaning, word] : words) {
        if (meaning == value) {
            return QString::fromLatin1(word);
        }
    }
    return {};
}

void readFlag(const QSettings& file, const char* key, bool& value) {
    const QString text = textAt(file, key);
    if (text == u"true" || text == u"false") {
        value = text == u"true";
    }
}

void readLength(const QSettings& file, const LengthKey& entry) {
    const auto length = parseLength(textAt(file, entry.key).toStdString(), Unit::Inch);
    if (length) {
        *entry.value = *length;
    }
}

}  // namespace

Settings readSettings(const QSettings& file) {
    Settings settings;
    readWord(file, "scale", scaleWords, settings.scale);
    readWord(file, "theme", themeWords, settings.theme);
    readFlag(file, "snap/on", settings.snapOn);
    readFlag(file, "rulers-shown", settings.rulersShown);
    for (const SnapFlag& flag : snapFlags) {
        readFlag(file, flag.key, settings.snap.*flag.member);
    }
    for (const LengthKey& entry : lengthKeys(settings)) {
        readLength(file, entry);
    }
    settings.screenPpi = textAt(file, "screen-ppi").toDouble();  // 0 where it is no number
    settings.sheetId = textAt(file, "template/sheet").toStdString();
    readFlag(file, "template/tiled", settings.templateTiled);
    settings.libraryFolder = textAt(file, "library/folder");
    settings.watchedFolder = textAt(file, "photos/watched-folder");
    settings.recentFiles = file.value(QStringLiteral("recent-files")).toStringList();
    return settings;
}

void writeSettings(QSettings& file, const Settings& settings) {
    const auto put = [&file](const char* key, const QVariant& value) {
        file.setValue(QLatin1StringView(key), value);
    };
    put("scale", wordOf(scaleWords, settings.scale));
    put("theme", wordOf(themeWords, settings.theme));
    put("snap/on", settings.snapOn);
    put("rulers-shown", settings.rulersShown);
    for (const SnapFlag& flag : snapFlags) {
        put(flag.key, settings.snap.*flag.member);
    }
    Settings lengths = settings;
    for (const LengthKey& entry : lengthKeys(lengths)) {
        put(entry.key, QString::fromStdString(exactText(*entry.value)));
    }
    put("screen-ppi", settings.screenPpi);
    put("template/sheet", QString::fromStdString(settings.sheetId));
    put("template/tiled", settings.templateTiled);
    put("library/folder", settings.libraryFolder);
    put("photos/watched-folder", settings.watchedFolder);
    put("recent-files", settings.recentFiles);
}

}  // namespace matwright::app
