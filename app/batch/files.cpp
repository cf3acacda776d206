// SPDX-License-Identifier: MIT
#include "app/batch/files.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <ostream>

#include "core/library/printable.h"
#include "core/pagefile/page_file.h"
#include "core/sketchfile/sketch_file.h"

namespace matwright::app {

namespace {

constexpr const char* programName = "matwright-batch";

// The same file, however it is spelt and through whatever link.
bool isSameFile(const std::filesystem::path& a, const std::filesystem::path& b) {
    std::error_code ignored;
    if (std::filesystem::equivalent(a, b, ignored)) {
        return true;
    }
    const auto spelt = [&](const std::filesystem::path& path) {
        return std::filesystem::weakly_canonical(std::filesystem::absolute(path, ignored), ignored);
    };
    return spelt(a) == spelt(b);
}

char lower(char c) {
    return static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
}

}  // namespace

void complain(BatchPorts& ports, const std::filesystem::path& where, std::string_view sentence) {
    ports.err << programName << ": ";
    if (!where.empty()) {
        ports.err << printablePath(where.native()) << ": ";
    }
    ports.err << sentence << '\n';
}

int fail(BatchPorts& ports, ExitCode code, const Error& error) {
    complain(ports, error.where, error.sentence);
    return code;
}

std::expected<Making, int> readPage(const std::filesystem::path& input, BatchPorts& ports) {
    Result<LoadedPage> loaded = loadPage(ports.files, input);
    if (!loaded) {
        return std::unexpected(fail(ports, InputRefused, loaded.error()));
    }
    for (const std::string& warning : loaded->warnings) {
        complain(ports, input, warning);
    }
    return std::move(loaded->making);
}

std::expected<Sketch, int> readInput(const std::filesystem::path& input, BatchPorts& ports) {
    auto making = readPage(input, ports);
    if (!making) {
        return std::unexpected(making.error());
    }
    return std::move(making->sketch);
}

bool hasSuffix(const std::filesystem::path& path, std::string_view suffix) {
    const std::string extension = path.extension().string();
    return std::ranges::equal(extension, suffix, {}, lower);
}

int writeResult(const std::filesystem::path& input, const std::filesystem::path& output,
                std::string_view bytes, std::string_view what, BatchPorts& ports) {
    if (isSameFile(input, output)) {
        return fail(ports, WrongUse,
                    {ErrorCode::Unsupported,
                     "This is the sketch itself; give the result another name.", output.string()});
    }
    return writeFile(output, bytes, what, ports);
}

namespace {

int sayWritten(const std::filesystem::path& output, std::string_view what, BatchPorts& ports) {
    ports.out << "Wrote " << printablePath(output.native());
    if (!what.empty()) {
        ports.out << ": " << what;
    }
    ports.out << '\n';
    return Done;
}

}  // namespace

int writeFile(const std::filesystem::path& output, std::string_view bytes, std::string_view what,
              BatchPorts& ports) {
    if (const Result<void> written = ports.files.replace(output, bytes); !written) {
        return fail(ports, CouldNotWrite, written.error());
    }
    return sayWritten(output, what, ports);
}

int writeNewFile(const std::filesystem::path& output, std::string_view bytes,
                 std::optional<std::string_view> what, BatchPorts& ports) {
    const Result<bool> made = ports.files.create(output, bytes);
    if (!made) {
        return fail(ports, CouldNotWrite, made.error());
    }
    if (!*made) {
        return fail(ports, CouldNotWrite,
                    {ErrorCode::WriteFailed,
                     "There is a file of this name already, and it stays as it is; give the result "
                     "another name.",
                     output.string()});
    }
    return what ? sayWritten(output, *what, ports) : Done;
}

std::optional<std::string_view> toldUnless(bool json, std::string_view what) {
    return json ? std::nullopt : std::optional(what);
}

int writeNewSketch(const std::filesystem::path& output, const Sketch& sketch, std::string_view what,
                   BatchPorts& ports) {
    const Result<std::string> bytes = savableBytes(sketch);
    if (!bytes) {
        return fail(ports, CouldNotWrite,
                    {bytes.error().code, bytes.error().sentence, output.string()});
    }
    return writeNewFile(output, *bytes, what, ports);
}

int refuseSuffix(const std::filesystem::path& output, std::string_view wanted, BatchPorts& ports) {
    return fail(ports, WrongUse,
                {ErrorCode::Unsupported,
                 fmt::format("The name of the result has to end in {}.", wanted), output.string()});
}

}  // namespace matwright::app
