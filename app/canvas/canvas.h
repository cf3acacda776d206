// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>
#include <optional>

#include "app/canvas/slot_pictures.h"
#include "app/editing/session.h"
#include "app/settings/settings.h"

class QScrollBar;

namespace matwright::app {

class PageView;
class PhotoAccess;
class Ruler;

// The place where a page is drawn: the page between two rulers and two scroll bars. Keyboard and
// mouse go to the page (the focus proxy).
class Canvas final : public QWidget {
    Q_OBJECT

  public:
    // Both outlive the canvas.
    Canvas(Session& session, SettingsStore& settings, QWidget* parent = nullptr);
    ~Canvas() override;

    // What the left button does. Drawing tools put themselves down after one piece.
    enum class Tool { Select, Photo, Strip, Block, Title, Journaling, Embellishment };
    void setTool(Tool tool);
    Tool tool() const { return m_tool; }
    // The shape the drawing tools give; polygon corners are scaled to what is drawn.
    void setDrawShape(Shape prototype);

    // 1 is true size on this screen; between 0.05 and 32.
    double zoom() const;
    void setZoom(double zoom);
    void zoomIn();
    void zoomOut();
    void fitPage();
    // The selected pieces, or the page where nothing is selected.
    void fitSelection();
    void trueSize();

    // Adds the piece at a free place, selected, as one undo step; in the middle, and says so, where
    // none is free.
    void place(Piece piece);
    // Selects the piece and scrolls to it.
    void reveal(PieceId id);

    // From now on the page shows its photos and papers; `access` outlives the canvas.
    void showPhotos(PhotoAccess& access, SlotPictures::StandIn standIn = {});
    // The photo in this slot is worked on where it is: a drag moves it inside the slot. Nothing
    // where the slot has none. Enter, Esc, a click elsewhere and setTool() end that.
    void workOnPhoto(PieceId slot);

    // The widget that shows the page and takes the events.
    PageView& page() { return *m_page; }

  signals:
    void toolChanged(matwright::app::Canvas::Tool tool);
    void zoomChanged(double zoom);
    // One line for the status bar; empty when there is nothing to say.
    void hint(const QString& line);
    void pointerMoved(std::optional<matwright::Point> at);
    // Right click, or the menu key.
    void contextMenuWanted(QPoint globalPos);
    // Double click or Enter: the user wants this piece's figures.
    void pieceActivated(matwright::PieceId id);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void layOut();
    void connectPage();
    void showView();
    void showExtent();
    void scrollToBars();
    Piece prototype() const;

    Session& m_session;
    SettingsStore& m_settings;
    PageView* m_page;
    Ruler* m_across;
    Ruler* m_down;
    QScrollBar* m_acrossBar;
    QScrollBar* m_downBar;
    Tool m_tool = Tool::Select;
    Shape m_drawShape;
    double m_shownZoom = 0;
    bool m_isShowingView = false;
};

}  // namespace matwright::app
