// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include "app/settings/settings.h"
#include "core/sketch/piece.h"

class QScrollArea;
class QVBoxLayout;

namespace matwright::app {

class TrayView;

// Ready-made photo slots and papers to drag onto the page, or to place by a double click or Enter.
class TrayPanel final : public QWidget {
    Q_OBJECT

  public:
    // The settings must outlive the panel.
    explicit TrayPanel(SettingsStore& settings, QWidget* parent = nullptr);

  signals:
    // The piece lies at the page's corner; whoever takes it finds it a place.
    void placeRequested(const matwright::Piece& piece);

  private:
    TrayView* addGroup(QVBoxLayout* layout, const QString& heading, TrayView* view);
    void revealCurrent(TrayView* view);

    QScrollArea* m_area;
};

}  // namespace matwright::app
