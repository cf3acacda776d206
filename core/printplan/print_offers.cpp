// SPDX-License-Identifier: MIT
#include "core/printplan/print_offers.h"

#include <algorithm>
#include <filesystem>
#include <set>

#include "core/photo/photo_words.h"

namespace matwright {

namespace {

// A print of the whole paper, lying or upright as the photo is.
Print freshPrint(PhotoId id, const Photo& photo, Size size) {
    const bool lies = photo.upright.width > photo.upright.height;
    const Size paper = size.isUpright() == lies ? size.turned() : size;
    Print print;
    print.photo = id;
    print.name = std::filesystem::path(photo.path).stem().string();
    print.paper = paper;
    print.trim = Rect::at({}, paper);
    print.window = paper;
    print.crop = startingCrop(photo.upright, paper);
    print.tone = photo.tone;
    return print;
}

PrintOffer offerOf(std::size_t sheet, const Photo& photo, Print print, std::string why) {
    PrintOffer offer{sheet, {photo, std::move(print), std::move(why)}, 0, ""};
    offer.ppi = effectivePpi(offer.print.print.crop, photo.upright, offer.print.print.window);
    if (sharpnessAt(offer.ppi) != Sharpness::Fine) {
        offer.warning = ppiText(offer.ppi);
    }
    return offer;
}

class Offering {
  public:
    Offering(const PrintPlan& plan, const PlanInput& input, std::size_t sheet, Size size)
        : m_input(input), m_sheet(sheet), m_size(size) {
        for (const PlannedPrint& print : plan.prints) {
            m_gone.insert(print.photo.content);
        }
        for (const TakenPrint& taken : plan.taken) {
            const Making& making = input.pages[taken.page].making;
            m_gone.insert(making.work.photos.at(taken.print.photo).content);
        }
        for (const AheadPrint& ahead : input.ahead) {
            m_aheadLooks.push_back(lookOf(ahead.print, ahead.photo, input.bleed));
        }
        for (const PrintOnHand& print : input.onHand) {
            if (print.state == PrintState::OnHand) {
                m_aheadLooks.push_back(print.look);
            }
        }
    }

    std::vector<PrintOffer> run() {
        for (const auto* pages : {&m_input.pages, &m_input.waiting}) {
            for (const PlanPage& page : *pages) {
                favourites(page);
            }
        }
        for (const PlanPage& page : m_input.waiting) {
            needed(page);
        }
        for (const PlanPage& page : m_input.waiting) {
            others(page);
        }
        return std::move(m_offers);
    }

  private:
    bool isNew(const ContentKey& photo) {
        return !m_gone.contains(photo) && !m_input.printedPhotos.contains(photo) &&
               m_offered.insert(photo).second;
    }
    void favourites(const PlanPage& page) {
        for (const auto& [id, photo] : page.making.work.photos) {
            if (photo.favourite && isNew(photo.content)) {
                m_offers.push_back(favourite(id, photo));
            }
        }
    }
    // As a waiting page needs it, where one does.
    PrintOffer favourite(PhotoId id, const Photo& photo) const {
        for (const PlanPage& page : m_input.waiting) {
            for (Print& print : fittingPrints(page)) {
                const Photo& other = page.making.work.photos.at(print.photo);
                if (other.content == photo.content) {
                    return offerOf(m_sheet, other, std::move(print), "favourite, " + page.name);
                }
            }
        }
        return offerOf(m_sheet, photo, freshPrint(id, photo, m_size), "favourite");
    }
    std::vector<Print> fittingPrints(const PlanPage& page) const {
        PrintOptions options;
        options.bleed = m_input.bleed;
        std::vector<Print> prints = printsOf(page.making, options);
        std::erase_if(prints, [this](const Print& print) {
            return print.paper != m_size && print.paper.turned() != m_size;
        });
        return prints;
    }
    // What a waiting page needs is offered although its photo was printed otherwise before, but not
    // while just that print is on hand, nor where the page has it already.
    void needed(const PlanPage& page) {
        std::vector<PrintLook> there = looksUsedBy(page);
        for (Print& print : fittingPrints(page)) {
            const Photo& photo = page.making.work.photos.at(print.photo);
            const PrintLook look = lookOf(print, photo, m_input.bleed);
            if (const auto used = std::ranges::find(there, look); used != there.end()) {
                there.erase(used);  // one print is in one slot
            } else if (std::ranges::find(m_aheadLooks, look) == m_aheadLooks.end() &&
                       m_offered.insert(photo.content).second) {
                m_offers.push_back(offerOf(m_sheet, photo, std::move(print), page.name));
            }
        }
    }
    std::vector<PrintLook> looksUsedBy(const PlanPage& page) const {
        std::vector<PrintLook> looks;
        for (const PrintOnHand& print : m_input.used) {
            if (print.state == PrintState::Used && print.page == page.name) {
                looks.push_back(print.look);
            }
        }
        return looks;
    }
    void others(const PlanPage& page) {
        for (const auto& [id, photo] : page.making.work.photos) {
            if (isNew(photo.content)) {
                m_offers.push_back(
                    offerOf(m_sheet, photo, freshPrint(id, photo, m_size), page.name));
            }
        }
    }

    const PlanInput& m_input;
    std::size_t m_sheet;
    Size m_size;
    std::set<ContentKey> m_gone;
    std::set<ContentKey> m_offered;
    std::vector<PrintLook> m_aheadLooks;
    std::vector<PrintOffer> m_offers;
};

}  // namespace

std::vector<PrintOffer> offersFor(const PrintPlan& plan, const PlanInput& input,
                                  std::size_t sheet) {
    if (sheet >= plan.sheets.size() || plan.sheets[sheet].room.empty()) {
        return {};
    }
    return offersFor(plan, input, sheet, plan.sheets[sheet].room.front().size);
}

std::vector<PrintOffer> offersFor(const PrintPlan& plan, const PlanInput& input, std::size_t sheet,
                                  Size size) {
    return Offering(plan, input, sheet, size.isUpright() ? size : size.turned()).run();
}

PlanInput accepted(const PlanInput& input, const PrintOffer& offer) {
    PlanInput with = input;
    with.ahead.push_back(offer.print);
    return with;
}

}  // namespace matwright
