// SPDX-License-Identifier: MIT
#include "app/photos/photo_access.h"

#include <QFile>
#include <utility>

#include "app/folders/personal_folders.h"
#include "app/parts/parts.h"
#include "app/photos/photos_part.h"

namespace matwright::app {

PhotoAccess::PhotoAccess(QString partsFolder, QString cacheFolder, QObject* parent)
    : QObject(parent),
      m_partsFolder(std::move(partsFolder)),
      m_cacheFolder(cacheFolder.isEmpty() ? QFile::decodeName(personalCacheFolder().c_str())
                                          : std::move(cacheFolder)) {}

PhotoAccess::PhotoAccess(std::unique_ptr<PhotoService> service) : m_service(std::move(service)) {}

PhotoAccess::~PhotoAccess() = default;

PhotoService* PhotoAccess::open() {
    if (m_service || m_fault) {
        return m_service.get();
    }
    const auto part = openPart<PhotosPart>(m_partsFolder, QStringLiteral("photos"));
    if (!part) {
        m_fault = part.error();
        return nullptr;
    }
    m_service.reset((*part)->makeService(m_cacheFolder));
    emit opened(m_service.get());
    return m_service.get();
}

}  // namespace matwright::app
