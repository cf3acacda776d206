// SPDX-License-Identifier: MIT
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace matwright {

// A set of numbers 0 .. size - 1, one bit each. Sets that meet in an operation have the same size.
class Bits {
  public:
    Bits() = default;
    explicit Bits(std::size_t size) : m_words((size + wordBits - 1) / wordBits) {}
    static Bits all(std::size_t size);

    void set(std::size_t i) { m_words[i / wordBits] |= std::uint64_t{1} << (i % wordBits); }
    bool has(std::size_t i) const { return (m_words[i / wordBits] >> (i % wordBits) & 1) != 0; }
    std::size_t count() const;
    bool any() const;
    Bits& operator&=(const Bits& other);
    Bits& operator|=(const Bits& other);
    std::size_t wordCount() const { return m_words.size(); }

    // From small to large.
    template <typename Visit>
    void forEach(Visit visit) const {
        for (std::size_t w = 0; w < m_words.size(); ++w) {
            for (std::uint64_t rest = m_words[w]; rest != 0; rest &= rest - 1) {
                visit(w * wordBits + static_cast<std::size_t>(std::countr_zero(rest)));
            }
        }
    }

    // Hands each member to `visit`, to be written or read.
    template <typename Self, typename Visit>
    static void visitParts(Self& self, Visit& visit) {
        visit(self.m_words);
    }

    friend bool operator==(const Bits&, const Bits&) = default;
    friend std::size_t countCommon(const Bits& a, const Bits& b);

  private:
    static constexpr std::size_t wordBits = 64;
    std::vector<std::uint64_t> m_words;
};

// How many are in both.
std::size_t countCommon(const Bits& a, const Bits& b);

}  // namespace matwright
