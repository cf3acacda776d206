// SPDX-License-Identifier: MIT
#include "app/library/wall_model.h"

#include <QFile>
#include <QMimeData>
#include <QUrl>

#include "app/library/entry_words.h"

namespace matwright::app {
namespace {

bool areSameSketches(const Holdings& before, const std::vector<std::uint32_t>& rowsBefore,
                     const Holdings& now, const std::vector<std::uint32_t>& rows) {
    if (rowsBefore.size() != rows.size()) {
        return false;
    }
    if (&before == &now) {
        return rowsBefore == rows;
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (before.path(rowsBefore[i]) != now.path(rows[i])) {
            return false;
        }
    }
    return true;
}

}  // namespace

WallModel::WallModel(const Finder& finder, QObject* parent)
    : QAbstractListModel(parent), m_finder(finder), m_holdings(finder.holdings()) {
    connect(&finder, &Finder::changed, this, &WallModel::takeFound);
}

void WallModel::takeFound() {
    const auto& rows = m_finder.found().indices;
    const bool isSame = areSameSketches(*m_holdings, m_rows, *m_finder.holdings(), rows);
    if (!isSame) {
        emit aboutToShowOthers();
        beginResetModel();
    }
    m_holdings = m_finder.holdings();
    m_rows = rows;
    m_rowOfEntry.assign(m_holdings->size(), -1);
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        m_rowOfEntry[m_rows[row]] = static_cast<std::int32_t>(row);
    }
    if (!isSame) {
        endResetModel();
        emit showsOthers();
    } else {
        emit showsSameAgain();
    }
}

int WallModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant WallModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) {
        return {};
    }
    switch (role) {
        case Qt::DisplayRole:
            return asText(shownName(entry(index.row())));
        case Qt::ToolTipRole: {  // what the cell has no room for
            const LibraryEntry shown = entry(index.row());
            return QStringList{
                asText(shownName(shown)),
                photoWords(shown.facts.photos) + QStringLiteral(" · ") + pageWords(shown.facts),
                printNeedWords(shown.facts.prints)}
                .join(u'\n')
                .trimmed();
        }
        case Qt::AccessibleTextRole:
            return spokenEntry(entry(index.row()), alike(index.row()));
        default:
            return {};
    }
}

Qt::ItemFlags WallModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemIsDragEnabled
                           : Qt::NoItemFlags;
}

QStringList WallModel::mimeTypes() const {
    return {QStringLiteral("text/uri-list")};
}

QMimeData* WallModel::mimeData(const QModelIndexList& indexes) const {
    QList<QUrl> urls;
    for (const QModelIndex& index : indexes) {
        const QString below = QFile::decodeName(path(index.row()).c_str());
        urls << QUrl::fromLocalFile(m_library + u'/' + below);
    }
    auto* mime = new QMimeData;
    mime->setUrls(urls);
    return mime;
}

LibraryEntry WallModel::entry(int row) const {
    return m_holdings->entry(m_rows.at(static_cast<std::size_t>(row)));
}

int WallModel::alike(int row) const {
    return m_finder.alike(m_rows.at(static_cast<std::size_t>(row)));
}

ContentKey WallModel::content(int row) const {
    return m_holdings->content(m_rows.at(static_cast<std::size_t>(row)));
}

std::string WallModel::path(int row) const {
    return std::string(m_holdings->path(m_rows.at(static_cast<std::size_t>(row))));
}

std::optional<int> WallModel::rowOf(const std::string& path) const {
    const auto entry = m_holdings->indexOf(path);
    if (!entry || m_rowOfEntry.empty() || m_rowOfEntry[*entry] < 0) {
        return std::nullopt;
    }
    return m_rowOfEntry[*entry];
}

}  // namespace matwright::app
