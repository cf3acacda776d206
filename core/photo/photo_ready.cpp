// SPDX-License-Identifier: MIT
#include <algorithm>
#include <mutex>
#include <thread>
#include <vips/vips8>

#include "core/photo/photo_source.h"

namespace matwright {

namespace {

// Photos are read on several threads at once, so a few helpers for each are enough.
constexpr unsigned mostHelpers = 4;

void sayNothing(const gchar*, GLogLevelFlags, const gchar*, gpointer) {}

void allowOnlyTheFiveLoaders() {
    vips_block_untrusted_set(TRUE);
    vips_operation_block_set("VipsForeignLoad", TRUE);
    for (const char* loader : {"VipsForeignLoadJpeg", "VipsForeignLoadPng", "VipsForeignLoadTiff",
                               "VipsForeignLoadWebp", "VipsForeignLoadHeif"}) {
        vips_operation_block_set(loader, FALSE);
    }
}

void prepare() {
    // What is wrong with a photo is told as an Error, not on stderr.
    g_log_set_handler("VIPS", static_cast<GLogLevelFlags>(G_LOG_LEVEL_MASK | G_LOG_FLAG_RECURSION),
                      sayNothing, nullptr);
    if (VIPS_INIT("matwright") != 0) {
        vips_error_clear();
        return;
    }
    allowOnlyTheFiveLoaders();
    // Nothing is asked for twice, and a photo may change between two questions.
    vips_cache_set_max(0);
    const unsigned half = std::max(1U, std::thread::hardware_concurrency() / 2);
    vips_concurrency_set(static_cast<int>(std::min(half, mostHelpers)));
}

}  // namespace

void preparePhotoReading() {
    static std::once_flag once;
    std::call_once(once, prepare);
}

}  // namespace matwright
