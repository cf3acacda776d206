// SPDX-License-Identifier: MIT
#include "app/printplan/plan_output.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPrinter>
#include <QRegularExpression>
#include <algorithm>
#include <utility>

#include "app/photos/rasters.h"
#include "core/library/names.h"
#include "core/printplan/sheet_files.h"
#include "core/prints/picture_file.h"

namespace matwright::app {

namespace {

QString outputWord(const char* text) {
    return QCoreApplication::translate("matwright::app::PlanOutput", text);
}

QString sentenceOf(const QString& what, const Error& error) {
    return what + QStringLiteral(": ") + QString::fromStdString(error.text());
}

// Under the first free name; tells the outcome.
void create(FileStore& files, const std::filesystem::path& folder, const std::string& stem,
            std::string_view suffix, const std::string& bytes, WorkOutcome& outcome) {
    for (int number = 1;; ++number) {
        const std::string name = numberedFileName(stem, number, suffix);
        const Result<bool> created = files.create(folder / name, bytes);
        if (!created) {
            outcome.problems << sentenceOf(QString::fromStdString(name), created.error());
            return;
        }
        if (*created) {
            outcome.done << QString::fromStdString(name);
            return;
        }
    }
}

// A title that may be a file's name on other systems too.
std::string stemOf(QString title) {
    title.remove(QStringLiteral("“")).remove(QStringLiteral("”"));
    title.replace(QLatin1StringView(": "), QLatin1StringView(", "));
    title.replace(QRegularExpression(QStringLiteral("[/\\\\:*?\"<>|]")), QStringLiteral("-"));
    return title.toStdString();
}

// Empty where all of the job was painted.
QString paintJob(const ReadyPlan& ready, const ReadyJob& job, const std::stop_token& stop,
                 const std::function<void()>& painted) {
    QPrinter& printer = *job.queue.printer;
    QPainter painter;
    for (int number = job.queue.first; number <= job.queue.last; ++number) {
        const std::size_t index = job.sheets[static_cast<std::size_t>(number - 1)];
        const PrintSheet& sheet = ready.plan.sheets[index];
        const Result<Raster> raster =
            renderSheet(ready.plan, sheet, ready.input.printers, {}, stop);
        if (!raster || stop.stop_requested()) {
            painter.end();
            return stop.stop_requested() ? QString()
                                         : sentenceOf(sheetTitle(ready, index), raster.error());
        }
        const bool begun = painter.isActive() ? printer.newPage() : painter.begin(&printer);
        if (!begun) {
            return outputWord(
                "The printer could not be started. Look at its queue, or save PDFs "
                "and print them at actual size.");
        }
        paintSheetPicture(painter, printer, imageOf(*raster), sheet.size);
        painted();
    }
    return painter.end() ? QString() : outputWord("The printer gave up; look at its queue.");
}

}  // namespace

PlanWork::Work savingPdfs(std::shared_ptr<const ReadyPlan> ready, std::shared_ptr<FileStore> files,
                          std::filesystem::path folder) {
    return [ready = std::move(ready), files = std::move(files), folder = std::move(folder)](
               const std::stop_token& stop, const PlanWork::Progress& progress) {
        WorkOutcome outcome;
        progress(0, 0);
        const auto made = sheetFiles(ready->plan, ready->input.printers, {}, stop);
        if (stop.stop_requested()) {
            return outcome;
        }
        if (!made) {
            outcome.problems << QString::fromStdString(made.error().text());
            return outcome;
        }
        for (const SheetFile& file : *made) {
            create(*files, folder, std::filesystem::path(file.name).stem().string(), ".pdf",
                   file.bytes, outcome);
        }
        return outcome;
    };
}

PlanWork::Work savingPictures(std::shared_ptr<const ReadyPlan> ready,
                              std::shared_ptr<FileStore> files, std::filesystem::path folder) {
    return [ready = std::move(ready), files = std::move(files), folder = std::move(folder)](
               const std::stop_token& stop, const PlanWork::Progress& progress) {
        WorkOutcome outcome;
        const int total = static_cast<int>(ready->plan.sheets.size());
        for (int i = 0; i < total; ++i) {
            progress(i, total);
            const auto index = static_cast<std::size_t>(i);
            const PrintOptions options;
            const Result<Raster> raster = renderSheet(ready->plan, ready->plan.sheets[index],
                                                      ready->input.printers, options, stop);
            if (stop.stop_requested()) {
                return outcome;
            }
            const QString title = sheetTitle(*ready, index);
            const Result<std::string> bytes =
                raster ? pictureFile(*raster, {}, options)
                       : Result<std::string>(std::unexpected(raster.error()));
            if (!bytes) {
                outcome.problems << sentenceOf(title, bytes.error());
                continue;
            }
            create(*files, folder, stemOf(title), ".jpg", *bytes, outcome);
        }
        return outcome;
    };
}

std::vector<SheetJob> jobsFor(const PrintPlan& plan, PrinterId printer) {
    std::vector<SheetJob> jobs;
    for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
        const PrintSheet& sheet = plan.sheets[i];
        if (sheet.printer != printer) {
            continue;
        }
        const auto job = std::ranges::find(jobs, sheet.paper, &SheetJob::paper);
        if (job == jobs.end()) {
            jobs.push_back({sheet.paper, {i}});
        } else {
            job->sheets.push_back(i);
        }
    }
    return jobs;
}

PlanWork::Work printing(std::shared_ptr<const ReadyPlan> ready,
                        std::shared_ptr<const std::vector<ReadyJob>> jobs) {
    return [ready = std::move(ready), jobs = std::move(jobs)](const std::stop_token& stop,
                                                              const PlanWork::Progress& progress) {
        WorkOutcome outcome;
        int total = 0;
        for (const ReadyJob& job : *jobs) {
            total += job.queue.last - job.queue.first + 1;
        }
        int done = 0;
        progress(0, total);
        for (const ReadyJob& job : *jobs) {
            const QString problem = paintJob(*ready, job, stop, [&] { progress(++done, total); });
            if (!problem.isEmpty()) {
                outcome.problems << problem;
            } else if (!stop.stop_requested()) {
                outcome.done << sentText(*job.queue.printer);
            }
        }
        return outcome;
    };
}

QString sheetTitle(const ReadyPlan& ready, std::size_t sheet) {
    const PrintSheet& planned = ready.plan.sheets[sheet];
    const Printer* printer = find(ready.input.printers, planned.printer);
    const PrinterPaper* paper = printer ? find(*printer, planned.paper) : nullptr;
    return outputWord("Sheet %1 for “%2”: %3")
        .arg(static_cast<int>(sheet) + 1)
        .arg(printer ? QString::fromStdString(printer->name) : QString(),
             paper ? QString::fromStdString(paper->name) : QString());
}

}  // namespace matwright::app
