// SPDX-License-Identifier: MIT
#include "core/library/index_update.h"

#include <algorithm>
#include <utility>

#include "core/library/holdings_builder.h"
#include "core/library/index_families.h"
#include "core/library/index_labels.h"
#include "core/library/label_store.h"

namespace matwright {

namespace {

using Clock = std::chrono::steady_clock;

double secondsSince(Clock::time_point start) {
    return std::chrono::duration<double>(Clock::now() - start).count();
}

bool isShown(const IndexedSketch& sketch) {
    return !sketch.isHidden && sketch.problem.empty();
}

}  // namespace

std::shared_ptr<const Holdings> holdingsOf(const IndexRows& rows,
                                           const std::shared_ptr<const Holdings>& before,
                                           ContentKey& fingerprint) {
    HoldingsBuilder builder;
    builder.reserve(rows.sketches.size(), rows.sketches.size() * 192);
    FamilyNumbers numbers;
    for (const auto& [path, sketch] : rows.sketches) {
        if (isShown(sketch)) {
            builder.add({path, sketch.content, sketch.signature.size,
                         sketch.signature.modifiedNanoseconds, sketch.facts, sketch.labels},
                        numbers.of(sketch));
        }
    }
    const ContentKey print = builder.fingerprint();
    if (before && print == fingerprint) {
        return before;
    }
    fingerprint = print;
    return builder.build();
}

IndexUpdate IndexUpdateRun::run() {
    const Clock::time_point start = Clock::now();
    IndexUpdate update;
    walk();
    if (!m_scan.cancelled) {
        forgetGone();
        const Clock::time_point readStart = Clock::now();
        readFiles();
        update.readSeconds = secondsSince(readStart);
        updateLabelRows(m_library, m_options.stop, m_rows, m_changes);
        assignLabels(m_rows, m_changes);
        save();
        workOutFamilies(m_rows, m_file, m_changes.sketches);
        save();
    }
    update.problems = problems();
    update.folders = std::move(m_scan.folders);
    update.cancelled = m_options.stop.stop_requested();
    update.progress = m_progress;
    update.indexTrouble = m_file.trouble();
    update.seconds = secondsSince(start);
    return update;
}

void IndexUpdateRun::walk() {
    ScanOptions options;
    options.stop = m_options.stop;
    options.progress = [this](std::size_t found) {
        m_progress.found = found;
        report(false);
    };
    m_scan = scanFolder(m_library, options);
    m_progress.found = m_scan.files.size();
}

// Both lists are in the order of their paths.
void IndexUpdateRun::forgetGone() {
    auto file = m_scan.files.begin();
    for (auto row = m_rows.sketches.begin(); row != m_rows.sketches.end();) {
        while (file != m_scan.files.end() && file->path < row->first) {
            ++file;
        }
        const bool isThere = file != m_scan.files.end() && file->path == row->first;
        row->second.isHidden = !isThere;
        if (isThere || m_scan.mayHide(row->first)) {
            ++row;
            continue;
        }
        m_leftKeys.insert(row->second.familyKey);
        m_changes.goneSketches.push_back(row->first);
        row = m_rows.sketches.erase(row);
    }
}

std::vector<ReadJob> IndexUpdateRun::jobs() const {
    std::vector<ReadJob> jobs;
    for (const ScannedFile& file : m_scan.files) {
        const auto known = m_rows.sketches.find(file.path);
        if (known == m_rows.sketches.end()) {
            jobs.push_back({&file, {}});
            continue;
        }
        const IndexedSketch& row = known->second;
        if (row.isSuspect || row.signature != file.signature) {
            jobs.push_back(
                {&file, row.problem.empty() ? std::optional(row.content) : std::nullopt});
        }
    }
    return jobs;
}

void IndexUpdateRun::readFiles() {
    // So that a program that is ended at any moment loses little, and one write does not cost more
    // than what it keeps.
    constexpr std::size_t rowsAWrite = 250;
    const std::vector<ReadJob> toRead = jobs();
    m_progress.toRead = toRead.size();
    m_lastReport = {};  // so that the first sketch is shown at once
    readInParallel(m_library, toRead, m_options.threads, m_options.stop,
                   [this](std::vector<ReadResult> results) {
                       for (ReadResult& result : results) {
                           take(std::move(result));
                       }
                       if (m_changes.sketches.size() >= rowsAWrite) {
                           save();
                       }
                       report(true);
                   });
    save();
}

void IndexUpdateRun::take(ReadResult result) {
    ++m_progress.read;
    const std::string& path = result.file->path;
    const auto known = m_rows.sketches.find(path);
    if (!result.reading) {
        if (known != m_rows.sketches.end()) {
            m_leftKeys.insert(known->second.familyKey);
            m_changes.goneSketches.push_back(path);
            m_rows.sketches.erase(known);
        }
        return;
    }
    IndexedSketch& read = result.reading->row;
    if (known == m_rows.sketches.end()) {
        m_changes.sketches.push_back(&*m_rows.sketches.emplace(path, std::move(read)).first);
    } else if (result.reading->isKnownContent) {
        known->second.signature = read.signature;
        known->second.isSuspect = read.isSuspect;
        m_changes.sketches.push_back(&*known);
    } else {
        m_leftKeys.insert(known->second.familyKey);
        read.labels = std::move(known->second.labels);
        known->second = std::move(read);
        m_changes.sketches.push_back(&*known);
    }
}

void IndexUpdateRun::save() {
    forgetFamilies(m_rows, m_leftKeys, m_changes.sketches);
    m_leftKeys.clear();
    m_file.write(m_changes);
    m_changes = {};
}

void IndexUpdateRun::report(bool withInterim) {
    constexpr auto pause = std::chrono::milliseconds(250);
    const Clock::time_point now = Clock::now();
    if (now - m_lastReport < pause) {
        return;
    }
    m_lastReport = now;
    if (m_options.progress) {
        m_options.progress(m_progress);
    }
    if (withInterim && m_options.interim) {
        m_interim = holdingsOf(m_rows, m_interim, m_interimPrint);
        m_options.interim(m_interim);
    }
}

std::vector<LibraryProblem> IndexUpdateRun::problems() const {
    std::vector<LibraryProblem> problems = m_scan.problems;
    for (const auto& [path, sketch] : m_rows.sketches) {
        if (!sketch.isHidden && !sketch.problem.empty()) {
            problems.push_back({path, sketch.problem});
        }
    }
    const std::filesystem::path folder = labelsFolder({});
    for (const auto& [path, labels] : m_rows.labels) {
        if (!labels.problem.empty()) {
            problems.push_back({(folder / path).string(), labels.problem});
        }
    }
    std::ranges::sort(problems);
    return problems;
}

}  // namespace matwright
