// SPDX-License-Identifier: MIT
#include "app/photos/photo_intake.h"

#include <QFileInfo>
#include <algorithm>
#include <utility>

#include "app/photos/photo_commands.h"

namespace matwright::app {

namespace {

const std::pair<const PhotoId, Photo>* findByContent(const PhotoWork& work,
                                                     const ContentKey& content) {
    const auto same = std::ranges::find_if(
        work.photos, [&](const auto& entry) { return entry.second.content == content; });
    return same == work.photos.end() ? nullptr : &*same;
}

QString shortName(const std::string& path) {
    return QFileInfo(QString::fromStdString(path)).fileName();
}

}  // namespace

PhotoIntake::PhotoIntake(Session& session, PhotoAccess& access,
                         std::function<void(const QString&)> say, QObject* parent)
    : QObject(parent), m_session(session), m_access(access), m_say(std::move(say)) {
    connect(&access, &PhotoAccess::opened, this, &PhotoIntake::listenTo);
    if (access.ifOpen()) {
        listenTo(access.ifOpen());
    }
    connect(&session, &Session::changed, this, [this](const Change& change) {
        // They were meant for the page before, and so are those that are told of while giving up.
        if (change.kinds == Change::Everything && std::exchange(m_isBusy, false)) {
            cancel();
        }
    });
}

void PhotoIntake::listenTo(PhotoService* service) {
    connect(service, &PhotoService::lookedAt, this, &PhotoIntake::take);
    connect(service, &PhotoService::lookedAtAll, this, &PhotoIntake::finish);
}

void PhotoIntake::add(const QStringList& paths, std::optional<PieceId> slot) {
    PhotoService* service = paths.isEmpty() ? nullptr : m_access.open();
    if (!service) {
        if (m_access.fault()) {
            m_say(tr("Photos cannot be read: %1")
                      .arg(QString::fromStdString(m_access.fault()->text())));
        }
        return;
    }
    if (!std::exchange(m_isBusy, true)) {
        m_tally = {};
        m_slotSentence.clear();
        m_gesture = Session::newGesture();
    }
    if (slot) {
        m_slot = slot;
    }
    std::vector<std::string> files;
    for (const QString& path : paths) {
        files.push_back(QFileInfo(path).absoluteFilePath().toStdString());
    }
    m_say(tr("Looking at the photos…"));
    service->lookAt(std::move(files));
}

void PhotoIntake::cancel() {
    m_slot.reset();
    if (PhotoService* service = m_access.ifOpen()) {
        service->cancel();
    }
}

void PhotoIntake::take(const std::vector<LookedAt>& files) {
    if (!m_isBusy) {
        return;
    }
    std::vector<Photo> photos;
    for (const LookedAt& file : files) {
        if (!file.photo) {
            ++m_tally.failed;
            if (m_tally.firstFailure.isEmpty()) {
                m_tally.firstFailure = shortName(file.path) + QStringLiteral(": ") +
                                       QString::fromStdString(file.photo.error().sentence);
            }
            continue;
        }
        photos.push_back(*file.photo);
        if (!file.remarks.empty() && m_tally.firstRemark.isEmpty()) {
            m_tally.firstRemark = shortName(file.path) + QStringLiteral(": ") +
                                  QString::fromStdString(file.remarks.front());
        }
    }
    meetAgain(photos);
    const PhotoEdit edit = addPhotos(m_session.work(), photos);
    const int added = static_cast<int>(edit.photos.size());
    if (const auto done = m_session.perform(edit, tr("Add photos"), m_gesture); !done) {
        m_tally.failed += added;
        m_tally.firstFailure = QString::fromStdString(done.error().text());
        return;
    }
    m_tally.added += added;
    m_tally.known += static_cast<int>(photos.size()) - added;
    std::vector<WantedPhoto> wanting;
    wanting.reserve(edit.photos.size());
    for (const auto& entry : edit.photos) {
        wanting.push_back(wanted(*entry.second));
    }
    m_access.ifOpen()->makeThumbnails(std::move(wanting));
    if (!photos.empty()) {
        putIntoWaitingSlot(photos.front().content);
    }
}

void PhotoIntake::meetAgain(const std::vector<Photo>& photos) {
    std::vector<WantedPhoto> back;
    for (const Photo& photo : photos) {
        const auto* known = findByContent(m_session.work(), photo.content);
        const PhotoState state = m_access.ifOpen()->stateOf(photo.content);
        if (known && known->second.path != photo.path &&
            (state == PhotoState::Missing || state == PhotoState::Changed)) {
            setPath(m_session, known->first, photo.path);
            back.push_back(wanted(photo));
        }
    }
    if (!back.empty()) {
        m_access.ifOpen()->checkStates(std::move(back));
    }
}

void PhotoIntake::putIntoWaitingSlot(const ContentKey& content) {
    const auto* photo = findByContent(m_session.work(), content);
    if (m_slot && photo) {
        m_slotSentence = putIntoSlot(m_session, *std::exchange(m_slot, {}), photo->first);
    }
}

void PhotoIntake::finish() {
    if (!std::exchange(m_isBusy, false)) {
        return;
    }
    m_slot.reset();
    const QString said = sentence();
    m_say(said);
    emit finished(said);
}

QString PhotoIntake::sentence() const {
    QStringList parts;
    if (m_tally.added > 0) {
        parts << (m_tally.added == 1 ? tr("One photo added.")
                                     : tr("%1 photos added.").arg(m_tally.added));
    }
    if (m_tally.known > 0) {
        parts << (m_tally.known == 1
                      ? tr("One picture is in the tray already and was not added again.")
                      : tr("%1 pictures are in the tray already and were not added again.")
                            .arg(m_tally.known));
    }
    if (m_tally.failed > 0) {
        parts << (m_tally.failed == 1 ? tr("One file could not be added.")
                                      : tr("%1 files could not be added.").arg(m_tally.failed))
              << m_tally.firstFailure;
    }
    if (parts.isEmpty()) {
        parts << tr("There are no photos there.");
    } else if (!m_tally.firstRemark.isEmpty()) {
        parts << m_tally.firstRemark;
    }
    if (!m_slotSentence.isEmpty()) {
        parts = QStringList{m_slotSentence} + parts.mid(1);
    }
    return parts.join(u' ');
}

}  // namespace matwright::app
