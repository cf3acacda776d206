// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractItemView>
#include <QTimer>
#include <QUrl>
#include <optional>
#include <string>
#include <vector>

#include "app/library/thumbnails.h"
#include "app/library/wall_cell.h"
#include "app/library/wall_model.h"

namespace matwright::app {

// The wall: sketches as pictures in rows, as many side by side as there is room. Where anything
// lies is arithmetic, so ten thousand cost what a hundred cost. Selection, place and the focused
// sketch stay with their sketches when the model shows others.
class WallView final : public QAbstractItemView {
    Q_OBJECT

  public:
    // Both outlive the view.
    WallView(WallModel& model, Thumbnails& thumbnails, QWidget* parent = nullptr);

    // Where the files are that thumbnails are drawn from.
    void setLibrary(const QString& folder);
    void setPictureSide(int side);
    int pictureSide() const { return m_cell.pictureSide(); }

    std::vector<int> selectedRows() const;  // from first to last
    std::vector<std::string> selectedPaths() const;
    // Selects these, as far as they are shown, and brings the first of them into sight.
    void select(const std::vector<std::string>& paths);
    // Every cell in sight has its picture, or will never have one.
    bool isComplete() const;

    QRect visualRect(const QModelIndex& index) const override;
    void scrollTo(const QModelIndex& index, ScrollHint hint = EnsureVisible) override;
    QModelIndex indexAt(const QPoint& point) const override;

  signals:
    // What is selected, or something about it, may be different.
    void selectionShown();
    void familyWanted(int row);
    // A letter was typed: a search begins.
    void typed(const QString& text);
    void filesDropped(const QList<QUrl>& urls);
    void complete();

  protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    int horizontalOffset() const override { return 0; }
    int verticalOffset() const override;
    bool isIndexHidden(const QModelIndex&) const override { return false; }
    void setSelection(const QRect& rect, QItemSelectionModel::SelectionFlags command) override;
    QRegion visualRegionForSelection(const QItemSelection& selection) const override;
    void selectionChanged(const QItemSelection& selected,
                          const QItemSelection& deselected) override;
    void updateGeometries() override;
    void scrollContentsBy(int dx, int dy) override;
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void startDrag(Qt::DropActions actions) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    struct Anchor {
        std::string path;
        int below = 0;  // the top of the viewport, in px
    };
    int columns() const;
    int lines() const;
    QRect cellRect(int row) const;                 // in the viewport
    std::optional<int> rowAt(QPoint point) const;  // of the viewport, inside a cell
    int nearestRow(QPoint point) const;
    std::pair<int, int> rowsIn(const QRect& rect) const;  // first and one past the last
    int pictureSidePixels() const;
    WantedThumbnail wantedOf(int row) const;
    CellState stateOf(int row) const;
    void askForThumbnails();
    void showReady(const std::vector<ContentKey>& contents);
    void rememberPlace();
    void findPlaceAgain();
    void selectRows(const std::vector<int>& rows);
    void paintBand(QPainter& painter);

    WallModel& m_model;
    Thumbnails& m_thumbnails;
    std::string m_library;
    WallCell m_cell;
    QTimer m_asking;
    bool m_goesUp = false;
    int m_hovered = -1;
    QRect m_band;  // of a drag over empty ground, in the viewport
    Anchor m_anchor;
    std::string m_currentPath;
    std::vector<std::string> m_selected;
    bool m_isSwapping = false;
};

}  // namespace matwright::app
