// SPDX-License-Identifier: MIT
#pragma once

#include <dirent.h>

#include <optional>
#include <string>

namespace matwright {

struct DirectoryEntry {
    enum class Kind { Folder, Link, Other };
    std::string name;
    Kind kind = Kind::Other;
};

// The names in an open folder, one after another, in no order; "." and ".." too. Asks the system
// for the kind where the disk does not tell it along with the name. The folder stays open.
class DirectoryListing {
  public:
    explicit DirectoryListing(int folder);
    ~DirectoryListing();
    DirectoryListing(const DirectoryListing&) = delete;
    DirectoryListing& operator=(const DirectoryListing&) = delete;

    // Nothing at the end, or where the system reports an error.
    std::optional<DirectoryEntry> next();
    // The system's number of the error that ended the list; 0 where it came to its end.
    int error() const { return m_error; }

  private:
    DIR* m_stream = nullptr;
    int m_error = 0;
};

}  // namespace matwright
