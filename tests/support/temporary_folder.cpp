// SPDX-License-Identifier: MIT
#include "tests/support/temporary_folder.h"

#include <stdlib.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace matwright::test {

namespace fs = std::filesystem;

TemporaryFolder::TemporaryFolder() {
    std::string name = fs::temp_directory_path() / "matwright-test-XXXXXX";
    if (::mkdtemp(name.data()) == nullptr) {
        throw std::runtime_error("cannot make " + name);
    }
    m_path = name;
}

TemporaryFolder::~TemporaryFolder() {
    std::error_code ignored;
    fs::permissions(m_path, fs::perms::owner_all, ignored);
    fs::remove_all(m_path, ignored);
}

std::vector<std::string> TemporaryFolder::names() const {
    std::vector<std::string> result;
    for (const auto& entry : fs::directory_iterator(m_path)) {
        result.push_back(entry.path().filename().string());
    }
    std::ranges::sort(result);
    return result;
}

WithoutPrivileges::WithoutPrivileges() : m_wasAdministrator(::geteuid() == 0) {
    constexpr uid_t nobody = 65534;
    if (m_wasAdministrator && ::seteuid(nobody) != 0) {
        throw std::runtime_error("cannot give up privileges");
    }
}

WithoutPrivileges::~WithoutPrivileges() {
    if (m_wasAdministrator && ::seteuid(0) != 0) {
        ::abort();
    }
}

void setPermissions(const fs::path& path, unsigned mode) {
    if (::chmod(path.c_str(), static_cast<mode_t>(mode)) != 0) {
        throw std::runtime_error("cannot set the permissions of " + path.string());
    }
}

void writeFile(const fs::path& path, std::string_view bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

std::string readFile(const fs::path& path) {
    std::ostringstream content;
    content << std::ifstream(path, std::ios::binary).rdbuf();
    return std::move(content).str();
}

}  // namespace matwright::test
