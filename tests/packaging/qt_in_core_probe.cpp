// SPDX-License-Identifier: MIT
// Must not compile: it is built with exactly what the core is built with.
#include <QString>
