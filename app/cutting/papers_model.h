// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>
#include <vector>

#include "app/cutting/paper_words.h"

namespace matwright::app {

class PaperPictures;

// The papers on hand as a table to look at. Sorts by SortRole: sizes by area, counts as numbers.
class PapersModel final : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { Name, PaperSize, Count, Kind, Pattern, Sides, Thickness, Columns };
    static constexpr int SortRole = Qt::UserRole;
    static constexpr QSize swatchSize{40, 40};

    // `pictures` outlives the model.
    explicit PapersModel(PaperPictures& pictures, QObject* parent = nullptr);

    void setPapers(std::vector<PaperOnHand> papers, Scale scale);
    const std::vector<PaperOnHand>& papers() const { return m_papers; }
    // -1 where there is none.
    int rowOf(PaperId id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QString words(const PaperOnHand& paper, int column) const;
    QVariant sortKey(const PaperOnHand& paper, int column) const;
    QPixmap swatch(const PaperOnHand& paper) const;
    void showPicture(const QString& path);

    std::vector<PaperOnHand> m_papers;
    Scale m_scale = Scale::SixteenthInch;
    PaperPictures& m_pictures;
};

// Shows what has every word that was typed in its name, letters folded as the library's search
// folds them.
class PapersFilter final : public QSortFilterProxyModel {
    Q_OBJECT

  public:
    explicit PapersFilter(QObject* parent = nullptr);
    void setWords(const QString& text);

  protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

  private:
    std::vector<std::string> m_words;  // folded
};

}  // namespace matwright::app
