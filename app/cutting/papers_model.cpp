// SPDX-License-Identifier: MIT
#include "app/cutting/papers_model.h"

#include <QGuiApplication>
#include <QIcon>
#include <algorithm>

#include "app/panels/paper_pictures.h"
#include "core/measure/length_text.h"

namespace matwright::app {

PapersModel::PapersModel(PaperPictures& pictures, QObject* parent)
    : QAbstractTableModel(parent), m_pictures(pictures) {
    connect(&m_pictures, &PaperPictures::ready, this, &PapersModel::showPicture);
}

void PapersModel::setPapers(std::vector<PaperOnHand> papers, Scale scale) {
    beginResetModel();
    m_papers = std::move(papers);
    m_scale = scale;
    endResetModel();
}

int PapersModel::rowOf(PaperId id) const {
    const auto found = std::ranges::find(m_papers, id, &PaperOnHand::id);
    return found == m_papers.end() ? -1 : static_cast<int>(found - m_papers.begin());
}

int PapersModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_papers.size());
}

int PapersModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : Columns;
}

QString PapersModel::words(const PaperOnHand& paper, int column) const {
    switch (column) {
        case Name:
            return QString::fromStdString(paper.name);
        case PaperSize:
            return QString::fromStdString(sizeText(paper.size, m_scale));
        case Count:
            return paper.count == 0 ? tr("used up") : QString::number(paper.count);
        case Kind:
            return kindWord(paper.kind);
        case Pattern:
            return patternWord(paper.pattern);
        case Sides:
            return sidesWord(paper.sides);
        default:
            return QString::fromStdString(paper.thickness);
    }
}

QVariant PapersModel::sortKey(const PaperOnHand& paper, int column) const {
    if (column == PaperSize) {
        return paper.size.width.toInches() * paper.size.height.toInches();
    }
    return column == Count ? QVariant(paper.count) : QVariant(words(paper, column));
}

QPixmap PapersModel::swatch(const PaperOnHand& paper) const {
    const QImage picture =
        paper.picture.empty() ? QImage() : m_pictures.find(QString::fromStdString(paper.picture));
    return paperSwatch(paper.colour, picture, swatchSize, qApp->devicePixelRatio());
}

void PapersModel::showPicture(const QString& path) {
    const std::string picture = path.toStdString();
    for (std::size_t i = 0; i < m_papers.size(); ++i) {
        if (m_papers[i].picture == picture) {
            const QModelIndex shown = index(static_cast<int>(i), Name);
            emit dataChanged(shown, shown, {Qt::DecorationRole});
        }
    }
}

QVariant PapersModel::data(const QModelIndex& index, int role) const {
    const PaperOnHand& paper = m_papers[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) {
        return words(paper, index.column());
    }
    if (role == SortRole) {
        return sortKey(paper, index.column());
    }
    if (role == Qt::DecorationRole && index.column() == Name) {
        const QPixmap shown = swatch(paper);
        QIcon icon(shown);
        icon.addPixmap(shown, QIcon::Selected);  // a chosen paper keeps its colour
        return icon;
    }
    if (role == Qt::AccessibleTextRole && index.column() == Name) {
        return QString::fromStdString(paperText(paper, m_scale));
    }
    return {};
}

QVariant PapersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    const QString titles[] = {tr("Paper"),   tr("Size"),      tr("Sheets"),   tr("Kind"),
                              tr("Pattern"), tr("Good side"), tr("Thickness")};
    return titles[section];
}

PapersFilter::PapersFilter(QObject* parent) : QSortFilterProxyModel(parent) {
    setSortRole(PapersModel::SortRole);
    setSortCaseSensitivity(Qt::CaseInsensitive);
    setSortLocaleAware(true);
}

void PapersFilter::setWords(const QString& text) {
    m_words.clear();
    for (const QString& word : text.split(u' ', Qt::SkipEmptyParts)) {
        m_words.push_back(paperKey(word.toStdString()));
    }
    invalidateFilter();
}

bool PapersFilter::filterAcceptsRow(int row, const QModelIndex& parent) const {
    const QString name =
        sourceModel()->index(row, PapersModel::Name, parent).data(Qt::DisplayRole).toString();
    const std::string key = paperKey(name.toStdString());
    return std::ranges::all_of(
        m_words, [&](const std::string& word) { return key.find(word) != std::string::npos; });
}

}  // namespace matwright::app
