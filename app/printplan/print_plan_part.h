// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QtPlugin>

#include "core/making/making.h"

class QDialog;
class QWidget;

namespace matwright::app {

class PhotoService;
class SettingsStore;

// What the part "print-plan" is to the program that opens it: which prints go on which photo paper,
// in which printer. All windows are not yet shown and owned by `parent`; what they are given
// outlives them. `service` may be null.
class PrintPlanPart {
  public:
    virtual ~PrintPlanPart() = default;

    // Plans the prints of this page, and of others that are added there. `suggestedName` is a path
    // without a suffix, or empty. `file` is the page's own, by which it is known again; empty where
    // it has none.
    virtual QDialog* makePrintPlanWindow(const Making& making, const QString& suggestedName,
                                         const QString& file, SettingsStore& settings,
                                         PhotoService* service, QWidget* parent) = 0;
    // The printers a person has, the papers they take, and how true to size they are.
    virtual QDialog* makePrintersWindow(SettingsStore& settings, QWidget* parent) = 0;
    // Prints that were made ahead.
    virtual QDialog* makePrintsOnHandWindow(SettingsStore& settings, PhotoService* service,
                                            QWidget* parent) = 0;

  protected:
    PrintPlanPart() = default;
    Q_DISABLE_COPY_MOVE(PrintPlanPart)
};

}  // namespace matwright::app

Q_DECLARE_INTERFACE(matwright::app::PrintPlanPart, "org.matwright.PrintPlanPart")
