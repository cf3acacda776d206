// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QtPlugin>

namespace matwright::app {

class PhotoService;

// What the part "photos" is to the program that opens it: no library that reads photos is linked.
class PhotosPart {
  public:
    virtual ~PhotosPart() = default;

    // Pictures on the disk are kept below `cacheFolder`. The caller owns it, and deletes it before
    // the program ends.
    virtual PhotoService* makeService(const QString& cacheFolder) = 0;

  protected:
    PhotosPart() = default;
    Q_DISABLE_COPY_MOVE(PhotosPart)
};

}  // namespace matwright::app

Q_DECLARE_INTERFACE(matwright::app::PhotosPart, "org.matwright.PhotosPart")
