// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <QTimer>
#include <filesystem>
#include <optional>

#include "app/cutting/cutting_asks.h"
#include "core/papers/papers_store.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;

namespace matwright::app {

class PaperPictures;
class PapersFilter;
class PapersModel;
class SettingsStore;
class WindowFoot;

// The file of the papers on hand: papers.sqlite in the person's data folder.
std::filesystem::path personalPapersFile();

// The sheets and scraps at home: looked through, added, changed, taken out. Every change is kept at
// once; what is undone here is the last change of the list, whoever made it.
class PapersWindow final : public QDialog {
    Q_OBJECT

  public:
    // `settings` outlives the window.
    PapersWindow(const std::filesystem::path& file, SettingsStore& settings, CuttingAsks asks,
                 QWidget* parent = nullptr);
    ~PapersWindow() override;

    // For tests.
    QTableView& table() { return *m_table; }
    QString problem() const;
    QString news() const;
    // What Add… and Change… do once their dialog was accepted.
    void add(const PaperOnHand& paper);
    void change(const PaperOnHand& before, const PaperOnHand& after);

  public slots:
    void askToAdd();
    void askToChange();
    void removeChosen();
    void importCsv();
    void exportCsv();
    void undo();
    void redo();

  protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QWidget* makeHead();
    void buildTable();
    void buildFoot();
    void addKeys();
    std::vector<PaperOnHand> chosen() const;
    void choose(std::span<const PaperId> ids);
    // What is new or other than before.
    void chooseChanged(const std::vector<PaperOnHand>& before);
    // Looks at the store again where it has changed.
    void refresh();
    void relist();
    // False, with a complaint, where the list cannot be read now; it is tried again soon then.
    bool read();
    void showState();
    void showUndo();
    void say(const QString& sentence);
    void complain(const Error& error);
    void writeCsv(QString path);
    // Those that are to be added; nothing where the person gave it up.
    std::optional<std::vector<PaperOnHand>> toImport(std::vector<PaperOnHand> papers,
                                                     const QString& file);

    SettingsStore& m_settings;
    CuttingAsks m_asks;
    const std::filesystem::path m_file;
    Result<PapersStore> m_store;
    std::int64_t m_version = -1;  // of the list that is shown; -1 where it could not be read
    QTimer m_later;
    // As they stand on the buttons; no other change is taken back or brought back.
    std::optional<PapersChange> m_undoable;
    std::optional<PapersChange> m_redoable;
    PaperPictures* m_pictures;
    PapersModel* m_model;
    PapersFilter* m_filter;
    QTableView* m_table;
    QLabel* m_empty;
    QLineEdit* m_search;
    QPushButton* m_add = nullptr;
    QPushButton* m_change = nullptr;
    QPushButton* m_remove = nullptr;
    QPushButton* m_undo = nullptr;
    QPushButton* m_redo = nullptr;
    QPushButton* m_import = nullptr;
    QPushButton* m_export = nullptr;
    WindowFoot* m_foot;
};

}  // namespace matwright::app
