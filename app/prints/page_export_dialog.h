// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <QFutureWatcher>
#include <stop_token>

#include "app/prints/page_export.h"
#include "app/prints/prints_asks.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;

namespace matwright::app {

class TintedLabel;

// Saves the finished page as a picture, for looking at and sharing. Never blocks.
class PageExportDialog final : public QDialog {
    Q_OBJECT

  public:
    PageExportDialog(const Making& making, const QString& suggestedName, QWidget* parent = nullptr);
    PageExportDialog(Making making, QString suggestedName, PrintsAsks asks, QWidget* parent);
    ~PageExportDialog() override;

    QString result() const;
    QString problem() const;
    bool isWorking() const { return m_watcher.isRunning(); }

  public slots:
    void save();

  protected:
    void reject() override;

  private:
    struct Saved {
        Result<void> done;
        QStringList missing;
    };
    void build();
    PrintFormat format() const;
    int ppi() const;
    void showSize();
    void setWorking(bool working);
    void finished();

    const Making m_making;
    const QString m_suggestedName;
    PrintsAsks m_asks;
    QComboBox* m_format;
    QComboBox* m_ppi;
    QLabel* m_size;
    QLabel* m_result;
    TintedLabel* m_problem;
    QProgressBar* m_progress;
    QPushButton* m_save;
    QPushButton* m_close;
    QPushButton* m_openFolder;
    QString m_path;
    std::stop_source m_stop;
    QFutureWatcher<Saved> m_watcher;
};

}  // namespace matwright::app
