// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include "app/window/questions.h"

namespace matwright::app {

// The questions asked by dialogs over a window.
class DialogQuestions final : public QObject, public Questions {
    Q_OBJECT

  public:
    // The window may be given later; until then the dialogs stand alone.
    void setWindow(QWidget* window) { m_window = window; }

    UnsavedChoice unsavedWork(const QString& name) override;
    std::optional<PageSetup> newPage(Scale scale) override;
    std::optional<QString> fileToOpen(const QString& folder) override;
    std::optional<QString> fileToSave(const QString& suggestion) override;
    bool mayReplace(const QString& path) override;
    QStringList photosToAdd(const QString& folder) override;
    std::optional<QString> photoFolder(const QString& headline, const QString& folder) override;
    std::optional<QString> whereIsPhoto(const QString& name, const QString& folder) override;
    bool mayTakeInstead(const QString& name, const QString& chosen) override;
    RecoveryChoice recoveredWork(const AbandonedWork& work) override;
    std::optional<double> screenPpi(double current, Scale scale) override;
    void tell(const QString& headline, const QString& sentences) override;

  private:
    bool confirmed(const QString& headline, const QString& sentences, const QString& yes);

    QWidget* m_window = nullptr;
};

}  // namespace matwright::app
