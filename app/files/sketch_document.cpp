// SPDX-License-Identifier: MIT
#include "app/files/sketch_document.h"

#include <QFile>
#include <QFileInfo>
#include <filesystem>
#include <utility>

#include "core/pagefile/page_file.h"
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

std::string folderOf(const QString& path) {
    return toPath(path).parent_path().string();
}

// What does not lie in the page's folder is looked for where it was said to be.
void keepIfNotThere(std::string& path, const std::string& written) {
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored)) {
        path = written;
    }
}

void keepWrittenPaths(LoadedPage& loaded) {
    for (const auto& [id, written] : loaded.photosElsewhere) {
        keepIfNotThere(loaded.making.work.photos.at(id).path, written);
    }
    for (const auto& [name, written] : loaded.papersElsewhere) {
        keepIfNotThere(loaded.making.work.papers.at(name).picture, written);
    }
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
    return m_path.isEmpty() ? tr("Untitled") : documentNameOf(m_path);
}

DocumentKind SketchDocument::kind() const {
    return m_session.work().isEmpty() ? kindOfPath(m_path) : DocumentKind::Page;
}

bool SketchDocument::needsName() const {
    return m_path.isEmpty() || kind() != kindOfPath(m_path);
}

void SketchDocument::startNew(Sketch sketch) {
    m_elsewhere.clear();
    m_kept.clear();
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
    const auto bytes = m_store.read(toPath(path), maxPageFileBytes);
    if (!bytes) {
        return std::unexpected(bytes.error());
    }
    auto loaded = readPage(*bytes, folderOf(path));
    if (!loaded) {
        return std::unexpected(inFile(loaded.error(), path));
    }
    m_kept.take(loaded->making, loaded->making.work.placements.empty()
                                    ? std::map<PieceId, std::string>()
                                    : smallPicturesIn(*bytes));
    m_elsewhere.clear();
    for (const auto& entry : loaded->photosElsewhere) {
        m_elsewhere << QFileInfo(QString::fromStdString(entry.second)).path();
    }
    m_elsewhere.removeDuplicates();
    keepWrittenPaths(*loaded);
    m_session.reset(std::move(loaded->making));
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
    const auto there = m_store.read(toPath(absolute), maxPageFileBytes);
    return saveOver(absolute, there ? std::optional(contentKeyOf(*there)) : std::nullopt);
}

Result<std::string> SketchDocument::bytesFor(const QString& path,
                                             std::map<PieceId, std::string>& pictures) {
    const Making& making = m_session.making();
    if (kind() == DocumentKind::Sketch) {
        return savableBytes(making.sketch);
    }
    for (const auto& entry : making.work.placements) {
        std::string jpeg = m_pictures ? m_pictures(entry.first) : std::string();
        pictures[entry.first] = jpeg.empty() ? m_kept.find(making, entry.first) : std::move(jpeg);
    }
    return savablePageBytes(making, [&](PieceId slot) { return pictures[slot]; }, folderOf(path));
}

Result<SavedSketch> SketchDocument::saveOver(const QString& path,
                                             std::optional<ContentKey> content) {
    std::map<PieceId, std::string> pictures;
    const auto bytes = bytesFor(path, pictures);
    if (!bytes) {
        return std::unexpected(inFile(bytes.error(), path));
    }
    auto saved = saveKeepingBoth(m_store, toPath(path), content, *bytes);
    if (saved) {
        m_kept.take(m_session.making(), std::move(pictures));
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
