// SPDX-License-Identifier: MIT
#pragma once

#include <QLabel>

#include "app/editing/session.h"

namespace matwright::app {

// One line above the page that says what to do next.
class NextStepLine final : public QLabel {
    Q_OBJECT

  public:
    explicit NextStepLine(Session& session);

  private:
    void showStep();

    Session& m_session;
};

}  // namespace matwright::app
