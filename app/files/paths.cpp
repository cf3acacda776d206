// SPDX-License-Identifier: MIT
#include "app/files/paths.h"

#include <QFile>
#include <QFileInfo>

#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

QString withoutEnding(const QString& text, QStringView ending) {
    return text.endsWith(ending, Qt::CaseInsensitive) ? text.chopped(ending.size()) : text;
}

QString withoutSketchSuffix(const QString& path) {
    return withoutEnding(withoutEnding(path, u".svg"), u".sketch");
}

}  // namespace

std::filesystem::path toPath(const QString& path) {
    return {QFile::encodeName(path).toStdString()};
}

QString withSketchSuffix(const QString& path) {
    const QLatin1StringView suffix(sketchFileSuffix);
    return path.endsWith(suffix, Qt::CaseInsensitive) ? path : withoutSketchSuffix(path) + suffix;
}

QString sketchNameOf(const QString& path) {
    return withoutSketchSuffix(QFileInfo(path).fileName());
}

QString shownText(const Error& error) {
    return QString::fromStdString(error.text());
}

}  // namespace matwright::app
