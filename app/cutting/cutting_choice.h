// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>

#include "core/paperplan/paper_plan.h"

namespace matwright::app {

// What a person chose for cutting plans, remembered from one to the next.
struct CuttingChoice {
    int seconds = 1;                        // for the search; 1 .. mostSeconds
    Length usefulSide = Length::inches(1);  // what is narrower is waste, not a scrap
    Length glueEdge = Length::inches(0, 1, 2);
    bool mayBuy = true;  // sheets of 12 × 12 in, where there are too few on hand
    bool onA4 = false;   // the plan itself is printed on A4, not on Letter
    friend bool operator==(const CuttingChoice&, const CuttingChoice&) = default;
};
inline constexpr int mostSeconds = 60;
inline constexpr Length leastUsefulSide = Length::inches(0, 1, 4);
inline constexpr Length mostUsefulSide = Length::inches(12);
inline constexpr Length mostGlueEdge = Length::inches(4);

QByteArray bytesOf(const CuttingChoice& choice);
// The usual one where the bytes hold none that is sound.
CuttingChoice cuttingChoiceFrom(const QByteArray& bytes);

PaperPlanOptions planOptionsOf(const CuttingChoice& choice, Scale scale);

}  // namespace matwright::app
