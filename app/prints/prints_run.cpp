// SPDX-License-Identifier: MIT
#include "app/prints/prints_run.h"

#include <QtConcurrent/QtConcurrentMap>
#include <utility>

#include "core/library/names.h"
#include "core/prints/print_names.h"

namespace matwright::app {

namespace {

Gang alone(const std::vector<Print>& prints, std::size_t index) {
    return {prints[index].paper, {{index, {}, false}}};
}

}  // namespace

PrintsPlan planOf(Making making, const PrintOptions& options, bool ganged) {
    PrintsPlan plan{std::move(making), options, {}, {}};
    plan.prints = printsOf(plan.making, options);
    if (ganged) {
        for (Gang& gang : simpleGangs(plan.prints)) {
            const std::string stem = fileStemOf(gang, plan.prints);
            plan.files.push_back({stem, std::move(gang)});
        }
        return plan;
    }
    for (std::size_t i = 0; i < plan.prints.size(); ++i) {
        Gang gang = alone(plan.prints, i);
        const std::string stem = fileStemOf(gang, plan.prints);
        plan.files.push_back({stem, std::move(gang)});
    }
    return plan;
}

struct PrintsRun::Job {
    PrintsPlan plan;
    std::filesystem::path folder;
    std::shared_ptr<FileStore> files;
    std::stop_token stop;
};

PrintsRun::PrintsRun(std::shared_ptr<FileStore> files, QObject* parent)
    : QObject(parent), m_files(std::move(files)) {
    connect(&m_watcher, &QFutureWatcherBase::progressValueChanged, this, [this](int done) {
        emit progressed(done, static_cast<int>(m_job->plan.files.size()));
    });
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &PrintsRun::gather);
}

PrintsRun::~PrintsRun() {
    cancel();
    m_watcher.waitForFinished();
}

void PrintsRun::start(PrintsPlan plan, const std::filesystem::path& folder) {
    m_stop = {};
    m_job = std::make_shared<Job>(Job{std::move(plan), folder, m_files, m_stop.get_token()});
    m_watcher.setFuture(QtConcurrent::mapped(
        m_job->plan.files, [job = m_job](const PrintFile& file) { return make(job, file); }));
}

void PrintsRun::cancel() {
    m_stop.request_stop();
    m_watcher.cancel();
}

PrintsRun::Made PrintsRun::make(const std::shared_ptr<const Job>& job, const PrintFile& file) {
    const PrintsPlan& plan = job->plan;
    const auto photoOf = [&plan](PhotoId id) -> const Photo& {
        return plan.making.work.photos.at(id);
    };
    const Print& first = plan.prints[file.gang.places.front().print];
    const Result<std::string> bytes =
        file.gang.places.size() == 1
            ? printFile(first, photoOf(first.photo), plan.options, job->stop)
            : gangFile(file.gang, plan.prints, photoOf, plan.options, job->stop);
    if (job->stop.stop_requested()) {
        return {};
    }
    const QString shown = QString::fromStdString(file.stem);
    if (!bytes) {
        return {{}, shown + QStringLiteral(": ") + QString::fromStdString(bytes.error().text())};
    }
    for (int number = 1;; ++number) {
        const std::string name = numberedFileName(file.stem, number, suffixOf(plan.options.format));
        const Result<bool> created = job->files->create(job->folder / name, *bytes);
        if (!created) {
            return {{},
                    shown + QStringLiteral(": ") + QString::fromStdString(created.error().text())};
        }
        if (*created) {
            return {QString::fromStdString(name), {}};
        }
    }
}

void PrintsRun::gather() {
    Outcome outcome;
    outcome.wasCancelled = m_stop.stop_requested();
    for (const Made& made : m_watcher.future().results()) {
        if (!made.written.isEmpty()) {
            outcome.written.append(made.written);
        }
        if (!made.problem.isEmpty()) {
            outcome.problems.append(made.problem);
        }
    }
    emit finished(outcome);
}

}  // namespace matwright::app
