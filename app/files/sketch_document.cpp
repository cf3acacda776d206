// SPDX-License-Identifier: MIT
#include "app/files/sketch_document.h"

#include <QFile>
#include <QFileInfo>
#include <utility>

#include "app/files/paths.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

QStringList toStringList(const std::vector<std::string>& sentences) {
    QStringList list;
    for (const std::string& sentence : sentences) {
        list << QString::fromStdString(sentence);
    }
    return list;
}

Error inFile(Error error, const QString& path) {
    const std::string name = QFileInfo(path).fileName().toStdString();
    error.where = error.where.empty() ? name : name + ", " + error.where;
    return error;
}

}  // namespace

SketchDocument::SketchDocument(Session& session, FileStore& store, QObject* parent)
    : QObject(parent), m_session(session), m_store(store) {}

QString SketchDocument::shownName() const {
    return m_path.isEmpty() ? tr("Untitled") : sketchNameOf(m_path);
}

void SketchDocument::startNew(Sketch sketch) {
    m_session.reset(std::move(sketch));
    belongTo({}, {});
}

Result<QStringList> SketchDocument::open(const QString& path) {
    const QString absolute = QFileInfo(path).absoluteFilePath();
    auto loaded = load(absolute);
    if (!loaded) {
        return std::unexpected(loaded.error());
    }
    belongTo(absolute, loaded->content);
    return std::move(loaded->warnings);
}

Result<QStringList> SketchDocument::openRecovered(const QString& copyPath,
                                                  const QString& originalPath) {
    auto loaded = load(copyPath);
    if (!loaded) {
        return std::unexpected(loaded.error());
    }
    // Nobody knows what the original held when the work began, so it is not replaced.
    belongTo(originalPath, {});
    m_session.markUnsaved();
    return std::move(loaded->warnings);
}

Result<SketchDocument::Loaded> SketchDocument::load(const QString& path) {
    const auto bytes = m_store.read(toPath(path), maxSketchFileBytes);
    if (!bytes) {
        return std::unexpected(bytes.error());
    }
    auto loaded = readSketch(*bytes);
    if (!loaded) {
        return std::unexpected(inFile(loaded.error(), path));
    }
    m_session.reset(std::move(loaded->sketch));
    return Loaded{toStringList(loaded->warnings), contentKeyOf(*bytes)};
}

Result<SavedSketch> SketchDocument::save() {
    return saveOver(m_path, m_content);
}

Result<SavedSketch> SketchDocument::saveAs(const QString& path) {
    const QString absolute = QFileInfo(path).absoluteFilePath();
    if (absolute == m_path) {
        return save();
    }
    const auto there = m_store.read(toPath(absolute), maxSketchFileBytes);
    return saveOver(absolute, there ? std::optional(contentKeyOf(*there)) : std::nullopt);
}

Result<SavedSketch> SketchDocument::saveOver(const QString& path,
                                             std::optional<ContentKey> content) {
    const auto bytes = savableBytes(m_session.sketch());
    if (!bytes) {
        return std::unexpected(inFile(bytes.error(), path));
    }
    auto saved = saveKeepingBoth(m_store, toPath(path), content, *bytes);
    if (saved) {
        m_session.setClean();
        belongTo(QFile::decodeName(saved->path.c_str()), saved->content);
    }
    return saved;
}

void SketchDocument::belongTo(const QString& path, std::optional<ContentKey> content) {
    m_path = path;
    m_content = content;
    emit pathChanged();
}

}  // namespace matwright::app
