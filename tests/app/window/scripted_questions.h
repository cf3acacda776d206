// SPDX-License-Identifier: MIT
#pragma once

#include <QStringList>
#include <algorithm>

#include "app/window/questions.h"

namespace matwright::app {

// Answers at once with what a test has laid ready, and writes down what was asked.
class ScriptedQuestions final : public Questions {
  public:
    UnsavedChoice unsavedAnswer = UnsavedChoice::Cancel;
    std::optional<PageSetup> pageAnswer;
    std::optional<QString> openAnswer;
    std::optional<QString> saveAnswer;
    bool replaceAnswer = false;
    RecoveryChoice recoveryAnswer = RecoveryChoice::Later;
    std::optional<double> ppiAnswer;
    QStringList photosAnswer;
    std::optional<QString> photoFolderAnswer;
    std::optional<QString> whereAnswer;
    bool insteadAnswer = false;

    QStringList asked;  // "unsaved garden", "tell …", …

    UnsavedChoice unsavedWork(const QString& name) override {
        return note(QStringLiteral("unsaved ") + name, unsavedAnswer);
    }
    std::optional<PageSetup> newPage(Scale) override {
        return note(QStringLiteral("page"), pageAnswer);
    }
    std::optional<QString> fileToOpen(const QString&) override {
        return note(QStringLiteral("open"), openAnswer);
    }
    std::optional<QString> fileToSave(const QString& suggestion) override {
        return note(QStringLiteral("save ") + suggestion, saveAnswer);
    }
    bool mayReplace(const QString& path) override {
        return note(QStringLiteral("replace ") + path, replaceAnswer);
    }
    QStringList photosToAdd(const QString&) override {
        return note(QStringLiteral("photos"), photosAnswer);
    }
    std::optional<QString> photoFolder(const QString&, const QString&) override {
        return note(QStringLiteral("photo folder"), photoFolderAnswer);
    }
    std::optional<QString> whereIsPhoto(const QString& name, const QString&) override {
        return note(QStringLiteral("where ") + name, whereAnswer);
    }
    bool mayTakeInstead(const QString&, const QString& chosen) override {
        return note(QStringLiteral("instead ") + chosen, insteadAnswer);
    }
    RecoveryChoice recoveredWork(const AbandonedWork& work) override {
        return note(QStringLiteral("recovered ") + work.shownName(), recoveryAnswer);
    }
    std::optional<double> screenPpi(double, Scale) override {
        return note(QStringLiteral("screen"), ppiAnswer);
    }
    void tell(const QString& headline, const QString& sentences) override {
        asked << QStringLiteral("tell ") + headline + QStringLiteral(": ") + sentences;
    }

    bool wasAsked(const QString& beginning) const {
        return std::ranges::any_of(asked,
                                   [&](const QString& line) { return line.startsWith(beginning); });
    }

  private:
    template <typename T>
    T note(const QString& line, const T& answer) {
        asked << line;
        return answer;
    }
};

}  // namespace matwright::app
