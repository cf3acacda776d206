// SPDX-License-Identifier: MIT
#pragma once

namespace matwright::test {

// The program under measurement: shows the library FOLDER with caches in CACHE, as a window of its
// own, prints what it measured as one line of JSON and leaves. MODE is "start" (from START, in
// nanoseconds of the steady clock, to the first screen of thumbnails painted; then the memory) or
// "scroll" (the longest time the window's thread was busy with one event while the wall is
// scrolled to its end at full speed).
int runProbe(int argc, char** argv);

}  // namespace matwright::test
