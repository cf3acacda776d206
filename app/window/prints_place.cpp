// SPDX-License-Identifier: MIT
#include "app/window/prints_place.h"

#include <QDialog>
#include <utility>

#include "app/canvas/canvas.h"
#include "app/files/paths.h"
#include "app/parts/parts.h"
#include "app/prints/prints_part.h"
#include "app/window/new_action.h"

namespace matwright::app {

PrintsPlace::PrintsPlace(Workplace workplace, PhotoAccess& access, Canvas& canvas,
                         QString partsFolder, std::function<QString()> suggestedName,
                         QWidget* window)
    : QObject(window),
      crop(newAction(
          this,
          {tr("Cro&p…"), tr("Large: choose what shows of the photo, straighten it, even it out"),
           QKeySequence(Qt::CTRL | Qt::Key_K), QString(), tr("Crop")},
          [this] { showCrop(); })),
      moveInside(
          newAction(this,
                    {tr("&Move photo inside the slot"),
                     tr("Drag the photo under its slot, on the page (or double-click the slot)"),
                     QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_K), QString(), QString()},
                    [this] {
                        if (const auto slot = slotWithPhoto()) {
                            m_canvas.workOnPhoto(*slot);
                        }
                    })),
      prints(newAction(
          this,
          {tr("Pri&nts…"), tr("Files of exactly the right size for a photo printer or a shop"),
           QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P), QString(), tr("Prints…")},
          [this] { showPrints(); })),
      pagePicture(newAction(
          this,
          {tr("Pa&ge as a picture…"), tr("The finished page as one picture, to look at and share"),
           QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E), QString(), QString()},
          [this] { showPagePicture(); })),
      m_workplace(std::move(workplace)),
      m_access(access),
      m_canvas(canvas),
      m_partsFolder(std::move(partsFolder)),
      m_suggestedName(std::move(suggestedName)),
      m_window(window) {
    connect(&m_workplace.session, &Session::changed, this, &PrintsPlace::updateEnabled);
    updateEnabled();
}

void PrintsPlace::addTo(QMenu& menu) const {
    menu.addActions({crop, moveInside});
    menu.addSeparator();
    menu.addActions({prints, pagePicture});
    menu.addSeparator();
}

void PrintsPlace::addForSlotTo(QMenu& menu) const {
    menu.addActions({crop, moveInside});
}

std::optional<PieceId> PrintsPlace::slotWithPhoto() const {
    const PieceId only = m_workplace.session.onlySelected();
    return m_workplace.session.work().placements.contains(only) ? std::optional(only)
                                                                : std::nullopt;
}

void PrintsPlace::updateEnabled() {
    const bool onSlot = slotWithPhoto().has_value();
    crop->setEnabled(onSlot);
    moveInside->setEnabled(onSlot);
    prints->setEnabled(!m_workplace.session.work().placements.empty());
    pagePicture->setEnabled(!m_workplace.session.sketch().pieces.empty());
}

PrintsPart* PrintsPlace::part() {
    finishTyping();
    const auto opened = openPart<PrintsPart>(m_partsFolder, QStringLiteral("prints"));
    if (!opened) {
        m_workplace.questions.tell(tr("Prints cannot be made"), shownText(opened.error()));
        return nullptr;
    }
    return *opened;
}

void PrintsPlace::open(QDialog* dialog) {
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void PrintsPlace::showCrop() {
    const auto slot = slotWithPhoto();
    if (PrintsPart* opened = slot ? part() : nullptr) {
        open(opened->makeCropDialog(m_workplace.session, *slot, m_workplace.settings,
                                    m_access.open(), m_window));
    }
}

void PrintsPlace::showPrints() {
    if (PrintsPart* opened = part()) {
        open(opened->makePrintsWindow(m_workplace.session.making(), m_suggestedName(),
                                      m_workplace.settings, m_access.open(), m_window));
    }
}

void PrintsPlace::showPagePicture() {
    if (PrintsPart* opened = part()) {
        open(opened->makePagePictureWindow(m_workplace.session.making(), m_suggestedName(),
                                           m_window));
    }
}

}  // namespace matwright::app
