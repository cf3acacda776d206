// SPDX-License-Identifier: MIT
#pragma once

#include <QFutureWatcher>
#include <QObject>
#include <filesystem>
#include <memory>

#include "core/printplan/stored_input.h"

namespace matwright::app {

// What a plan needs of the person's store, read in the background: another program may hold the
// file for seconds. Belongs to the window's thread.
class PlanStore final : public QObject {
    Q_OBJECT

  public:
    // Knows nothing before it was read the first time. `unit` is that of a new person's printers.
    PlanStore(std::filesystem::path file, Unit unit, QObject* parent = nullptr);
    // Waits for a reading that runs.
    ~PlanStore() override;

    // Ends with wasRead(). One that is asked for while another runs begins after that.
    void read();
    bool isReading() const { return m_isReading; }

    // Printers, prints and photos as they were read last. The suggestions for a new person's
    // printers, numbered, where there is no store.
    const PlanInput& known() const { return m_known; }
    // Why they could not be read, as a sentence; else empty.
    const QString& problem() const { return m_problem; }
    // Null where it could not be opened, and while it is read: it is for one thread at a time.
    PrintingStore* store() { return m_isReading ? nullptr : m_store.get(); }

  signals:
    // `differs`: something is not as it was known before.
    void wasRead(bool differs);

  private:
    struct Reading {
        std::shared_ptr<PrintingStore> store;
        Result<PlanInput> known;
    };
    static Reading readNow(std::shared_ptr<PrintingStore> store, const std::filesystem::path& file,
                           Unit unit);
    void take();

    const std::filesystem::path m_file;
    const Unit m_unit;
    std::shared_ptr<PrintingStore> m_store;
    PlanInput m_known;
    QString m_problem;
    bool m_isReading = false;  // until its end was told
    bool m_again = false;
    QFutureWatcher<std::shared_ptr<Reading>> m_watcher;
};

}  // namespace matwright::app
