// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>

#include "app/prints/prints_asks.h"
#include "app/prints/prints_run.h"

class QLabel;
class QPushButton;
class QTableWidget;

namespace matwright::app {

class PhotoService;
class PrintsOptionsPanel;
class SettingsStore;
class WindowFoot;

// Every print of a page, and the way to files that a photo printer or a shop prints at exactly the
// right size. Works on a copy of the page; the choices are remembered in the settings.
class PrintsWindow final : public QDialog {
    Q_OBJECT

  public:
    PrintsWindow(const Making& making, const QString& suggestedName, SettingsStore& settings,
                 PhotoService* service, QWidget* parent = nullptr);
    PrintsWindow(Making making, QString suggestedName, SettingsStore& settings,
                 PhotoService* service, PrintsAsks asks, QWidget* parent);
    ~PrintsWindow() override;

    // What the window says, for tests.
    QString summary() const;
    QString result() const;
    QString problem() const;
    bool isWorking() const { return m_isWorking; }
    QTableWidget& list() { return *m_list; }
    PrintsOptionsPanel& options() { return *m_options; }

  public slots:
    void savePrints();
    // A PDF of all prints, to look over before money is spent.
    void saveDoubleCheck();

  protected:
    void closeEvent(QCloseEvent* event) override;
    void reject() override;

  private:
    QWidget* makeList();
    QWidget* makeSide();
    void buildFoot();
    void showRows();
    void showPictures();
    void fillRow(int row, const struct PrintRow& words);
    QString faultOf(PhotoId photo) const;
    void remember();
    void showProgress(int done, int total);
    void showOutcome(const PrintsRun::Outcome& outcome);
    void setWorking(bool working);
    void showEnabled();
    void checkSaved();
    Making chosenMaking() const;

    const Making m_making;
    const QString m_suggestedName;
    SettingsStore& m_settings;
    PhotoService* m_service;
    PrintsAsks m_asks;
    QLabel* m_summary;
    QTableWidget* m_list;
    PrintsOptionsPanel* m_options;
    WindowFoot* m_foot;
    QPushButton* m_save;
    QPushButton* m_check;
    QPushButton* m_close;
    QPushButton* m_openFolder;
    PrintsRun* m_run;
    QFutureWatcher<Result<void>> m_checkWatcher;
    QString m_checkPath;
    QString m_folder;
    bool m_isWorking = false;     // until the end of the run was told
    std::vector<Print> m_prints;  // of the rows
};

}  // namespace matwright::app
