// SPDX-License-Identifier: MIT
#include "core/library/packing.h"

namespace matwright {

namespace {

constexpr unsigned groupBits = 7;
constexpr std::uint64_t more = 0x80;

}  // namespace

void Packer::number(std::uint64_t value) {
    for (; value >= more; value >>= groupBits) {
        m_to += static_cast<char>(value | more);
    }
    m_to += static_cast<char>(value);
}

void Packer::signedNumber(std::int64_t value) {
    const auto bits = static_cast<std::uint64_t>(value);
    number(value < 0 ? ~(bits << 1) : bits << 1);
}

void Packer::text(std::string_view text) {
    number(text.size());
    m_to += text;
}

std::uint64_t Unpacker::number() {
    std::uint64_t value = 0;
    for (unsigned shift = 0; shift < 64 && !m_bytes.empty(); shift += groupBits) {
        const auto byte = static_cast<unsigned char>(m_bytes.front());
        m_bytes.remove_prefix(1);
        value |= static_cast<std::uint64_t>(byte & (more - 1)) << shift;
        if (byte < more) {
            return value;
        }
    }
    m_failed = true;
    m_bytes = {};
    return 0;
}

std::int64_t Unpacker::signedNumber() {
    const std::uint64_t bits = number();
    return static_cast<std::int64_t>((bits & 1) != 0 ? ~(bits >> 1) : bits >> 1);
}

std::string_view Unpacker::text() {
    const std::uint64_t length = number();
    if (length > m_bytes.size()) {
        m_failed = true;
        m_bytes = {};
        return {};
    }
    const std::string_view text = m_bytes.substr(0, length);
    m_bytes.remove_prefix(length);
    return text;
}

}  // namespace matwright
