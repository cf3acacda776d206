// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include "core/papers/papers_store.h"
#include "tests/support/temporary_folder.h"

namespace matwright::test {

inline PaperOnHand kraft(int count, Size size = {Length::inches(12), Length::inches(12)}) {
    PaperOnHand paper;
    paper.name = "kraft";
    paper.size = size;
    paper.count = count;
    return paper;
}

inline PaperOnHand scrap(PaperOnHand paper, Size size) {
    paper.kind = PaperKind::Scrap;
    paper.size = size;
    paper.count = 1;
    return paper;
}

inline PaperOnHand withoutId(PaperOnHand paper) {
    paper.id = {};
    return paper;
}

class PapersStoreFixture : public testing::Test {
  protected:
    PapersStore open() {
        auto store = PapersStore::open(m_file);
        EXPECT_TRUE(store) << store.error().text();
        return std::move(*store);
    }
    static std::vector<PaperOnHand> listOf(PapersStore& store) {
        const auto papers = store.list();
        EXPECT_TRUE(papers) << papers.error().text();
        return papers.value_or(std::vector<PaperOnHand>());
    }

    TemporaryFolder m_folder;
    std::filesystem::path m_file = m_folder.path() / "papers.sqlite";
};

}  // namespace matwright::test
