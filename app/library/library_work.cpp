// SPDX-License-Identifier: MIT
#include "app/library/library_work.h"

#include <QFileInfo>
#include <chrono>
#include <utility>

#include "app/files/paths.h"
#include "app/library/contact_sheet_pdf.h"
#include "app/library/entry_words.h"
#include "core/library/folder_lock.h"
#include "core/library/keeping.h"
#include "core/library/label_store.h"
#include "core/library/saving.h"
#include "core/library/zip_export.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {
namespace {

using Clock = std::chrono::steady_clock;
constexpr std::chrono::milliseconds timeBetweenNews(200);

Timestamp now() {
    return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

std::vector<KeyedSketch> keyed(const Holdings& holdings) {
    std::vector<KeyedSketch> all;
    all.reserve(holdings.size());
    for (std::size_t i = 0; i < holdings.size(); ++i) {
        all.push_back({std::string(holdings.path(i)), holdings.content(i)});
    }
    return all;
}

}  // namespace

LibraryWork::LibraryWork(QString library, QObject* parent)
    : QObject(parent), m_library(std::move(library)) {
    m_pool.setMaxThreadCount(1);
}

LibraryWork::~LibraryWork() {
    m_stopImports.request_stop();
    m_pool.waitForDone();
}

void LibraryWork::run(std::function<Then()> work) {
    m_pool.start([this, work = std::move(work)] {
        QMetaObject::invokeMethod(this, work(), Qt::QueuedConnection);
    });
}

void LibraryWork::changeLabels(const Paths& sketches, const std::function<void(Labels&)>& change,
                               const QString& said) {
    run([this, sketches, change, said]() -> Then {
        DiskFileStore store;
        QStringList told;
        QStringList complaints;
        for (const std::string& sketch : sketches) {
            const auto changed = matwright::changeLabels(store, toPath(m_library), sketch, change);
            if (!changed) {
                complaints << shownText(changed.error());
            } else if (!changed->said.empty()) {
                told << asText(changed->said);
            }
        }
        return [this, said, told, complaints] {
            emit changed();
            if (!complaints.isEmpty()) {
                emit failed(tr("This could not be kept"), complaints.join(u'\n'));
            } else if (!told.isEmpty() || !said.isEmpty()) {
                emit this->said(told.isEmpty() ? said : told.constFirst());
            }
        };
    });
}

void LibraryWork::rename(const std::string& sketch, const QString& name) {
    run([this, sketch, name]() -> Then {
        DiskFileStore store;
        auto kept = renameSketch(store, toPath(m_library), sketch, name.toStdString());
        return [this, name, kept = std::move(kept)] {
            if (!kept) {
                emit failed(tr("The sketch could not be renamed"), shownText(kept.error()));
                return;
            }
            emit arrived({kept->sketch});
            emit changed();
            emit said(kept->said.empty() ? tr("Renamed to %1.").arg(name) : asText(kept->said));
        };
    });
}

void LibraryWork::makeCopy(const std::string& sketch) {
    run([this, sketch]() -> Then {
        DiskFileStore store;
        auto kept = copySketch(store, toPath(m_library), sketch, std::string(folderOf(sketch)));
        return [this, kept = std::move(kept)] {
            if (!kept) {
                emit failed(tr("No copy could be made"), shownText(kept.error()));
                return;
            }
            emit arrived({kept->sketch});
            emit changed();
            emit said(kept->said.empty() ? tr("Copied. The copy is selected.")
                                         : asText(kept->said));
        };
    });
}

void LibraryWork::move(const Moves& moves) {
    run([this, moves]() -> Then {
        DiskFileStore store;
        Paths arrivals;
        Moves back;
        QStringList told;
        QStringList complaints;
        for (const Move& move : moves) {
            auto kept = moveSketch(store, toPath(m_library), move.sketch, move.folder);
            if (!kept) {
                complaints << shownText(kept.error());
                continue;
            }
            if (!kept->said.empty()) {
                told << asText(kept->said);
            }
            back.push_back({kept->sketch, std::string(folderOf(move.sketch))});
            arrivals.push_back(std::move(kept->sketch));
        }
        return [this, arrivals, back, told, complaints] {
            emit arrived(arrivals);
            emit changed();
            if (!back.empty()) {
                emit moved(back);
            }
            if (!told.isEmpty() || !complaints.isEmpty()) {
                emit failed(complaints.isEmpty() ? tr("Some have another name now")
                                                 : tr("Not everything could be moved"),
                            (complaints + told).join(u'\n'));
            }
        };
    });
}

void LibraryWork::countUse(const std::string& sketch) {
    run([this, sketch]() -> Then {
        DiskFileStore store;
        // A page was started all the same; a count that cannot be kept is not worth a word.
        (void)matwright::countUse(store, toPath(m_library), sketch, now());
        return [this] { emit changed(); };
    });
}

void LibraryWork::moveToTrash(const Paths& sketches) {
    run([this, sketches]() -> Then {
        const TrashPlaces places = ownTrashPlaces();
        std::vector<TrashedFile> files;
        QStringList complaints;
        for (const std::string& sketch : sketches) {
            auto moved = trashSketch(toPath(m_library), sketch, places);
            if (moved) {
                files.push_back(std::move(*moved));
            } else {
                complaints << shownText(moved.error());
            }
        }
        return tellTrashed(std::move(files), complaints);
    });
}

LibraryWork::Then LibraryWork::tellTrashed(std::vector<TrashedFile> files,
                                           const QStringList& complaints) {
    return [this, files = std::move(files), complaints] {
        emit changed();
        if (!files.empty()) {
            m_trashed = files;
            emit trashed(trashedCount());
        }
        if (!complaints.isEmpty()) {
            emit failed(tr("Not everything could be moved to the trash"), complaints.join(u'\n'));
        }
    };
}

void LibraryWork::restoreTrashed() {
    run([this, files = std::exchange(m_trashed, {})]() -> Then {
        Paths back;
        QStringList complaints;
        for (const TrashedFile& file : files) {
            const auto restored = untrashSketch(toPath(m_library), file);
            if (restored) {
                back.push_back(restored->sketch);
            } else {
                complaints << shownText(restored.error());
            }
        }
        return [this, back, complaints] {
            emit arrived(back);
            emit changed();
            emit said(back.size() == 1 ? tr("The sketch is back.")
                                       : tr("%1 sketches are back.").arg(back.size()));
            if (!complaints.isEmpty()) {
                emit failed(tr("Not everything could be brought back"), complaints.join(u'\n'));
            }
        };
    });
}

void LibraryWork::import(const QStringList& sources, std::shared_ptr<const Holdings> known) {
    importInto({}, sources, std::move(known));
}

void LibraryWork::importInto(const QString& folder, const QStringList& sources,
                             std::shared_ptr<const Holdings> known) {
    run([this, folder, sources, known = std::move(known),
         stop = m_stopImports.get_token()]() -> Then {
        DiskFileStore store;
        std::vector<std::filesystem::path> paths;
        for (const QString& source : sources) {
            paths.push_back(toPath(source));
        }
        const std::vector<KeyedSketch> all = keyed(*known);
        ImportOptions options;
        options.intoFolder = folder.toStdString();
        options.known = all;
        options.stop = stop;
        options.progress = [this, told = Clock::now()](std::size_t files) mutable {
            if (const auto now = Clock::now(); now - told > timeBetweenNews) {
                told = now;
                QMetaObject::invokeMethod(
                    this, [this, files] { emit importing(static_cast<int>(files)); },
                    Qt::QueuedConnection);
            }
        };
        auto report = importSketches(store, toPath(m_library), paths, options);
        return [this, folder, report = std::move(report)] {
            emit changed();
            if (report) {
                emit imported(*report, folder);
            } else {
                emit failed(tr("The sketches could not be added"), shownText(report.error()));
            }
        };
    });
}

void LibraryWork::stopImports() {
    m_stopImports.request_stop();
    m_stopImports = {};
}

void LibraryWork::exportZip(const Paths& sketches, const QString& file) {
    run([this, sketches, file]() -> Then {
        DiskFileStore store;
        const auto done = matwright::exportZip(store, toPath(m_library), sketches, toPath(file));
        return [this, done, file, count = sketches.size()] {
            if (!done) {
                emit failed(tr("The zip could not be made"), shownText(done.error()));
                return;
            }
            const QString name = QFileInfo(file).fileName();
            emit said(count == 1 ? tr("1 sketch is in %1.").arg(name)
                                 : tr("%1 sketches are in %2.").arg(count).arg(name));
        };
    });
}

void LibraryWork::makeContactSheet(const Paths& sketches, const QString& title,
                                   const QString& file) {
    run([this, sketches, title, file]() -> Then {
        const auto made = contactSheetPdf(toPath(m_library), sketches, title);
        Result<void> written = made ? Result<void>() : std::unexpected(made.error());
        QStringList leftOut;
        if (made) {
            DiskFileStore store;
            const auto size = static_cast<std::size_t>(made->bytes.size());
            written = store.replace(toPath(file), std::string_view(made->bytes.constData(), size));
            for (const Error& error : made->leftOut) {
                leftOut << shownText(error);
            }
        }
        return [this, written, leftOut, name = QFileInfo(file).fileName()] {
            if (!written) {
                emit failed(tr("The contact sheet could not be made"), shownText(written.error()));
                return;
            }
            emit said(tr("The contact sheet is in %1.").arg(name));
            if (!leftOut.isEmpty()) {
                emit failed(tr("Not every sketch is on the contact sheet"), leftOut.join(u'\n'));
            }
        };
    });
}

void LibraryWork::read(const std::string& sketch, const std::function<void(const Sketch&)>& then) {
    run([this, sketch, then]() -> Then {
        DiskFileStore store;
        auto loaded = loadSketch(store, toPath(m_library) / sketch);
        return [this, then, loaded = std::move(loaded)] {
            if (loaded) {
                then(loaded->sketch);
            } else {
                emit failed(tr("This sketch could not be read"), shownText(loaded.error()));
            }
        };
    });
}

void LibraryWork::prepare(bool mayMake) {
    run([this, mayMake]() -> Then {
        const std::filesystem::path library = toPath(m_library);
        std::error_code failure;
        const bool wasThere = std::filesystem::is_directory(library, failure);
        if (!wasThere && mayMake) {
            std::filesystem::create_directories(library, failure);
        }
        std::size_t rescued = 0;
        // What cannot be done here is told by the look that follows.
        if (wasThere || mayMake) {
            (void)makeLibrary(library);
            rescued =
                rescueLeftovers(library).value_or(std::vector<std::filesystem::path>()).size();
        }
        const bool isNew = !wasThere && mayMake && std::filesystem::is_directory(library, failure);
        return [this, isNew, rescued] {
            emit prepared(isNew);
            if (rescued > 0) {
                emit said(rescued == 1
                              ? tr("Work that a program left hidden when it was ended is a sketch "
                                   "of the library again.")
                              : tr("Work that programs left hidden when they were ended is in the "
                                   "library again: %1 sketches.")
                                    .arg(rescued));
            }
        };
    });
}

}  // namespace matwright::app
