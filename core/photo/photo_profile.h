// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <span>
#include <string>

namespace matwright {

// What an embedded ICC profile is good for.
struct ProfileFacts {
    std::string name;       // its description; "a profile without a name" where it has none
    bool isUsable = false;  // it can be read, and takes pixels of so many colours
};

// `colours`: how many the photo's pixels have, without transparency. Any bytes may come.
ProfileFacts profileFacts(std::span<const std::byte> profile, int colours);

}  // namespace matwright
