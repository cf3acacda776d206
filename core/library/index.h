// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <filesystem>
#include <functional>
#include <memory>
#include <stop_token>
#include <string>
#include <vector>

#include "core/library/folder_scan.h"
#include "core/library/holdings.h"

namespace matwright {

// How far an update has come.
struct IndexProgress {
    std::size_t found = 0;   // sketch files in the folder so far
    std::size_t toRead = 0;  // of these, new or changed; 0 while the folder is still walked
    std::size_t read = 0;    // of these, done
};

struct IndexOptions {
    // How many threads read files, this one included; at least 1.
    int threads = 1;
    std::stop_token stop;
    // Both are called on the thread that runs update(), at most about four times a second.
    std::function<void(const IndexProgress&)> progress;
    // What is known so far, while sketches are being read: the sketches that were known before and
    // are still there, and those read up to now.
    std::function<void(std::shared_ptr<const Holdings>)> interim;
};

struct IndexUpdate {
    // As the folder was. The same pointer as before where nothing has changed.
    std::shared_ptr<const Holdings> holdings;
    // By path, one a path: files that are no readable sketches, links in circles, … A file that
    // cannot be read is no entry of the holdings. Told at every update as long as it is so.
    std::vector<LibraryProblem> problems;
    std::vector<std::string> folders;  // by path, empty ones too; without the library itself
    IndexProgress progress;            // at the end
    bool cancelled =
        false;           // then `holdings` is what is known so far; the next update goes on there
    double seconds = 0;  // the whole update
    double readSeconds = 0;  // of these, reading files: progress.read / readSeconds is the rate
    // One sentence where the index file cannot be used and the program works without; else empty.
    std::string indexTrouble;
};

// Makes a folder of sketches quick to open: remembers in an index file what every sketch file
// holds, so that a start reads no sketch, and an update only what changed.
//
// The folder is the truth and the index file a cache. It may be deleted at any time; where it is
// damaged, of another version, locked for long or cannot be written, it is made anew or done
// without. Any number of programs may use one index file at the same time.
//
// One thread at a time may call its functions (except latest()); the Holdings they give may be used
// anywhere.
class LibraryIndex {
  public:
    // `library` need not exist yet. `cacheFolder` is made where it is missing; the index file in it
    // is named after the library's full path.
    LibraryIndex(std::filesystem::path library, const std::filesystem::path& cacheFolder);
    ~LibraryIndex();
    LibraryIndex(const LibraryIndex&) = delete;
    LibraryIndex& operator=(const LibraryIndex&) = delete;

    // What was known at the end of the last update of any program, without looking into the folder:
    // a few milliseconds for 10,000 sketches. Empty holdings where there is no index yet.
    std::shared_ptr<const Holdings> remembered();

    // Walks the folder, reads the files that are new or changed since they were read last, and
    // forgets those that are gone. A file counts as changed where its signature differs or where
    // it may have changed within the grain of the disk's clock.
    IndexUpdate update(const IndexOptions& options = {});

    // The last holdings given by one of the two above (nullptr before); from any thread.
    std::shared_ptr<const Holdings> latest() const;

    const std::filesystem::path& library() const;
    const std::filesystem::path& indexFile() const;

  private:
    class Body;
    std::unique_ptr<Body> m_body;
};

}  // namespace matwright
