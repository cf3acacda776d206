// SPDX-License-Identifier: MIT
#include "app/window/photo_place.h"

#include <QFileInfo>
#include <QImage>
#include <QStandardPaths>
#include <utility>

#include "app/files/paths.h"
#include "app/photos/photo_commands.h"
#include "app/photos/photo_tray_panel.h"
#include "core/making/fold.h"

namespace matwright::app {

PhotoPlace::PhotoPlace(Workplace workplace, SketchDocument& document, QString partsFolder,
                       QObject* parent)
    : QObject(parent),
      m_workplace(std::move(workplace)),
      m_document(document),
      m_access(std::move(partsFolder)),
      m_intake(m_workplace.session, m_access, m_workplace.say),
      m_care(
          m_workplace.session, m_access,
          [this] {
              const QString& path = m_document.path();
              return path.isEmpty()
                         ? QStringList()
                         : QStringList(QFileInfo(path).path()) + m_document.foldersOfOld();
          },
          m_workplace.say) {
    m_document.setPictures([this](PieceId slot) {
        const Making& making = m_workplace.session.making();
        const Placement* placement = matwright::find(making.work, slot);
        const Piece* piece = matwright::find(making.sketch, slot);
        const Photo* photo = placement ? matwright::find(making.work, placement->photo) : nullptr;
        return photo && piece && m_access.ifOpen()
                   ? m_access.ifOpen()->smallPicture(
                         *photo, *placement,
                         shownWindow(*piece, placement->border, making.sketch.page))
                   : std::string();
    });
    connect(&m_watched, &WatchedFolder::arrived, this, [this](const QStringList& files) {
        // A sketch that is only looked at does not become a page behind a person's back.
        if (m_panel && (m_panel->isVisible() || !m_workplace.session.work().isEmpty())) {
            m_intake.add(files);
        }
    });
    connect(&m_workplace.settings, &SettingsStore::changed, this, &PhotoPlace::watchAsSet);
}

PhotoPlace::~PhotoPlace() {
    m_document.setPictures({});
}

PhotoTrayPanel* PhotoPlace::makePanel(const QList<QAction*>& add) {
    m_panel = new PhotoTrayPanel(m_workplace.session, m_access, m_workplace.settings, add);
    connect(m_panel, &PhotoTrayPanel::cancelRequested, this, [this] { m_intake.cancel(); });
    connect(m_panel, &PhotoTrayPanel::whereIsIt, this, &PhotoPlace::askWhere);
    connect(m_panel, &PhotoTrayPanel::said, this,
            [this](const QString& sentence) { m_workplace.say(sentence); });
    m_panel->model().setStandIn([this](PhotoId photo) { return standInFor(photo); });
    const PhotoTrayView& view = m_panel->view();
    connect(&view, &PhotoTrayView::filesDropped, this,
            [this](const QStringList& paths) { this->add(paths); });
    connect(&view, &PhotoTrayView::placeRequested, this, [this](PhotoId photo) {
        m_workplace.say(putIntoNextSlot(m_workplace.session, photo));
    });
    connect(&view, &PhotoTrayView::removeRequested, this, [this] {
        if (const auto photos = chosen(); !photos.empty()) {
            m_workplace.say(removeFromTray(m_workplace.session, photos));
        }
    });
    m_care.lookAgain();  // work that was open before there was a window
    watchAsSet();
    return m_panel;
}

QImage PhotoPlace::standInFor(PhotoId photo) const {
    for (const auto& [slot, placement] : m_workplace.session.work().placements) {
        if (placement.photo == photo) {
            const std::string jpeg =
                m_document.keptPictures().find(m_workplace.session.making(), slot);
            if (!jpeg.empty()) {
                return QImage::fromData(reinterpret_cast<const uchar*>(jpeg.data()),
                                        static_cast<int>(jpeg.size()), "jpg");
            }
        }
    }
    return {};
}

void PhotoPlace::lookAgain() {
    if (m_panel) {
        m_care.lookAgain();
    }
}

bool PhotoPlace::isOutOfReach(PhotoId photo) const {
    const Photo* known = matwright::find(m_workplace.session.work(), photo);
    const PhotoService* service = m_access.ifOpen();
    const PhotoState state =
        known && service ? service->stateOf(known->content) : PhotoState::Unknown;
    return state == PhotoState::Missing || state == PhotoState::Changed ||
           state == PhotoState::Broken;
}

std::vector<PhotoId> PhotoPlace::chosen() const {
    return m_panel ? m_panel->view().selectedPhotos() : std::vector<PhotoId>();
}

QString PhotoPlace::folderToStartIn() const {
    return folderThatIsThere(
        m_lastFolder.isEmpty() ? QStandardPaths::writableLocation(QStandardPaths::PicturesLocation)
                               : m_lastFolder);
}

void PhotoPlace::add(const QStringList& paths, std::optional<PieceId> slot) {
    m_intake.add(paths, slot);
    if (m_panel && m_access.fault()) {
        m_panel->showFault(tr("Photos cannot be read: %1").arg(shownText(*m_access.fault())));
    }
}

void PhotoPlace::chooseAndAdd() {
    const QStringList files = m_workplace.questions.photosToAdd(folderToStartIn());
    if (!files.isEmpty()) {
        m_lastFolder = QFileInfo(files.constFirst()).path();
        emit trayWanted();
        add(files);
    }
}

void PhotoPlace::chooseAndAddFolder() {
    const auto folder =
        m_workplace.questions.photoFolder(tr("Add a folder of photos"), folderToStartIn());
    if (folder) {
        m_lastFolder = *folder;
        emit trayWanted();
        add({*folder});
    }
}

void PhotoPlace::chooseWatchedFolder() {
    const auto folder = m_workplace.questions.photoFolder(
        tr("Watch a folder that photos arrive in"), folderToStartIn());
    if (!folder) {
        return;
    }
    Settings settings = m_workplace.settings.value();
    settings.watchedFolder = *folder;
    m_workplace.settings.set(settings);
    m_workplace.say(
        tr("Photos that arrive in %1 from now on come into the tray by themselves.").arg(*folder));
}

void PhotoPlace::stopWatching() {
    Settings settings = m_workplace.settings.value();
    settings.watchedFolder.clear();
    m_workplace.settings.set(settings);
    m_workplace.say(tr("No folder is watched any more."));
}

void PhotoPlace::watchAsSet() {
    if (m_panel) {
        m_watched.watch(m_workplace.settings.value().watchedFolder);
    }
}

void PhotoPlace::searchFolder() {
    const auto folder =
        m_workplace.questions.photoFolder(tr("Look for missing photos in"), folderToStartIn());
    if (folder) {
        m_workplace.say(m_care.searchIn(*folder) ? tr("Looking for the missing photos…")
                                                 : tr("No photo is known to be missing."));
    }
}

void PhotoPlace::askWhere(PhotoId photo) {
    const Photo* missing = matwright::find(m_workplace.session.work(), photo);
    const auto file = missing
                          ? m_workplace.questions.whereIsPhoto(nameOf(*missing), folderToStartIn())
                          : std::nullopt;
    PhotoService* service = file ? m_access.open() : nullptr;
    if (!service) {
        return;
    }
    const std::string path = QFileInfo(*file).absoluteFilePath().toStdString();
    auto* once = new QObject(this);
    connect(service, &PhotoService::lookedAt, once,
            [this, once, photo, path](const std::vector<LookedAt>& files) {
                for (const LookedAt& looked : files) {
                    if (looked.path == path) {
                        once->deleteLater();
                        takeInstead(photo, looked);
                        return;
                    }
                }
            });
    connect(service, &PhotoService::lookedAtAll, once, &QObject::deleteLater);
    service->lookAt({path});
}

void PhotoPlace::takeInstead(PhotoId photo, const LookedAt& file) {
    const Photo* before = matwright::find(m_workplace.session.work(), photo);
    if (!before) {
        return;
    }
    if (!file.photo) {
        m_workplace.say(shownText(file.photo.error()));
        return;
    }
    const bool isOther = file.photo->content != before->content;
    if (isOther && !m_workplace.questions.mayTakeInstead(nameOf(*before), nameOf(*file.photo))) {
        return;
    }
    m_workplace.say(replacePhoto(m_workplace.session, photo, *file.photo));
    m_access.ifOpen()->checkStates({wanted(*file.photo)});
    m_care.searchIn(QFileInfo(QString::fromStdString(file.path)).path());
}

}  // namespace matwright::app
