// SPDX-License-Identifier: MIT
#include "app/batch/filter_options.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <cstdlib>

#include "app/batch/typed_size.h"
#include "core/library/printable.h"

namespace matwright::app {

namespace {

bool isPlain(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0x80 || std::isalnum(byte) != 0 || std::string_view("._-/+,:@%").contains(c);
}

// "--tag a --tag b"
template <typename Values, typename Text>
std::string repeated(std::string_view option, const Values& values, const Text& textOfValue) {
    std::string typed;
    for (const auto& value : values) {
        typed +=
            fmt::format("{}{} {}", typed.empty() ? "" : " ", option, shellWord(textOfValue(value)));
    }
    return typed;
}

}  // namespace

std::string shellWord(std::string_view text) {
    if (!text.empty() && text.front() != '-' && std::ranges::all_of(text, isPlain)) {
        return std::string(text);
    }
    std::string word = "'";
    for (const char c : text) {
        word += c == '\'' ? "'\\''" : std::string(1, c);
    }
    return word + "'";
}

std::string_view optionOf(PhotoWay way) {
    switch (way) {
        case PhotoWay::SomeUpright:
            return "--some-upright";
        case PhotoWay::SomeLying:
            return "--some-lying";
        case PhotoWay::OnlyUpright:
            return "--only-upright";
        case PhotoWay::OnlyLying:
            return "--only-lying";
    }
    std::abort();
}

std::string typedFilter(const Query& query, Filter filter, std::string_view familyOf) {
    if (!uses(query, filter)) {
        return "";
    }
    switch (filter) {
        case Filter::Words:
            return query.words;
        case Filter::Photos:
            return fmt::format("{} {}", query.photos->orFewer ? "--photos-at-most" : "--photos",
                               query.photos->count);
        case Filter::Prints:
            return repeated("--print", query.prints, typedPrintSize);
        case Filter::PageSizes:
            return repeated("--page", query.pageSizes, typedPageSize);
        case Filter::DoublePage:
            return *query.doublePage ? "--double-page" : "--single-page";
        case Filter::PhotoWay:
            return std::string(optionOf(*query.photoWay));
        case Filter::RoomForTitle:
            return "--room-for-title";
        case Filter::RoomForJournaling:
            return "--room-for-journaling";
        case Filter::Favourites:
            return "--favourites";
        case Filter::Tags:
            return repeated("--tag", query.tags, printablePath);
        case Filter::Folder:
            return "--in " + shellWord(printablePath(query.folder));
        case Filter::Family:
            return "--family-of " + shellWord(printablePath(familyOf));
    }
    std::abort();
}

namespace {

std::string sketches(std::size_t count) {
    return count == 1 ? "1 sketch" : fmt::format("{} sketches", count);
}

std::string loosenedWords(const Query& query, const Loosening& loosening,
                          std::string_view familyOf) {
    const std::string would = fmt::format("there would be {}", sketches(loosening.wouldFind));
    if (loosening.filter != Filter::Words) {
        return fmt::format("Without {} {}.", typedFilter(query, loosening.filter, familyOf), would);
    }
    return fmt::format("Without the words \"{}\" {}.", query.words, would);
}

}  // namespace

std::string nothingFoundSentence(const Holdings& holdings, const Query& query, const Found& found,
                                 std::string_view familyOf) {
    if (holdings.size() == 0) {
        return "There is no sketch in this library yet. Bring some in with \"matwright-batch "
               "library import FILE\".";
    }
    const std::string sentence = "No sketch was found. ";
    if (found.loosen) {
        return sentence + loosenedWords(query, *found.loosen, familyOf);
    }
    return sentence + fmt::format(
                          "Leaving out a single filter is not enough; start again with "
                          "fewer. The library has {}.",
                          sketches(holdings.size()));
}

}  // namespace matwright::app
