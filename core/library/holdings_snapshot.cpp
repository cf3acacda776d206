// SPDX-License-Identifier: MIT
#include "core/library/holdings_snapshot.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <xxhash.h>

#include <algorithm>
#include <cstdio>
#include <cstring>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/filestore/file_descriptor.h"
#include "core/library/holdings_inside.h"
#include "core/library/index_row_text.h"

namespace matwright {

namespace {

// First in the file: it also tells machines apart that write numbers the other way round.
struct SnapshotHeader {
    char mark[8] = {'M', 'w', 's', 'n', 'a', 'p', 's', '\n'};
    std::uint32_t version = indexFileVersion;
    std::uint32_t byteOrder = 0x01020304;
    std::uint64_t checksum = 0;  // of all that follows
    friend bool operator==(const SnapshotHeader&, const SnapshotHeader&) = default;
};

// Every part begins at a multiple of this, so that numbers can be taken where they lie.
constexpr std::size_t alignment = 8;
static_assert(sizeof(SnapshotHeader) % alignment == 0);

std::size_t padded(std::size_t size) {
    return (size + alignment - 1) / alignment * alignment;
}

class PartWriter {
  public:
    explicit PartWriter(std::string& to) : m_to(to) {}

    template <typename Value>
        requires std::is_trivially_copyable_v<Value>
    void operator()(const std::vector<Value>& values) {
        whole(values.size());
        append(values.data(), values.size() * sizeof(Value));
    }
    void operator()(const std::string& text) {
        whole(text.size());
        append(text.data(), text.size());
    }
    template <typename Part>
        requires(!std::is_trivially_copyable_v<Part>)
    void operator()(const std::vector<Part>& parts) {
        whole(parts.size());
        for (const Part& part : parts) {
            (*this)(part);
        }
    }
    void operator()(const Bits& bits) { Bits::visitParts(bits, *this); }
    void operator()(const Facet& facet) { Facet::visitParts(facet, *this); }
    void operator()(const std::size_t& number) { whole(number); }
    void operator()(const ContentKey& key) { append(key.bytes.data(), key.bytes.size()); }

  private:
    void whole(std::uint64_t number) { append(&number, sizeof(number)); }
    void append(const void* bytes, std::size_t size) {
        m_to.append(static_cast<const char*>(bytes), size);
        m_to.append(padded(size) - size, '\0');
    }

    std::string& m_to;
};

// Every count is checked against what is left, so that nothing outside is read.
class PartReader {
  public:
    // `from` lies in memory as it lay in the file.
    explicit PartReader(std::string_view from) : m_from(from) {}

    template <typename Value>
        requires std::is_trivially_copyable_v<Value>
    void operator()(std::vector<Value>& values) {
        const std::size_t size = count(sizeof(Value));
        const auto* first = reinterpret_cast<const Value*>(m_from.data());
        values.assign(first, first + size);
        skip(size * sizeof(Value));
    }
    void operator()(std::string& text) {
        const std::size_t size = count(1);
        text.assign(m_from, 0, size);
        skip(size);
    }
    template <typename Part>
        requires(!std::is_trivially_copyable_v<Part>)
    void operator()(std::vector<Part>& parts) {
        parts.resize(count(sizeof(std::uint64_t)));
        for (Part& part : parts) {
            (*this)(part);
        }
    }
    void operator()(Bits& bits) { Bits::visitParts(bits, *this); }
    void operator()(Facet& facet) { Facet::visitParts(facet, *this); }
    void operator()(std::size_t& number) { number = whole(); }
    void operator()(ContentKey& key) { take(key.bytes.data(), key.bytes.size()); }

    bool isRight() const { return !m_failed && m_from.empty(); }

  private:
    std::uint64_t whole() {
        std::uint64_t number = 0;
        take(&number, sizeof(number));
        return number;
    }
    std::size_t count(std::size_t least) {
        const std::uint64_t number = whole();
        m_failed = m_failed || number > m_from.size() / least;
        return m_failed ? 0 : static_cast<std::size_t>(number);
    }
    void take(void* to, std::size_t size) {
        m_failed = m_failed || size > m_from.size();
        if (!m_failed) {
            std::memcpy(to, m_from.data(), size);
            skip(size);
        }
    }
    void skip(std::size_t size) { m_from.remove_prefix(std::min(padded(size), m_from.size())); }

    std::string_view m_from;
    bool m_failed = false;
};

template <typename Inside, typename Visit>
void visitInside(Inside& inside, Visit& visit) {
    visit(inside.packed);
    visit(inside.starts);
    visit(inside.families);
    visit(inside.tagNames);
    visit(inside.folderNames);
    visit(inside.pageSizes);
    visit(inside.printSizes);
    for (auto* facet : {&inside.photos, &inside.prints, &inside.pages, &inside.doublePages,
                        &inside.photoWays, &inside.switches, &inside.tags, &inside.folders}) {
        visit(*facet);
    }
    visit(inside.modified);
    visit(inside.useCounts);
    visit(inside.lastUsed);
    visit(inside.pathSlots);
}

// A file in memory, for as long as it lives.
class MappedFile {
  public:
    explicit MappedFile(const std::filesystem::path& file) {
        const FileDescriptor opened(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
        struct stat facts = {};
        if (!opened.isOpen() || ::fstat(opened.number(), &facts) != 0 || !S_ISREG(facts.st_mode) ||
            facts.st_size <= 0) {
            return;
        }
        const auto size = static_cast<std::size_t>(facts.st_size);
        void* start =
            ::mmap(nullptr, size, PROT_READ, MAP_PRIVATE | MAP_POPULATE, opened.number(), 0);
        if (start != MAP_FAILED) {
            m_bytes = {static_cast<const char*>(start), size};
        }
    }
    ~MappedFile() {
        if (!m_bytes.empty()) {
            ::munmap(const_cast<char*>(m_bytes.data()), m_bytes.size());
        }
    }
    MappedFile(const MappedFile&) = delete;
    MappedFile& operator=(const MappedFile&) = delete;

    std::string_view bytes() const { return m_bytes; }

  private:
    std::string_view m_bytes;
};

bool writeAll(int file, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(file, bytes.data(), bytes.size());
        if (written <= 0) {
            return false;
        }
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

}  // namespace

std::optional<HoldingsSnapshot> readSnapshot(const std::filesystem::path& file) {
    const MappedFile mapped(file);
    std::string_view bytes = mapped.bytes();
    SnapshotHeader header;
    if (bytes.size() < sizeof(header)) {
        return std::nullopt;
    }
    std::memcpy(&header, bytes.data(), sizeof(header));
    bytes.remove_prefix(sizeof(header));
    SnapshotHeader expected;
    expected.checksum = XXH3_64bits(bytes.data(), bytes.size());
    if (header != expected) {
        return std::nullopt;
    }
    HoldingsSnapshot snapshot;
    auto inside = std::make_unique<Holdings::Inside>();
    PartReader reader(bytes);
    reader(snapshot.fingerprint);
    visitInside(*inside, reader);
    if (!reader.isRight()) {
        return std::nullopt;
    }
    snapshot.holdings = std::make_shared<const Holdings>(std::move(inside));
    return snapshot;
}

void writeSnapshot(const std::filesystem::path& file, const HoldingsSnapshot& snapshot) {
    const std::string part = file.string() + ".part";
    const FileDescriptor opened(
        ::open(part.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK, 0600));
    if (!opened.isOpen() || ::flock(opened.number(), LOCK_EX | LOCK_NB) != 0 ||
        ::ftruncate(opened.number(), 0) != 0) {
        return;
    }
    SnapshotHeader header;
    std::string bytes(sizeof(header), '\0');
    PartWriter writer(bytes);
    writer(snapshot.fingerprint);
    visitInside(snapshot.holdings->inside(), writer);
    header.checksum = XXH3_64bits(bytes.data() + sizeof(header), bytes.size() - sizeof(header));
    std::memcpy(bytes.data(), &header, sizeof(header));
    if (!writeAll(opened.number(), bytes) || ::rename(part.c_str(), file.c_str()) != 0) {
        ::unlink(part.c_str());
    }
}

}  // namespace matwright
