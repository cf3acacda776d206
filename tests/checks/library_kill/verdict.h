// SPDX-License-Identifier: MIT
#pragma once

#include "tests/checks/library_kill/place.h"

namespace matwright::check {

// What the disk looks like in the end.
struct Verdict {
    int told = 0;         // versions somebody was told are saved, outsiders' writes among them
    int keptBoth = 0;     // saves that went beside
    int present = 0;      // of the told ones, those that lie in the library or the trash
    int superseded = 0;   // saved over by a version that was made from it
    int overwritten = 0;  // written over by an outsider, who knows nothing of us
    std::vector<int> lost;
    std::vector<std::string> halfWritten;
    int tags = 0;  // somebody was told are kept
    std::vector<int> lostTags;
    std::vector<std::string> brokenLabels;
    std::vector<std::string> wrongInIndex;
    std::vector<std::string> withoutWayBack;  // in the trash
    std::vector<std::string> refused;
    int rescued = 0;  // hidden leftovers that were made visible
    int sketches = 0;
    int inTrash = 0;

    bool isGood() const {
        return lost.empty() && halfWritten.empty() && lostTags.empty() && brokenLabels.empty() &&
               wrongInIndex.empty() && withoutWayBack.empty() && refused.empty();
    }
};

Verdict judge(const Place& place);

}  // namespace matwright::check
