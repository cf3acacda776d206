// SPDX-License-Identifier: MIT
#pragma once

#include <QList>
#include <QString>
#include <QtPlugin>

#include "core/sketch/sketch.h"

class QAction;
class QWidget;

namespace matwright::app {

class SettingsStore;

// What the library asks of the window around it.
class LibraryHost {
  public:
    virtual ~LibraryHost() = default;

    // Shows the sketch file on the page, to be changed. False where the person keeps what is open.
    virtual bool openSketch(const QString& path) = 0;
    // Starts a new unsaved page with this sketch. False likewise.
    virtual bool startPage(Sketch sketch) = 0;
    virtual void showPage() = 0;
    // One sentence in the status bar.
    virtual void say(const QString& sentence) = 0;

  protected:
    LibraryHost() = default;
    Q_DISABLE_COPY_MOVE(LibraryHost)
};

// What the part "library" is to the program that opens it: nothing of app/library is linked.
class LibraryPart {
  public:
    virtual ~LibraryPart() = default;

    // The library of the person's settings, owned by `parent`. Host and settings outlive it.
    virtual QWidget* makeView(LibraryHost& host, SettingsStore& settings, QWidget* parent) = 0;
    // The commands of a view, for a menu; separators too.
    virtual QList<QAction*> commandsOf(QWidget& view) = 0;

  protected:
    LibraryPart() = default;
    Q_DISABLE_COPY_MOVE(LibraryPart)
};

}  // namespace matwright::app

Q_DECLARE_INTERFACE(matwright::app::LibraryPart, "org.matwright.LibraryPart")
