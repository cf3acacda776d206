// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractTableModel>
#include <QCache>
#include <QPixmap>
#include <set>
#include <vector>

#include "core/printers/prints_on_hand.h"

namespace matwright::app {

class PhotoService;

// Prints on hand as a table to look at. A picture is made when its row comes into sight, once.
// `service` may be null, then there are no pictures; else it outlives the model.
class PrintsOnHandModel final : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Picture, PhotoName, PrintSize, State, Since, Columns };
    static constexpr int pictureSide = 64;

    explicit PrintsOnHandModel(PhotoService* service, QObject* parent = nullptr);

    void setPrints(std::vector<PrintOnHand> prints);
    const std::vector<PrintOnHand>& prints() const { return m_prints; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QString words(const PrintOnHand& print, int column) const;
    QPixmap pictureOf(const PrintOnHand& print) const;
    void showPicturesOf(const ContentKey& photo);

    PhotoService* m_service;
    std::vector<PrintOnHand> m_prints;
    mutable QCache<qint64, QPixmap> m_pictures;
    mutable std::set<ContentKey> m_asked;  // what the service has yet to answer
};

}  // namespace matwright::app
