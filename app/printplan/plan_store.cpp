// SPDX-License-Identifier: MIT
#include "app/printplan/plan_store.h"

#include <QtConcurrent/QtConcurrentRun>
#include <utility>

namespace matwright::app {

namespace {

// Numbered as a store would, so that a plan can tell them apart.
std::vector<Printer> suggestedPrinters(Unit unit) {
    std::vector<Printer> printers = startingPrinters(unit);
    std::int64_t number = 0;
    std::int64_t paperNumber = 0;
    for (Printer& printer : printers) {
        printer.id = {++number};
        for (PrinterPaper& paper : printer.papers) {
            paper.id = {++paperNumber};
        }
    }
    return printers;
}

}  // namespace

PlanStore::PlanStore(std::filesystem::path file, Unit unit, QObject* parent)
    : QObject(parent), m_file(std::move(file)), m_unit(unit) {
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &PlanStore::take);
}

PlanStore::~PlanStore() {
    m_watcher.waitForFinished();
}

void PlanStore::read() {
    if (m_isReading) {
        m_again = true;
        return;
    }
    m_isReading = true;
    m_watcher.setFuture(QtConcurrent::run([store = m_store, file = m_file, unit = m_unit] {
        return std::make_shared<Reading>(readNow(store, file, unit));
    }));
}

PlanStore::Reading PlanStore::readNow(std::shared_ptr<PrintingStore> store,
                                      const std::filesystem::path& file, Unit unit) {
    if (!store) {
        auto opened = PrintingStore::open(file, unit);
        if (!opened) {
            return {nullptr, std::unexpected(opened.error())};
        }
        store = std::make_shared<PrintingStore>(*std::move(opened));
    }
    Result<PlanInput> known = storedInput(*store);
    return {std::move(store), std::move(known)};
}

void PlanStore::take() {
    m_isReading = false;
    if (std::exchange(m_again, false)) {
        return read();
    }
    const std::shared_ptr<Reading> reading = m_watcher.result();
    m_store = std::move(reading->store);
    m_problem = reading->known ? QString() : QString::fromStdString(reading->known.error().text());
    PlanInput known = m_known;
    if (reading->known) {
        known = *std::move(reading->known);
    } else if (!m_store) {
        known = {};
        known.printers = suggestedPrinters(m_unit);
    }
    const bool differs = known != std::exchange(m_known, known);
    emit wasRead(differs);
}

}  // namespace matwright::app
