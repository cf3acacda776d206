// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QtPlugin>

#include "core/making/making.h"

class QDialog;
class QWidget;

namespace matwright::app {

class PhotoService;
class Session;
class SettingsStore;

// What the part "prints" is to the program that opens it: the crop window, and what comes out of a
// page. All windows are not yet shown and owned by `parent`; what they are given outlives them.
// `service` may be null.
class PrintsPart {
  public:
    virtual ~PrintsPart() = default;

    // Precondition: the slot has a photo.
    virtual QDialog* makeCropDialog(Session& session, PieceId slot, SettingsStore& settings,
                                    PhotoService* service, QWidget* parent) = 0;
    // `suggestedName` is a path without a suffix, or empty.
    virtual QDialog* makePrintsWindow(const Making& making, const QString& suggestedName,
                                      SettingsStore& settings, PhotoService* service,
                                      QWidget* parent) = 0;
    virtual QDialog* makePagePictureWindow(const Making& making, const QString& suggestedName,
                                           QWidget* parent) = 0;

  protected:
    PrintsPart() = default;
    Q_DISABLE_COPY_MOVE(PrintsPart)
};

}  // namespace matwright::app

Q_DECLARE_INTERFACE(matwright::app::PrintsPart, "org.matwright.PrintsPart")
