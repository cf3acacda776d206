// SPDX-License-Identifier: MIT
#pragma once

#include <filesystem>
#include <vector>

#include "tests/support/temporary_folder.h"

namespace matwright::test {

// Photos of which every one is meant to be too much for a careless reader: a folder full of them.
class HostilePhotos {
  public:
    HostilePhotos();
    const std::vector<std::filesystem::path>& files() const { return m_files; }
    // Where the outside samples are there: cut short at several places.
    void addCut(const std::filesystem::path& sound);

  private:
    void keep(const char* name, const std::string& bytes);
    void addBombs();
    void addMasked();
    void addNoFiles();

    TemporaryFolder m_folder;
    std::vector<std::filesystem::path> m_files;
};

}  // namespace matwright::test
