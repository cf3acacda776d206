// SPDX-License-Identifier: MIT
#include "app/batch/printing_place.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cctype>
#include <ctime>

#include "app/batch/typed_size.h"

namespace matwright::app {

namespace {

bool isSameName(const std::string& a, const std::string& b) {
    return std::ranges::equal(a, b, [](char x, char y) {
        return std::tolower(static_cast<unsigned char>(x)) ==
               std::tolower(static_cast<unsigned char>(y));
    });
}

template <typename Named>
std::string namesOf(const std::vector<Named>& all) {
    std::vector<std::string> names;
    names.reserve(all.size());
    for (const Named& one : all) {
        names.push_back('"' + one.name + '"');
    }
    return names.empty() ? "none" : fmt::format("{}", fmt::join(names, ", "));
}

}  // namespace

std::expected<PrintingStore, int> openPrinting(const std::filesystem::path& store,
                                               BatchPorts& ports) {
    if (store.empty() && ports.dataFolder.empty()) {
        return std::unexpected(
            fail(ports, InputRefused,
                 {ErrorCode::NotFound,
                  "There is no home folder to keep printers and prints in. Name a file with "
                  "--store.",
                  ""}));
    }
    Result<PrintingStore> opened =
        PrintingStore::open(store.empty() ? ports.dataFolder / printingStoreName : store);
    if (!opened) {
        return std::unexpected(fail(ports, InputRefused, opened.error()));
    }
    return *std::move(opened);
}

Result<Printer> printerNamed(const std::vector<Printer>& printers, const std::string& name) {
    std::vector<Printer> exact;
    std::vector<Printer> alike;
    for (const Printer& printer : printers) {
        if (printer.name == name) {
            exact.push_back(printer);
        } else if (isSameName(printer.name, name)) {
            alike.push_back(printer);
        }
    }
    const std::vector<Printer>& found = exact.empty() ? alike : exact;
    if (found.size() == 1) {
        return found.front();
    }
    if (found.empty()) {
        return std::unexpected(
            Error{ErrorCode::NotFound,
                  fmt::format("There is no printer of this name. There is: {}.", namesOf(printers)),
                  name});
    }
    return std::unexpected(
        Error{ErrorCode::BadText,
              exact.empty() ? fmt::format("Several printers are called so; write one of {} exactly "
                                          "as it is.",
                                          namesOf(found))
                            : "Several printers have this name. Give them different names in the "
                              "program first.",
              name});
}

Result<PrinterPaper> paperNamed(const Printer& printer, const std::string& name) {
    std::vector<PrinterPaper> found;
    const Result<Size> size = parsePaperSize(name);
    for (const PrinterPaper& paper : printer.papers) {
        if (isSameName(paper.name, name)) {
            return paper;
        }
        if (size && (paper.size == *size || paper.size == size->turned())) {
            found.push_back(paper);
        }
    }
    if (found.size() == 1) {
        return found.front();
    }
    return std::unexpected(
        Error{ErrorCode::NotFound,
              fmt::format("{} {}. Its papers: {}.", printer.name,
                          found.empty() ? "has no paper of this name or size"
                                        : "has several papers of this size; use a name",
                          namesOf(printer.papers)),
              name});
}

std::string today() {
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    localtime_r(&now, &local);
    char text[16] = {};
    const std::size_t length = std::strftime(text, sizeof text, "%Y-%m-%d", &local);
    return {text, length};
}

}  // namespace matwright::app
