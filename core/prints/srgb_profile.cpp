// SPDX-License-Identifier: MIT
#include "core/prints/srgb_profile.h"

#include "core/photo/photo_source.h"
#include "core/prints/vips_seam.h"

namespace matwright {

Result<std::string> srgbProfile() {
    preparePhotoReading();
    return guarded(ErrorCode::WriteFailed, "The colour profile of sRGB is missing", "", [] {
        VipsBlob* profile = nullptr;
        if (vips_profile_load("srgb", &profile, nullptr) != 0) {
            throw vips::VError();
        }
        std::size_t size = 0;
        const auto* bytes = static_cast<const char*>(vips_blob_get(profile, &size));
        std::string text(bytes, size);
        vips_area_unref(VIPS_AREA(profile));
        return text;
    });
}

}  // namespace matwright
