// SPDX-License-Identifier: MIT
#include <algorithm>
#include <utility>

#include "app/panels/window_foot.h"
#include "app/printplan/print_plan_window.h"

namespace matwright::app {

namespace {

// Whether a paper is used of which the sheets at hand are counted.
bool isCounted(const std::vector<SentSheets::Part>& parts) {
    return std::ranges::any_of(parts, [](const SentSheets::Part& part) {
        return std::ranges::any_of(part.part.sheets, [&](std::size_t index) {
            const PrintSheet& sheet = part.plan->plan.sheets[index];
            const Printer* printer = find(part.plan->input.printers, sheet.printer);
            const PrinterPaper* paper = printer ? find(*printer, sheet.paper) : nullptr;
            return paper && paper->atHand;
        });
    });
}

}  // namespace

bool PrintPlanWindow::canRecord() const {
    return m_store->store() && !isPlanning() && !isWorking() && !m_sheets.toRecord(m_ready).empty();
}

// The plan stays as it is, because its sheets are to be cut; what is planned next knows better.
void PrintPlanWindow::record() {
    if (!canRecord()) {
        return;
    }
    const std::vector<SentSheets::Part> parts = m_sheets.toRecord(m_ready);
    std::vector<PrintOnHandId> gone;
    const auto change = m_store->store()->record(printingDone(parts, m_asks.today()), &gone);
    if (!change) {
        return m_foot->say({}, QString::fromStdString(change.error().text()));
    }
    const std::vector<AheadPrint> ahead = aheadOf(parts);
    m_recorded = Recorded{change->value_or(0), m_sheets, m_madeAhead, ahead};
    m_sheets.markRecorded(parts);
    m_madeAhead.insert(m_madeAhead.end(), ahead.begin(), ahead.end());
    m_isStale = true;
    const QString news = recordedText(parts);
    const bool isOfAnother = std::ranges::any_of(
        parts, [this](const SentSheets::Part& part) { return part.plan != m_ready; });
    if (isOfAnother || !gone.empty()) {
        return replan(news, goneText(gone));
    }
    m_foot->say(news);
    showState();
}

QString PrintPlanWindow::recordedText(const std::vector<SentSheets::Part>& parts) const {
    std::size_t sheets = 0;
    for (const SentSheets::Part& part : parts) {
        sheets += part.part.sheets.size();
    }
    QString text = sheets == 0   ? tr("Recorded.")
                   : sheets == 1 ? tr("1 sheet is recorded as printed.")
                                 : tr("%1 sheets are recorded as printed.").arg(sheets);
    if (isCounted(parts)) {
        text += tr(" The papers at hand are counted down.");
    }
    if (const auto ahead = aheadOf(parts).size(); ahead > 0) {
        text += ahead == 1 ? tr(" 1 print is on hand now.")
                           : tr(" %1 prints are on hand now.").arg(ahead);
    }
    const auto rest = m_ready ? m_sheets.left(m_ready) : 0;
    if (rest > 0) {
        text += rest == 1 ? tr(" 1 sheet of this plan is not.")
                          : tr(" %1 sheets of this plan are not.").arg(rest);
    }
    return text;
}

QString PrintPlanWindow::goneText(const std::vector<PrintOnHandId>& gone) const {
    QStringList names;
    for (const PrintOnHand& print : m_store->known().onHand) {
        if (std::ranges::find(gone, print.id) != gone.end()) {
            names << QString::fromStdString(print.photoName);
        }
    }
    return gone.empty() ? QString()
                        : tr("These prints were to be taken from the prints on hand, and are gone "
                             "meanwhile: %1. They are planned to be printed now.")
                              .arg(names.join(QStringLiteral(", ")));
}

void PrintPlanWindow::undoRecord() {
    PrintingStore* store = m_store->store();
    if (!store || !m_recorded || isPlanning() || isWorking()) {
        return;
    }
    const auto undone = store->undo(m_recorded->change);
    if (!undone) {
        if (undone.error().code == ErrorCode::NotFound) {
            m_recorded.reset();
        }
        m_foot->say({}, QString::fromStdString(undone.error().text()));
        return showState();
    }
    Recorded recorded = *std::exchange(m_recorded, std::nullopt);
    m_sheets = std::move(recorded.sheets);
    m_madeAhead = std::move(recorded.madeAhead);
    for (AheadPrint& print : recorded.ahead) {
        if (std::ranges::find(m_draft.ahead, print) == m_draft.ahead.end()) {
            m_draft.ahead.push_back(std::move(print));
        }
    }
    m_isStale = true;
    replan(tr("Taken back; these sheets count as not printed."));
}

bool PrintPlanWindow::askBeforeClosing() {
    const auto waiting = m_sheets.waiting();
    if (!canRecord()) {
        return true;
    }
    if (waiting == 0) {
        const bool isPlain = m_draft.pages.size() == 1 && m_draft.wishes.empty() &&
                             m_draft.ahead.empty() && !m_hasSaved;
        return isPlain || m_asks.confirm(this,
                                         tr("Close this plan? It is not kept: what you added to it "
                                            "is gone then, and “They are printed” can be pressed "
                                            "only before."),
                                         tr("Close it"));
    }
    const QString what =
        waiting == 1
            ? tr("1 sheet was sent to a printer and is not recorded as printed.")
            : tr("%1 sheets were sent to a printer and are not recorded as printed.").arg(waiting);
    if (m_asks.confirm(this,
                       what + tr(" If all is well on paper, press “They are printed”, so that the "
                                 "next plan does not print them again. “Cancel” closes without "
                                 "that."),
                       tr("They are printed"))) {
        record();
        return m_sheets.waiting() == 0;
    }
    return true;
}

}  // namespace matwright::app
