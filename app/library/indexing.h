// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>
#include <QThread>
#include <memory>
#include <stop_token>

#include "core/library/index.h"

namespace matwright::app {

// The index of one library folder at work: on a thread of its own, so that no disk, however slow,
// holds up the window. Signals come on the thread this object belongs to.
class Indexing final : public QObject {
    Q_OBJECT

  public:
    // `cacheFolder` is where index files are kept. Nothing is looked at before remember().
    Indexing(const QString& libraryFolder, const QString& cacheFolder, QObject* parent = nullptr);
    // Stops what is under way.
    ~Indexing() override;

    // Gives what the index file knows, without a look into the folder.
    void remember();
    // From now on the folder is looked at whenever somebody else may have changed it.
    void keepWatch();
    // Looks into the folder. Asked for while a look is under way, one more follows, however often
    // it was asked.
    void refresh();
    bool isLooking() const { return m_looking; }

  signals:
    void found(std::shared_ptr<const matwright::Holdings> holdings);
    void progressed(const matwright::IndexProgress& progress);
    // The look is over; found() came before it where anything is different.
    void looked(std::shared_ptr<const matwright::IndexUpdate> update);

  private:
    class Worker;
    void startLooking();
    void finish(std::shared_ptr<const IndexUpdate> update);

    std::stop_source m_stop;
    QThread m_thread;
    Worker* m_worker;
    bool m_looking = false;
    bool m_onceMore = false;
};

}  // namespace matwright::app
