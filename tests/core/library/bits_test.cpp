// SPDX-License-Identifier: MIT
#include "core/library/bits.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/support/random_sketch.h"

namespace matwright {
namespace {

Bits bitsOf(std::size_t size, const std::set<std::size_t>& members) {
    Bits bits(size);
    for (const std::size_t member : members) {
        bits.set(member);
    }
    return bits;
}

std::set<std::size_t> membersOf(const Bits& bits) {
    std::set<std::size_t> members;
    bits.forEach([&](std::size_t i) { members.insert(i); });
    return members;
}

TEST(Bits, OfEverySizeAllAreAsManyAsTheSizeSays) {
    for (const std::size_t size : {0U, 1U, 63U, 64U, 65U, 128U, 1000U}) {
        EXPECT_EQ(Bits::all(size).count(), size);
        EXPECT_EQ(membersOf(Bits::all(size)).size(), size);
        EXPECT_EQ(Bits(size).count(), 0U);
        EXPECT_FALSE(Bits(size).any());
        EXPECT_EQ(Bits::all(size).any(), size > 0);
    }
}

TEST(Bits, BehaveAsSetsOfNumbers) {
    constexpr std::uint64_t seed = 31;
    test::Random random(seed);
    for (int run = 0; run < 200; ++run) {
        const std::size_t size = 1 + test::below(random, 300);
        std::set<std::size_t> a, b, both, either;
        for (std::size_t i = 0; i < size; ++i) {
            const auto kind = test::below(random, 4);
            if ((kind & 1) != 0) {
                a.insert(i);
            }
            if ((kind & 2) != 0) {
                b.insert(i);
            }
            if (kind == 3) {
                both.insert(i);
            }
            if (kind != 0) {
                either.insert(i);
            }
        }
        Bits common = bitsOf(size, a);
        common &= bitsOf(size, b);
        Bits united = bitsOf(size, a);
        united |= bitsOf(size, b);
        EXPECT_EQ(membersOf(common), both) << "seed " << seed << " run " << run;
        EXPECT_EQ(membersOf(united), either) << "seed " << seed << " run " << run;
        EXPECT_EQ(countCommon(bitsOf(size, a), bitsOf(size, b)), both.size());
        for (std::size_t i = 0; i < size; ++i) {
            EXPECT_EQ(united.has(i), either.contains(i));
        }
    }
}

}  // namespace
}  // namespace matwright
