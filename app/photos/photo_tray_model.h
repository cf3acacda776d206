// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <functional>
#include <map>
#include <utility>
#include <vector>

#include "app/editing/session.h"
#include "app/photos/photo_access.h"

namespace matwright::app {

enum class TraySort { Captured, Rating, Name };

// The photos of the open page in the order a person chose. A projection of the session and of what
// the photo service knows; keeps nothing of its own but the order.
//   Captured: the earliest first, photos without a time last
//   Rating:   favourites first, then by the file's own stars, then by time
//   Name:     by the file's name, numbers in it by their value
class PhotoTrayModel final : public QAbstractListModel {
    Q_OBJECT

  public:
    // Both outlive the model.
    PhotoTrayModel(Session& session, PhotoAccess& access, QObject* parent = nullptr);

    // What is shown of a photo that cannot be had: the small picture of the page's file, or a null
    // image.
    using StandIn = std::function<QImage(PhotoId)>;
    void setStandIn(StandIn standIn) { m_standIn = std::move(standIn); }

    void setSort(TraySort sort);
    TraySort sort() const { return m_sort; }

    PhotoId idAt(const QModelIndex& index) const;
    // nullptr for an index that is none.
    const Photo* photoAt(const QModelIndex& index) const;
    // -1 where it is not in the tray.
    int rowOf(PhotoId id) const;
    QImage thumbnailAt(const QModelIndex& index) const;
    PhotoState stateAt(const QModelIndex& index) const;
    bool isOnPageAt(const QModelIndex& index) const;
    bool isFocalAt(const QModelIndex& index) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QStringList mimeTypes() const override;
    QMimeData* mimeData(const QModelIndexList& indexes) const override;
    Qt::DropActions supportedDragActions() const override { return Qt::CopyAction; }

  private:
    void onChange(const Change& change);
    void listenTo(PhotoService* service);
    void renew(const ContentKey& content);
    std::vector<PhotoId> sorted() const;
    void arrange();
    void removeGone(const std::vector<PhotoId>& order);
    QString description(const QModelIndex& index) const;

    Session& m_session;
    PhotoAccess& m_access;
    StandIn m_standIn;
    mutable std::map<PhotoId, QImage> m_standIns;  // asked for once
    TraySort m_sort = TraySort::Captured;
    std::vector<PhotoId> m_order;
};

// Whether the photo is where it was, in words for a person; empty where there is nothing to say.
QString stateText(PhotoState state, const QString& fault);

}  // namespace matwright::app
