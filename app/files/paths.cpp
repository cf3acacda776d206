// SPDX-License-Identifier: MIT
#include "app/files/paths.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "core/pagefile/page_file.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

QString withoutEnding(const QString& text, QStringView ending) {
    return text.endsWith(ending, Qt::CaseInsensitive) ? text.chopped(ending.size()) : text;
}

// A word of ours before ".svg" goes too; without ".svg" only the kind's own word does, because the
// other may be part of a name.
QString withoutSuffix(const QString& path, DocumentKind kind) {
    const QString bare = withoutEnding(path, u".svg");
    const QString own =
        kind == DocumentKind::Page ? QStringLiteral(".page") : QStringLiteral(".sketch");
    const QString other =
        kind == DocumentKind::Page ? QStringLiteral(".sketch") : QStringLiteral(".page");
    const QString less = withoutEnding(bare, own);
    return less == bare && bare != path ? withoutEnding(bare, other) : less;
}

}  // namespace

std::filesystem::path toPath(const QString& path) {
    return {QFile::encodeName(path).toStdString()};
}

QString suffixOf(DocumentKind kind) {
    return QString::fromLatin1(kind == DocumentKind::Page ? pageFileSuffix : sketchFileSuffix);
}

DocumentKind kindOfPath(const QString& path) {
    return path.endsWith(suffixOf(DocumentKind::Page), Qt::CaseInsensitive) ? DocumentKind::Page
                                                                            : DocumentKind::Sketch;
}

QString withSuffix(const QString& path, DocumentKind kind) {
    const QString suffix = suffixOf(kind);
    return path.endsWith(suffix, Qt::CaseInsensitive) ? path : withoutSuffix(path, kind) + suffix;
}

QString withSketchSuffix(const QString& path) {
    return withSuffix(path, DocumentKind::Sketch);
}

QString documentNameOf(const QString& path) {
    return withoutSuffix(QFileInfo(path).fileName(), kindOfPath(path));
}

QString folderThatIsThere(const QString& folder) {
    return !folder.isEmpty() && QFileInfo(folder).isDir() ? folder : QDir::homePath();
}

QString shownText(const Error& error) {
    return QString::fromStdString(error.text());
}

}  // namespace matwright::app
