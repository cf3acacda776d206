// SPDX-License-Identifier: MIT
#include "core/photo/photo_profile.h"

#include <lcms2.h>

#include <algorithm>
#include <array>
#include <memory>
#include <string_view>

namespace matwright {

namespace {

struct Closing {
    void operator()(void* profile) const { cmsCloseProfile(profile); }
};
using Profile = std::unique_ptr<void, Closing>;

struct ContextClosing {
    void operator()(cmsContext context) const { cmsDeleteContext(context); }
};
// A context of its own says nothing on stderr and shares no state with other threads.
using Context = std::unique_ptr<std::remove_pointer_t<cmsContext>, ContextClosing>;

constexpr std::size_t longestName = 80;

std::string nameOf(cmsHPROFILE profile) {
    std::array<char, 256> text{};
    cmsGetProfileInfoASCII(profile, cmsInfoDescription, "en", "US", text.data(), text.size() - 1);
    std::string name;
    for (const char c : std::string_view(text.data())) {
        if (c >= ' ' && c <= '~' && name.size() < longestName) {
            name += c;
        }
    }
    name.erase(
        std::ranges::find_if(name.rbegin(), name.rend(), [](char c) { return c != ' '; }).base(),
        name.end());
    return name.empty() ? "a profile without a name" : name;
}

// The sure test: whether Little CMS makes a way from it to sRGB.
bool leadsToSrgb(cmsContext context, cmsHPROFILE profile, int colours) {
    const cmsColorSpaceSignature space = cmsGetColorSpace(profile);
    const bool suits = (colours == 1 && space == cmsSigGrayData) ||
                       (colours == 3 && space == cmsSigRgbData) ||
                       (colours == 4 && space == cmsSigCmykData);
    if (!suits) {
        return false;
    }
    const auto channels = static_cast<cmsUInt32Number>(colours);
    const Profile srgb(cmsCreate_sRGBProfileTHR(context));
    cmsHTRANSFORM way =
        cmsCreateTransformTHR(context, profile, CHANNELS_SH(channels) | BYTES_SH(1), srgb.get(),
                              TYPE_RGB_8, INTENT_RELATIVE_COLORIMETRIC, 0);
    if (!way) {
        return false;
    }
    cmsDeleteTransform(way);
    return true;
}

}  // namespace

ProfileFacts profileFacts(std::span<const std::byte> bytes, int colours) {
    const Context context(cmsCreateContext(nullptr, nullptr));
    const Profile profile(cmsOpenProfileFromMemTHR(context.get(), bytes.data(),
                                                   static_cast<cmsUInt32Number>(bytes.size())));
    if (!profile) {
        return {"", false};
    }
    return {nameOf(profile.get()), leadsToSrgb(context.get(), profile.get(), colours)};
}

}  // namespace matwright
