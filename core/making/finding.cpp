// SPDX-License-Identifier: MIT
#include "core/making/finding.h"

#include <fstream>
#include <map>
#include <utility>

namespace matwright {

namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

bool isHidden(const fs::path& path) {
    return path.filename().native().starts_with('.');
}

// One search for all of the lost files.
class Search {
  public:
    Search(std::span<const LostFile> lost, const FindingLimits& limits, std::stop_token stop)
        : m_lost(lost),
          m_limits(limits),
          m_stop(std::move(stop)),
          m_deadline(Clock::now() + limits.time),
          m_findings(lost.size()) {}

    std::vector<Finding> run(std::span<const fs::path> folders) {
        for (std::size_t i = 0; i < m_lost.size() && goesOn(); ++i) {
            lookAt(m_lost[i].path, i);
        }
        noteWhatIsSought();
        for (const fs::path& folder : folders) {
            walk(folder);
        }
        for (const auto& [file, i] : m_sameLength) {
            if (!goesOn()) {
                break;
            }
            lookAt(file, i);
        }
        if (m_end == FindingEnd::NotThere && m_isCutShort) {
            m_end = FindingEnd::GaveUp;
        }
        for (Finding& finding : m_findings) {
            finding.end = finding.place ? FindingEnd::Found : m_end;
        }
        return std::move(m_findings);
    }

  private:
    bool isFound(std::size_t i) const { return m_findings[i].place.has_value(); }

    bool goesOn() {
        if (m_end == FindingEnd::NotThere && m_stop.stop_requested()) {
            m_end = FindingEnd::Stopped;
        } else if (m_end == FindingEnd::NotThere && Clock::now() > m_deadline) {
            m_end = FindingEnd::GaveUp;
        }
        return m_end == FindingEnd::NotThere;
    }

    void noteWhatIsSought() {
        for (std::size_t i = 0; i < m_lost.size(); ++i) {
            if (isFound(i)) {
                continue;
            }
            ++m_sought;
            m_byName.emplace(fs::path(m_lost[i].path).filename().native(), i);
            if (m_lost[i].bytes != 0) {
                m_byLength.emplace(m_lost[i].bytes, i);
            }
        }
    }

    // Whether the file there holds what is sought.
    void lookAt(const fs::path& file, std::size_t i) {
        std::error_code error;
        const bool isPlain = fs::is_regular_file(fs::symlink_status(file, error));
        if (isFound(i) || error || !isPlain) {
            return;
        }
        const std::uintmax_t bytes = fs::file_size(file, error);
        if (error || (m_lost[i].bytes != 0 && bytes != m_lost[i].bytes)) {
            return;
        }
        if (contentKeyOfFile(file, m_stop) == m_lost[i].content) {
            m_findings[i].place = file;
            m_sought -= m_sought > 0 ? 1 : 0;
        }
    }

    void walk(const fs::path& folder) {
        std::error_code error;
        fs::recursive_directory_iterator at(folder, fs::directory_options::skip_permission_denied,
                                            error);
        for (const fs::recursive_directory_iterator end; !error && at != end && m_sought > 0;
             at.increment(error)) {
            if (++m_looked > m_limits.files && m_end == FindingEnd::NotThere) {
                m_end = FindingEnd::GaveUp;
            }
            if (!goesOn()) {
                return;
            }
            consider(at);
        }
        // A folder that is not there has nothing to look at.
        m_isCutShort = m_isCutShort || (error && error != std::errc::no_such_file_or_directory);
    }

    void consider(fs::recursive_directory_iterator& at) {
        std::error_code error;
        const fs::file_status status = at->symlink_status(error);
        if (fs::is_directory(status)) {
            const bool isTooDeep = at.depth() + 1 >= m_limits.depth;
            if (isHidden(at->path()) || isTooDeep) {
                at.disable_recursion_pending();
            }
            m_isCutShort = m_isCutShort || isTooDeep;
        } else if (!error && fs::is_regular_file(status)) {
            considerFile(at->path());
        }
    }

    void considerFile(const fs::path& file) {
        const auto [named, namedEnd] = m_byName.equal_range(file.filename().native());
        for (auto it = named; it != namedEnd; ++it) {
            lookAt(file, it->second);
        }
        std::error_code error;
        const std::uintmax_t bytes = m_byLength.empty() ? 0 : fs::file_size(file, error);
        const auto [alike, alikeEnd] = m_byLength.equal_range(bytes);
        for (auto it = alike; !error && it != alikeEnd; ++it) {
            if (!isFound(it->second)) {
                m_sameLength.emplace_back(file, it->second);
            }
        }
    }

    std::span<const LostFile> m_lost;
    FindingLimits m_limits;
    std::stop_token m_stop;
    Clock::time_point m_deadline;
    std::vector<Finding> m_findings;
    FindingEnd m_end = FindingEnd::NotThere;
    std::multimap<std::string, std::size_t> m_byName;
    std::multimap<std::uintmax_t, std::size_t> m_byLength;
    std::vector<std::pair<fs::path, std::size_t>> m_sameLength;
    std::size_t m_sought = 0;
    std::size_t m_looked = 0;
    bool m_isCutShort = false;  // something below the folders was not looked at
};

}  // namespace

std::vector<Finding> findAgain(std::span<const LostFile> lost, std::span<const fs::path> folders,
                               const FindingLimits& limits, std::stop_token stop) {
    return Search(lost, limits, std::move(stop)).run(folders);
}

std::optional<ContentKey> contentKeyOfFile(const fs::path& file, const std::stop_token& stop) {
    constexpr std::size_t chunk = std::size_t{1} << 20;
    std::error_code error;
    if (!fs::is_regular_file(file, error)) {
        return std::nullopt;  // a pipe would be waited for
    }
    std::ifstream stream(file, std::ios::binary);
    if (!stream) {
        return std::nullopt;
    }
    ContentHash hash;
    std::string bytes(chunk, '\0');
    while (stream) {
        if (stop.stop_requested()) {
            return std::nullopt;
        }
        stream.read(bytes.data(), static_cast<std::streamsize>(chunk));
        hash.add({bytes.data(), static_cast<std::size_t>(stream.gcount())});
    }
    return stream.bad() ? std::nullopt : std::optional(hash.key());
}

}  // namespace matwright
