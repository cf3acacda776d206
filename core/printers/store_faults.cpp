// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "core/printers/printing_store.h"
#include "core/printers/store_tables.h"

namespace matwright {

namespace {

struct Rule {
    const char* count;  // how many rows break it
    const char* sentence;
};

constexpr Rule rules[] = {
    {"SELECT count(*) FROM print WHERE state = 1 AND page = ''",
     "{} prints are used, but by no page."},
    {"SELECT count(*) FROM print WHERE state <> 1 AND page <> ''",
     "{} prints have a page, but are not used."},
    {"SELECT count(*) FROM print WHERE length(content) <> 16", "{} prints have no photo."},
    {"SELECT count(*) FROM paper WHERE at_hand < 0", "{} papers are fewer than none at hand."},
    {"SELECT count(*) FROM change_print WHERE print NOT IN (SELECT id FROM print)",
     "{} changes name prints that are not there."},
    {"SELECT count(*) FROM change WHERE once IS NOT NULL AND once NOT IN (SELECT once FROM done)",
     "{} changes were done once, but are not known to be."},
    {"SELECT count(*) FROM pragma_foreign_key_check", "{} rows name what is not there."},
    {"SELECT count(*) FROM pragma_integrity_check WHERE integrity_check <> 'ok'",
     "The file is damaged in {} places."},
};

}  // namespace

std::vector<std::string> PrintingStore::faults() {
    std::vector<std::string> faults;
    for (const Rule& rule : rules) {
        const std::int64_t count = m_database.number(rule.count, -1);
        if (count != 0) {
            faults.push_back(fmt::format(fmt::runtime(rule.sentence), count));
        }
    }
    const Result<std::vector<PrintOnHand>> all = prints();
    if (!all) {
        faults.push_back(all.error().text());
        return faults;
    }
    for (const PrintOnHand& print : *all) {
        SqliteStatement row = m_database.statement("SELECT content FROM print WHERE id = ?");
        if (!row.number(1, print.id.value).next() || row.blobAt(0) != rawBytes(print.look.photo)) {
            faults.push_back(fmt::format("Print {} is of another photo.", print.id.value));
        }
    }
    if (const auto readable = printers(); !readable) {
        faults.push_back(readable.error().text());
    }
    return faults;
}

}  // namespace matwright
