// SPDX-License-Identifier: MIT
#include "core/library/search_conditions.h"

#include <algorithm>
#include <string>
#include <string_view>

#include "core/library/holdings_inside.h"
#include "core/library/text_fold.h"

namespace matwright {

namespace {

using Inside = Holdings::Inside;

// Values that are not in the library are passed by nothing.
template <typename Value>
Bits havingValue(const Inside& inside, const Facet& facet, const std::vector<Value>& values,
                 const Value& value) {
    const auto at = std::ranges::find(values, value);
    return at == values.end() ? Bits(inside.size())
                              : facet.having(static_cast<std::size_t>(at - values.begin()));
}

template <typename Value>
Bits havingAll(const Inside& inside, const Facet& facet, const std::vector<Value>& values,
               const std::vector<Value>& wanted) {
    Bits passing = Bits::all(inside.size());
    for (const Value& value : wanted) {
        passing &= havingValue(inside, facet, values, value);
    }
    return passing;
}

Bits withWords(const Inside& inside, const Query& query) {
    const std::string folded = foldedText(query.words);
    Bits passing = Bits::all(inside.size());
    for (const std::string_view word : wordsIn(folded)) {
        passing &= query.wordMatch == WordMatch::Part ? inside.words().withPart(word)
                                                      : inside.words().withWord(word);
    }
    return passing;
}

Bits withPhotos(const Inside& inside, PhotoCountFilter filter) {
    Bits passing(inside.size());
    const auto limit = static_cast<int>(photoCountLimit);
    const int last = std::min(filter.count, limit);
    for (int count = filter.orFewer ? 0 : last; count >= 0 && count <= last; ++count) {
        if (static_cast<std::size_t>(count) < inside.photos.values()) {
            passing |= inside.photos.having(static_cast<std::size_t>(count));
        }
    }
    return passing;
}

Bits onPages(const Inside& inside, const std::vector<Size>& sizes) {
    Bits passing(inside.size());
    for (const Size size : sizes) {
        passing |= havingValue(inside, inside.pages, inside.pageSizes, size);
    }
    return passing;
}

Bits ofFamily(const Inside& inside, int family) {
    Bits passing(inside.size());
    for (std::size_t entry = 0; entry < inside.size(); ++entry) {
        if (inside.families[entry] == family) {
            passing.set(entry);
        }
    }
    return passing;
}

Bits switchedOn(const Inside& inside, Switch which) {
    return inside.switches.having(static_cast<std::size_t>(which));
}

std::vector<Size> shortSidesFirst(std::vector<Size> sizes) {
    std::ranges::transform(sizes, sizes.begin(), shortSideFirst);
    return sizes;
}

// `filter` is one that the query uses.
Bits passingOf(const Inside& inside, const Query& query, Filter filter) {
    switch (filter) {
        case Filter::Words:
            return withWords(inside, query);
        case Filter::Photos:
            return withPhotos(inside, *query.photos);
        case Filter::Prints:
            return havingAll(inside, inside.prints, inside.printSizes,
                             shortSidesFirst(query.prints));
        case Filter::PageSizes:
            return onPages(inside, query.pageSizes);
        case Filter::DoublePage:
            return inside.doublePages.having(*query.doublePage ? 1 : 0);
        case Filter::PhotoWay:
            return inside.photoWays.having(static_cast<std::size_t>(*query.photoWay));
        case Filter::RoomForTitle:
            return switchedOn(inside, Switch::RoomForTitle);
        case Filter::RoomForJournaling:
            return switchedOn(inside, Switch::RoomForJournaling);
        case Filter::Favourites:
            return switchedOn(inside, Switch::Favourite);
        case Filter::Tags:
            return havingAll(inside, inside.tags, inside.tagNames, query.tags);
        case Filter::Folder:
            return havingValue(inside, inside.folders, inside.folderNames, query.folder);
        case Filter::Family:
            return ofFamily(inside, query.family);
    }
    return Bits(inside.size());
}

}  // namespace

bool uses(const Query& query, Filter filter) {
    switch (filter) {
        case Filter::Words:
            return !wordsIn(foldedText(query.words)).empty();
        case Filter::Photos:
            return query.photos.has_value();
        case Filter::Prints:
            return !query.prints.empty();
        case Filter::PageSizes:
            return !query.pageSizes.empty();
        case Filter::DoublePage:
            return query.doublePage.has_value();
        case Filter::PhotoWay:
            return query.photoWay.has_value();
        case Filter::RoomForTitle:
            return query.roomForTitle;
        case Filter::RoomForJournaling:
            return query.roomForJournaling;
        case Filter::Favourites:
            return query.favourites;
        case Filter::Tags:
            return !query.tags.empty();
        case Filter::Folder:
            return !query.folder.empty();
        case Filter::Family:
            return query.family != 0;
    }
    return false;
}

Query without(Query query, Filter filter) {
    switch (filter) {
        case Filter::Words:
            query.words.clear();
            break;
        case Filter::Photos:
            query.photos.reset();
            break;
        case Filter::Prints:
            query.prints.clear();
            break;
        case Filter::PageSizes:
            query.pageSizes.clear();
            break;
        case Filter::DoublePage:
            query.doublePage.reset();
            break;
        case Filter::PhotoWay:
            query.photoWay.reset();
            break;
        case Filter::RoomForTitle:
            query.roomForTitle = false;
            break;
        case Filter::RoomForJournaling:
            query.roomForJournaling = false;
            break;
        case Filter::Favourites:
            query.favourites = false;
            break;
        case Filter::Tags:
            query.tags.clear();
            break;
        case Filter::Folder:
            query.folder.clear();
            break;
        case Filter::Family:
            query.family = 0;
            break;
    }
    return query;
}

std::vector<SearchCondition> searchConditions(const Inside& inside, const Query& query) {
    std::vector<SearchCondition> conditions;
    for (const Filter filter : allFilters) {
        if (uses(query, filter)) {
            conditions.push_back({filter, passingOf(inside, query, filter)});
        }
    }
    return conditions;
}

Bits passingAll(const Inside& inside, const std::vector<SearchCondition>& conditions) {
    Bits passing = Bits::all(inside.size());
    for (const SearchCondition& condition : conditions) {
        passing &= condition.passing;
    }
    return passing;
}

Bits passingAllBut(const Inside& inside, const std::vector<SearchCondition>& conditions,
                   Filter except) {
    Bits passing = Bits::all(inside.size());
    for (const SearchCondition& condition : conditions) {
        if (condition.filter != except) {
            passing &= condition.passing;
        }
    }
    return passing;
}

}  // namespace matwright
