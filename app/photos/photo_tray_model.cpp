// SPDX-License-Identifier: MIT
#include "app/photos/photo_tray_model.h"

#include <QCollator>
#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <tuple>
#include <utility>

#include "app/photos/photo_commands.h"
#include "app/photos/photo_mime.h"
#include "core/photo/photo_words.h"

namespace matwright::app {

QString stateText(PhotoState state, const QString& fault) {
    switch (state) {
        case PhotoState::Missing:
            return QCoreApplication::translate(
                "Photos", "This photo is not where it was: moved, or its drive is not there.");
        case PhotoState::Changed:
            return QCoreApplication::translate("Photos", "Its file holds another picture now.");
        case PhotoState::Broken:
            return fault;
        case PhotoState::Unknown:
        case PhotoState::There:
            break;
    }
    return {};
}

PhotoTrayModel::PhotoTrayModel(Session& session, PhotoAccess& access, QObject* parent)
    : QAbstractListModel(parent), m_session(session), m_access(access) {
    connect(&session, &Session::changed, this, &PhotoTrayModel::onChange);
    connect(&access, &PhotoAccess::opened, this, &PhotoTrayModel::listenTo);
    if (access.ifOpen()) {
        listenTo(access.ifOpen());
    }
    m_order = sorted();
}

void PhotoTrayModel::listenTo(PhotoService* service) {
    connect(service, &PhotoService::thumbnailReady, this, &PhotoTrayModel::renew);
    connect(service, &PhotoService::stateChanged, this, &PhotoTrayModel::renew);
}

void PhotoTrayModel::renew(const ContentKey& content) {
    for (int row = 0; row < rowCount(); ++row) {
        const QModelIndex at = index(row);
        if (const Photo* photo = photoAt(at); photo && photo->content == content) {
            emit dataChanged(at, at);
            return;
        }
    }
}

// ---- order

std::vector<PhotoId> PhotoTrayModel::sorted() const {
    struct Row {
        PhotoId id;
        const Photo* photo;
        QCollatorSortKey name;
    };
    // The "C" locale knows no numbers in names.
    const QLocale own;
    QCollator collator(own.language() == QLocale::C ? QLocale(QLocale::English) : own);
    collator.setNumericMode(true);
    collator.setCaseSensitivity(Qt::CaseInsensitive);
    std::vector<Row> rows;
    for (const auto& [id, photo] : m_session.work().photos) {
        rows.push_back({id, &photo, collator.sortKey(nameOf(photo))});
    }
    const auto captured = [](const Row& row) {
        return std::tuple(row.photo->taken.empty(), std::string_view(row.photo->taken));
    };
    const auto stars = [](const Row& row) {
        return std::tuple(!row.photo->favourite, -row.photo->rating.value_or(0));
    };
    std::ranges::sort(rows, [&](const Row& a, const Row& b) {
        if (m_sort == TraySort::Rating && stars(a) != stars(b)) {
            return stars(a) < stars(b);
        }
        if (m_sort != TraySort::Name && captured(a) != captured(b)) {
            return captured(a) < captured(b);
        }
        const int names = a.name.compare(b.name);
        return names != 0 ? names < 0 : a.id < b.id;
    });
    std::vector<PhotoId> order;
    order.reserve(rows.size());
    for (const Row& row : rows) {
        order.push_back(row.id);
    }
    return order;
}

void PhotoTrayModel::setSort(TraySort sort) {
    m_sort = sort;
    arrange();
}

void PhotoTrayModel::removeGone(const std::vector<PhotoId>& order) {
    for (int row = rowCount() - 1; row >= 0; --row) {
        const PhotoId id = m_order[static_cast<std::size_t>(row)];
        if (std::ranges::find(order, id) == order.end()) {
            beginRemoveRows({}, row, row);
            m_order.erase(m_order.begin() + row);
            endRemoveRows();
        }
    }
}

// Row by row, so that the selection and the place in the list stay.
void PhotoTrayModel::arrange() {
    const std::vector<PhotoId> order = sorted();
    removeGone(order);
    std::vector<PhotoId> kept;
    std::ranges::copy_if(order, std::back_inserter(kept), [this](PhotoId id) {
        return std::ranges::find(m_order, id) != m_order.end();
    });
    if (kept != m_order) {
        emit layoutAboutToBeChanged();
        const QModelIndexList before = persistentIndexList();
        QModelIndexList after;
        for (const QModelIndex& old : before) {
            const PhotoId id = m_order[static_cast<std::size_t>(old.row())];
            after << index(static_cast<int>(std::ranges::find(kept, id) - kept.begin()));
        }
        m_order = kept;
        changePersistentIndexList(before, after);
        emit layoutChanged();
    }
    for (std::size_t row = 0; row < order.size(); ++row) {
        if (row >= m_order.size() || m_order[row] != order[row]) {
            const int at = static_cast<int>(row);
            beginInsertRows({}, at, at);
            m_order.insert(m_order.begin() + at, order[row]);
            endInsertRows();
        }
    }
}

void PhotoTrayModel::onChange(const Change& change) {
    if (change.kinds == Change::Everything) {
        m_standIns.clear();
        beginResetModel();
        m_order = sorted();
        endResetModel();
    } else if (change.has(Change::Photos)) {
        arrange();
        for (const PhotoId id : change.photos) {
            if (const int row = rowOf(id); row >= 0) {
                emit dataChanged(index(row), index(row));
            }
        }
    } else if (change.has(Change::Placements) && !m_order.empty()) {
        emit dataChanged(index(0), index(rowCount() - 1));
    }
}

// ---- what a row is

PhotoId PhotoTrayModel::idAt(const QModelIndex& index) const {
    return index.isValid() ? m_order[static_cast<std::size_t>(index.row())] : PhotoId{};
}

const Photo* PhotoTrayModel::photoAt(const QModelIndex& index) const {
    return matwright::find(m_session.work(), idAt(index));
}

int PhotoTrayModel::rowOf(PhotoId id) const {
    const auto place = std::ranges::find(m_order, id);
    return place == m_order.end() ? -1 : static_cast<int>(place - m_order.begin());
}

QImage PhotoTrayModel::thumbnailAt(const QModelIndex& index) const {
    const Photo* photo = photoAt(index);
    if (!photo) {
        return {};
    }
    QImage picture = m_access.ifOpen() ? m_access.ifOpen()->thumbnail(wanted(*photo)) : QImage();
    const PhotoState state = stateAt(index);
    const bool isComing = m_access.ifOpen() && state != PhotoState::Missing &&
                          state != PhotoState::Changed && state != PhotoState::Broken;
    if (!picture.isNull() || isComing || !m_standIn) {
        return picture;
    }
    const PhotoId id = idAt(index);
    const auto known = m_standIns.find(id);
    return known != m_standIns.end() ? known->second
                                     : m_standIns.emplace(id, m_standIn(id)).first->second;
}

PhotoState PhotoTrayModel::stateAt(const QModelIndex& index) const {
    const Photo* photo = photoAt(index);
    return photo && m_access.ifOpen() ? m_access.ifOpen()->stateOf(photo->content)
                                      : PhotoState::Unknown;
}

bool PhotoTrayModel::isOnPageAt(const QModelIndex& index) const {
    return isOnPage(m_session.work(), idAt(index));
}

bool PhotoTrayModel::isFocalAt(const QModelIndex& index) const {
    return index.isValid() && m_session.work().focal == idAt(index);
}

int PhotoTrayModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_order.size());
}

QString PhotoTrayModel::description(const QModelIndex& index) const {
    const Photo& photo = *photoAt(index);
    QStringList parts{nameOf(photo), QString::fromStdString(largestPrintText(photo.upright))};
    const std::pair<bool, QString> marks[] = {{photo.favourite, tr("favourite")},
                                              {isFocalAt(index), tr("focal photo")},
                                              {isOnPageAt(index), tr("on the page")}};
    for (const auto& [isSet, words] : marks) {
        if (isSet) {
            parts << words;
        }
    }
    const QString fault = m_access.ifOpen() ? m_access.ifOpen()->faultOf(photo.content) : QString();
    if (const QString state = stateText(stateAt(index), fault); !state.isEmpty()) {
        parts << state;
    }
    return parts.join(QStringLiteral(", "));
}

QVariant PhotoTrayModel::data(const QModelIndex& index, int role) const {
    const Photo* photo = photoAt(index);
    if (!photo) {
        return {};
    }
    switch (role) {
        case Qt::DisplayRole:
            return nameOf(*photo);
        case Qt::AccessibleTextRole:
            return description(index);
        case Qt::ToolTipRole:
            return description(index).replace(QStringLiteral(", "), QStringLiteral("\n"));
        default:
            return {};
    }
}

Qt::ItemFlags PhotoTrayModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled |
                                 Qt::ItemNeverHasChildren
                           : Qt::NoItemFlags;
}

QStringList PhotoTrayModel::mimeTypes() const {
    return {QString::fromLatin1(photosMimeType)};
}

QMimeData* PhotoTrayModel::mimeData(const QModelIndexList& indexes) const {
    std::vector<PhotoId> ids;
    for (const QModelIndex& index : indexes) {
        ids.push_back(idAt(index));
    }
    return toMime(m_session.work(), ids);
}

}  // namespace matwright::app
