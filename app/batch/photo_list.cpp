// SPDX-License-Identifier: MIT
#include "app/batch/photo_list.h"

#include <fmt/format.h>

#include <ostream>

#include "app/batch/json_values.h"
#include "app/batch/table.h"
#include "core/library/printable.h"
#include "core/photo/photo_source.h"
#include "core/photo/photo_words.h"

namespace matwright::app {

namespace {

struct ListedPhoto {
    std::filesystem::path file;
    PhotoFacts facts;
};

Json asJson(const ListedPhoto& photo) {
    const PhotoFacts& facts = photo.facts;
    Json json{{"file", printablePath(photo.file.native())},
              {"format", facts.format},
              {"width", facts.upright.width},
              {"height", facts.upright.height},
              {"bytes", facts.bytes},
              {"taken", facts.taken},
              {"rating", nullptr},
              {"profile", facts.profile},
              {"largestPrint", nullptr},
              {"remarks", facts.remarks}};
    if (facts.rating) {
        json["rating"] = *facts.rating;
    }
    if (const auto print = largestPrint(facts.upright, wishedPpi)) {
        json["largestPrint"] = app::json(*print);
    }
    return json;
}

Table::Row asRow(const ListedPhoto& photo) {
    const PhotoFacts& facts = photo.facts;
    std::string remarks;
    for (const std::string& remark : facts.remarks) {
        remarks += (remarks.empty() ? "" : " ") + remark;
    }
    return {printablePath(photo.file.native()),
            fmt::format("{} × {}", facts.upright.width, facts.upright.height),
            facts.taken,
            facts.rating ? std::to_string(*facts.rating) : "",
            facts.profile,
            largestPrintText(facts.upright),
            remarks};
}

}  // namespace

int runPhotos(const PhotosCommand& command, BatchPorts& ports) {
    std::vector<ListedPhoto> photos;
    int code = Done;
    for (const std::filesystem::path& file : command.inputs) {
        Result<PhotoFacts> facts = photoFacts(file);
        if (facts) {
            photos.push_back({file, *std::move(facts)});
        } else {
            code = fail(ports, InputRefused, facts.error());
        }
    }
    if (command.json) {
        Json all = Json::array();
        for (const ListedPhoto& photo : photos) {
            all.push_back(asJson(photo));
        }
        ports.out << textOf(all) << '\n';
        return code;
    }
    Table table({"Photo", "Pixels", "Taken", "Rating", "Profile", "Largest print", "Remarks"}, {1});
    for (const ListedPhoto& photo : photos) {
        table.addRow(asRow(photo));
    }
    if (!photos.empty()) {
        ports.out << table.text();
    }
    return code;
}

}  // namespace matwright::app
