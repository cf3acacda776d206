// SPDX-License-Identifier: MIT
#include "hostile_photos.h"

#include <fmt/format.h>
#include <sys/stat.h>

#include <vips/vips8>

#include "tests/support/made_photos.h"

namespace matwright::test {

namespace {

// Black: next to nothing in the file, all of it in memory.
std::string black(int width, int height, const char* suffix) {
    const vips::VImage image =
        vips::VImage::black(width, height, vips::VImage::option()->set("bands", 3))
            .copy(vips::VImage::option()->set("interpretation", VIPS_INTERPRETATION_sRGB));
    return encoded(image, suffix);
}

}  // namespace

HostilePhotos::HostilePhotos() {
    std::filesystem::permissions(m_folder.path(), std::filesystem::perms::all);
    addBombs();
    addMasked();
    addNoFiles();
}

void HostilePhotos::keep(const char* name, const std::string& bytes) {
    writeFile(m_folder / name, bytes);
    m_files.push_back(m_folder / name);
}

void HostilePhotos::addBombs() {
    keep("60000 wide.png", black(60'000, 40, ".png"));
    keep("60000 high.png", black(40, 60'000, ".png"));
    keep("65000 wide.jpg", black(65'000, 40, ".jpg"));
    keep("225 megapixels.png", black(15'000, 15'000, ".png"));
    keep("225 megapixels interlaced.png", black(15'000, 15'000, ".png[interlace=1]"));
    keep("400 megapixels.png", black(20'000, 20'000, ".png"));
    keep("120000 wide.tif", black(120'000, 1, ".tif"));
    keep("225 megapixels.jpg", black(15'000, 15'000, ".jpg"));
    keep("120 megapixels progressive.jpg",
         black(12'000, 10'000, ".jpg[interlace=1,subsample_mode=off]"));
    keep("196 megapixels in one strip.tif",
         black(14'000, 14'000, ".tif[compression=deflate,tile_height=14000]"));
    keep("100 megapixels.webp", black(10'000, 10'000, ".webp[lossless=1,effort=0]"));
}

void HostilePhotos::addMasked() {
    keep("empty.jpg", "");
    keep("one byte.png", "\x89");
    keep("one pixel.jpg", madePhoto({1, 1}, ".jpg"));
    keep("a JPEG.heic", madePhoto({40, 30}, ".jpg"));
    keep("a PNG.jpg", madePhoto({40, 30}, ".png"));
    keep("a GIF.jpg", "GIF89a\x01\x01");
    keep("a drawing.png", "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"99999\"/>");
    for (const char* suffix : {".jpg", ".png", ".png[interlace=1]", ".webp", ".tif"}) {
        keep("sound", madePhoto({400, 300}, suffix));
        const auto sound = m_files.back();
        m_files.pop_back();
        addCut(sound);
    }
}

void HostilePhotos::addNoFiles() {
    keep("not allowed.jpg", madePhoto({40, 30}, ".jpg"));
    setPermissions(m_files.back(), 0);
    m_files.push_back(m_folder / "pipe.jpg");
    (void)::mkfifo(m_files.back().c_str(), 0666);
    m_files.push_back(m_folder / "folder.jpg");
    std::filesystem::create_directory(m_files.back());
    m_files.push_back(m_folder / "not there.jpg");
    m_files.emplace_back("/dev/zero");
}

void HostilePhotos::addCut(const std::filesystem::path& sound) {
    const std::string whole = readFile(sound);
    for (const int percent : {1, 20, 50, 80, 97}) {
        const auto length = whole.size() * static_cast<std::size_t>(percent) / 100;
        const std::string name =
            fmt::format("{} {} cut at {} %", m_files.size(), sound.filename().string(), percent);
        keep(name.c_str(), whole.substr(0, length));
    }
}

}  // namespace matwright::test
