// SPDX-License-Identifier: MIT
#pragma once

#include <QPushButton>

#include "app/editing/session.h"
#include "app/settings/settings.h"

namespace matwright::app {

// Shows how a paper looks and leads to the dialog that changes it, as one undo step. A paper
// without words cannot have a look.
class PaperLookButton final : public QPushButton {
    Q_OBJECT

  public:
    // Both outlive the button.
    PaperLookButton(Session& session, SettingsStore& settings, QWidget* parent = nullptr);

    // The words of the paper; nothing where several pieces differ.
    void showPaper(const std::optional<std::string>& paper);
    // What the dialog does when it is accepted.
    void setLook(const std::optional<PaperLook>& look);

  private:
    std::optional<PaperLook> look() const;
    void ask();

    Session& m_session;
    SettingsStore& m_settings;
    std::string m_paper;
};

}  // namespace matwright::app
