// SPDX-License-Identifier: MIT
#include "core/library/zip_export.h"

#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <memory>

#include "tests/core/library/keeping_fixture.h"

namespace matwright {
namespace {

using test::bytesOfSketch;
using test::LibraryOnDisk;

TEST(ZipExport, GivesEqualBytesForEqualSketches) {
    LibraryOnDisk library;
    const std::vector<std::string> sketches{library.putNamed("b"), library.putNamed("sub/a"),
                                            library.putNamed("\u00E4")};
    const auto zip = zipOfSketches(library.store, library.path, sketches);
    ASSERT_TRUE(zip) << zip.error().text();
    const std::vector<std::string> turned{sketches[2], sketches[0], sketches[1], sketches[0]};
    std::filesystem::last_write_time(
        library.path / sketches[0],
        std::filesystem::file_time_type::clock::now() - std::chrono::hours(5000));
    EXPECT_EQ(zipOfSketches(library.store, library.path, turned).value(), *zip);
}

TEST(ZipExport, NamesWhatCannotGoIn) {
    LibraryOnDisk library;
    const std::string good = library.putNamed("good");
    const std::string odd = library.put("odd \xFF", bytesOfSketch("odd"));
    const auto zip = [&](std::vector<std::string> sketches) {
        return exportZip(library.store, library.path, sketches, library.folder / "out.zip");
    };
    EXPECT_EQ(zip({good, "gone.sketch.svg"}).error().code, ErrorCode::NotFound);
    EXPECT_EQ(zip({good, odd}).error().code, ErrorCode::BadText);
    EXPECT_EQ(zip({}).error().code, ErrorCode::NotFound);
    EXPECT_FALSE(std::filesystem::exists(library.folder / "out.zip"));
}

// A line for each entry: "name|size|date|UTF-8 flag", and "whole" where every check sum is right.
constexpr const char* listing = R"(
import sys, zipfile
z = zipfile.ZipFile(sys.argv[1])
for i in z.infolist():
    print(i.filename, i.file_size, '%04d-%02d-%02d %02d:%02d' % i.date_time[:5],
          bool(i.flag_bits & 0x800), sep='|')
print('whole' if z.testzip() is None else 'broken')
z.extractall(sys.argv[2])
)";

std::string outputOf(const std::string& command) {
    std::string output;
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(::popen(command.c_str(), "r"), ::pclose);
    std::array<char, 4096> part{};
    while (const std::size_t count = std::fread(part.data(), 1, part.size(), pipe.get())) {
        output.append(part.data(), count);
    }
    return output;
}

TEST(ZipExport, IsReadByOtherPrograms) {
    if (std::system("command -v python3 >/dev/null && command -v unzip >/dev/null") != 0) {
        GTEST_SKIP() << "SKIPPED: zip read by other programs: python3 and unzip are needed";
    }
    LibraryOnDisk library;
    const std::vector<std::string> sketches{library.putNamed("b"), library.putNamed("sub/a"),
                                            library.putNamed("\u5199 \u00E4")};
    const auto zip = library.folder / "out.zip";
    ASSERT_TRUE(exportZip(library.store, library.path, sketches, zip));
    test::writeFile(library.folder / "listing.py", listing);
    const auto size = [&](int i) {
        return std::to_string(library.held(sketches[static_cast<std::size_t>(i)]).size());
    };
    EXPECT_EQ(
        outputOf("PYTHONIOENCODING=utf-8 python3 " + (library.folder / "listing.py").string() +
                 " " + zip.string() + " " + (library.folder / "out").string()),
        "b.sketch.svg|" + size(0) + "|1980-01-01 00:00|False\n" +  //
            "sub/a.sketch.svg|" + size(1) + "|1980-01-01 00:00|False\n" +
            "\u5199 \u00E4.sketch.svg|" + size(2) + "|1980-01-01 00:00|True\nwhole\n");
    for (const std::string& sketch : sketches) {
        EXPECT_EQ(test::readFile(library.folder / "out" / sketch), library.held(sketch));
    }
    EXPECT_NE(outputOf("unzip -tqq " + zip.string() + " && echo whole").find("whole"),
              std::string::npos);
}

}  // namespace
}  // namespace matwright
