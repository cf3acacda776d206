// SPDX-License-Identifier: MIT
#include "app/window/view_actions.h"

#include <utility>

#include "app/window/new_action.h"

namespace matwright::app {

ViewActions::ViewActions(Workplace workplace, Canvas& canvas)
    : QObject(&canvas),
      zoomIn(newAction(
          this,
          {tr("Zoom &in"), tr("Show the page larger"), QKeySequence(Qt::CTRL | Qt::Key_Plus),
           QStringLiteral("zoom-in"), tr("Zoom in")},
          [&canvas] { canvas.zoomIn(); })),
      zoomOut(newAction(
          this,
          {tr("&Zoom out"), tr("Show the page smaller"), QKeySequence(Qt::CTRL | Qt::Key_Minus),
           QStringLiteral("zoom-out"), tr("Zoom out")},
          [&canvas] { canvas.zoomOut(); })),
      fitPage(newAction(this,
                        {tr("&Fit page"), tr("Show the whole page"),
                         QKeySequence(Qt::CTRL | Qt::Key_0), QStringLiteral("fit"), tr("Fit")},
                        [&canvas] { canvas.fitPage(); })),
      fitSelection(newAction(this,
                             {tr("Fit &selection"),
                              tr("Show the selected pieces as large as fits"),
                              QKeySequence(Qt::CTRL | Qt::Key_2),
                              {},
                              {}},
                             [&canvas] { canvas.fitSelection(); })),
      trueSize(newAction(this,
                         {tr("&True size"),
                          tr("Show the page as large as it is on paper"),
                          QKeySequence(Qt::CTRL | Qt::Key_1),
                          {},
                          {}},
                         [&canvas] { canvas.trueSize(); })),
      measureScreen(newAction(this,
                              {tr("Measure this s&creen…"),
                               tr("Hold a ruler to the screen so that true size is true"),
                               {},
                               {},
                               {}},
                              [this] { askForScreen(); })),
      m_workplace(std::move(workplace)) {
    // Without Shift the plus of many keyboards is an equals sign.
    zoomIn->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::Key_Plus), QKeySequence(Qt::CTRL | Qt::Key_Equal)});
    connect(&m_workplace.session, &Session::changed, this, &ViewActions::updateEnabled);
    updateEnabled();
}

void ViewActions::addTo(QMenu& menu) {
    menu.addActions({zoomIn, zoomOut, fitPage, fitSelection, trueSize, measureScreen});
}

void ViewActions::askForScreen() {
    Settings settings = m_workplace.settings.value();
    if (const auto ppi = m_workplace.questions.screenPpi(settings.screenPpi, settings.scale)) {
        settings.screenPpi = *ppi;
        m_workplace.settings.set(std::move(settings));
    }
}

void ViewActions::updateEnabled() {
    fitSelection->setEnabled(!m_workplace.session.selection().empty());
}

}  // namespace matwright::app
