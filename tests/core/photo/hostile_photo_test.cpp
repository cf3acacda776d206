// SPDX-License-Identifier: MIT
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <fstream>

#include "core/photo/photo_file.h"
#include "core/photo/photo_source.h"
#include "tests/support/check_data.h"
#include "tests/support/made_photos.h"
#include "tests/support/temporary_folder.h"

namespace matwright {
namespace {

using test::madePhoto;

class HostilePhoto : public testing::Test {
  protected:
    std::filesystem::path keep(const char* name, const std::string& bytes) const {
        test::writeFile(m_folder / name, bytes);
        return m_folder / name;
    }
    // Facts and pixels are refused alike, with one whole sentence and the file's place.
    void expectRefused(const std::filesystem::path& file, ErrorCode code,
                       const std::string& sentence) const {
        const auto facts = photoFacts(file);
        const auto raster = decodePhoto(file, 100);
        ASSERT_FALSE(facts) << file;
        ASSERT_FALSE(raster) << file;
        EXPECT_EQ(facts.error(), raster.error());
        EXPECT_EQ(facts.error().code, code);
        EXPECT_TRUE(facts.error().sentence.contains(sentence)) << facts.error().sentence;
        EXPECT_TRUE(facts.error().sentence.ends_with("."));
        EXPECT_EQ(facts.error().where, file.string());
    }

    test::TemporaryFolder m_folder;
};

TEST_F(HostilePhoto, IsRefusedWithTheReason) {
    expectRefused(m_folder / "none.jpg", ErrorCode::NotFound, "no such file");
    expectRefused(m_folder.path(), ErrorCode::ReadFailed, "This is a folder");
    expectRefused(keep("empty.jpg", ""), ErrorCode::WrongFormat, "The file is empty");
    expectRefused(keep("text.jpg", "no photo at all"), ErrorCode::WrongFormat, "no photo");
    expectRefused(keep("g.jpg", "GIF89a\1\1"), ErrorCode::WrongFormat, "a GIF picture");
    expectRefused(keep("s.jpg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>"),
                  ErrorCode::WrongFormat, "a drawing");
    expectRefused(keep("p.jpg", "%PDF-1.4"), ErrorCode::WrongFormat, "a PDF document");
    expectRefused(keep("v.jpg", std::string("\0\0\0\x18"
                                            "ftypmp42\0\0\0\0mp42isom",
                                            24)),
                  ErrorCode::WrongFormat, "a video");
    expectRefused(keep("v.heic", std::string("\0\0\0\x18"
                                             "ftypavif\0\0\0\0avifmif1",
                                             24)),
                  ErrorCode::WrongFormat, "an AVIF picture");
    expectRefused(keep("h.jpg", "\xFF\xD8\xFF"), ErrorCode::Malformed, "cannot be read");
}

TEST_F(HostilePhoto, IsNotWaitedForWhereItIsAPipe) {
    ASSERT_EQ(::mkfifo((m_folder / "pipe.jpg").c_str(), 0600), 0);
    expectRefused(m_folder / "pipe.jpg", ErrorCode::ReadFailed, "a device or a pipe");
    expectRefused("/dev/null", ErrorCode::ReadFailed, "a device or a pipe");
}

TEST_F(HostilePhoto, IsRefusedWhereItMayNotBeRead) {
    const auto file = keep("mine.jpg", madePhoto({8, 8}, ".jpg"));
    test::setPermissions(file, 0);
    const test::WithoutPrivileges others;
    expectRefused(file, ErrorCode::ReadFailed, "not allowed to read");
}

TEST_F(HostilePhoto, ThatIsCutShortIsNeverDecodedAsIfWhole) {
    const PixelSize size{640, 480};
    for (const char* suffix : {".jpg", ".jpg[interlace=1]", ".png", ".png[interlace=1]", ".webp",
                               ".webp[lossless=1]", ".tif", ".tif[compression=lzw]"}) {
        const std::string whole = madePhoto(size, suffix);
        for (const double share : {0.02, 0.1, 0.3, 0.5, 0.75, 0.9, 0.99}) {
            const auto length = static_cast<std::size_t>(share * static_cast<double>(whole.size()));
            const auto file = keep("cut", whole.substr(0, length));
            for (const int longSide : {0, 64}) {
                const auto raster = decodePhoto(file, longSide);
                ASSERT_FALSE(raster) << suffix << " " << share << " " << longSide;
                EXPECT_TRUE(raster.error().code == ErrorCode::Malformed ||
                            raster.error().code == ErrorCode::WrongFormat)
                    << raster.error().sentence;
                EXPECT_TRUE(raster.error().sentence.ends_with("."));
            }
        }
    }
}

TEST_F(HostilePhoto, ThatIsCutShortSaysHowMuchOfItIsThere) {
    const std::string whole = madePhoto({1500, 2000}, ".jpg[Q=95]");
    const auto raster = decodePhoto(keep("cut.jpg", whole.substr(0, whole.size() * 6 / 10)), 0);
    ASSERT_FALSE(raster);
    EXPECT_TRUE(raster.error().sentence.contains("damaged or cut short after about "))
        << raster.error().sentence;
}

TEST_F(HostilePhoto, OfOnePixelIsAPhoto) {
    for (const char* suffix : {".jpg", ".png", ".tif", ".webp"}) {
        const auto raster = decodePhoto(keep("one", madePhoto({1, 1}, suffix)), 512);
        ASSERT_TRUE(raster) << suffix;
        EXPECT_EQ(raster->size, (PixelSize{1, 1}));
    }
}

TEST_F(HostilePhoto, OfAnyByteFlippedIsReadOrRefused) {
    const std::string whole = madePhoto({64, 48}, ".jpg", {6, "2026:07:14 16:03:22", {}, {}, {}});
    const std::string png = madePhoto({64, 48}, ".png");
    int refused = 0;
    for (const std::string& sound : {whole, png}) {
        for (std::size_t at = 0; at < sound.size(); at += 7) {
            std::string bytes = sound;
            bytes[at] = static_cast<char>(~bytes[at]);
            const auto file = keep("flipped", bytes);
            const auto facts = photoFacts(file);
            const auto raster = decodePhoto(file, 0);
            refused += raster ? 0 : 1;
            EXPECT_TRUE(raster || raster.error().sentence.ends_with("."));
            EXPECT_TRUE(facts || facts.error().sentence.ends_with("."));
        }
    }
    EXPECT_GT(refused, 0);
}

TEST_F(HostilePhoto, ThatChangesWhileItIsReadIsNotBelieved) {
    const auto path = keep("a.jpg", madePhoto({8, 8}, ".jpg"));
    const auto grown = PhotoFile::open(path);
    ASSERT_TRUE(grown);
    EXPECT_EQ(grown->findChange(), std::nullopt);
    std::ofstream(path, std::ios::app) << "more";
    ASSERT_TRUE(grown->findChange());
    EXPECT_TRUE(grown->findChange()->sentence.contains("changed by another program"));

    const auto replaced = PhotoFile::open(path);
    keep("b.jpg", madePhoto({8, 8}, ".jpg"));
    std::filesystem::rename(m_folder / "b.jpg", path);
    EXPECT_TRUE(replaced->findChange());

    const auto gone = PhotoFile::open(path);
    std::filesystem::remove(path);
    EXPECT_TRUE(gone->findChange());
}

TEST_F(HostilePhoto, OfTheSamplesIsReadOrRefusedWithASentence) {
    const auto folder = test::checkData("photos/odd");
    if (!folder) {
        GTEST_SKIP() << test::noCheckData;
    }
    int read = 0;
    int refused = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(*folder)) {
        if (!entry.is_regular_file()) {
            continue;
        }
        const auto raster = decodePhoto(entry.path(), 256);
        const auto facts = photoFacts(entry.path());
        (raster ? read : refused) += 1;
        EXPECT_TRUE(!raster || facts) << entry.path().filename();
        EXPECT_TRUE(raster || raster.error().sentence.ends_with("."));
    }
    std::printf("%d odd files read, %d refused with a sentence\n", read, refused);
    EXPECT_GT(read, 0);
    EXPECT_GT(refused, 0);
}

}  // namespace
}  // namespace matwright
