// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>
#include <QtPlugin>
#include <optional>

#include "core/making/making.h"

class QDialog;
class QWidget;

namespace matwright::app {

class Session;
class SettingsStore;

// What the part "cutting" is to the program that opens it: what is cut from craft paper. All
// windows are not yet shown and owned by `parent`; what they are given outlives them.
class CuttingPart {
  public:
    virtual ~CuttingPart() = default;

    // Which paper every mat, strip and block is cut from, and the plan of cuts. Papers and switches
    // chosen there are edits of the session, to be undone there. `suggestedName` is a path without
    // a suffix, or empty.
    virtual QDialog* makeCuttingWindow(Session& session, const QString& suggestedName,
                                       SettingsStore& settings, QWidget* parent) = 0;
    // Sheets and scraps at home.
    virtual QDialog* makePapersWindow(SettingsStore& settings, QWidget* parent) = 0;

    // The names of the sheets and scraps at home, each once, and how the paper of a name looks.
    // Nothing where the list cannot be read.
    virtual QStringList paperNames() = 0;
    virtual std::optional<PaperLook> paperLook(const QString& name) = 0;

  protected:
    CuttingPart() = default;
    Q_DISABLE_COPY_MOVE(CuttingPart)
};

}  // namespace matwright::app

Q_DECLARE_INTERFACE(matwright::app::CuttingPart, "org.matwright.CuttingPart")
