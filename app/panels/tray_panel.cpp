// SPDX-License-Identifier: MIT
#include "app/panels/tray_panel.h"

#include <QCheckBox>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/panels/tray_view.h"

namespace matwright::app {

namespace {

// All pictures of the tray share it, so their sizes can be compared.
constexpr double pixelsPerInch = 8;

const QString matKey = QStringLiteral("trayMat");

}  // namespace

TrayPanel::TrayPanel(SettingsStore& settings, QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Tray"));
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(10, 8, 6, 10);
    layout->setSpacing(4);
    layout->addWidget(
        new TintedLabel(Tint::Quiet, tr("Drag one onto the page, or double-click it.")));
    auto* withMat = new QCheckBox(tr("With a 1/8 in mat"));
    withMat->setToolTip(tr("Photo slots come with a mat, so that they snap by its edges."));
    settle(withMat);
    layout->addWidget(withMat);
    auto* photos =
        addGroup(layout, tr("Photo slots"), new TrayView(readyPhotoSlots(), pixelsPerInch));
    auto* papers =
        addGroup(layout, tr("Papers and places"), new TrayView(readyPapers(), pixelsPerInch));
    layout->addStretch(1);
    m_area = addScrolled(this, content);
    withMat->setChecked(settings.windowState(matKey) == "on");
    photos->setMatted(withMat->isChecked());
    connect(withMat, &QCheckBox::toggled, this, [&settings, photos](bool on) {
        photos->setMatted(on);
        settings.setWindowState(matKey, on ? "on" : "off");
    });
    connect(photos, &TrayView::leftDownwards, papers,
            [papers] { papers->setFocus(Qt::TabFocusReason); });
    connect(papers, &TrayView::leftUpwards, photos,
            [photos] { photos->setFocus(Qt::BacktabFocusReason); });
}

TrayView* TrayPanel::addGroup(QVBoxLayout* layout, const QString& heading, TrayView* view) {
    auto* label = new QLabel(heading);
    QFont font = label->font();
    font.setBold(true);
    label->setFont(font);
    label->setContentsMargins(0, 8, 0, 0);
    label->setBuddy(view);
    view->setAccessibleName(heading);
    layout->addWidget(label);
    layout->addWidget(view);
    connect(view, &TrayView::placeRequested, this, &TrayPanel::placeRequested);
    connect(view->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this, view] { revealCurrent(view); });
    return view;
}

// The lists do not scroll by themselves, so the panel brings the current picture into sight.
void TrayPanel::revealCurrent(TrayView* view) {
    const QRect cell = view->visualRect(view->currentIndex());
    const QPoint middle = view->viewport()->mapTo(m_area->widget(), cell.center());
    m_area->ensureVisible(middle.x(), middle.y(), 0, cell.height() / 2 + 8);
}

}  // namespace matwright::app
