// SPDX-License-Identifier: MIT
#include "app/batch/page_listing.h"

#include <fmt/format.h>

#include <array>
#include <nlohmann/json.hpp>

#include "app/batch/typed_size.h"
#include "core/measure/length_text.h"

namespace matwright::app {

namespace {

using Value = nlohmann::json;

// Carries the sentence up to readListing(), the one place that gives it back as a value.
struct Refusal {
    std::string sentence;
};

[[noreturn]] void refuse(const std::string& member, const std::string& wanted) {
    throw Refusal{fmt::format("\"{}\" has to be {}.", member, wanted)};
}

std::string text(const Value& value, const std::string& member) {
    if (!value.is_string() || value.get_ref<const std::string&>().empty()) {
        refuse(member, "a text");
    }
    return value.get<std::string>();
}

bool yes(const Value& value, const std::string& member) {
    if (!value.is_boolean()) {
        refuse(member, "true or false");
    }
    return value.get<bool>();
}

double number(const Value& value, const std::string& member, double least, double most) {
    const double figure = value.is_number() ? value.get<double>() : least - 1;
    if (!(figure >= least && figure <= most)) {
        refuse(member, fmt::format("a number from {} to {}", least, most));
    }
    return figure;
}

int quarters(const Value& value) {
    for (const int turns : {0, 1, 2, 3}) {
        if (value.is_number_integer() && value.get<int>() == 90 * turns) {
            return turns;
        }
    }
    refuse("turn", "0, 90, 180 or 270");
}

std::pair<double, double> centre(const Value& value) {
    if (!value.is_array() || value.size() != 2) {
        refuse("centre", "two numbers from 0 to 1");
    }
    return {number(value[0], "centre", 0, 1), number(value[1], "centre", 0, 1)};
}

std::string slot(const Value& value) {
    return value.is_number_unsigned() ? std::to_string(value.get<unsigned>()) : text(value, "slot");
}

Length border(const Value& value) {
    const Result<Length> read = parseLength(text(value, "border"), Unit::Inch);
    if (!read || read->isNegative()) {
        refuse("border", R"(a length of 0 or more, like "1/8" or "3 mm")");
    }
    return *read;
}

Size wish(const Value& value) {
    const Result<Size> read = parsePrintSize(text(value, "wish"));
    if (!read) {
        refuse("wish", "a print size, like \"4x6\"");
    }
    return *read;
}

void readMember(ListedPlace& place, const std::string& member, const Value& value) {
    if (member == "photo") {
        place.photo = text(value, member);
    } else if (member == "slot") {
        place.slot = slot(value);
    } else if (member == "centre") {
        place.centre = centre(value);
    } else if (member == "zoom") {
        place.zoom = number(value, member, 1, double{Crop::largestZoom} / Crop::one);
    } else if (member == "straighten") {
        place.straighten = number(value, member, -45, 45);
    } else if (member == "turn") {
        place.quarterTurns = quarters(value);
    } else if (member == "border") {
        place.border = border(value);
    } else if (member == "evenOut") {
        place.evenOut = yes(value, member);
    } else if (member == "focal") {
        place.isFocal = yes(value, member);
    } else if (member == "favourite") {
        place.isFavourite = yes(value, member);
    } else if (member == "wish") {
        place.wish = wish(value);
    } else {
        throw Refusal{fmt::format("A photo of the listing has no \"{}\".", member)};
    }
}

ListedPlace placeIn(const Value& value) {
    if (!value.is_object()) {
        refuse("photos", "a list of objects with a \"photo\" each");
    }
    ListedPlace place;
    for (const auto& [member, inside] : value.items()) {
        readMember(place, member, inside);
    }
    if (place.photo.empty()) {
        refuse("photo", "there for every photo of the listing");
    }
    return place;
}

PageListing listingIn(const Value& value) {
    if (!value.is_object()) {
        throw Refusal{R"(A listing is a JSON object with "sketch" and "photos".)"};
    }
    PageListing listing;
    for (const auto& [member, inside] : value.items()) {
        if (member == "sketch") {
            listing.sketch = text(inside, member);
        } else if (member == "fill") {
            listing.fill = yes(inside, member);
        } else if (member == "photos" && inside.is_array()) {
            for (const Value& photo : inside) {
                listing.places.push_back(placeIn(photo));
            }
        } else {
            throw Refusal{fmt::format("A listing has no \"{}\" of this kind.", member)};
        }
    }
    if (listing.sketch.empty()) {
        refuse("sketch", "there: the sketch file the page begins from");
    }
    return listing;
}

}  // namespace

Result<PageListing> readListing(std::string_view bytes) {
    const Value value = Value::parse(bytes, nullptr, false);
    if (value.is_discarded()) {
        return std::unexpected(Error{ErrorCode::WrongFormat,
                                     "This is no JSON file; see \"matwright-batch page --help\" "
                                     "for what a listing looks like.",
                                     ""});
    }
    try {
        return listingIn(value);
    } catch (const Refusal& refusal) {
        return std::unexpected(Error{ErrorCode::Malformed, refusal.sentence, ""});
    }
}

}  // namespace matwright::app
