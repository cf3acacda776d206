// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QObject>
#include <functional>
#include <map>
#include <optional>

#include "app/photos/photo_tile.h"
#include "app/rendering/page_parts.h"

namespace matwright::app {

class PhotoService;
class Session;

// The pictures of the canvas: what shows in each slot, made once for its crop, tone and zoom and
// kept; pictures of papers, read once and kept in screen size. Nothing here decodes a photo: it
// works on the copies of the photo service.
class SlotPictures final : public QObject, public PartPictures {
    Q_OBJECT

  public:
    explicit SlotPictures(Session& session, QObject* parent = nullptr);

    // Null while there is no service. The service outlives this, or says so first by null.
    void useService(PhotoService* service);
    // What to show of a photo that is out of reach: a picture of the slot's window, or null.
    using StandIn = std::function<QImage(PieceId)>;
    void useStandIns(StandIn standIn) { m_standIn = std::move(standIn); }

    // The photo in this slot is on the move: it is kept as a tile that is only put down elsewhere.
    void startMoving(PieceId slot);
    void stopMoving();

    QImage windowPicture(PieceId slot, const PhotoFill& fill, double pixelsPerTick) override;
    QImage paperPicture(const PaperLook& look) override;

    // How many slot pictures were made from working copies, for tests.
    int made() const { return m_made; }
    void clear();

  signals:
    // The pictures of these slots are better than before, or there at all.
    void slotsReady(const std::vector<matwright::PieceId>& ids);
    void papersReady();

  private:
    struct Key {
        ContentKey content;
        qint64 copy = 0;  // which working copy
        Crop crop;
        Size window;  // the whole
        double from = 0;
        double to = 1;
        Tone tone;
        QSize pixels;  // of the whole window
        bool isComing = false;
        friend bool operator==(const Key&, const Key&) = default;
    };
    struct Made {
        Key key;
        QImage picture;
    };
    bool isBlurForNow(const Photo& photo, const QImage& copy, QSize pixels) const;
    std::optional<ToneMap> toneOf(const Photo& photo) const;
    QImage make(const Photo& photo, const QImage& copy, const Key& key);
    QImage moved(const Photo& photo, const QImage& copy, const Key& key);
    void photosChanged(const ContentKey& content);
    void readPaper(const PaperLook& look);

    Session& m_session;
    PhotoService* m_service = nullptr;
    StandIn m_standIn;
    std::map<std::pair<PieceId, double>, Made> m_pictures;  // and from where: 0, or the fold
    std::map<std::pair<std::string, ContentKey>, QImage> m_papers;  // null while it is read
    PieceId m_moving;
    PhotoTile m_tile;
    std::optional<qint64> m_tileCopy;
    int m_made = 0;
};

}  // namespace matwright::app
