// SPDX-License-Identifier: MIT
#include "app/editing/session.h"

#include <QUndoCommand>
#include <algorithm>
#include <cassert>
#include <iterator>
#include <ranges>
#include <utility>

namespace matwright::app {

// The one undo command: it holds the edit that leads to the other state, and exchanges it for its
// inverse each time, so undo and redo are the same swap.
class EditCommand final : public QUndoCommand {
  public:
    // The edit is applied already; `inverse` undoes it.
    EditCommand(Session& session, PageEdit inverse, const QString& label, int gesture)
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
        auto inverse = m_session.exchange(m_session.withFoundPlaces(std::move(m_other)));
        assert(inverse);
        if (inverse) {
            m_other = std::move(*inverse);
        }
    }

    // Whether undoing would change nothing: the gesture came back to where it started.
    bool leadsNowhere() const {
        Making copy = m_session.making();
        const auto applied = apply(copy, m_other);
        return applied && copy == m_session.making();
    }

    Session& m_session;
    PageEdit m_other;
    int m_gesture;
    bool m_isFresh = true;
};

Session::Session(QObject* parent) : QObject(parent), m_making{blankSketch(), {}} {
    connect(&m_undoStack, &QUndoStack::cleanChanged, this,
            [this] { emit cleanChanged(isClean()); });
}

std::vector<PieceId> Session::selectedInOrder() const {
    std::vector<PieceId> ids;
    for (const PieceId id : m_making.sketch.order) {
        if (m_selection.contains(id)) {
            ids.push_back(id);
        }
    }
    return ids;
}

PieceId Session::onlySelected() const {
    return m_selection.size() == 1 ? *m_selection.begin() : PieceId{};
}

void Session::reset(Making making) {
    assert(!findFault(making));
    m_making = std::move(making);
    m_selection.clear();
    m_markedUnsaved = false;
    m_undoStack.clear();
    m_foundPlaces.clear();
    ++m_revision;
    emit changed({Change::Everything});
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

Result<void> Session::perform(const PageEdit& edit, const QString& label, int gesture) {
    if (edit.isEmpty()) {
        return {};
    }
    auto inverse = exchange(edit);
    if (!inverse) {
        return std::unexpected(inverse.error());
    }
    if (*inverse == edit) {
        return {};  // it was like that before: nothing to undo, and what can be redone stays
    }
    m_undoStack.push(new EditCommand(*this, std::move(*inverse), label, gesture));
    return {};
}

Result<void> Session::perform(const Edit& edit, const QString& label, int gesture) {
    return perform(PageEdit{edit, {}}, label, gesture);
}

Result<void> Session::perform(const PhotoEdit& edit, const QString& label, int gesture) {
    return perform(PageEdit{{}, edit}, label, gesture);
}

Result<void> Session::performAndSelectAdded(const Edit& edit, const QString& label) {
    return performAndSelectAdded(PageEdit{edit, {}}, label);
}

Result<void> Session::performAndSelectAdded(const PageEdit& edit, const QString& label) {
    Selection added;
    for (const auto& [id, after] : edit.sketch.pieces) {
        if (after && !find(m_making.sketch, id)) {
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

void Session::photoFound(PhotoId id, const std::string& path) {
    const Photo* before = matwright::find(work(), id);
    if (!before || before->path == path) {
        return;
    }
    Photo after = *before;
    after.path = path;
    m_foundPlaces.erase({after.content, path});
    m_foundPlaces.insert_or_assign({after.content, before->path}, path);
    PageEdit edit;
    edit.photos.photos.emplace(id, std::move(after));
    [[maybe_unused]] const auto done = exchange(edit);
    assert(done);
}

// An undone step brings back a whole photo, so also the place it had then.
PageEdit Session::withFoundPlaces(PageEdit edit) const {
    for (auto& [id, photo] : edit.photos.photos) {
        auto place = m_foundPlaces.end();
        while (photo &&
               (place = m_foundPlaces.find({photo->content, photo->path})) != m_foundPlaces.end()) {
            photo->path = place->second;
        }
    }
    return edit;
}

void Session::select(Selection selection) {
    std::erase_if(selection, [this](PieceId id) { return !find(m_making.sketch, id); });
    if (selection == m_selection) {
        return;
    }
    Change change{Change::Selection, selection};
    change.pieces.insert(m_selection.begin(), m_selection.end());
    m_selection = std::move(selection);
    emit changed(change);
}

void Session::selectAll() {
    select(Selection(m_making.sketch.order.begin(), m_making.sketch.order.end()));
}

Result<PageEdit> Session::exchange(const PageEdit& edit) {
    auto inverse = apply(m_making, edit);
    if (!inverse) {
        return inverse;
    }
    ++m_revision;
    // The inverse names what went along too: the photo of a slot that was removed.
    Change change = changeBy(*inverse);
    const auto before = m_selection.size();
    forgetMissingSelection();
    change.kinds |= before != m_selection.size() ? Change::Selection : 0u;
    emit changed(change);
    return inverse;
}

Change Session::changeBy(const PageEdit& inverse) const {
    const auto& [sketch, photos] = inverse;
    Change change;
    const auto mark = [&change](bool touched, Change::Kind kind) {
        change.kinds |= touched ? kind : 0u;
    };
    mark(!sketch.pieces.empty() || sketch.order, Change::Pieces);
    mark(sketch.page.has_value(), Change::Page);
    mark(sketch.texts.has_value(), Change::Texts);
    mark(!photos.photos.empty() || photos.focal, Change::Photos);
    mark(!photos.placements.empty(), Change::Placements);
    mark(!photos.papers.empty(), Change::Papers);
    std::ranges::copy(sketch.pieces | std::views::keys,
                      std::inserter(change.pieces, change.pieces.end()));
    std::ranges::copy(photos.placements | std::views::keys,
                      std::inserter(change.pieces, change.pieces.end()));
    std::ranges::copy(photos.photos | std::views::keys,
                      std::inserter(change.photos, change.photos.end()));
    std::ranges::copy(photos.papers | std::views::keys,
                      std::inserter(change.papers, change.papers.end()));
    if (photos.focal) {
        for (const auto& focal : {*photos.focal, m_making.work.focal}) {
            if (focal) {
                change.photos.insert(*focal);
            }
        }
    }
    return change;
}

void Session::forgetMissingSelection() {
    std::erase_if(m_selection, [this](PieceId id) { return !find(m_making.sketch, id); });
}

}  // namespace matwright::app
