// SPDX-License-Identifier: MIT
#include "app/window/arrange_actions.h"

#include <utility>

#include "app/window/new_action.h"
#include "core/arrange/arrange.h"

namespace matwright::app {
namespace {

void addAll(QMenu& menu, const std::vector<QAction*>& actions) {
    for (QAction* action : actions) {
        menu.addAction(action);
    }
}

auto aligning(AlignTo to) {
    return [to](const Sketch& sketch, std::span<const PieceId> ids) {
        return aligned(sketch, ids, to);
    };
}

auto ordering(OrderStep step) {
    return [step](const Sketch& sketch, std::span<const PieceId> ids) {
        return reordered(sketch, ids, step);
    };
}

auto mirroring(Direction direction) {
    return [direction](const Sketch& sketch, std::span<const PieceId> ids) {
        return mirrored(sketch, ids, direction);
    };
}

auto locking(bool locked) {
    return [locked](const Sketch& sketch, std::span<const PieceId> ids) {
        return lockedSet(sketch, ids, locked);
    };
}

}  // namespace

ArrangeActions::ArrangeActions(Workplace workplace, QObject* parent)
    : QObject(parent), m_workplace(std::move(workplace)) {
    makeAlign();
    makeSpread();
    makeTurns();
    makeOrder();
    makeLock();
    connect(&m_workplace.session, &Session::changed, this, &ArrangeActions::updateEnabled);
    updateEnabled();
}

void ArrangeActions::addTo(QMenu& menu) {
    addAll(*menu.addMenu(tr("&Align")), m_align);
    addAll(*menu.addMenu(tr("&Spread")), m_spread);
    menu.addSeparator();
    addAll(menu, m_turns);
    menu.addSeparator();
    addAll(menu, m_order);
    menu.addSeparator();
    addAll(menu, m_lock);
}

void ArrangeActions::addMostUsedTo(QMenu& menu) {
    addAll(*menu.addMenu(tr("&Align")), m_align);
    menu.addSeparator();
    addAll(menu, m_order);
    menu.addSeparator();
    menu.addAction(m_turns.front());
    addAll(menu, m_lock);
}

QAction* ArrangeActions::add(const ActionLook& look, std::size_t leastPieces, const QString& label,
                             MakeEdit makeEdit) {
    QAction* action =
        newAction(this, look, [this, label, make = std::move(makeEdit)] { run(make, label); });
    m_entries.push_back({action, leastPieces});
    return action;
}

void ArrangeActions::makeAlign() {
    const QString hint = tr("Line up the selected pieces; a single piece with the margins");
    const auto align = [&](const QString& text, AlignTo to) {
        m_align.push_back(add({text, hint, {}, {}, {}}, 1, tr("align"), aligning(to)));
    };
    align(tr("&Left edges"), AlignTo::Left);
    align(tr("&Centres across"), AlignTo::CentreX);
    align(tr("&Right edges"), AlignTo::Right);
    align(tr("&Top edges"), AlignTo::Top);
    align(tr("Centres &down"), AlignTo::CentreY);
    align(tr("&Bottom edges"), AlignTo::Bottom);
}

void ArrangeActions::makeSpread() {
    const auto evenly = [&](const QString& text, Direction direction) {
        m_spread.push_back(add(
            {text, tr("Make the gaps between three or more pieces equal"), {}, {}, {}}, 3,
            tr("spread"),
            [direction](const Sketch& s, auto ids) { return spreadEvenly(s, ids, direction); }));
    };
    const auto byGutter = [&](const QString& text, Direction direction) {
        m_spread.push_back(add(
            {text, tr("Set the gaps between the pieces to the page's gutter"), {}, {}, {}}, 2,
            tr("spread"),
            [direction](const Sketch& s, auto ids) { return spreadByGutter(s, ids, direction); }));
    };
    evenly(tr("Evenly &across"), Direction::Across);
    evenly(tr("Evenly &down"), Direction::Down);
    byGutter(tr("By the gutter a&cross"), Direction::Across);
    byGutter(tr("By the gutter d&own"), Direction::Down);
}

void ArrangeActions::makeTurns() {
    m_turns = {add({tr("&Quarter turn"),
                    tr("Turn each piece by 90°: upright slots become lying ones"),
                    QKeySequence(Qt::CTRL | Qt::Key_T),
                    {},
                    {}},
                   1, tr("quarter turn"),
                   [](const Sketch& sketch, auto ids) { return quarterTurned(sketch, ids); }),
               add({tr("&Mirror left to right"),
                    tr("Swap left and right"),
                    QKeySequence(Qt::CTRL | Qt::Key_M),
                    {},
                    {}},
                   1, tr("mirror"), mirroring(Direction::Across)),
               add({tr("M&irror top to bottom"),
                    tr("Swap top and bottom"),
                    QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_M),
                    {},
                    {}},
                   1, tr("mirror"), mirroring(Direction::Down))};
}

void ArrangeActions::makeOrder() {
    m_order = {add({tr("To the &front"),
                    tr("Lay the pieces on top of all others"),
                    QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_PageUp),
                    {},
                    {}},
                   1, tr("order"), ordering(OrderStep::ToFront)),
               add({tr("F&orward"),
                    tr("Lay the pieces one step higher"),
                    QKeySequence(Qt::CTRL | Qt::Key_PageUp),
                    {},
                    {}},
                   1, tr("order"), ordering(OrderStep::Forward)),
               add({tr("&Backward"),
                    tr("Lay the pieces one step lower"),
                    QKeySequence(Qt::CTRL | Qt::Key_PageDown),
                    {},
                    {}},
                   1, tr("order"), ordering(OrderStep::Backward)),
               add({tr("To the bac&k"),
                    tr("Lay the pieces under all others"),
                    QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_PageDown),
                    {},
                    {}},
                   1, tr("order"), ordering(OrderStep::ToBack))};
}

void ArrangeActions::makeLock() {
    m_lock = {add({tr("&Lock"),
                   tr("Keep the pieces where they are"),
                   QKeySequence(Qt::CTRL | Qt::Key_L),
                   {},
                   {}},
                  1, tr("lock"), locking(true)),
              add({tr("&Unlock"),
                   tr("Let the pieces be moved again"),
                   QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L),
                   {},
                   {}},
                  1, tr("unlock"), locking(false))};
}

void ArrangeActions::run(const MakeEdit& makeEdit, const QString& label) {
    const auto ids = m_workplace.session.selectedInOrder();
    const Edit edit = makeEdit(m_workplace.session.sketch(), ids);
    if (edit.isEmpty()) {
        m_workplace.say(tr("Nothing to change: the pieces are there already, or locked."));
        return;
    }
    m_workplace.perform(edit, label);
}

void ArrangeActions::updateEnabled() {
    const std::size_t selected = m_workplace.session.selection().size();
    for (const Entry& entry : m_entries) {
        entry.action->setEnabled(selected >= entry.leastPieces);
    }
}

}  // namespace matwright::app
