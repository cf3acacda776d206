// SPDX-License-Identifier: MIT
#include "tests/checks/cutting/cutting_data.h"

#include <array>
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>

#include "tests/support/check_data.h"

namespace matwright::test {

namespace {

std::vector<std::string> fieldsOf(const std::string& line) {
    std::vector<std::string> fields;
    std::istringstream in(line);
    for (std::string field; std::getline(in, field, ',');) {
        std::erase(field, '\r');
        fields.push_back(field);
    }
    return fields;
}

using Row = std::map<std::string, std::string>;

std::vector<Row> tableOf(const std::filesystem::path& file) {
    std::ifstream in(file);
    std::string line;
    std::getline(in, line);
    const auto names = fieldsOf(line);
    std::vector<Row> rows;
    while (std::getline(in, line)) {
        const auto fields = fieldsOf(line);
        Row& row = rows.emplace_back();
        for (std::size_t i = 0; i < names.size() && i < fields.size(); ++i) {
            row[names[i]] = fields[i];
        }
    }
    return rows;
}

Size sizeOf(std::int64_t w, std::int64_t h) {
    return {Length::fromTicks(w), Length::fromTicks(h)};
}

Size sizeOf(const Row& row, const char* w, const char* h) {
    return sizeOf(std::stoll(row.at(w)), std::stoll(row.at(h)));
}

// n; W H; then n lines. Without copies every piece may be cut as often as fits.
ValueInstance knapsackFile(const std::filesystem::path& file, bool withCopies) {
    std::ifstream in(file);
    ValueInstance instance;
    instance.name = file.stem().string();
    std::int64_t n = 0;
    std::int64_t w = 0;
    std::int64_t h = 0;
    in >> n >> w >> h;
    instance.sheet = sizeOf(w, h);
    for (; n > 0; --n) {
        ValueInstance::Piece piece{{}, 0, 0};
        in >> w >> h;
        if (withCopies) {
            in >> piece.copies;
        }
        in >> piece.value;
        piece.size = sizeOf(w, h);
        instance.pieces.push_back(piece);
    }
    if (!in) {
        throw std::runtime_error(file.string() + " cannot be read");
    }
    return instance;
}

// The first twelve problems of the collection.
void addNgcut(const std::filesystem::path& file, std::vector<ValueInstance>& all) {
    constexpr std::array<std::int64_t, 12> published{164, 230, 247, 268,  358,  289,
                                                     430, 834, 924, 1452, 1688, 1865};
    std::ifstream in(file);
    int problems = 0;
    in >> problems;
    for (std::size_t i = 0; i < published.size(); ++i) {
        ValueInstance instance;
        instance.name = "ngcut" + std::to_string(i + 1);
        instance.variant = "limited";
        instance.published = published[i];
        std::int64_t n = 0;
        std::int64_t w = 0;
        std::int64_t h = 0;
        in >> n >> w >> h;
        instance.sheet = sizeOf(w, h);
        for (; n > 0; --n) {
            ValueInstance::Piece piece{{}, 0, 0};
            int least = 0;
            in >> w >> h >> least >> piece.copies >> piece.value;
            piece.size = sizeOf(w, h);
            instance.pieces.push_back(piece);
        }
        all.push_back(std::move(instance));
    }
}

}  // namespace

std::optional<std::filesystem::path> cuttingData() {
    return checkData("cutting");
}

std::vector<PackingInstance> packingInstances(const std::filesystem::path& folder, bool mayTurn) {
    const std::string suffix = mayTurn ? "turnable" : "fixed";
    std::vector<PackingInstance> all;
    for (const Row& row : tableOf(folder / "binpacking" / "known_values.csv")) {
        PackingInstance instance;
        instance.name = row.at("instance");
        instance.job.sheets.push_back({sizeOf(row, "W", "H"), std::nullopt, 1, {}, 0});
        instance.job.rules.usefulSide = Length::fromTicks(1);
        const auto items = folder / "binpacking" / (instance.name + "_items.csv");
        for (const Row& item : tableOf(items)) {
            instance.job.pieces.push_back({sizeOf(item, "WIDTH", "HEIGHT"), 1, mayTurn, 0});
        }
        instance.lowerBound = std::stoi(row.at("lower_bound_" + suffix));
        instance.bestKnown = std::stoi(row.at("best_known_" + suffix));
        instance.openSolver3 = std::stoi(row.at("open_solver_5s_3stage_" + suffix));
        instance.openSolverAny = std::stoi(row.at("open_solver_5s_anystage_" + suffix));
        all.push_back(std::move(instance));
    }
    return all;
}

std::vector<ValueInstance> valueInstances(const std::filesystem::path& folder) {
    // Published optima; the papers stand in the folder's README.
    constexpr std::array<std::int64_t, 9> unlimited{56460,  60536,  61036,  61698, 246000,
                                                    238998, 242567, 246633, 971100};
    constexpr std::array<std::int64_t, 9> turnable{58136,  60611,  61626,  62265, 246000,
                                                   240951, 245866, 247787, 971100};
    constexpr std::array<std::int64_t, 9> oneCopy{48368,  59307,  60241,  60942, 195582,
                                                  236305, 238974, 245758, 919476};
    constexpr std::array<std::int64_t, 3> cgcut{244, 2892, 1860};
    const auto knapsack = folder / "knapsack";
    std::vector<ValueInstance> all;
    for (std::size_t i = 0; i < cgcut.size(); ++i) {
        all.push_back(knapsackFile(knapsack / ("cgcut" + std::to_string(i + 1) + ".txt"), true));
        all.back().variant = "limited";
        all.back().published = cgcut[i];
    }
    addNgcut(knapsack / "ngcutap.txt", all);
    for (std::size_t i = 0; i < unlimited.size(); ++i) {
        const auto plain =
            knapsackFile(knapsack / ("gcut" + std::to_string(i + 1) + ".txt"), false);
        ValueInstance instance = plain;
        instance.variant = "unlimited";
        instance.published = unlimited[i];
        all.push_back(instance);
        instance.variant = "unlimited, turnable";
        instance.mayTurn = true;
        instance.published = turnable[i];
        all.push_back(instance);
        instance = plain;
        instance.variant = "one copy";
        for (auto& piece : instance.pieces) {
            piece.copies = 1;
        }
        instance.published = oneCopy[i];
        all.push_back(instance);
    }
    return all;
}

}  // namespace matwright::test
