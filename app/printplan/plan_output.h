// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <memory>
#include <vector>

#include "app/printplan/plan_asks.h"
#include "app/printplan/plan_run.h"
#include "app/printplan/plan_work.h"
#include "app/printplan/queue_job.h"

namespace matwright::app {

// What leaves a plan. All are work for PlanWork: they own what they need, and write never over
// another file; a name that is taken gets a number.

// One PDF a printer that has sheets, every page exactly its paper.
PlanWork::Work savingPdfs(std::shared_ptr<const ReadyPlan> ready, std::shared_ptr<FileStore> files,
                          std::filesystem::path folder);
// One JPEG a sheet, exactly its paper.
PlanWork::Work savingPictures(std::shared_ptr<const ReadyPlan> ready,
                              std::shared_ptr<FileStore> files, std::filesystem::path folder);

// One PDF to be taken to the table: every sheet with its cuts, step by step.
PlanWork::Work savingCuts(std::shared_ptr<const ReadyPlan> ready, std::shared_ptr<FileStore> files,
                          std::filesystem::path folder, Scale scale);

// Sheets of one paper for one printer, in the plan's order.
struct SheetJob {
    PrinterPaperId paper;
    std::vector<std::size_t> sheets;  // indexes of the plan's
};
std::vector<SheetJob> jobsFor(const PrintPlan& plan, PrinterId printer);

// The same once the person said where to.
struct ReadyJob {
    QueueJob queue;  // with a printer
    std::vector<std::size_t> sheets;
};
// To the printers themselves, as the correction asks for. What a job has begun to send comes out
// whatever happens then, so the outcome says how far each came.
PlanWork::Work printing(std::shared_ptr<const ReadyPlan> ready,
                        std::shared_ptr<const std::vector<ReadyJob>> jobs);

// "Sheet 1 for “Small printer”: Glossy 4 × 6"
QString sheetTitle(const ReadyPlan& ready, std::size_t sheet);

}  // namespace matwright::app
