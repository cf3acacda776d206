// SPDX-License-Identifier: MIT
#include "core/library/text_fold.h"

#include <algorithm>
#include <cstddef>

#include "core/sketch/utf8.h"

namespace matwright {

namespace {

// One letter a code point from `first` on: what it is based on; a digit stands for two letters, a
// point for none. Made from the decompositions of the Unicode character database, with Ð, Ø, Ł
// and the like added by their looks.
struct BaseLetters {
    char32_t first;
    std::string_view letters;
};
constexpr BaseLetters baseTables[] = {
    {0xc0,
     "aaaaaa1ceeeeiiiidnooooo.ouuuuy23aaaaaa1ceeeeiiiidnooooo.ouuuuy2y"
     "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiii44jjkkklllllll"
     "lllnnnnnnnnnoooooo55rrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs"
     "................................oo.............uu..............."
     ".............aaiioouuuuuuuuuu.aaaa11ggggkkoooo..j...gg..nnaa11oo"
     "aaaaeeeeiiiioooorrrruuuusstt..hh......aaeeooooooooyy............"
     "................"},
    {0x1e00,
     "aabbbbbbccddddddddddeeeeeeeeeeffgghhhhhhhhhhiiiikkkkkkllllllllmm"
     "mmmmnnnnnnnnoooooooopppprrrrrrrrssssssssssttttttttuuuuuuuuuuvvvv"
     "wwwwwwwwwwxxxxyyzzzzzzhtwyasss3.aaaaaaaaaaaaaaaaaaaaaaaaeeeeeeee"
     "eeeeeeeeiiiioooooooooooooooooooooooouuuuuuuuuuuuuuyyyyyyyy......"}};
constexpr std::string_view pairs[] = {"ae", "th", "ss", "ij", "oe"};

// Empty where the character is not based on Latin letters.
std::string_view baseLetters(char32_t c) {
    for (const BaseLetters& table : baseTables) {
        if (c >= table.first && c - table.first < table.letters.size()) {
            const std::size_t at = c - table.first;
            const char letter = table.letters[at];
            if (letter >= '1' && letter <= '5') {
                return pairs[letter - '1'];
            }
            return letter == '.' ? std::string_view() : table.letters.substr(at, 1);
        }
    }
    return {};
}

// Of Greek and Cyrillic; any other character is itself.
char32_t smallLetter(char32_t c) {
    const auto in = [c](char32_t low, char32_t high) { return low <= c && c <= high; };
    if ((in(0x391, 0x3ab) && c != 0x3a2) || in(0x410, 0x42f)) {
        return c + 0x20;
    }
    if (in(0x400, 0x40f)) {
        return c + 0x50;
    }
    if (in(0x460, 0x481) || in(0x48a, 0x4bf) || in(0x4d0, 0x52f)) {
        return c | 1U;
    }
    switch (c) {
        case 0x386:
            return 0x3ac;
        case 0x388:
        case 0x389:
        case 0x38a:
            return c + 0x25;
        case 0x38c:
            return 0x3cc;
        case 0x38e:
        case 0x38f:
            return c + 0x3f;
        case 0x3c2:
            return 0x3c3;
        default:
            return c;
    }
}

bool isMark(char32_t c) {
    return c >= 0x300 && c <= 0x36f;
}

bool isSeparator(char32_t c) {
    return (c >= 0x80 && c <= 0xbf) || c == 0xd7 || c == 0xf7 || (c >= 0x2000 && c <= 0x2bff) ||
           (c >= 0x3000 && c <= 0x303f);
}

bool isAsciiDigit(char c) {
    return c >= '0' && c <= '9';
}

bool isAsciiAlphanumeric(char c) {
    return isAsciiDigit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// Of a well-formed sequence.
char32_t codePoint(std::string_view sequence) {
    constexpr unsigned char leadMasks[] = {0x7f, 0x1f, 0x0f, 0x07};
    char32_t code = static_cast<unsigned char>(sequence[0]) & leadMasks[sequence.size() - 1];
    for (const char c : sequence.substr(1)) {
        code = code << 6 | (static_cast<unsigned char>(c) & 0x3fU);
    }
    return code;
}

// Greek and Cyrillic are two bytes long, before and after.
void appendTwoBytes(char32_t c, std::string& to) {
    to += static_cast<char>(0xc0U | c >> 6);
    to += static_cast<char>(0x80U | (c & 0x3fU));
}

void appendFoldedSequence(std::string_view sequence, std::string& to) {
    const char32_t c = codePoint(sequence);
    if (isMark(c)) {
        return;
    }
    const std::string_view letters = baseLetters(c);
    if (!letters.empty()) {
        to += letters;
    } else if (const char32_t small = smallLetter(c); small != c) {
        appendTwoBytes(small, to);
    } else {
        to += sequence;
    }
}

bool isAscii(char c) {
    return static_cast<unsigned char>(c) < 0x80;
}

// The length of the character at the front of a folded text, negative where it separates words.
std::ptrdiff_t letterLength(std::string_view folded) {
    if (isAscii(folded[0])) {
        return isAsciiAlphanumeric(folded[0]) ? 1 : -1;
    }
    const auto length = static_cast<std::ptrdiff_t>(utf8SequenceLength(folded));
    if (length == 0) {
        return -1;
    }
    return isSeparator(codePoint(folded.substr(0, static_cast<std::size_t>(length)))) ? -length
                                                                                      : length;
}

}  // namespace

void appendFolded(std::string_view text, std::string& to) {
    for (std::size_t at = 0; at < text.size();) {
        const char c = text[at];
        if (isAscii(c)) {
            to += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
            ++at;
            continue;
        }
        const std::size_t length = utf8SequenceLength(text.substr(at));
        if (length == 0) {
            to += ' ';
            ++at;
            continue;
        }
        appendFoldedSequence(text.substr(at, length), to);
        at += length;
    }
}

std::string foldedText(std::string_view text) {
    std::string folded;
    folded.reserve(text.size());
    appendFolded(text, folded);
    return folded;
}

std::vector<std::string_view> wordsIn(std::string_view folded) {
    std::vector<std::string_view> words;
    std::size_t start = 0;
    std::size_t at = 0;
    const auto endWord = [&] {
        if (at > start) {
            words.push_back(folded.substr(start, at - start));
        }
    };
    while (at < folded.size()) {
        const std::ptrdiff_t length = letterLength(folded.substr(at));
        if (length < 0) {
            endWord();
            start = at + static_cast<std::size_t>(-length);
            at = start;
        } else {
            at += static_cast<std::size_t>(length);
        }
    }
    endWord();
    return words;
}

std::string orderKey(std::string_view text) {
    const std::string folded = foldedText(text);
    std::string key;
    key.reserve(folded.size() + 2);
    for (std::size_t at = 0; at < folded.size();) {
        if (!isAsciiDigit(folded[at])) {
            key += folded[at++];
            continue;
        }
        const auto start = folded.begin() + static_cast<std::ptrdiff_t>(at);
        const auto end = std::find_if_not(start, folded.end(), isAsciiDigit);
        const auto first = std::find_if(start, end, [](char c) { return c != '0'; });
        // More digits are a larger number; the count sorts like a digit.
        const auto digits = std::min<std::ptrdiff_t>(end - first, 200);
        key += '0';
        key += static_cast<char>(digits + 1);
        key.append(first, end);
        at = static_cast<std::size_t>(end - folded.begin());
    }
    return key;
}

}  // namespace matwright
