// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "core/making/making_edit.h"

namespace matwright::app {

// What changed, in one signal; views are projections that can be rebuilt at any time.
struct Change {
    enum Kind : unsigned {
        Pieces = 1,  // places, sizes, looks, order, added or removed pieces
        Page = 2,    // page setup
        Texts = 4,   // the sketch's name or note
        Selection = 8,
        Photos = 16,      // the tray: photos added, removed, found again, marked, evened out
        Placements = 32,  // which photo stands in a slot and how it is cropped
        Papers = 64,      // how papers look
        Everything = 127  // another document was loaded
    };
    unsigned kinds = 0;
    std::set<PieceId> pieces = {};      // touched ids, for Pieces, Selection and Placements
    std::set<PhotoId> photos = {};      // touched ids, for Photos; a changed focal mark names both
    std::set<std::string> papers = {};  // touched words, for Papers
    bool has(Kind kind) const { return (kinds & kind) != 0; }
};

// One open document, a sketch or a page in the making: what it holds, its undo stack and what is
// selected. A sketch is a page without photos. Knows no file and no widget.
class Session final : public QObject {
    Q_OBJECT

  public:
    using Selection = std::set<PieceId>;

    explicit Session(QObject* parent = nullptr);

    const Sketch& sketch() const { return m_making.sketch; }
    const PhotoWork& work() const { return m_making.work; }
    const Making& making() const { return m_making; }
    const Selection& selection() const { return m_selection; }
    // The selected ids from bottom to top.
    std::vector<PieceId> selectedInOrder() const;
    // The one selected piece, or no piece (0).
    PieceId onlySelected() const;

    // Replaces everything: no undo past this point, nothing selected, clean.
    void reset(Making making);
    void reset(Sketch sketch) { reset(Making{std::move(sketch), {}}); }
    // Marks the work as changed though nothing was edited (a recovered sketch).
    void markUnsaved();

    // Applies the edit as one undo step called `label`. Edits of the same positive `gesture` number
    // in a row become one step (see newGesture). An empty edit does nothing. On error nothing
    // changes and the error is returned.
    Result<void> perform(const PageEdit& edit, const QString& label, int gesture = 0);
    Result<void> perform(const Edit& edit, const QString& label, int gesture = 0);
    Result<void> perform(const PhotoEdit& edit, const QString& label, int gesture = 0);
    // perform(), then selects the pieces that the edit added.
    Result<void> performAndSelectAdded(const PageEdit& edit, const QString& label);
    Result<void> performAndSelectAdded(const Edit& edit, const QString& label);
    static int newGesture();

    // The photo lies at another place than the page says. No edit of the person's: no undo step,
    // and what was saved counts as saved. Steps made before keep the new place when they are
    // undone. Passed over where the photo is not there.
    void photoFound(PhotoId photo, const std::string& path);

    // Ids that do not exist are passed over.
    void select(Selection selection);
    void selectAll();
    void clearSelection() { select({}); }

    QUndoStack& undoStack() { return m_undoStack; }
    bool isClean() const { return m_undoStack.isClean() && !m_markedUnsaved; }
    void setClean();
    // Counts up at every change of the document; equal numbers mean nothing changed in between.
    quint64 revision() const { return m_revision; }

  signals:
    void changed(const matwright::app::Change& change);
    void cleanChanged(bool clean);

  private:
    friend class EditCommand;
    // Applies without an undo step and tells the views; gives the inverse.
    Result<PageEdit> exchange(const PageEdit& edit);
    Change changeBy(const PageEdit& inverse) const;
    PageEdit withFoundPlaces(PageEdit edit) const;
    void forgetMissingSelection();

    Making m_making;
    Selection m_selection;
    QUndoStack m_undoStack;
    quint64 m_revision = 0;
    bool m_markedUnsaved = false;
    // Places that photos had left when they were found, and where they were found. Never a circle.
    std::map<std::pair<ContentKey, std::string>, std::string> m_foundPlaces;
};

}  // namespace matwright::app
