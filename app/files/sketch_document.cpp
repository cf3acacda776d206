// SPDX-License-Identifier: MIT
#include "app/files/sketch_document.h"

#include <QCryptographicHash>
#include <QFileInfo>
#include <utility>

#include "app/files/paths.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

QByteArray fingerprintOf(std::string_view bytes) {
    return QCryptographicHash::hash({bytes.data(), static_cast<qsizetype>(bytes.size())},
                                    QCryptographicHash::Sha256);
}

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
    QByteArray fingerprint;
    auto warnings = load(absolute, fingerprint);
    if (warnings) {
        belongTo(absolute, std::move(fingerprint));
    }
    return warnings;
}

Result<QStringList> SketchDocument::openRecovered(const QString& copyPath,
                                                  const QString& originalPath) {
    QByteArray ofTheCopy;
    auto warnings = load(copyPath, ofTheCopy);
    if (warnings) {
        // Nobody knows what the original held when the work began, so it counts as changed.
        belongTo(originalPath, {});
        m_session.markUnsaved();
    }
    return warnings;
}

Result<QStringList> SketchDocument::load(const QString& path, QByteArray& fingerprint) {
    const auto bytes = m_store.read(toPath(path), maxSketchFileBytes);
    if (!bytes) {
        return std::unexpected(bytes.error());
    }
    auto loaded = readSketch(*bytes);
    if (!loaded) {
        return std::unexpected(inFile(loaded.error(), path));
    }
    fingerprint = fingerprintOf(*bytes);
    m_session.reset(std::move(loaded->sketch));
    return toStringList(loaded->warnings);
}

Result<void> SketchDocument::saveAs(const QString& path) {
    const QString absolute = QFileInfo(path).absoluteFilePath();
    const auto bytes = savableBytes(m_session.sketch());
    if (!bytes) {
        return std::unexpected(inFile(bytes.error(), absolute));
    }
    auto written = m_store.replace(toPath(absolute), *bytes);
    if (written) {
        m_session.setClean();
        belongTo(absolute, fingerprintOf(*bytes));
    }
    return written;
}

bool SketchDocument::wasChangedElsewhere() const {
    if (m_path.isEmpty()) {
        return false;
    }
    const auto bytes = m_store.read(toPath(m_path), maxSketchFileBytes);
    if (!bytes) {
        // Something is there now that could not have been read or written here.
        return bytes.error().code == ErrorCode::TooLarge;
    }
    return fingerprintOf(*bytes) != m_fingerprint;
}

void SketchDocument::belongTo(const QString& path, QByteArray fingerprint) {
    m_path = path;
    m_fingerprint = std::move(fingerprint);
    emit pathChanged();
}

}  // namespace matwright::app
