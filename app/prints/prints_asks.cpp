// SPDX-License-Identifier: MIT
#include "app/prints/prints_asks.h"

#include "app/asks/system_asks.h"

namespace matwright::app {

PrintsAsks PrintsAsks::ofTheSystem() {
    return {.folder = askForFolder,
            .fileName = askToSaveAs,
            .show = showFolder,
            .files = std::make_shared<DiskFileStore>()};
}

}  // namespace matwright::app
