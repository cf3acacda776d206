// SPDX-License-Identifier: MIT
#pragma once

namespace matwright::app {

// A figure or name that is still being typed belongs to the work too: takes it as leaving its field
// does. For what is pressed by a key, which leaves the focus where it is.
void finishTyping();

}  // namespace matwright::app
