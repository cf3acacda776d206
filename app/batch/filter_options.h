// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>

#include "core/library/search.h"

namespace matwright::app {

// The filters of a search in the words of the command line.

// What --order takes, the first being the usual order.
struct OrderWord {
    std::string_view word;
    SearchOrder order;
};
inline constexpr OrderWord orderWords[] = {{"name", SearchOrder::Name},
                                           {"last-used", SearchOrder::LastUsed},
                                           {"most-used", SearchOrder::MostUsed},
                                           {"newest", SearchOrder::Newest}};

// "--some-upright", …
std::string_view optionOf(PhotoWay way);

// The filter as it stands in `query`, ready to be typed again: "--photos-at-most 4", "--tag beach
// --tag sea"; the words alone for the words. Empty where the query does not use it.
std::string typedFilter(const Query& query, Filter filter, std::string_view familyOf);

// `text` as one word of a shell.
std::string shellWord(std::string_view text);

// Why nothing was found, as one or two sentences.
std::string nothingFoundSentence(const Holdings& holdings, const Query& query, const Found& found,
                                 std::string_view familyOf);

}  // namespace matwright::app
