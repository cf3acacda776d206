// SPDX-License-Identifier: MIT
#include "app/crop/crop_flow.h"

#include <QFileInfo>
#include <utility>

#include "app/editing/session.h"
#include "app/photos/photo_access.h"
#include "core/making/fold.h"

namespace matwright::app {

namespace {

PhotoEdit editTo(const Making& making, PieceId slot, const CropState& state) {
    const Placement& before = making.work.placements.at(slot);
    PhotoEdit edit;
    edit.placements[slot] = Placement{before.photo, state.crop, state.border};
    if (making.work.photos.at(before.photo).tone != state.tone) {
        Photo photo = making.work.photos.at(before.photo);
        photo.tone = state.tone;
        edit.photos[before.photo] = std::move(photo);
    }
    return edit;
}

CropTask taskFor(const Session& session, PieceId slot, Scale scale, const SlotPixels& pixels) {
    const Piece& piece = session.sketch().pieces.at(slot);
    const Placement& placement = session.work().placements.at(slot);
    const Photo& photo = session.work().photos.at(placement.photo);
    CropTask task;
    task.photoName = QFileInfo(QString::fromStdString(photo.path)).fileName();
    task.slotName = QString::fromStdString(displayName(piece));
    task.subject = {photo.upright, piece.printSize.value_or(piece.size), piece.size};
    if (foldParting(piece, {}, session.sketch().page)) {
        // Two prints that meet, each trimmed to its page; shown as one without the fold gap.
        task.subject.trim = shownWindow(piece, {}, session.sketch().page);
        task.subject.print = task.subject.trim;
    }
    task.start = {placement.crop, placement.border, photo.tone};
    task.scale = scale;
    if (pixels) {
        task.finalPixels = [making = session.making(), slot, pixels](const CropState& state,
                                                                     std::stop_token stop) {
            return pixels(withState(making, slot, state), slot, std::move(stop));
        };
    }
    return task;
}

// Hands the window what the service has, now and when there is better.
void feed(CropDialog& window, PhotoService& service, const WantedPhoto& photo) {
    const auto showCopy = [&window, &service, content = photo.content] {
        if (const QImage copy = service.workingCopy(content); !copy.isNull()) {
            window.setCopy(copy);
        } else if (const QString fault = service.faultOf(content); !fault.isEmpty()) {
            window.setMissing(fault);
        } else if (service.stateOf(content) == PhotoState::Missing) {
            window.setMissing(
                CropDialog::tr("The photo is not where it was. Its crop can still be changed."));
        }
    };
    const auto showSample = [&window, &service, photo] {
        if (const auto sample = service.toneSample(photo)) {
            window.setSample(*sample);
        }
    };
    const auto mine = [content = photo.content](const auto& act) {
        return [content, act](const ContentKey& ready) {
            if (ready == content) {
                act();
            }
        };
    };
    QObject::connect(&service, &PhotoService::workingCopyReady, &window, mine(showCopy));
    QObject::connect(&service, &PhotoService::stateChanged, &window, mine(showCopy));
    QObject::connect(&service, &PhotoService::toneSampleReady, &window, mine(showSample));
    QObject::connect(&window, &QObject::destroyed, &service,
                     [&service] { service.showLarge(std::nullopt); });
    service.showLarge(photo);
    showCopy();
    showSample();
}

}  // namespace

Making withState(Making making, PieceId slot, const CropState& state) {
    Placement& placement = making.work.placements.at(slot);
    placement.crop = state.crop;
    placement.border = state.border;
    making.work.photos.at(placement.photo).tone = state.tone;
    return making;
}

CropDialog* makeCropDialog(Session& session, PieceId slot, Scale scale, PhotoService* service,
                           const SlotPixels& pixels, QWidget* parent) {
    auto* window = new CropDialog(taskFor(session, slot, scale, pixels), parent);
    QObject::connect(window, &QDialog::accepted, window, [window, &session, slot] {
        for (const CropHistory::Step& step : window->steps()) {
            (void)session.perform(editTo(session.making(), slot, step.state), step.label);
        }
    });
    if (service) {
        const PhotoId id = session.work().placements.at(slot).photo;
        feed(*window, *service, wanted(session.work().photos.at(id)));
    } else {
        window->setMissing(
            CropDialog::tr("Photos cannot be read: a part of the program is "
                           "missing. The crop can still be changed."));
    }
    return window;
}

}  // namespace matwright::app
