// SPDX-License-Identifier: MIT
#include "app/parts/parts.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QJsonObject>
#include <QPluginLoader>

namespace matwright::app {
namespace {

QString pathOf(const QString& folder, const QString& name) {
    return QDir(folder).filePath(QStringLiteral("libmatwright-%1.so").arg(name));
}

Error partError(ErrorCode code, const char* what, const QString& path) {
    return {code,
            std::string(what) +
                " Install Matwright again, all of it; your sketches stay as they "
                "are.",
            path.toStdString()};
}

}  // namespace

QString standardPartsFolder() {
    return partsFolderOf(QCoreApplication::applicationDirPath());
}

QString partsFolderOf(const QString& programFolder) {
    return QDir::cleanPath(
        QDir(programFolder).filePath(QStringLiteral(MATWRIGHT_PARTS_FROM_PROGRAM)));
}

Result<QObject*> openPart(const QString& folder, const QString& name) {
    const QString path = pathOf(folder, name);
    if (!QFileInfo::exists(path)) {
        return std::unexpected(
            partError(ErrorCode::NotFound, "This part of Matwright is missing.", path));
    }
    QPluginLoader loader(path);
    // Read without opening the library: another version may not even be able to say so.
    const QJsonObject about = loader.metaData().value(QLatin1StringView("MetaData")).toObject();
    if (about.isEmpty()) {
        return std::unexpected(notThisPart(folder, name));
    }
    if (about.value(QLatin1StringView("version")) != QLatin1StringView(MATWRIGHT_VERSION)) {
        return std::unexpected(partError(
            ErrorCode::NewerVersion, "This part belongs to another version of Matwright.", path));
    }
    if (QObject* object = loader.instance()) {
        return object;
    }
    return std::unexpected(
        partError(ErrorCode::Unsupported,
                  "This part of Matwright cannot be opened here; something it needs is missing.",
                  path + QStringLiteral(" (%1)").arg(loader.errorString())));
}

Error notThisPart(const QString& folder, const QString& name) {
    return partError(ErrorCode::WrongFormat, "This file is not the part of Matwright it should be.",
                     pathOf(folder, name));
}

}  // namespace matwright::app
