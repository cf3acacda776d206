// SPDX-License-Identifier: MIT
#include "core/library/index.h"

#include <fmt/format.h>

#include <mutex>
#include <optional>
#include <system_error>

#include "core/content/content_key.h"
#include "core/library/holdings_snapshot.h"
#include "core/library/index_file.h"
#include "core/library/index_row_text.h"
#include "core/library/index_update.h"

namespace matwright {

namespace {

namespace fs = std::filesystem;

// Links are looked through, so that one folder under two names has one index.
fs::path indexFileFor(const fs::path& library, const fs::path& cacheFolder) {
    std::error_code error;
    fs::path full = fs::weakly_canonical(library, error);
    if (error) {
        full = library.lexically_normal();
    }
    return cacheFolder / fmt::format("library-{}-v{}.sqlite", contentKeyOf(full.string()).text(),
                                     indexFileVersion);
}

}  // namespace

class LibraryIndex::Body {
  public:
    Body(fs::path library, const fs::path& cacheFolder)
        : m_library(std::move(library)), m_indexFile(indexFileFor(m_library, cacheFolder)) {}

    std::shared_ptr<const Holdings> remembered() {
        if (auto snapshot = readSnapshot(snapshotFile())) {
            m_fingerprint = snapshot->fingerprint;
            m_snapshotPrint = m_fingerprint;
            return setLatest(std::move(snapshot->holdings));
        }
        IndexFile file(m_indexFile);
        const IndexRows rows = loaded(file);
        return publish(rows);
    }

    IndexUpdate update(const IndexOptions& options) {
        IndexFile file(m_indexFile);
        IndexRows rows = loaded(file);
        IndexUpdate update = IndexUpdateRun(m_library, options, file, rows).run();
        update.holdings = publish(rows);
        if (m_snapshotPrint != m_fingerprint && !update.cancelled) {
            writeSnapshot(snapshotFile(), {update.holdings, m_fingerprint});
            m_snapshotPrint = m_fingerprint;
        }
        // The file cannot be used: what was read is kept here, so that the next update is quick.
        if (!file.trouble().empty()) {
            m_kept = std::move(rows);
        }
        return update;
    }

    std::shared_ptr<const Holdings> latest() const {
        const std::scoped_lock lock(m_mutex);
        return m_latest;
    }

    const fs::path& library() const { return m_library; }
    const fs::path& indexFile() const { return m_indexFile; }

  private:
    IndexRows loaded(IndexFile& file) {
        if (!m_kept) {
            return file.load();
        }
        if (!file.trouble().empty()) {
            return *m_kept;
        }
        // It can be used again. What is kept here was read by this program; the file may know more.
        IndexRows rows = file.load();
        if (!file.trouble().empty()) {
            return *m_kept;
        }
        m_kept.reset();
        return rows;
    }

    std::shared_ptr<const Holdings> publish(const IndexRows& rows) {
        return setLatest(holdingsOf(rows, latest(), m_fingerprint));
    }

    std::shared_ptr<const Holdings> setLatest(std::shared_ptr<const Holdings> holdings) {
        const std::scoped_lock lock(m_mutex);
        m_latest = std::move(holdings);
        return m_latest;
    }

    fs::path snapshotFile() const { return m_indexFile.string() + ".start"; }

    fs::path m_library;
    fs::path m_indexFile;
    std::optional<IndexRows> m_kept;
    ContentKey m_fingerprint;                   // of m_latest
    std::optional<ContentKey> m_snapshotPrint;  // of the snapshot, where it is known
    mutable std::mutex m_mutex;
    std::shared_ptr<const Holdings> m_latest;
};

LibraryIndex::LibraryIndex(fs::path library, const fs::path& cacheFolder)
    : m_body(std::make_unique<Body>(std::move(library), cacheFolder)) {}
LibraryIndex::~LibraryIndex() = default;

std::shared_ptr<const Holdings> LibraryIndex::remembered() {
    return m_body->remembered();
}
IndexUpdate LibraryIndex::update(const IndexOptions& options) {
    return m_body->update(options);
}
std::shared_ptr<const Holdings> LibraryIndex::latest() const {
    return m_body->latest();
}
const fs::path& LibraryIndex::library() const {
    return m_body->library();
}
const fs::path& LibraryIndex::indexFile() const {
    return m_body->indexFile();
}

}  // namespace matwright
