// SPDX-License-Identifier: MIT
// Reads every hostile photo there is, each in a program of its own: the ones made here, and the
// broken and odd samples of the outside data where they are there. Prints how many were read and
// refused, and the most memory and time that one took. Ends with 1 where a program crashed or gave
// no answer, wrote to stderr, gave a refusal that is no sentence, or took 1 GB or more.
#include <algorithm>
#include <cstdio>
#include <cstring>

#include "hostile_photos.h"
#include "one_photo.h"
#include "tests/support/check_data.h"

namespace {

using namespace matwright;
namespace fs = std::filesystem;

constexpr double mostMegabytes = 1000;

class Tally {
  public:
    explicit Tally(fs::path program) : m_program(std::move(program)) {}

    void read(const fs::path& file) {
        const test::Verdict verdict = test::readApart(m_program, file);
        ++(verdict.isRead ? m_read : m_refused);
        const bool isFine = verdict.hasEnded && verdict.complaints.empty() &&
                            (verdict.isRead || verdict.answer.ends_with('.')) &&
                            verdict.megabytes < mostMegabytes;
        if (!isFine || verdict.megabytes > mostMegabytes / 3) {
            std::printf("%s %s: %.0f MB, %.1f s, %s %s\n", isFine ? " " : "NOT FINE",
                        file.filename().c_str(), verdict.megabytes, verdict.seconds,
                        verdict.answer.c_str(), verdict.complaints.c_str());
        }
        m_wrong += isFine ? 0 : 1;
        m_most = std::max(m_most, verdict.megabytes);
        m_longest = std::max(m_longest, verdict.seconds);
    }

    void readAllIn(const fs::path& folder) {
        for (const auto& entry : fs::recursive_directory_iterator(folder)) {
            if (entry.is_regular_file()) {
                read(entry.path());
            }
        }
    }

    bool report() const {
        std::printf(
            "%d hostile photos read, %d refused with a sentence, %d wrongly; at most %.0f MB and "
            "%.1f s each\n",
            m_read, m_refused, m_wrong, m_most, m_longest);
        return m_wrong == 0;
    }

  private:
    fs::path m_program;
    int m_read = 0;
    int m_refused = 0;
    int m_wrong = 0;
    double m_most = 0;
    double m_longest = 0;
};

}  // namespace

int main(int count, char** words) {
    if (count == 3 && std::strcmp(words[1], "one") == 0) {
        return test::readOnePhoto(words[2]);
    }
    test::HostilePhotos made;
    Tally tally(fs::canonical("/proc/self/exe"));
    if (const auto photos = test::checkData("photos")) {
        made.addCut(*photos / "heic/libheif/example.heic");
        made.addCut(*photos / "camera/libavif/dog_exif_extended_xmp_icc.jpg");
        tally.readAllIn(*photos / "odd");
        tally.readAllIn(*photos / "heic");
    } else {
        std::puts(test::noCheckData);
    }
    for (const fs::path& file : made.files()) {
        tally.read(file);
    }
    return tally.report() ? 0 : 1;
}
