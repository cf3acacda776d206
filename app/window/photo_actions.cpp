// SPDX-License-Identifier: MIT
#include "app/window/photo_actions.h"

#include <QFileInfo>
#include <algorithm>
#include <utility>

#include "app/photos/photo_commands.h"
#include "app/window/new_action.h"

namespace matwright::app {

PhotoActions::PhotoActions(Workplace workplace, PhotoPlace& place, QObject* parent)
    : QObject(parent),
      add(newAction(this, {tr("&Add photos…"), tr("Choose photos for the tray of this page"),
                           QKeySequence(Qt::CTRL | Qt::Key_I), QString(), QString()})),
      addFolder(
          newAction(this, {tr("Add a f&older…"), tr("All photos of a folder and those below it"),
                           QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I), QString(), QString()})),
      watchFolder(newAction(
          this, {tr("&Watch a folder…"),
                 tr("Photos that arrive there later, from a phone perhaps, come into the tray"),
                 {},
                 {},
                 {}})),
      stopWatching(
          newAction(this, {tr("Stop watc&hing"), tr("No folder is watched any more"), {}, {}, {}})),
      put(newAction(this, {tr("Put &into a slot"),
                           tr("The chosen photo goes into the selected slot, or the next free one"),
                           {},
                           {},
                           {}})),
      fill(newAction(this,
                     {tr("&Fill the free slots"),
                      tr("Every free slot gets a photo: wished sizes and the focal photo first"),
                      QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_F), QString(), QString()})),
      takeOut(newAction(
          this, {tr("&Take photo out"), tr("The photo goes back to the tray, the slot stays"),
                 QKeySequence(Qt::CTRL | Qt::Key_Backspace), QString(), QString()})),
      swap(
          newAction(this, {tr("&Swap photos"), tr("The photos of two selected slots change places"),
                           QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_X), QString(), QString()})),
      turnPhoto(newAction(
          this, {tr("T&urn photo"), tr("The photo a quarter turn to the right in its slot"),
                 QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_R), QString(), QString()})),
      turnSlot(newAction(
          this, {tr("Turn s&lot"), tr("A slot that stands lies, and the other way"), {}, {}, {}})),
      favourite(newAction(this, {tr("Fa&vourite"), tr("Mark the chosen photos as favourites"),
                                 QKeySequence(Qt::CTRL | Qt::Key_B), QString(), QString()})),
      focal(
          newAction(this, {tr("Fo&cal photo"), tr("The one photo this page is about"),
                           QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B), QString(), QString()})),
      where(newAction(
          this,
          {tr("Wh&ere is it?…"), tr("Say where a photo that is not there is now"), {}, {}, {}})),
      search(newAction(this, {tr("Loo&k for missing photos…"),
                              tr("Find moved photos again in a folder, by what they hold"),
                              {},
                              {},
                              {}})),
      remove(newAction(this, {tr("&Remove from tray"),
                              tr("The chosen photos leave this page; their files stay"),
                              {},
                              {},
                              {}})),
      m_workplace(std::move(workplace)),
      m_place(place) {
    favourite->setCheckable(true);
    focal->setCheckable(true);
    connectAll();
    connect(&m_workplace.session, &Session::changed, this, &PhotoActions::updateEnabled);
    connect(&m_workplace.settings, &SettingsStore::changed, this, &PhotoActions::updateEnabled);
    connect(&m_place.access(), &PhotoAccess::opened, this, [this](PhotoService* service) {
        connect(service, &PhotoService::stateChanged, this, &PhotoActions::updateEnabled);
    });
    updateEnabled();
}

void PhotoActions::connectAll() {
    Session& session = m_workplace.session;
    const auto on = [this](QAction* action, auto run) {
        connect(action, &QAction::triggered, this, std::move(run));
    };
    on(add, [this] { m_place.chooseAndAdd(); });
    on(addFolder, [this] { m_place.chooseAndAddFolder(); });
    on(watchFolder, [this] { m_place.chooseWatchedFolder(); });
    on(stopWatching, [this] { m_place.stopWatching(); });
    on(put, [this, &session] {
        if (const auto photos = m_place.chosen(); !photos.empty()) {
            m_workplace.say(putIntoNextSlot(session, photos.front()));
        }
    });
    on(fill, [this, &session] { m_workplace.say(fillSlots(session)); });
    on(takeOut, [this, &session] { m_workplace.say(takeOutOf(session, selectedSlots(session))); });
    on(swap, [this, &session] {
        if (const auto chosen = selectedSlots(session); chosen.size() == 2) {
            m_workplace.say(swapSlots(session, chosen[0], chosen[1]));
        }
    });
    on(turnPhoto, [this] { onSelectedSlot(turnPhotoIn); });
    on(turnSlot, [this] { onSelectedSlot(app::turnSlot); });
    on(favourite, [this, &session](bool checked) {
        m_workplace.say(setFavourite(session, m_place.chosen(), checked));
    });
    on(focal, [this, &session](bool checked) {
        const auto photos = m_place.chosen();
        m_workplace.say(setFocal(
            session, checked && photos.size() == 1 ? std::optional(photos.front()) : std::nullopt));
    });
    on(where, [this] {
        if (const auto photo = photoInQuestion()) {
            m_place.askWhere(*photo);
        }
    });
    on(search, [this] { m_place.searchFolder(); });
    on(remove, [this, &session] { m_workplace.say(removeFromTray(session, m_place.chosen())); });
}

void PhotoActions::onSelectedSlot(QString (*act)(Session&, PieceId)) {
    if (const auto chosen = selectedSlots(m_workplace.session); chosen.size() == 1) {
        m_workplace.say(act(m_workplace.session, chosen.front()));
    }
}

// The one chosen in the tray, else that of the one selected slot.
std::optional<PhotoId> PhotoActions::photoInQuestion() const {
    if (const auto photos = m_place.chosen(); !photos.empty()) {
        return photos.size() == 1 ? std::optional(photos.front()) : std::nullopt;
    }
    const auto chosenSlots = selectedSlots(m_workplace.session);
    const Placement* placed = chosenSlots.size() == 1
                                  ? matwright::find(m_workplace.session.work(), chosenSlots.front())
                                  : nullptr;
    return placed ? std::optional(placed->photo) : std::nullopt;
}

QList<QAction*> PhotoActions::adding() const {
    return {add, addFolder, watchFolder, stopWatching};
}

void PhotoActions::addTo(QMenu& menu) {
    menu.addActions(adding());
    menu.addSeparator();
    menu.addActions({put, fill, takeOut, swap, turnPhoto, turnSlot});
    menu.addSeparator();
    menu.addActions({favourite, focal});
    menu.addSeparator();
    menu.addActions({where, search, remove});
}

void PhotoActions::addForTrayTo(QMenu& menu) {
    menu.addActions({put, favourite, focal, where, remove});
    menu.addSeparator();
    menu.addActions({add, addFolder});
}

void PhotoActions::addForSlotTo(QMenu& menu) {
    menu.addActions({takeOut, swap, turnPhoto, turnSlot});
}

void PhotoActions::updateEnabled() {
    const Session& session = m_workplace.session;
    const PhotoWork& work = session.work();
    const auto chosenSlots = selectedSlots(session);
    const auto photos = m_place.chosen();
    const bool anyFilled = std::ranges::any_of(
        chosenSlots, [&](PieceId slot) { return matwright::find(work, slot) != nullptr; });
    const QString watched = m_workplace.settings.value().watchedFolder;
    stopWatching->setEnabled(!watched.isEmpty());
    QString name = QFileInfo(watched).fileName();
    stopWatching->setText(
        watched.isEmpty() ? tr("Stop watc&hing")
                          : tr("Stop watc&hing %1").arg(name.replace(u'&', QStringLiteral("&&"))));
    put->setEnabled(!photos.empty());
    fill->setEnabled(!work.photos.empty());
    takeOut->setEnabled(anyFilled);
    swap->setEnabled(chosenSlots.size() == 2 && anyFilled);
    turnPhoto->setEnabled(chosenSlots.size() == 1 && anyFilled);
    turnSlot->setEnabled(chosenSlots.size() == 1);
    favourite->setEnabled(!photos.empty());
    favourite->setChecked(!photos.empty() && std::ranges::all_of(photos, [&](PhotoId id) {
        const Photo* photo = matwright::find(work, id);
        return photo && photo->favourite;
    }));
    focal->setEnabled(photos.size() == 1);
    focal->setChecked(photos.size() == 1 && work.focal == photos.front());
    const auto one = photoInQuestion();
    where->setEnabled(one && m_place.isOutOfReach(*one));
    search->setEnabled(!work.photos.empty());
    remove->setEnabled(!photos.empty());
}

}  // namespace matwright::app
