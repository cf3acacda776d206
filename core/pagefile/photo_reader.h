// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "core/making/making.h"
#include "core/pagefile/page_file.h"
#include "core/sketchfile/model_element.h"

namespace matwright {

// The parts of a page's model beside its sketch, into `page`, whose sketch has been read. Faults go
// to the element's reading; then the page is of no use. `folder` as in readPage().
void readPhotos(ModelElement& photos, const std::string& folder, LoadedPage& page);
void readFocal(ModelElement& focal, LoadedPage& page);
void readPlacements(ModelElement& placements, LoadedPage& page);
void readPapers(ModelElement& papers, const std::string& folder, LoadedPage& page);

}  // namespace matwright
