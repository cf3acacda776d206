// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>

#include "core/printplan/sheet_files.h"
#include "core/printplan/sheet_marks.h"
#include "core/prints/pixel_places.h"
#include "core/prints/rendering.h"

namespace matwright {

namespace {

// To whole pixels, so that what touches on paper touches in pixels.
Length onPixel(Length edge, int ppi) {
    return Length::inches(1).scaledRounded(pixelAt(edge, ppi), ppi);
}

Rect onPixels(const Rect& rect, int ppi) {
    return {{onPixel(rect.left(), ppi), onPixel(rect.right(), ppi)},
            {onPixel(rect.top(), ppi), onPixel(rect.bottom(), ppi)}};
}

// A rectangle of a print that lies turned to the right on a place, and back again.
Rect onSheet(const Rect& inPrint, const Rect& place, bool turned) {
    if (!turned) {
        return inPrint.moved(place.topLeft());
    }
    return {{place.right() - inPrint.bottom(), place.right() - inPrint.top()},
            {place.top() + inPrint.left(), place.top() + inPrint.right()}};
}

Rect inPrint(const Rect& onSheet, const Rect& place, bool turned) {
    if (!turned) {
        return onSheet.moved({-place.left(), -place.top()});
    }
    return {{onSheet.top() - place.top(), onSheet.bottom() - place.top()},
            {place.right() - onSheet.right(), place.right() - onSheet.left()}};
}

// The sheet as the printer is to get it.
struct SentSheet {
    Gang gang;
    std::vector<Print> prints;
    std::vector<const Photo*> photos;
    std::vector<PixelRect> places;  // of the prints, without what goes on beyond the paper's edge
    Length bleed;
};

class Sending {
  public:
    Sending(const PrintPlan& plan, const PrintSheet& sheet,
            const std::optional<Correction>& correction, int ppi)
        : m_plan(plan), m_sheet(sheet), m_correction(correction), m_ppi(ppi) {}

    SentSheet run() {
        m_sent.gang.sheet = m_sheet.size;
        for (const Gang::Place& place : m_sheet.gang.places) {
            add(place);
        }
        return std::move(m_sent);
    }

  private:
    Rect sent(const Rect& rect) const {
        return m_correction ? corrected(rect, m_sheet.size, *m_correction) : rect;
    }

    // An edge at the paper's edge that would be sent inside of it goes on to the edge.
    Rect extended(Rect to, const Rect& area) {
        const auto extend = [this](Interval& side, const Interval& was, Length end) {
            if (was.low.isZero() && side.low.isPositive()) {
                m_sent.bleed = std::max(m_sent.bleed, side.low);
                side.low = {};
            }
            if (was.high == end && side.high < end) {
                m_sent.bleed = std::max(m_sent.bleed, end - side.high);
                side.high = end;
            }
        };
        extend(to.x, area.x, m_sheet.size.width);
        extend(to.y, area.y, m_sheet.size.height);
        return to;
    }

    void add(const Gang::Place& place) {
        const PlannedPrint& planned = m_plan.prints.at(place.print);
        Print print = planned.print;
        const Size lying = place.turned ? print.paper.turned() : print.paper;
        const Rect area = Rect::at(place.at, lying);
        const Rect paper = onPixels(extended(sent(area), area), m_ppi);
        m_sent.places.push_back(pixelRectOf(sent(area), m_ppi));
        print.trim = inPrint(sent(onSheet(print.trim, area, place.turned)), paper, place.turned);
        print.paper = place.turned ? paper.size().turned() : paper.size();
        if (m_correction) {
            const double middle = (m_correction->across.factor() + m_correction->down.factor()) / 2;
            print.border = print.border.scaledRounded(middle);
        }
        // Photos of several pages may have one id.
        m_sent.photos.push_back(&planned.photo);
        print.photo = {static_cast<std::uint32_t>(m_sent.photos.size())};
        m_sent.gang.places.push_back({m_sent.prints.size(), paper.topLeft(), place.turned});
        m_sent.prints.push_back(std::move(print));
    }

    const PrintPlan& m_plan;
    const PrintSheet& m_sheet;
    const std::optional<Correction>& m_correction;
    int m_ppi;
    SentSheet m_sent;
};

const PrinterPaper* paperFor(const PrintSheet& sheet, const std::vector<Printer>& printers) {
    const Printer* printer = find(printers, sheet.printer);
    return printer != nullptr ? find(*printer, sheet.paper) : nullptr;
}

bool isWithinReach(const PrintPlan& plan, const PrintSheet& sheet, const PrinterPaper& paper) {
    const SheetMargin reach = paper.reach();
    const Rect reached{{reach.left, sheet.size.width - reach.right},
                       {reach.top, sheet.size.height - reach.bottom}};
    return std::ranges::all_of(sheet.gang.places, [&](const Gang::Place& place) {
        const Size size = plan.prints.at(place.print).print.paper;
        return reached.contains(Rect::at(place.at, place.turned ? size.turned() : size));
    });
}

Error toPlanAnew(const char* what, const std::string& where) {
    return {ErrorCode::NotFound,
            fmt::format("{} since these sheets were planned. Plan anew, then print.", what), where};
}

}  // namespace

std::optional<Error> changedSincePlanned(const PrintPlan& plan, const PrintSheet& sheet,
                                         const std::vector<Printer>& printers) {
    const PrinterPaper* paper = paperFor(sheet, printers);
    if (paper == nullptr) {
        return toPlanAnew("A printer or paper was taken out", "");
    }
    if (paper->size != sheet.size) {
        return toPlanAnew("This paper has got another size", paper->name);
    }
    if (paper->borderless != sheet.borderless) {
        return toPlanAnew(paper->borderless ? "This paper was changed to be printed without borders"
                                            : "This paper was changed to be printed with borders",
                          paper->name);
    }
    if (!isWithinReach(plan, sheet, *paper)) {
        return toPlanAnew("This paper has got wider margins", paper->name);
    }
    return std::nullopt;
}

Result<Raster> renderSheet(const PrintPlan& plan, const PrintSheet& sheet,
                           const std::vector<Printer>& printers, const PrintOptions& options,
                           const std::stop_token& stop) {
    if (std::optional<Error> changed = changedSincePlanned(plan, sheet, printers)) {
        return std::unexpected(*std::move(changed));
    }
    const std::optional<Correction> correction = paperFor(sheet, printers)->correction();
    const SentSheet sent = Sending(plan, sheet, correction, options.ppi).run();
    PrintOptions asSent = options;
    asSent.bleed = std::max(plan.bleed, sent.bleed);
    Result<Raster> raster = renderGang(
        sent.gang, sent.prints,
        [&](PhotoId id) -> const Photo& { return *sent.photos.at(id.value - 1); }, asSent, stop);
    if (raster && options.cutMarks) {
        drawSheetMarks(*raster, sent.places, options.ppi);
    }
    return raster;
}

}  // namespace matwright
