// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QString>
#include <atomic>
#include <optional>

#include "core/content/content_key.h"

namespace matwright::app {

// Thumbnails on the disk, one file a picture, named after what the file it shows holds, the size
// and the look: no picture is ever out of date, and a folder that is moved needs no new ones. The
// folder is a cache: it may be deleted at any time, and by any number of programs used at once.
//
// A picture is written beside its place and renamed, so that no half of one is ever found; one that
// a crash of the system has torn is not taken. Any thread may call.
class ThumbnailFiles {
  public:
    enum class Format { Png, Jpeg };
    struct Style {
        Format format = Format::Png;
        int look = 1;  // counted up when pictures are to look different
    };
    // `mostBytes`: the oldest pictures go when the folder has grown past it.
    ThumbnailFiles(QString folder, qint64 mostBytes, Style style);

    // Nothing where there is no such picture, or no whole one.
    std::optional<QImage> find(const ContentKey& content, int side) const;
    // A picture that cannot be written is done without.
    void keep(const ContentKey& content, int side, const QImage& image);
    // Looks at all files; keep() calls it now and then.
    void prune();

    QString pathOf(const ContentKey& content, int side) const;

  private:
    QString m_folder;
    qint64 m_mostBytes;
    Style m_style;
    std::atomic<qint64> m_writtenSinceLook;
};

}  // namespace matwright::app
