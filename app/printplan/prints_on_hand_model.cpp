// SPDX-License-Identifier: MIT
#include "app/printplan/prints_on_hand_model.h"

#include <QDate>
#include <QLocale>

#include "app/photos/photo_service.h"
#include "app/printplan/print_picture.h"
#include "core/measure/length_text.h"

namespace matwright::app {

namespace {

constexpr int mostPicturesKept = 2'000;

}  // namespace

PrintsOnHandModel::PrintsOnHandModel(PhotoService* service, QObject* parent)
    : QAbstractTableModel(parent), m_service(service), m_pictures(mostPicturesKept) {
    if (m_service) {
        connect(m_service, &PhotoService::thumbnailReady, this, &PrintsOnHandModel::showPicturesOf);
    }
}

void PrintsOnHandModel::setPrints(std::vector<PrintOnHand> prints) {
    beginResetModel();
    m_prints = std::move(prints);
    endResetModel();
}

int PrintsOnHandModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_prints.size());
}

int PrintsOnHandModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : Columns;
}

QString PrintsOnHandModel::words(const PrintOnHand& print, int column) const {
    switch (column) {
        case PhotoName:
            return QString::fromStdString(print.photoName);
        case PrintSize:
            return QString::fromStdString(naturalSizeText(print.look.paper));
        case State:
            return print.state == PrintState::OnHand ? tr("on hand")
                   : print.state == PrintState::Used
                       ? tr("used for “%1”").arg(QString::fromStdString(print.page))
                       : tr("thrown away");
        case Since:
            return QLocale().toString(
                QDate::fromString(QString::fromStdString(print.when), Qt::ISODate),
                QLocale::ShortFormat);
        default:
            return {};
    }
}

// The print and as much of its photo as a picture needs; the file's place is not known.
QPixmap PrintsOnHandModel::pictureOf(const PrintOnHand& print) const {
    if (const QPixmap* made = m_pictures.object(print.id.value)) {
        return *made;
    }
    const PrintLook& look = print.look;
    if (!m_service || m_asked.contains(look.photo)) {
        return {};
    }
    Photo photo;
    photo.content = look.photo;
    photo.tone = look.tone;
    Print shown;
    shown.paper = look.paper;
    shown.trim = look.trim;
    shown.border = look.border;
    shown.crop = look.crop;
    shown.window = look.window;
    shown.from = look.from;
    shown.to = look.to;
    const QPixmap picture = printIcon(m_service, photo, shown, pictureSide);
    if (picture.isNull()) {
        m_asked.insert(look.photo);
    } else {
        m_pictures.insert(print.id.value, new QPixmap(picture));
    }
    return picture;
}

void PrintsOnHandModel::showPicturesOf(const ContentKey& photo) {
    if (m_asked.erase(photo) == 0) {
        return;
    }
    for (int row = 0; row < rowCount(); ++row) {
        if (m_prints[static_cast<std::size_t>(row)].look.photo == photo) {
            emit dataChanged(index(row, Picture), index(row, Picture), {Qt::DecorationRole});
        }
    }
}

QVariant PrintsOnHandModel::data(const QModelIndex& index, int role) const {
    const PrintOnHand& print = m_prints[static_cast<std::size_t>(index.row())];
    if (role == Qt::DecorationRole && index.column() == Picture) {
        const QPixmap picture = pictureOf(print);
        return picture.isNull() ? QVariant() : QVariant(picture);
    }
    return role == Qt::DisplayRole ? QVariant(words(print, index.column())) : QVariant();
}

QVariant PrintsOnHandModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    const QString titles[] = {QString(), tr("Photo"), tr("Size"), tr("State"), tr("Since")};
    return titles[section];
}

}  // namespace matwright::app
