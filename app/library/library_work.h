// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QThreadPool>
#include <functional>
#include <memory>
#include <stop_token>
#include <string>
#include <vector>

#include "core/library/holdings.h"
#include "core/library/importing.h"
#include "core/library/labels.h"
#include "core/library/trash.h"
#include "core/sketch/sketch.h"

namespace matwright::app {

// What a person does to the sketches of a library: one thing after the other on a thread of its
// own, so that no disk holds up the window. Every call returns at once; what came of it is told by
// signals on the thread this object belongs to. Paths are those of LibraryEntry.
class LibraryWork final : public QObject {
    Q_OBJECT

  public:
    explicit LibraryWork(QString library, QObject* parent = nullptr);
    // Ends imports and waits for everything else that is under way.
    ~LibraryWork() override;

    using Paths = std::vector<std::string>;
    // `said` is told when all went well; empty tells nothing.
    void changeLabels(const Paths& sketches, const std::function<void(Labels&)>& change,
                      const QString& said);
    void rename(const std::string& sketch, const QString& name);
    void makeCopy(const std::string& sketch);
    // Each into its folder of the library ("" is the library itself), which may be new.
    struct Move {
        std::string sketch;
        std::string folder;
    };
    using Moves = std::vector<Move>;
    void move(const Moves& moves);
    void countUse(const std::string& sketch);
    void moveToTrash(const Paths& sketches);
    // What moveToTrash() moved last comes back.
    void restoreTrashed();
    void import(const QStringList& sources, std::shared_ptr<const Holdings> known);
    // The same into a sub-folder, which may be new.
    void importInto(const QString& folder, const QStringList& sources,
                    std::shared_ptr<const Holdings> known);
    // Ends the imports that were asked for so far; what they brought stays.
    void stopImports();
    void exportZip(const Paths& sketches, const QString& file);
    // One PDF of small pictures; `title` stands above each sheet.
    void makeContactSheet(const Paths& sketches, const QString& title, const QString& file);
    // Hands the sketch over, or tells why it cannot be read.
    void read(const std::string& sketch, const std::function<void(const Sketch&)>& then);
    // Makes the folder a library, and visible what a killed program left hidden there. A folder
    // that is not there is made only where `mayMake`.
    void prepare(bool mayMake);

    int trashedCount() const { return static_cast<int>(m_trashed.size()); }

  signals:
    // The library is ready to be looked at.
    void prepared(bool isNew);
    // The folder or its labels may be different now.
    void changed();
    void said(const QString& sentence);
    void failed(const QString& headline, const QString& sentences);
    // These are worth selecting: copies, renamed and returned ones.
    void arrived(const std::vector<std::string>& sketches);
    void trashed(int count);
    // `back` would undo it.
    void moved(const matwright::app::LibraryWork::Moves& back);
    // Now and then while it lasts; so many files were looked at.
    void importing(int files);
    // The end of it. `into` is the sub-folder, empty for none.
    void imported(const matwright::ImportReport& report, const QString& into);

  private:
    using Then = std::function<void()>;
    // `work` runs on the thread and gives what is to be done with its result here.
    void run(std::function<Then()> work);
    Then tellTrashed(std::vector<TrashedFile> files, const QStringList& complaints);

    const QString m_library;
    std::vector<TrashedFile> m_trashed;
    std::stop_source m_stopImports;
    QThreadPool m_pool;
};

}  // namespace matwright::app
