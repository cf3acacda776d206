// SPDX-License-Identifier: MIT
#include "core/printers/printing_store.h"

#include <gtest/gtest.h>

#include <fstream>

#include "tests/support/temporary_folder.h"

namespace matwright {

namespace {

class PrinterListTest : public testing::Test {
  protected:
    PrintingStore open(Unit unit = Unit::Inch) {
        auto store = PrintingStore::open(m_file, unit);
        EXPECT_TRUE(store) << store.error().text();
        return *std::move(store);
    }

    test::TemporaryFolder m_folder;
    std::filesystem::path m_file = m_folder.path() / "data" / printingStoreName;
};

TEST_F(PrinterListTest, BeginsWithTheStartingPrintersOnce) {
    {
        PrintingStore store = open();
        const auto printers = store.printers();
        ASSERT_TRUE(printers);
        ASSERT_EQ(printers->size(), 3U);
        EXPECT_NE(printers->front().id, PrinterId{});
        EXPECT_NE(printers->front().papers.front().id, PrinterPaperId{});
        for (const Printer& printer : *printers) {
            ASSERT_TRUE(store.remove(printer.id));
        }
    }
    // Somebody who took all of them out is not given them again.
    EXPECT_TRUE(open().printers()->empty());
}

TEST_F(PrinterListTest, KeepsEverythingOfAPrinter) {
    Printer printer = startingPrinters(Unit::Inch).front();
    printer.name = "The one in the study";
    printer.queue = "study";
    printer.papers[0].atHand = 20;
    printer.papers[0].price = 37;
    printer.papers[1].borderless = false;
    printer.papers[1].margin = {Length::millimetres(3), Length::millimetres(4),
                                Length::millimetres(5), Length::millimetres(6)};
    printer.papers[1].withBorders =
        *correctionOf({Length::inches(3), Length::inches(5)},
                      {Length::inches(3, 1, 32), Length::inches(5)}, "2026-07-14");
    Printer kept;
    {
        PrintingStore store = open();
        const auto added = store.add(printer);
        ASSERT_TRUE(added) << added.error().text();
        kept = *added;
    }
    const auto printers = open().printers();
    ASSERT_EQ(printers->size(), 4U);
    EXPECT_EQ(printers->back(), kept);
    printer.id = kept.id;
    printer.papers[0].id = kept.papers[0].id;
    printer.papers[1].id = kept.papers[1].id;
    EXPECT_EQ(kept, printer);
}

TEST_F(PrinterListTest, AChangeKeepsIdsAndTakesPapersOutAndIn) {
    PrintingStore store = open();
    const Printer before = store.printers()->front();
    Printer after = before;
    after.papers.erase(after.papers.begin());
    after.papers.push_back(startingPrinters(Unit::Inch)[2].papers[2]);
    std::swap(after.papers.front(), after.papers.back());
    const auto changed = store.change(before, after);
    ASSERT_TRUE(changed) << changed.error().text();
    EXPECT_EQ(changed->papers[1].id, before.papers[1].id);
    EXPECT_NE(changed->papers[0].id, PrinterPaperId{});
    EXPECT_EQ(store.printers()->front(), *changed);
    EXPECT_TRUE(store.faults().empty());
}

TEST_F(PrinterListTest, AChangeOfWhatWasChangedMeanwhileIsRefused) {
    PrintingStore one = open();
    PrintingStore other = open();
    const Printer before = one.printers()->front();
    Printer first = before;
    first.name = "Renamed";
    ASSERT_TRUE(one.change(before, first));
    Printer second = before;
    second.papers[0].price = 1;
    const auto refused = other.change(before, second);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::BadEdit);
    EXPECT_EQ(one.printers()->front(), first);
}

TEST_F(PrinterListTest, NothingUnsoundIsKept) {
    PrintingStore store = open();
    const Printer before = store.printers()->front();
    Printer after = before;
    after.papers[0].price = -1;
    EXPECT_FALSE(store.change(before, after));
    EXPECT_FALSE(store.add(after));
    EXPECT_EQ(store.printers()->front(), before);
    after = before;
    after.papers[0].id = {12345};
    EXPECT_FALSE(store.change(before, after));
    // Two papers that claim one entry would overwrite each other.
    after = before;
    after.papers[0].id = after.papers[1].id;
    EXPECT_EQ(store.change(before, after).error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(store.printers()->front(), before);
    after = before;
    after.papers.push_back(after.papers[0]);
    after.papers.back().name = "Another name";
    EXPECT_FALSE(store.change(before, after));
    after.name = "Another printer";
    EXPECT_TRUE(store.add(after));
    EXPECT_EQ(store.remove({12345}).error().code, ErrorCode::NotFound);
    EXPECT_EQ(store.keep({12345}, true, std::nullopt).error().code, ErrorCode::NotFound);
}

TEST_F(PrinterListTest, KeepsACorrectionForEachWayOfPrinting) {
    const Correction correction =
        *correctionOf({Length::inches(3), Length::inches(5)},
                      {Length::inches(3, 1, 16), Length::inches(5)}, "2026-07-14");
    {
        PrintingStore store = open();
        const PrinterPaper paper = store.printers()->front().papers.front();
        ASSERT_TRUE(store.keep(paper.id, true, correction));
    }
    PrintingStore store = open();
    PrinterPaper paper = store.printers()->front().papers.front();
    EXPECT_EQ(paper.correction(), correction);
    EXPECT_EQ(paper.withBorders, std::nullopt);
    ASSERT_TRUE(store.keep(paper.id, true, std::nullopt));
    EXPECT_EQ(store.printers()->front().papers.front().correction(), std::nullopt);
}

TEST_F(PrinterListTest, HasNoTwoPrintersOfOneName) {
    PrintingStore store = open();
    const auto printers = *store.printers();
    EXPECT_EQ(store.add(printers[0]).error().code, ErrorCode::BadText);
    Printer after = printers[1];
    after.name = printers[0].name;
    const auto refused = store.change(printers[1], after);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::BadText);
    EXPECT_EQ(refused.error().where, printers[0].name);
    EXPECT_EQ(*store.printers(), printers);
    // Its own name is no other's.
    after = printers[0];
    after.queue = "Attic";
    EXPECT_TRUE(store.change(printers[0], after));
}

TEST_F(PrinterListTest, HasABoundForItsLength) {
    PrintingStore store = open();
    Printer printer = startingPrinters(Unit::Inch).front();
    for (std::size_t i = store.printers()->size(); i < maxPrinters; ++i) {
        printer.name = std::to_string(i);
        ASSERT_TRUE(store.add(printer));
    }
    const auto refused = store.add(printer);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::OutOfRange);
}

TEST_F(PrinterListTest, IsNotMadeOverADamagedFile) {
    std::filesystem::create_directories(m_file.parent_path());
    std::ofstream(m_file) << "this is no database, but a letter to somebody";
    const auto refused = PrintingStore::open(m_file);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::WrongFormat);
    EXPECT_EQ(std::filesystem::file_size(m_file), 45U);
}

}  // namespace

}  // namespace matwright
