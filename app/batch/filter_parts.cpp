// SPDX-License-Identifier: MIT
#include "app/batch/filter_parts.h"

#include <algorithm>

#include "app/batch/filter_options.h"
#include "app/batch/typed_size.h"

namespace matwright::app {

void addOrder(CLI::App* command, Query& query) {
    std::vector<std::string> words;
    for (const OrderWord& known : orderWords) {
        words.emplace_back(known.word);
    }
    command
        ->add_option_function<std::string>(
            "--order",
            [&query](const std::string& word) {
                query.order = std::ranges::find(orderWords, word, &OrderWord::word)->order;
            },
            "name, last-used, most-used or newest")
        ->check(CLI::IsMember(words))
        ->type_name("ORDER")
        ->default_str("name");
}

void addFolder(CLI::App* command, Query& query) {
    command
        ->add_option_function<std::string>(
            "--in",
            [&query](const std::string& folder) {
                query.folder = folder.substr(0, folder.find_last_not_of('/') + 1);
            },
            "Only this sub-folder and those below it")
        ->type_name("SUBFOLDER");
}

namespace {

template <typename Parse>
void addSizes(CLI::App* command, const std::string& name, std::vector<Size>& sizes, Parse parse,
              const std::string& what) {
    command
        ->add_option_function<std::vector<std::string>>(
            name,
            [&sizes, name, parse](const std::vector<std::string>& texts) {
                for (const std::string& text : texts) {
                    const Result<Size> size = parse(text);
                    if (!size) {
                        throw CLI::ValidationError(name, size.error().sentence);
                    }
                    sizes.push_back(*size);
                }
            },
            what)
        ->allow_extra_args(false)
        ->type_name("SIZE");
}

void addPhotoCount(CLI::App* command, Query& query) {
    const auto option = [&](const char* name, bool orFewer, const char* what) {
        return command
            ->add_option_function<int>(
                name,
                [&query, orFewer](const int& count) {
                    query.photos = PhotoCountFilter{count, orFewer};
                },
                what)
            ->check(CLI::Range(0, 100))
            ->type_name("N");
    };
    CLI::Option* exactly = option("--photos", false, "Exactly so many photos; 100 is 100 or more");
    option("--photos-at-most", true, "So many photos or fewer")->excludes(exactly);
}

void addOneOf(CLI::App* command,
              const std::vector<std::tuple<std::string, std::function<void()>, std::string>>& all) {
    std::vector<CLI::Option*> added;
    for (const auto& [name, choose, what] : all) {
        CLI::Option* option = command->add_flag_callback(name, choose, what);
        for (CLI::Option* other : added) {
            option->excludes(other);
        }
        added.push_back(option);
    }
}

void addPhotoWays(CLI::App* command, Query& query) {
    const auto way = [&](PhotoWay chosen) { return [&query, chosen] { query.photoWay = chosen; }; };
    const auto name = [](PhotoWay chosen) { return std::string(optionOf(chosen)); };
    addOneOf(command, {{name(PhotoWay::SomeUpright), way(PhotoWay::SomeUpright),
                        "At least one photo is taller than wide"},
                       {name(PhotoWay::SomeLying), way(PhotoWay::SomeLying),
                        "At least one photo is wider than tall"},
                       {name(PhotoWay::OnlyUpright), way(PhotoWay::OnlyUpright),
                        "Upright photos, and none that lies"},
                       {name(PhotoWay::OnlyLying), way(PhotoWay::OnlyLying),
                        "Lying photos, and none that is upright"}});
}

}  // namespace

void addFilters(CLI::App* command, SelectionCommand& to) {
    Query& query = to.query;
    command->add_flag_callback(
        "--whole-words", [&query] { query.wordMatch = WordMatch::Whole; },
        R"("sea" does not find "overseas")");
    addPhotoCount(command, query);
    addSizes(command, "--print", query.prints, parsePrintSize,
             "Uses prints of this size; may be repeated, then uses them all");
    addSizes(command, "--page", query.pageSizes, parsePageSize,
             "On pages of this size; may be repeated, then any of them");
    addOneOf(command, {{"--single-page", [&query] { query.doublePage = false; }, "Single pages"},
                       {"--double-page", [&query] { query.doublePage = true; }, "Double pages"}});
    addPhotoWays(command, query);
    command->add_flag("--room-for-title", query.roomForTitle, "Has a place for a title");
    command->add_flag("--room-for-journaling", query.roomForJournaling,
                      "Has a place for journaling");
    command->add_flag("--favourites", query.favourites, "Favourites only");
    command->add_option("--tag", query.tags, "Has this tag; may be repeated, then has them all")
        ->allow_extra_args(false)
        ->type_name("TAG");
    addFolder(command, query);
    command
        ->add_option("--family-of", to.familyOf,
                     "Like this sketch but for mirror, turn or tiny shifts")
        ->type_name("SKETCH");
}

}  // namespace matwright::app
