// SPDX-License-Identifier: MIT
#include "app/printplan/plan_output.h"

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QPrinter>
#include <QRegularExpression>
#include <algorithm>
#include <deque>
#include <utility>

#include "app/photos/rasters.h"
#include "app/rendering/pdf.h"
#include "core/cutpicture/plan_pages.h"
#include "core/library/names.h"
#include "core/printplan/drawn_sheet.h"
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

// A job that has begun cannot be taken back, so all its sheets are made first where they take no
// more memory than this.
constexpr double mostBytesAhead = 320e6;

std::vector<std::size_t> wantedSheets(const ReadyJob& job) {
    std::vector<std::size_t> sheets;
    for (int number = std::max(1, job.queue.first); number <= job.queue.last; ++number) {
        sheets.push_back(job.sheets.at(static_cast<std::size_t>(number - 1)));
    }
    return sheets;
}

double bytesOf(const ReadyPlan& ready, const std::vector<std::size_t>& sheets) {
    constexpr double bytesOfPixel = 4;
    const double ppi = PrintOptions().ppi;
    double bytes = 0;
    for (const std::size_t sheet : sheets) {
        const Size size = ready.plan.sheets[sheet].size;
        bytes += bytesOfPixel * size.width.toInches() * ppi * size.height.toInches() * ppi;
    }
    return bytes;
}

// One job from the first sheet to the last, or to where it has to end.
class JobPainting {
  public:
    JobPainting(const ReadyPlan& ready, const ReadyJob& job, const std::stop_token& stop)
        : m_ready(ready),
          m_printer(*job.queue.printer),
          m_stop(stop),
          m_sheets(wantedSheets(job)) {}

    // `made` is called for every sheet that was made ready.
    void run(const std::function<void()>& made) {
        const std::size_t ahead =
            bytesOf(m_ready, m_sheets) <= mostBytesAhead ? m_sheets.size() : 1;
        while (m_painted < m_sheets.size() && makeUpTo(m_painted + ahead, made) && paintNext()) {
        }
        if (m_painter.isActive() && !m_painter.end()) {
            m_problem = gaveUp();
        }
    }

    // How many sheets were painted.
    std::size_t painted() const { return m_painted; }
    const QString& problem() const { return m_problem; }

    SentJob sent() const {
        const auto end = m_sheets.begin() + static_cast<std::ptrdiff_t>(m_painted);
        const bool isFile = m_printer.outputFormat() == QPrinter::PdfFormat;
        return {isFile ? QString() : m_printer.printerName(),
                m_painted == m_sheets.size() ? sentText(m_printer)
                                             : outputWord("%1 of %2 sheets: %3")
                                                   .arg(m_painted)
                                                   .arg(m_sheets.size())
                                                   .arg(sentText(m_printer)),
                {m_sheets.begin(), end}};
    }

  private:
    static QString gaveUp() { return outputWord("The printer gave up; look at its queue."); }

    // False where the person has stopped it or a sheet cannot be made.
    bool makeUpTo(std::size_t end, const std::function<void()>& made) {
        while (m_painted + m_pictures.size() < std::min(end, m_sheets.size())) {
            const std::size_t index = m_sheets[m_painted + m_pictures.size()];
            const Result<Raster> raster = renderSheet(m_ready.plan, m_ready.plan.sheets[index],
                                                      m_ready.input.printers, {}, m_stop);
            if (m_stop.stop_requested()) {
                return false;
            }
            if (!raster) {
                m_problem = sentenceOf(sheetTitle(m_ready, index), raster.error());
                return false;
            }
            m_pictures.push_back(imageOf(*raster));
            made();
        }
        return true;
    }

    bool paintNext() {
        const bool isFirst = m_painted == 0;
        if (!(isFirst ? m_painter.begin(&m_printer) : m_printer.newPage())) {
            m_problem = isFirst ? outputWord(
                                      "The printer could not be started. Look at its queue, "
                                      "or save PDFs and print them at actual size.")
                                : gaveUp();
            return false;
        }
        paintSheetPicture(m_painter, m_printer, m_pictures.front(),
                          m_ready.plan.sheets[m_sheets[m_painted]].size);
        m_pictures.pop_front();
        ++m_painted;
        return true;
    }

    const ReadyPlan& m_ready;
    QPrinter& m_printer;
    const std::stop_token& m_stop;
    const std::vector<std::size_t> m_sheets;
    std::deque<QImage> m_pictures;  // made, not painted yet
    QPainter m_painter;
    std::size_t m_painted = 0;
    QString m_problem;
};

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

PlanWork::Work savingCuts(std::shared_ptr<const ReadyPlan> ready, std::shared_ptr<FileStore> files,
                          std::filesystem::path folder, Scale scale) {
    return [ready = std::move(ready), files = std::move(files), folder = std::move(folder), scale](
               const std::stop_token& stop, const PlanWork::Progress& progress) {
        WorkOutcome outcome;
        progress(0, 0);
        std::vector<PlannedSheet> sheets;
        sheets.reserve(ready->plan.sheets.size());
        for (std::size_t i = 0; i < ready->plan.sheets.size(); ++i) {
            sheets.push_back(drawnSheet(ready->plan, ready->input, i, scale));
        }
        PlanPagesOptions options;
        options.paper = sheetOfThisPlace();
        options.title = outputWord("Cutting the prints").toStdString();
        options.summary = {ready->plan.bound};
        std::vector<PdfPage> pages;
        for (Drawing& page : planPages(sheets, options)) {
            pages.push_back({std::move(page), options.paper, std::nullopt, {}});
        }
        const Result<QByteArray> pdf = pdfBytes(pages, QString::fromStdString(options.title));
        if (!pdf) {
            outcome.problems << QString::fromStdString(pdf.error().text());
        } else if (!stop.stop_requested()) {
            create(*files, folder, options.title, ".pdf", pdf->toStdString(), outcome);
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
            JobPainting painting(*ready, job, stop);
            painting.run([&] { progress(++done, total); });
            if (!painting.problem().isEmpty()) {
                outcome.problems << painting.problem();
            }
            if (painting.painted() > 0) {
                outcome.sent.push_back(painting.sent());
            }
            if (stop.stop_requested()) {
                break;
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
