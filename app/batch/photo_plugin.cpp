// SPDX-License-Identifier: MIT
#include <QObject>

#include "app/batch/photo_part.h"

namespace matwright::app {

// The root of the part "photo-commands".
class PhotoPlugin final : public QObject, public PhotoPart {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "org.matwright.PhotoPart" FILE "part.json")
    Q_INTERFACES(matwright::app::PhotoPart)

  public:
    PhotoCommands& commands() override { return *m_commands; }

  private:
    std::unique_ptr<PhotoCommands> m_commands = makePhotoCommands();
};

}  // namespace matwright::app

#include "photo_plugin.moc"
