// SPDX-License-Identifier: MIT
#pragma once

#include <QElapsedTimer>
#include <QPixmap>
#include <QTimer>
#include <QWidget>
#include <optional>

#include "app/crop/crop_frame.h"
#include "app/photos/photo_tile.h"

namespace matwright::app {

// A photo in its frame: the photo is dragged, zoomed and straightened under a frame that stands
// still. What is outside of the frame is faded; what the trimmer takes away is hatched. Changes
// nothing by itself: it tells the crop that a person makes, step by step, and shows the one it is
// given. Alternatively it shows the print's own pixels, one by one.
class CropView final : public QWidget {
    Q_OBJECT

  public:
    enum class Lines { None, Thirds, Golden };

    explicit CropView(const CropSubject& subject, QWidget* parent = nullptr);

    // The photo turned upright, of about screen size; a null image while there is none.
    void setCopy(const QImage& copy);
    void setTone(const std::optional<ToneMap>& map);
    void showCrop(const Crop& crop, Length border);
    const Crop& crop() const { return m_crop; }
    void setLines(Lines lines);
    // What stands in the frame while there is no photo.
    void setNotice(const QString& sentence);
    // The finished print, pixel for pixel, in place of the photo; a null image ends that.
    void showFinal(const QImage& print);
    bool isShowingFinal() const { return !m_final.isNull(); }
    // Where the finished print's top left corner stands, in device pixels.
    QPoint finalOrigin() const;

    // Steps as the keys take them; `paper` is how far the photo goes, right and down.
    void moveBy(Point paper);
    void zoomBy(double factor);
    void turnBy(int millidegrees);
    void startAgain();
    void turnRight();
    void turnLeft();
    // Puts the photo back where it was when the drag began; false where there is none.
    bool cancelDrag();

    CropFrame frame() const;
    QPointF handleAt() const;
    const PhotoTile& tile() const { return m_tile; }

    static constexpr double zoomPerNotch = 1.1;

  signals:
    // The crop as it would be now; steps of one positive gesture number belong together.
    void cropped(const matwright::Crop& crop, const QString& label, int gesture);

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    enum class Drag { None, Photo, Handle, Final };
    enum class Burst { None, Move, Zoom, Turn };

    Size window() const { return windowSize(m_subject, m_border); }
    bool takeKey(const QKeyEvent& event);
    void setCrop(const Crop& crop, Length border);
    QRect photoArea() const;
    void moveSurroundings();
    void tell(const Crop& crop, const QString& label, int gesture);
    int burst(Burst kind);
    void dragTo(QPointF at);
    void zoomAbout(double factor, QPointF at);
    double angleAt(QPointF at) const;
    void updateCursor(QPointF at);
    void paintPhoto(QPainter& painter, const CropFrame& frame, const QRegion& area);
    void paintNotice(QPainter& painter, const CropFrame& frame) const;
    void paintPaper(QPainter& painter, const CropFrame& frame, const QRegion& area) const;
    void paintLines(QPainter& painter, const QRectF& window);
    void paintHandle(QPainter& painter, const CropFrame& frame, const QRegion& area) const;
    void paintCaptions(QPainter& painter, const CropFrame& frame) const;
    void paintFinal(QPainter& painter) const;

    CropSubject m_subject;
    PhotoTile m_tile;
    Crop m_crop;
    Length m_border;
    Lines m_lines = Lines::Thirds;
    QString m_notice;
    QImage m_final;
    QPointF m_finalShift;
    QPixmap m_levelLine;
    QPixmap m_uprightLine;
    QTimer m_surroundings;  // runs while the faded photo around the frame lags behind
    QRect m_stale;          // where it does

    Drag m_drag = Drag::None;
    QPointF m_press;
    QPointF m_pressShift;
    Crop m_start;
    int m_gesture = 0;
    Burst m_burst = Burst::None;
    QElapsedTimer m_sinceStep;
};

}  // namespace matwright::app
