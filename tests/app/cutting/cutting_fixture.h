// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <filesystem>

#include "app/cutting/cutting_asks.h"
#include "app/settings/settings.h"
#include "core/papers/papers_store.h"

namespace matwright::app {

// A list of papers in a folder of its own; questions are answered by members.
class CuttingFixture : public testing::Test {
  protected:
    CuttingFixture() {
        asks.open = [this](QWidget*, const QString&, const QString&) { return toOpen; };
        asks.openSeveral = [this](QWidget*, const QString&, const QString&) {
            return toOpen.isEmpty() ? QStringList() : QStringList{toOpen};
        };
        asks.cutAgain = [this](QWidget*, const QString& sentence) {
            asked << sentence;
            return cutAgain;
        };
        asks.import = [this](QWidget*, const QString& sentence, std::size_t, std::size_t) {
            asked << sentence;
            return toImport;
        };
        asks.out = {.fileName = [this](QWidget*, const QString&, const QString&,
                                       const QString&) { return toSave; },
                    .replace = [](QWidget*, const QString&) { return true; },
                    .printers = [this] { return printers; },
                    .print = [](QWidget*, QPrinter&, int) { return false; },
                    .goOn = [](QWidget*, const QString&) { return true; },
                    .files = std::make_shared<DiskFileStore>()};
    }
    std::filesystem::path folder() const { return m_folder.path().toStdString(); }
    std::filesystem::path file() const { return folder() / "papers.sqlite"; }
    PapersStore store() const { return *PapersStore::open(file()); }
    // Another program that holds the list for itself until this is destroyed.
    struct Holding {
        explicit Holding(const std::filesystem::path& file) : other(file, 5'000) {
            EXPECT_EQ(other.run("BEGIN EXCLUSIVE"), 0);
        }
        SqliteDatabase other;
    };

    static PaperOnHand paper(const char* name, Size size, int count = 1,
                             PaperKind kind = PaperKind::WholeSheet) {
        PaperOnHand paper;
        paper.name = name;
        paper.size = size;
        paper.count = count;
        paper.kind = kind;
        return paper;
    }
    static Size inches(int width, int height) {
        return {Length::inches(width), Length::inches(height)};
    }
    // The visible button with these words, mnemonics aside.
    static QPushButton* button(const QWidget& window, const QString& words) {
        for (QPushButton* one : window.findChildren<QPushButton*>()) {
            if (one->text().remove(u'&') == words) {
                return one;
            }
        }
        ADD_FAILURE() << "no button " << words.toStdString();
        return nullptr;
    }
    static void press(const QWidget& window, const QString& words) {
        if (QPushButton* found = button(window, words)) {
            QTest::mouseClick(found, Qt::LeftButton);
        }
    }

    CuttingAsks asks;
    QString toOpen;
    QString toSave;
    bool cutAgain = false;
    ImportChoice toImport = ImportChoice::Nothing;
    QStringList asked;
    QStringList printers;

  private:
    QTemporaryDir m_folder;

  protected:
    SettingsStore settings{m_folder.filePath(QStringLiteral("settings.ini"))};
};

}  // namespace matwright::app
