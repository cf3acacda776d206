// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>

#include "app/photos/photo_service.h"
#include "core/error/error.h"

namespace matwright::app {

// The way to the photo service: the part that reads photos is opened when it is first needed, so
// that the start does not wait for it. Without the part everything else works; photos are then
// shown by the small pictures of the page's file.
class PhotoAccess final : public QObject {
    Q_OBJECT

  public:
    // `partsFolder` as in app/parts; an empty `cacheFolder` is the person's own.
    explicit PhotoAccess(QString partsFolder, QString cacheFolder = {}, QObject* parent = nullptr);
    // One that is open already, for tests.
    explicit PhotoAccess(std::unique_ptr<PhotoService> service);
    ~PhotoAccess() override;

    // Opens the part if it is not open; null where that is not possible, see fault().
    PhotoService* open();
    PhotoService* ifOpen() const { return m_service.get(); }
    // Why the last open() gave nothing.
    const std::optional<Error>& fault() const { return m_fault; }

  signals:
    // Once.
    void opened(matwright::app::PhotoService* service);

  private:
    const QString m_partsFolder;
    const QString m_cacheFolder;
    std::unique_ptr<PhotoService> m_service;
    std::optional<Error> m_fault;
};

// What the service wants to know of a photo.
inline WantedPhoto wanted(const Photo& photo) {
    return {photo.content, photo.path, photo.bytes};
}

}  // namespace matwright::app
