// SPDX-License-Identifier: MIT
#include "app/library/indexing.h"

#include <malloc.h>

#include <QFile>
#include <algorithm>
#include <utility>

#include "app/files/paths.h"
#include "app/library/folder_watch.h"

namespace matwright::app {
namespace {

// One is left to the window.
int readingThreads() {
    return std::clamp(QThread::idealThreadCount() - 1, 1, 4);
}

}  // namespace

// Lives on the thread. Everything it finds is handed over as immutable values.
class Indexing::Worker final : public QObject {
  public:
    Worker(Indexing& owner, const QString& library, const QString& cache, std::stop_token stop)
        : m_owner(owner),
          m_library(library),
          m_index(toPath(library), toPath(cache)),
          m_stop(std::move(stop)) {}

    void remember() {
        give(m_index.remembered());
        if (m_given) {
            m_folders = m_given->folders();
        }
    }

    void keepWatch() {
        m_watch = std::make_unique<FolderWatch>();
        connect(m_watch.get(), &FolderWatch::mayHaveChanged, &m_owner, &Indexing::refresh);
        watchFolders();
    }

    void look() {
        IndexOptions options;
        options.threads = readingThreads();
        options.stop = m_stop;
        options.interim = [this](const std::shared_ptr<const Holdings>& holdings) {
            give(holdings);
        };
        options.progress = [this](const IndexProgress& progress) {
            post([&owner = m_owner, progress] { emit owner.progressed(progress); });
        };
        auto update = std::make_shared<const IndexUpdate>(m_index.update(options));
        give(update->holdings);
        if (!update->cancelled) {
            m_folders = update->folders;
        }
        if (m_watch) {
            watchFolders();
        }
        if (m_stop.stop_requested()) {
            return;  // perhaps before anything was found
        }
        // The first search for words need not wait for it.
        m_given->prepareWords();
        // A look makes and drops as much as the library is large; the system gets it back.
        malloc_trim(0);
        post([&owner = m_owner, update] { owner.finish(update); });
    }

  private:
    void give(const std::shared_ptr<const Holdings>& holdings) {
        if (m_stop.stop_requested() || holdings == m_given) {
            return;
        }
        m_given = holdings;
        post([&owner = m_owner, holdings] { emit owner.found(holdings); });
    }

    void watchFolders() {
        QStringList below;
        for (const std::string& folder : m_folders) {
            below << m_library + u'/' + QFile::decodeName(folder.c_str());
        }
        m_watch->watch(m_library, below);
    }

    template <typename Call>
    void post(Call call) {
        QMetaObject::invokeMethod(&m_owner, std::move(call), Qt::QueuedConnection);
    }

    Indexing& m_owner;
    const QString m_library;
    LibraryIndex m_index;
    std::stop_token m_stop;
    std::shared_ptr<const Holdings> m_given;
    std::vector<std::string> m_folders;  // of the last look
    std::unique_ptr<FolderWatch> m_watch;
};

Indexing::Indexing(const QString& libraryFolder, const QString& cacheFolder, QObject* parent)
    : QObject(parent), m_worker(new Worker(*this, libraryFolder, cacheFolder, m_stop.get_token())) {
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
    m_thread.start();
}

Indexing::~Indexing() {
    m_stop.request_stop();
    m_thread.quit();
    m_thread.wait();
}

void Indexing::remember() {
    QMetaObject::invokeMethod(m_worker, [worker = m_worker] { worker->remember(); });
}

void Indexing::keepWatch() {
    QMetaObject::invokeMethod(m_worker, [worker = m_worker] { worker->keepWatch(); });
}

void Indexing::refresh() {
    if (std::exchange(m_looking, true)) {
        m_onceMore = true;
        return;
    }
    startLooking();
}

void Indexing::startLooking() {
    QMetaObject::invokeMethod(m_worker, [worker = m_worker] { worker->look(); });
}

void Indexing::finish(std::shared_ptr<const IndexUpdate> update) {
    m_looking = std::exchange(m_onceMore, false);
    if (m_looking) {
        startLooking();
    }
    emit looked(std::move(update));
}

}  // namespace matwright::app
