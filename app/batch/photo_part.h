// SPDX-License-Identifier: MIT
#pragma once

#include <QtPlugin>

#include "app/batch/photo_commands.h"

namespace matwright::app {

// The part "photo-commands" of the companion.
class PhotoPart {
  public:
    virtual ~PhotoPart() = default;
    virtual PhotoCommands& commands() = 0;
};

}  // namespace matwright::app

Q_DECLARE_INTERFACE(matwright::app::PhotoPart, "org.matwright.PhotoPart")
