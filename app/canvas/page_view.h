// SPDX-License-Identifier: MIT
#pragma once

#include <QTimer>
#include <QWidget>
#include <memory>
#include <optional>

#include "app/canvas/lifted_pictures.h"
#include "app/canvas/overlay.h"
#include "app/canvas/page_layers.h"
#include "app/canvas/piece_keys.h"
#include "app/canvas/slot_pictures.h"
#include "app/canvas/tools/tool.h"

class QMimeData;

namespace matwright::app {

class PhotoAccess;

// The part of the canvas that shows the page and takes the mouse and the keys. Turns events into
// calls to the tool and the drag in progress, and keeps the picture right with as little painting
// as it can; everything it knows about the sketch can be rebuilt from the session at any time.
class PageView final : public QWidget, private DragHost {
    Q_OBJECT

  public:
    PageView(Session& session, SettingsStore& settings, QWidget* parent = nullptr);
    ~PageView() override;

    const Session& sessionShown() const { return m_session; }
    Scale scale() const { return m_settings.value().scale; }
    const Viewport& viewport() const override { return m_viewport; }
    // Kept so that a part of the page stays in view, and within the zoom limits.
    void setViewport(const Viewport& viewport);
    // The origins that setViewport allows at the present zoom.
    QRectF originRange() const;

    // The origins that the wheel and the scroll bars go to: the page and every piece with a little
    // room, and where the view is now. Nothing to scroll where all of it is in view.
    QRectF scrollRange() const;
    void scrollBy(QPointF by);

    // 1 is true size; needs the screen's logical pixels per inch, measured or as the system says.
    double zoom() const;
    void zoomTo(double zoom, QPointF anchor);
    double screenPixelsPerInch() const;
    // Shows the area with a little room around it. The page stays fitted through resizing until
    // the user zooms or scrolls.
    void fitArea(const Rect& area);
    void fitPage();
    void revealPiece(PieceId id);  // selects it as well
    // Scrolls as little as is needed to have the area in view.
    void reveal(const Rect& area);

    void useTool(std::unique_ptr<Tool> tool);
    // From now on the page shows its photos and papers; `access` outlives the view.
    void showPhotos(PhotoAccess& access, SlotPictures::StandIn standIn);
    SlotPictures& slotPictures() { return m_slotPictures; }
    DragHost& dragHost() { return *this; }
    // Puts everything back as it was when the drag began. False where there is none.
    bool cancelDrag();
    bool isDragging() const { return m_drag && m_hasMoved; }

    // What the rulers mark: what is dragged, or the trim bounds of the selection.
    std::optional<Rect> extent() const;
    // What is being shown, for tests.
    const PageLayers& layers() const { return m_layers; }
    const LiftedPictures& pictures() const { return m_pictures; }
    const Overlay& overlay() const { return m_overlay; }
    const Preview& preview() const { return m_preview; }
    const HandleLayout& handles() const { return m_handles; }

  signals:
    void viewChanged();
    void extentChanged();
    void pointerMoved(std::optional<matwright::Point> at);
    void pointerInView(std::optional<QPointF> at);
    void hint(const QString& line);
    void contextMenuWanted(QPoint globalPos);
    // Double-clicked, or Enter: the user wants this piece's figures.
    void pieceActivated(matwright::PieceId id);
    // The same of a slot with a photo.
    void photoActivated(matwright::PieceId slot);
    // A tool for one use has added its piece, or was put down with Esc.
    void toolDone();
    // Files from elsewhere were let go over the page, over this slot or over none.
    void filesDropped(const QStringList& files, std::optional<matwright::PieceId> slot);
    // Enter with a drawing tool in hand: lay one down without the mouse.
    void pieceWanted();

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    // DragHost
    Session& session() override { return m_session; }
    const Settings& settings() const override { return m_settings.value(); }
    void showPreview(Preview preview) override;
    void scrollTo(const Viewport& viewport) override;
    void perform(const Edit& edit, const QString& label, bool selectAdded, int gesture) override;
    void say(const QString& line) override { emit hint(line); }

    Pointer pointerAt(QPointF view, Qt::KeyboardModifiers modifiers) const;
    std::unique_ptr<Drag> dropOf(const QMimeData* mime);
    void startDrag(std::unique_ptr<Drag> drag, const Pointer& at, Qt::MouseButton button);
    void finishDrag();
    void updateDrag(const Pointer& now);
    void watchEdges();
    void scrollAtEdge();
    bool scrollByKey(const QKeyEvent& event);
    void hoverAt(const Pointer& at);
    void updateCursor();
    void onSessionChanged(const Change& change);
    void onPiecesChanged(const Change& change);
    void mendNumbers();
    void onPhotosChanged(const Change& change);
    void mend(const std::vector<PieceId>& ids);
    void activate(PieceId id);
    const Piece& shownPiece(PieceId id) const;
    void setLabels();
    void forgetBounds();
    void applyViewport(const Viewport& viewport);
    QRegion previewRegion() const;
    Overlay builtOverlay();
    void refreshOverlay(QRegion alsoUpdate = {});
    void paintPreview(QPainter& painter, const QRegion& area);
    void paintEmptyHint(QPainter& painter) const;
    void paintFocusFrame(QPainter& painter) const;
    QRectF viewRect() const { return QRectF(rect()); }

    Session& m_session;
    SettingsStore& m_settings;
    SlotPictures m_slotPictures;
    PageDress m_dress;
    Viewport m_viewport;
    PageLayers m_layers;
    LiftedPictures m_pictures;
    Overlay m_overlay;
    HandleLayout m_handles;
    Preview m_preview;
    std::map<PieceId, Rect> m_bounds;  // the reach of every piece as it was last drawn
    std::vector<PieceId> m_order;
    Rect m_content;  // the surface and every piece

    std::unique_ptr<Tool> m_tool;
    std::unique_ptr<Drag> m_drag;
    std::unique_ptr<Drag> m_drop;
    Pointer m_press;
    Pointer m_pointer;
    QTimer m_edgeTimer;
    Qt::MouseButton m_dragButton = Qt::NoButton;
    bool m_hasMoved = false;
    bool m_isPerforming = false;
    bool m_isSpaceHeld = false;
    bool m_followsFit = true;
    PieceId m_hovered;
    PieceKeys m_keys;
};

}  // namespace matwright::app
