// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include "core/library/search.h"

namespace matwright::app {

// What a query asks for by a filter, as it stands in a sentence: "“beach”", "the 4 photos".
QString filterWords(Filter filter, const Query& query);

}  // namespace matwright::app
