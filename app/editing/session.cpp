// SPDX-License-Identifier: MIT
#include "app/editing/session.h"

#include <QUndoCommand>
#include <cassert>
#include <utility>

#include "core/sketch/soundness.h"

namespace matwright::app {

// The one undo command: it holds the edit that leads to the other state, and exchanges it for its
// inverse each time, so undo and redo are the same swap.
class EditCommand final : public QUndoCommand {
  public:
    // The edit is applied already; `inverse` undoes it.
    EditCommand(Session& session, Edit inverse, const QString& label, int gesture)
        : QUndoCommand(label),
          m_session(session),
          m_other(std::move(inverse)),
          m_gesture(gesture) {}

    void redo() override {
        if (std::exchange(m_isFresh, false)) {
            return;  // pushed right after being applied
        }
        swap();
    }
    void undo() override { swap(); }
    int id() const override { return m_gesture > 0 ? 1 : -1; }

    bool mergeWith(const QUndoCommand* next) override {
        const auto* other = static_cast<const EditCommand*>(next);
        if (other->m_gesture != m_gesture) {
            return false;
        }
        // Undo runs the later inverse first, then ours.
        m_other = merged(other->m_other, m_other);
        setObsolete(leadsNowhere());
        return true;
    }

  private:
    void swap() {
        auto inverse = m_session.exchange(m_other);
        assert(inverse);
        if (inverse) {
            m_other = std::move(*inverse);
        }
    }

    // Whether undoing would change nothing: the gesture came back to where it started.
    bool leadsNowhere() const {
        Sketch copy = m_session.sketch();
        const auto applied = apply(copy, m_other);
        return applied && copy == m_session.sketch();
    }

    Session& m_session;
    Edit m_other;
    int m_gesture;
    bool m_isFresh = true;
};

Session::Session(QObject* parent) : QObject(parent), m_sketch(blankSketch()) {
    connect(&m_undoStack, &QUndoStack::cleanChanged, this,
            [this] { emit cleanChanged(isClean()); });
}

std::vector<PieceId> Session::selectedInOrder() const {
    std::vector<PieceId> ids;
    for (const PieceId id : m_sketch.order) {
        if (m_selection.contains(id)) {
            ids.push_back(id);
        }
    }
    return ids;
}

PieceId Session::onlySelected() const {
    return m_selection.size() == 1 ? *m_selection.begin() : PieceId{};
}

void Session::reset(Sketch sketch) {
    assert(!findFault(sketch));
    m_sketch = std::move(sketch);
    m_selection.clear();
    m_markedUnsaved = false;
    m_undoStack.clear();
    ++m_revision;
    emit changed({Change::Everything, {}});
    emit cleanChanged(true);
}

void Session::markUnsaved() {
    m_markedUnsaved = true;
    emit cleanChanged(false);
}

void Session::setClean() {
    m_markedUnsaved = false;
    m_undoStack.setClean();
    emit cleanChanged(true);
}

Result<void> Session::perform(const Edit& edit, const QString& label, int gesture) {
    if (edit.isEmpty()) {
        return {};
    }
    auto inverse = exchange(edit);
    if (!inverse) {
        return std::unexpected(inverse.error());
    }
    m_undoStack.push(new EditCommand(*this, std::move(*inverse), label, gesture));
    return {};
}

Result<void> Session::performAndSelectAdded(const Edit& edit, const QString& label) {
    Selection added;
    for (const auto& [id, after] : edit.pieces) {
        if (after && !find(m_sketch, id)) {
            added.insert(id);
        }
    }
    auto done = perform(edit, label);
    if (done) {
        select(std::move(added));
    }
    return done;
}

int Session::newGesture() {
    static int last = 0;
    return ++last;
}

void Session::select(Selection selection) {
    std::erase_if(selection, [this](PieceId id) { return !find(m_sketch, id); });
    if (selection == m_selection) {
        return;
    }
    Change change{Change::Selection, selection};
    change.pieces.insert(m_selection.begin(), m_selection.end());
    m_selection = std::move(selection);
    emit changed(change);
}

void Session::selectAll() {
    select(Selection(m_sketch.order.begin(), m_sketch.order.end()));
}

Result<Edit> Session::exchange(const Edit& edit) {
    auto inverse = apply(m_sketch, edit);
    if (!inverse) {
        return inverse;
    }
    ++m_revision;
    Change change;
    for (const auto& entry : edit.pieces) {
        change.pieces.insert(entry.first);
    }
    change.kinds |= !edit.pieces.empty() || edit.order ? Change::Pieces : 0u;
    change.kinds |= edit.page ? Change::Page : 0u;
    change.kinds |= edit.texts ? Change::Texts : 0u;
    const auto before = m_selection.size();
    forgetMissingSelection();
    change.kinds |= before != m_selection.size() ? Change::Selection : 0u;
    emit changed(change);
    return inverse;
}

void Session::forgetMissingSelection() {
    std::erase_if(m_selection, [this](PieceId id) { return !find(m_sketch, id); });
}

}  // namespace matwright::app
