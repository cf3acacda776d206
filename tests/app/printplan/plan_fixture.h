// SPDX-License-Identifier: MIT
#pragma once

#include <QPrinter>

#include "app/printplan/plan_asks.h"
#include "app/settings/settings.h"
#include "core/printers/printing_store.h"
#include "tests/app/prints/prints_fixture.h"

namespace matwright::app {

// Asks that are answered from members, and a store in the test's own folder.
class PlanFixture : public PrintsFixture {
  protected:
    PlanFixture() {
        std::filesystem::create_directory(folder() / "out");
        asks.pageFiles = [this](QWidget*, const QString&, const QString&) { return pageFiles; };
        asks.folder = [this](QWidget*, const QString&, const QString&) { return outFolder; };
        asks.fileName = [this](QWidget*, const QString&, const QString& name, const QString&) {
            suggested = name;
            return fileName;
        };
        asks.confirm = [this](QWidget*, const QString& sentence, const QString&) {
            questions << sentence;
            if (whileAsked) {
                whileAsked();
            }
            return agrees;
        };
        asks.queues = [this] { return queues; };
        asks.print = [this](QWidget*, QPrinter& printer, int, const QString& title) {
            dialogs << title;
            printer.setOutputFileName(out(QStringLiteral("printed.pdf")));
            return true;
        };
        asks.show = [](const QString&) {};
        asks.today = [] { return std::string("2026-07-14"); };
        asks.store = folder() / printingStoreName;
        asks.files = std::make_shared<DiskFileStore>();
        outFolder = out({});
    }
    QString out(const QString& name) const {
        return QString::fromStdString((folder() / "out" / name.toStdString()).string());
    }
    QStringList files() const {
        return QDir(QString::fromStdString(folder() / "out")).entryList(QDir::Files, QDir::Name);
    }
    PrintingStore store() const {
        auto opened = PrintingStore::open(asks.store);
        EXPECT_TRUE(opened);
        return std::move(*opened);
    }

    SettingsStore settings{QString::fromStdString(folder() / "settings.ini")};
    PlanAsks asks;
    QStringList pageFiles;
    QString outFolder;
    QString fileName;
    QString suggested;
    QStringList queues;
    QStringList questions;
    QStringList dialogs;
    std::function<void()> whileAsked;
    bool agrees = true;
};

}  // namespace matwright::app
