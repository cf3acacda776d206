// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

#include "app/library/finder.h"

namespace matwright::app {

// What was found, as rows for a view.
class WallModel final : public QAbstractListModel {
    Q_OBJECT

  public:
    // `library` is where the files are, for dragging them out.
    WallModel(const Finder& finder, QObject* parent = nullptr);

    void setLibrary(const QString& folder) { m_library = folder; }

    int rowCount(const QModelIndex& parent = {}) const override;
    // DisplayRole is the name, AccessibleTextRole all of it in one line.
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QStringList mimeTypes() const override;
    QMimeData* mimeData(const QModelIndexList& indexes) const override;
    Qt::DropActions supportedDragActions() const override { return Qt::CopyAction; }

    LibraryEntry entry(int row) const;
    int alike(int row) const;
    ContentKey content(int row) const;
    std::string path(int row) const;
    std::optional<int> rowOf(const std::string& path) const;

  signals:
    // Between the two, rows are those of something else; what is known by path may be found again.
    void aboutToShowOthers();
    void showsOthers();
    // The same sketches in the same order; something about them may be different.
    void showsSameAgain();

  private:
    void takeFound();

    const Finder& m_finder;
    QString m_library;
    std::shared_ptr<const Holdings> m_holdings;
    std::vector<std::uint32_t> m_rows;       // into the holdings
    std::vector<std::int32_t> m_rowOfEntry;  // -1: not found
};

}  // namespace matwright::app
