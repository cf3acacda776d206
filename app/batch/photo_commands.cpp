// SPDX-License-Identifier: MIT
#include "app/batch/photo_commands.h"

#include "app/batch/page_making.h"
#include "app/batch/photo_list.h"
#include "app/batch/prints_run.h"

namespace matwright::app {

namespace {

class ReadyPhotoCommands final : public PhotoCommands {
  public:
    int photos(const PhotosCommand& command, BatchPorts& ports) override {
        return runPhotos(command, ports);
    }
    int page(const PageCommand& command, BatchPorts& ports) override {
        return runPage(command, ports);
    }
    int prints(const PrintsCommand& command, BatchPorts& ports) override {
        return runPrints(command, ports);
    }
    int doubleCheck(const DoubleCheckCommand& command, BatchPorts& ports) override {
        return runDoubleCheck(command, ports);
    }
    int printPlan(const PrintPlanCommand& command, BatchPorts& ports) override {
        return runPrintPlan(command, ports);
    }
    int printers(const PrintersCommand& command, BatchPorts& ports) override {
        return runPrinters(command, ports);
    }
    int printsOnHand(const PrintsOnHandCommand& command, BatchPorts& ports) override {
        return runPrintsOnHand(command, ports);
    }
    int testSheet(const TestSheetCommand& command, BatchPorts& ports) override {
        return runTestSheet(command, ports);
    }
};

}  // namespace

std::unique_ptr<PhotoCommands> makePhotoCommands() {
    return std::make_unique<ReadyPhotoCommands>();
}

}  // namespace matwright::app
