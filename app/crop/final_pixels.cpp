// SPDX-License-Identifier: MIT
#include "app/crop/final_pixels.h"

#include <QtConcurrent/QtConcurrentRun>
#include <utility>

#include "app/photos/rasters.h"

namespace matwright::app {

FinalPixels::FinalPixels(QObject* parent) : QObject(parent) {
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &FinalPixels::finished);
}

FinalPixels::~FinalPixels() {
    cancel();
    m_watcher.waitForFinished();
}

void FinalPixels::want(Make make) {
    cancel();
    m_next = std::move(make);
    if (!m_watcher.isRunning()) {
        start();
    }
}

void FinalPixels::cancel() {
    m_next = nullptr;
    m_stop.request_stop();
}

void FinalPixels::start() {
    m_stop = {};
    m_watcher.setFuture(QtConcurrent::run(
        [make = std::exchange(m_next, nullptr), stop = m_stop.get_token()] { return make(stop); }));
}

void FinalPixels::finished() {
    if (m_next) {
        start();
        return;
    }
    if (m_stop.stop_requested()) {
        return;
    }
    const Result<Raster> made = m_watcher.result();
    if (made) {
        emit ready(imageOf(*made));
    } else {
        emit failed(QString::fromStdString(made.error().text()));
    }
}

}  // namespace matwright::app
