// SPDX-License-Identifier: MIT
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <QStringList>
#include <filesystem>
#include <memory>
#include <stop_token>

#include "core/filestore/file_store.h"
#include "core/prints/rendering.h"

namespace matwright::app {

// One file to be made.
struct PrintFile {
    std::string stem;  // of its name
    Gang gang;         // one print, or several on one sheet
};

// What is made: prints of a page, alone or two on a sheet where two fill one.
struct PrintsPlan {
    Making making;
    PrintOptions options;
    std::vector<Print> prints;
    std::vector<PrintFile> files;
};
PrintsPlan planOf(Making making, const PrintOptions& options, bool ganged);

// Makes the files of a plan in the background, on both cores. Never over another file: a name that
// is taken gets a number. Belongs to the window's thread.
class PrintsRun final : public QObject {
    Q_OBJECT

  public:
    struct Outcome {
        QStringList written;   // names, in the order of the plan
        QStringList problems;  // sentences, the file's name first
        bool wasCancelled = false;
    };

    explicit PrintsRun(std::shared_ptr<FileStore> files, QObject* parent = nullptr);
    // Gives up, and waits for what is being made.
    ~PrintsRun() override;

    // Precondition: nothing is running.
    void start(PrintsPlan plan, const std::filesystem::path& folder);
    void cancel();
    bool isRunning() const { return m_watcher.isRunning(); }

  signals:
    void progressed(int done, int total);
    void finished(const matwright::app::PrintsRun::Outcome& outcome);

  private:
    struct Job;
    struct Made {
        QString written;
        QString problem;
    };
    static Made make(const std::shared_ptr<const Job>& job, const PrintFile& file);
    void gather();

    std::shared_ptr<FileStore> m_files;
    std::shared_ptr<const Job> m_job;
    std::stop_source m_stop;
    QFutureWatcher<Made> m_watcher;
};

}  // namespace matwright::app
