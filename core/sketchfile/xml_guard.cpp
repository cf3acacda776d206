// SPDX-License-Identifier: MIT
#include "core/sketchfile/xml_guard.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

#include "core/sketch/utf8.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright {

namespace {

constexpr std::string_view whitespace = " \t\r\n";

bool isWhitespace(std::string_view text) {
    return text.find_first_not_of(whitespace) == std::string_view::npos;
}

// Offset of the first byte that is no UTF-8 or a control character XML does not allow.
std::size_t findBadCharacter(std::string_view bytes) {
    std::size_t at = 0;
    while (at < bytes.size()) {
        const auto c = static_cast<unsigned char>(bytes[at]);
        const std::size_t length = c < 0x80
                                       ? std::size_t{c >= 0x20 || whitespace.contains(bytes[at])}
                                       : utf8SequenceLength(bytes.substr(at));
        if (length == 0) {
            return at;
        }
        at += length;
    }
    return std::string_view::npos;
}

bool isPredefinedReference(std::string_view name) {
    if (!name.starts_with('#')) {
        return name == "amp" || name == "lt" || name == "gt" || name == "quot" || name == "apos";
    }
    const bool isHex = name.starts_with("#x");
    name.remove_prefix(isHex ? 2 : 1);
    unsigned code = 0;
    const auto [end, failure] = std::from_chars(name.begin(), name.end(), code, isHex ? 16 : 10);
    return failure == std::errc() && end == name.end() && code != 0 && code <= 0x10FFFF;
}

// One pass over the markup.
class MarkupScan {
  public:
    explicit MarkupScan(std::string_view bytes) : m_bytes(bytes) {}

    std::optional<Error> findFault() {
        while (!m_fault && m_at < m_bytes.size()) {
            const std::size_t markup = std::min(m_bytes.find('<', m_at), m_bytes.size());
            passText(m_at, markup);
            m_at = markup;
            if (!m_fault && m_at < m_bytes.size()) {
                passMarkup();
            }
        }
        if (!m_fault && m_depth > 0) {
            fail(ErrorCode::NotXml,
                 "The file ends too early; it was probably cut off while it was copied. Open "
                 "another copy of it.");
        }
        return std::move(m_fault);
    }

  private:
    bool startsWith(std::string_view start) const {
        return m_bytes.substr(m_at).starts_with(start);
    }

    void passMarkup() {
        if (startsWith("<!--")) {
            passUntil("<!--", "-->");
        } else if (startsWith("<![CDATA[")) {
            passUntil("<![CDATA[", "]]>");
        } else if (startsWith("<?")) {
            passUntil("<?", "?>");
        } else if (startsWith("<!")) {
            fail(ErrorCode::WrongFormat,
                 "The file has a document type declaration, which no sketch file has. Choose a "
                 "sketch file.");
        } else if (startsWith("</")) {
            passEndTag();
        } else {
            passStartTag();
        }
    }

    void passUntil(std::string_view start, std::string_view end) {
        const std::size_t found = m_bytes.find(end, m_at + start.size());
        if (found == std::string_view::npos) {
            failUnclosed();
        } else {
            m_at = found + end.size();
        }
    }

    void passEndTag() {
        const std::size_t end = m_bytes.find('>', m_at);
        if (end == std::string_view::npos || m_depth == 0) {
            failUnclosed();
            return;
        }
        --m_depth;
        m_at = end + 1;
    }

    void passStartTag() {
        if (m_depth == 0 && m_elements > 0) {
            fail(ErrorCode::NotXml,
                 "The file goes on after its end; it is damaged. Open another copy of it.");
            return;
        }
        const std::size_t end = findTagEnd();
        if (m_fault) {
            return;
        }
        count(m_bytes[end - 1] != '/');
        m_at = end + 1;
    }

    void count(bool opens) {
        if (++m_elements > maxSketchFileElements) {
            fail(ErrorCode::TooLarge,
                 "The file has far more parts than a sketch can have. Check that it is the right "
                 "file.");
        }
        m_depth += opens ? 1 : 0;
        if (m_depth > maxSketchFileDepth) {
            fail(ErrorCode::TooLarge,
                 fmt::format("The file's parts are nested more than {} deep, which no sketch file "
                             "needs. Check that it is the right file.",
                             maxSketchFileDepth));
        }
    }

    // Offset of the '>' that ends the start tag at m_at; attribute values are passed over.
    std::size_t findTagEnd() {
        std::size_t at = m_at + 1;
        for (;;) {
            at = m_bytes.find_first_of("<>\"'", at);
            if (at == std::string_view::npos || m_bytes[at] == '<') {
                failUnclosed();
                return 0;
            }
            if (m_bytes[at] == '>') {
                return at;
            }
            const std::size_t close = m_bytes.find(m_bytes[at], at + 1);
            if (close == std::string_view::npos || m_bytes.substr(at, close - at).contains('<')) {
                failUnclosed();
                return 0;
            }
            passReferences(at + 1, close);
            at = close + 1;
        }
    }

    void passText(std::size_t from, std::size_t to) {
        if (m_depth == 0 && !isWhitespace(m_bytes.substr(from, to - from))) {
            m_at = from;
            fail(ErrorCode::NotXml,
                 "The file is no sketch: it has loose text where a picture would begin or end. "
                 "Choose one that was saved with this program.");
            return;
        }
        passReferences(from, to);
    }

    void passReferences(std::size_t from, std::size_t to) {
        const std::string_view text = m_bytes.substr(0, to);
        for (std::size_t at = text.find('&', from); at < to; at = text.find('&', at + 1)) {
            const std::size_t end = text.find(';', at);
            if (end == std::string_view::npos ||
                !isPredefinedReference(text.substr(at + 1, end - at - 1))) {
                m_at = at;
                fail(ErrorCode::NotXml,
                     "The file has an \"&\" that stands for nothing known. Open another copy of "
                     "the file.");
                return;
            }
        }
    }

    void failUnclosed() {
        fail(ErrorCode::NotXml,
             "The file is damaged or was cut off here: a part of it is not closed. Open another "
             "copy of it.");
    }

    void fail(ErrorCode code, std::string sentence) {
        if (!m_fault) {
            m_fault = Error{code, std::move(sentence), lineText(m_bytes, m_at)};
        }
    }

    std::string_view m_bytes;
    std::size_t m_at = 0;
    std::size_t m_elements = 0;
    int m_depth = 0;
    std::optional<Error> m_fault;
};

bool isWideEncoding(std::string_view bytes) {
    const std::string_view start = bytes.substr(0, 2);
    return start == "\xFF\xFE" || start == "\xFE\xFF" || bytes.substr(0, 4).contains('\0');
}

}  // namespace

std::optional<Error> findXmlFault(std::string_view bytes) {
    if (bytes.empty()) {
        return Error{ErrorCode::NotXml, "The file is empty. Open another copy of it.", "line 1"};
    }
    if (isWideEncoding(bytes)) {
        return Error{ErrorCode::NotXml,
                     "The file keeps its letters in a way this program does not read (UTF-16 or "
                     "UTF-32). Open another copy of it, or save it again as UTF-8 with the program "
                     "it comes from.",
                     "line 1"};
    }
    if (const std::size_t at = findBadCharacter(bytes); at != std::string_view::npos) {
        return Error{ErrorCode::NotXml,
                     "The file has something other than text here: it is damaged or no sketch. "
                     "Open another copy of it.",
                     lineText(bytes, at)};
    }
    return MarkupScan(bytes).findFault();
}

std::string_view withoutByteOrderMark(std::string_view bytes) {
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    return bytes.starts_with(mark) ? bytes.substr(mark.size()) : bytes;
}

std::string lineText(std::string_view bytes, std::size_t offset) {
    const std::string_view before = bytes.substr(0, offset);
    return fmt::format("line {}", std::ranges::count(before, '\n') + 1);
}

}  // namespace matwright
