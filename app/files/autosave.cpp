// SPDX-License-Identifier: MIT
#include "app/files/autosave.h"

#include <utility>

#include "app/files/paths.h"

namespace matwright::app {

Autosave::Autosave(Session& session, const SketchDocument& document, RecoveryPlace& place,
                   Pace pace)
    : m_session(session), m_document(document), m_place(place) {
    m_writer.setMaxThreadCount(1);
    for (QTimer* timer : {&m_quiet, &m_latest}) {
        timer->setSingleShot(true);
        connect(timer, &QTimer::timeout, this, &Autosave::startWriting);
    }
    m_quiet.setInterval(pace.afterLastChange);
    m_latest.setInterval(pace.atMostEvery);
    connect(&session, &Session::changed, this, &Autosave::noteChange);
    connect(&session, &Session::cleanChanged, this, [this](bool clean) {
        if (clean) {
            discard();
        } else {
            noteChange({Change::Everything});
        }
    });
}

Autosave::~Autosave() {
    m_writer.waitForDone();
}

void Autosave::noteChange(const Change& change) {
    if (change.kinds == Change::Selection) {
        return;
    }
    m_quiet.start();
    if (!m_latest.isActive()) {
        m_latest.start();
    }
}

UnsavedWork Autosave::workNow() const {
    const Making& making = m_session.making();
    return {making, m_document.keptPictures().of(making), m_document.path()};
}

void Autosave::startWriting() {
    m_quiet.stop();
    m_latest.stop();
    if (m_session.isClean()) {
        return;
    }
    if (m_writer.activeThreadCount() > 0) {  // a slow disk: wait rather than pile up copies
        m_quiet.start();
        return;
    }
    m_writer.start([this, work = workNow()] {
        const auto written = m_place.write(work);
        QMetaObject::invokeMethod(
            this, [this, written] { finishWriting(written); }, Qt::QueuedConnection);
    });
}

Result<void> Autosave::writeNow() {
    m_quiet.stop();
    m_latest.stop();
    m_writer.waitForDone();
    if (m_session.isClean()) {
        return {};
    }
    auto written = m_place.write(workNow());
    finishWriting(written);
    return written;
}

void Autosave::discard() {
    m_quiet.stop();
    m_latest.stop();
    m_writer.waitForDone();
    m_place.clear();
    beSafe();
}

void Autosave::finishWriting(const Result<void>& written) {
    if (written || m_session.isClean()) {
        beSafe();
    } else {
        m_quiet.start();  // again, without waiting for another change
        if (!std::exchange(m_hasFailed, true)) {
            emit failed(shownText(written.error()));
        }
    }
}

void Autosave::beSafe() {
    if (std::exchange(m_hasFailed, false)) {
        emit safeAgain();
    }
}

}  // namespace matwright::app
