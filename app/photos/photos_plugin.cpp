// SPDX-License-Identifier: MIT
#include <QObject>

#include "app/photos/photos_part.h"
#include "app/photos/reading/photo_reader.h"

namespace matwright::app {

// The root of the part "photos".
class PhotosPlugin final : public QObject, public PhotosPart {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "org.matwright.PhotosPart" FILE "part.json")
    Q_INTERFACES(matwright::app::PhotosPart)

  public:
    PhotoService* makeService(const QString& cacheFolder) override {
        return new PhotoReader(cacheFolder);
    }
};

}  // namespace matwright::app

#include "photos_plugin.moc"
