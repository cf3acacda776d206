// SPDX-License-Identifier: MIT
#pragma once

#include "app/batch/photo_commands.h"

namespace matwright::app {

int runPhotos(const PhotosCommand& command, BatchPorts& ports);

}  // namespace matwright::app
