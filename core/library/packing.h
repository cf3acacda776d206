// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace matwright {

// Numbers and texts in a row of bytes: a number in groups of seven bits, lowest first (small ones
// take one byte), a text as its length and its bytes.
class Packer {
  public:
    explicit Packer(std::string& to) : m_to(to) {}
    void number(std::uint64_t value);
    void signedNumber(std::int64_t value);  // small where it is near zero
    void text(std::string_view text);

  private:
    std::string& m_to;
};

// The reverse. Bytes that no Packer wrote give zeros and empty texts and make failed() true;
// nothing outside the bytes is ever read. Texts are views into the bytes.
class Unpacker {
  public:
    explicit Unpacker(std::string_view bytes) : m_bytes(bytes) {}
    std::uint64_t number();
    std::int64_t signedNumber();
    std::string_view text();
    bool failed() const { return m_failed; }
    bool atEnd() const { return m_bytes.empty(); }

  private:
    std::string_view m_bytes;
    bool m_failed = false;
};

}  // namespace matwright
