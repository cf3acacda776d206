// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QMenu>
#include <QObject>
#include <functional>
#include <span>
#include <vector>

#include "app/window/workplace.h"

namespace matwright::app {

// The Arrange menu: whole-selection commands, each one undo step.
class ArrangeActions final : public QObject {
    Q_OBJECT

  public:
    ArrangeActions(Workplace workplace, QObject* parent);

    void addTo(QMenu& menu);
    // Those a context menu offers: order, lock, turn.
    void addMostUsedTo(QMenu& menu);

  private:
    using MakeEdit = std::function<Edit(const Sketch&, std::span<const PieceId>)>;
    struct Entry {
        QAction* action;
        std::size_t leastPieces;  // selected pieces it needs
    };

    QAction* add(const struct ActionLook& look, std::size_t leastPieces, const QString& label,
                 MakeEdit makeEdit);
    void makeAlign();
    void makeSpread();
    void makeTurns();
    void makeOrder();
    void makeLock();
    void run(const MakeEdit& makeEdit, const QString& label);
    void updateEnabled();

    Workplace m_workplace;
    std::vector<Entry> m_entries;
    std::vector<QAction*> m_align, m_spread, m_turns, m_order, m_lock;
};

}  // namespace matwright::app
