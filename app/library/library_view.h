// SPDX-License-Identifier: MIT
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QSlider>
#include <QStackedWidget>
#include <QStringList>
#include <QTimer>
#include <QToolButton>
#include <QWidget>
#include <memory>

#include "app/library/details_panel.h"
#include "app/library/filter_panel.h"
#include "app/library/finder.h"
#include "app/library/indexing.h"
#include "app/library/library_actions.h"
#include "app/library/library_asks.h"
#include "app/library/library_part.h"
#include "app/library/library_work.h"
#include "app/library/thumbnails.h"
#include "app/library/wall_model.h"
#include "app/library/wall_notice.h"
#include "app/library/wall_view.h"
#include "app/settings/settings.h"
#include "core/carry/turned_sketch.h"

namespace matwright::app {

// Where a library and its caches are.
struct LibraryPlaces {
    QString standardFolder;  // of a person who chose none; made where it is missing
    QString cacheFolder;
    QString startersFolder;  // empty where there are none
};
// Those of this person and this program.
LibraryPlaces standardLibraryPlaces();

// The library of sketches: filters on the left, the wall in the middle, the selected sketch on the
// right. It puts the parts together; what they do is theirs.
class LibraryView final : public QWidget {
    Q_OBJECT

  public:
    // All but the places outlive the view.
    LibraryView(LibraryHost& host, SettingsStore& settings, LibraryAsks& asks, LibraryPlaces places,
                QWidget* parent = nullptr);
    ~LibraryView() override;

    WallView& wall() { return *m_wall; }
    Finder& finder() { return m_finder; }
    FilterPanel& filters() { return *m_filters; }
    DetailsPanel& details() { return *m_details; }
    LibraryActions& actions() { return *m_actions; }
    QString folder() const { return m_folder; }
    // The folder was looked at to the end.
    bool isKnown() const { return m_isKnown; }
    QString headline() const { return m_count->text(); }
    WallNotice& notice() { return *m_notice; }
    QString news() const { return m_news->text(); }
    QToolButton& undoButton() { return *m_undo; }
    QToolButton& stopButton() { return *m_stop; }
    QToolButton& problemsButton() { return *m_problems; }

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    QWidget* makeHeader();
    QWidget* makeMiddle();
    QWidget* makeFoot();
    void connectParts();
    void connectCommands();
    void connectWork();

    void openLibrary(const QString& folder);
    void prepare();
    void firstUse();
    void takeFolderOfSettings();
    void showFound();
    void showNotice();
    void showSelection();
    void showLook(const IndexUpdate& update);
    // With an undo, a button offers it until the next news.
    void tellNews(const QString& sentence, std::function<void()> undo = {});
    void tellImported(const ImportReport& report, const QString& into);
    void selectArrived(const std::vector<std::string>& sketches);

    std::string onlySelected() const;
    QString fileOf(const std::string& sketch) const;
    void startFrom(const std::string& sketch,
                   const std::function<std::optional<Sketch>(const Sketch&)>& make);
    void startTurned(WholeTurn turn);
    void openSelected();
    void toggleFavourite();
    void renameSelected();
    void moveSelected();
    void tellMoved(const LibraryWork::Moves& back);
    void exportSelected();
    void makeContactSheet();
    void putInStarters();
    void loosenFilter();
    void showFamilyOfSelected();

    LibraryHost& m_host;
    SettingsStore& m_settings;
    LibraryAsks& m_asks;
    const LibraryPlaces m_places;
    QString m_folder;
    Finder m_finder;
    Thumbnails m_thumbnails;
    WallModel m_model;
    std::unique_ptr<Indexing> m_indexing;
    std::unique_ptr<LibraryWork> m_work;
    LibraryActions* m_actions;
    FilterPanel* m_filters;
    WallView* m_wall;
    WallNotice* m_notice;
    DetailsPanel* m_details;
    QStackedWidget* m_stack;
    QLabel* m_count;
    QLabel* m_progress;
    QComboBox* m_order;
    QSlider* m_size;
    QLabel* m_news;
    QToolButton* m_undo;
    QToolButton* m_stop;  // an import
    QToolButton* m_problems;
    QStringList m_problemLines;
    std::vector<std::string> m_arrived;
    std::function<void()> m_undoing;
    Query m_shownQuery;
    bool m_isPrepared = false;  // or is being
    bool m_isKnown = false;     // what the library holds was found out once
};

}  // namespace matwright::app
