// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/paperplan/paper_plan.h"

namespace matwright::test {

// What a plan of papers promises, looked at anew from the pages, the papers and the steps carried
// out; knows nothing of how it was planned. A sentence for each promise that is broken.
std::vector<std::string> brokenPlanLaws(const PaperPlan& plan, std::span<const PaperPage> pages,
                                        std::span<const PaperOnHand> onHand,
                                        const PaperPlanOptions& options);

}  // namespace matwright::test
