// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "app/files/paths.h"
#include "app/library/library_view.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

// Answers at once with what a test has laid ready, and writes down what was told.
class ScriptedAsks final : public LibraryAsks {
  public:
    std::optional<QString> nameAnswer;
    std::optional<QString> moveAnswer;
    QStringList filesAnswer;
    std::optional<QString> folderAnswer;
    std::optional<QString> libraryAnswer;
    std::optional<QString> fileAnswer;
    std::optional<Size> carryAnswer;
    QStringList told;

    std::optional<QString> newName(const QString&) override { return nameAnswer; }
    std::optional<QString> folderToMoveTo(const QStringList&) override { return moveAnswer; }
    QStringList filesToAdd() override { return filesAnswer; }
    std::optional<QString> folderToAdd() override { return folderAnswer; }
    std::optional<QString> libraryFolder(const QString&) override { return libraryAnswer; }
    std::optional<QString> zipFile(const QString&) override { return fileAnswer; }
    std::optional<QString> pdfFile(const QString&) override { return fileAnswer; }
    std::optional<Sketch> carriedOver(const Sketch& sketch, Length trimmerStep) override {
        if (!carryAnswer) {
            return {};
        }
        return matwright::carriedOver(sketch, onPageSize(sketch.page, *carryAnswer), trimmerStep)
            .sketch;
    }
    void list(const QString& headline, const QStringList& lines) override {
        told << headline + u'\n' + lines.join(u'\n');
    }
    void tell(const QString& headline, const QString& sentences) override {
        told << headline + u'\n' + sentences;
    }
};

class RecordingHost final : public LibraryHost {
  public:
    QStringList opened;
    std::vector<Sketch> started;
    int shownPages = 0;
    bool mayLeave = true;

    bool openSketch(const QString& path) override {
        opened << path;
        return mayLeave;
    }
    bool startPage(Sketch sketch) override {
        if (mayLeave) {
            started.push_back(std::move(sketch));
        }
        return mayLeave;
    }
    void showPage() override { ++shownPages; }
    void say(const QString&) override {}
};

// A library of a few sketches on a real disk, in a view of its own.
class LibraryTest : public testing::Test {
  protected:
    LibraryTest() {
        qputenv("XDG_DATA_HOME", QFile::encodeName(m_folder.filePath(QStringLiteral("data"))));
        QDir().mkpath(m_folder.filePath(QStringLiteral("data")));
    }

    QString at(const char* name) const { return m_folder.filePath(QString::fromUtf8(name)); }
    QString inLibrary(const char* name) const { return library() + u'/' + QString::fromUtf8(name); }
    QString library() const { return at("library"); }

    // A sketch with so many 4 x 6 photos in a row, in the library.
    static Sketch sketchOf(const char* name, int photos) {
        Sketch sketch = blankSketch();
        sketch.name = name;
        for (int i = 0; i < photos; ++i) {
            Piece piece;
            piece.kind = PieceKind::PhotoSlot;
            piece.size = {Length::inches(4), Length::inches(6)};
            piece.printSize = piece.size;
            piece.place = {Length::inches(i), Length::inches(1)};
            const PieceId id = nextId(sketch);
            sketch.pieces.emplace(id, piece);
            sketch.order.push_back(id);
        }
        return sketch;
    }
    void put(const char* path, const Sketch& sketch) {
        const QString file = inLibrary(path);
        QDir().mkpath(QFileInfo(file).path());
        DiskFileStore store;
        ASSERT_TRUE(saveSketch(store, toPath(file), sketch));
    }
    void putThree() {
        put("Beach.sketch.svg", sketchOf("Beach", 1));
        put("Garden.sketch.svg", sketchOf("Garden", 2));
        put("winter/Snow.sketch.svg", sketchOf("Snow", 4));
    }

    // The view, once it has looked into the folder.
    LibraryView& view() {
        if (!m_view) {
            Settings chosen = m_settings->value();
            chosen.libraryFolder = m_isStandard ? QString() : library();
            m_settings->set(chosen);
            m_view = std::make_unique<LibraryView>(
                host, *m_settings, asks, LibraryPlaces{at("standard"), at("cache"), m_starters});
            m_view->resize(1200, 800);
            m_view->show();
            EXPECT_TRUE(waitFor([this] { return m_view->isKnown(); }));
        }
        return *m_view;
    }
    template <typename Condition>
    static bool waitFor(Condition condition) {
        return QTest::qWaitFor(condition, 10'000);
    }
    bool waitForCount(std::size_t count) {
        return waitFor([&] { return view().finder().holdings()->size() == count; });
    }
    void select(std::vector<std::string> paths) { view().wall().select(paths); }
    LibraryEntry entry(const char* path) {
        const auto index = view().finder().holdings()->indexOf(path);
        return index ? view().finder().holdings()->entry(*index) : LibraryEntry();
    }
    std::size_t found() { return view().finder().found().indices.size(); }

  private:
    QTemporaryDir m_folder;

  protected:
    std::unique_ptr<SettingsStore> m_settings =
        std::make_unique<SettingsStore>(m_folder.filePath(QStringLiteral("settings.ini")));
    bool m_isStandard = false;
    QString m_starters;
    RecordingHost host;
    ScriptedAsks asks;
    std::unique_ptr<LibraryView> m_view;
};

}  // namespace matwright::app
