// SPDX-License-Identifier: MIT
#include "app/panels/paper_pictures.h"

#include <QtConcurrent/QtConcurrentRun>
#include <utility>

#include "app/rendering/paper_picture.h"

namespace matwright::app {

namespace {

constexpr int swatchSide = 320;  // pixels

}  // namespace

PaperPictures::PaperPictures(QObject* parent) : QObject(parent) {
    connect(&m_reader, &QFutureWatcherBase::finished, this, &PaperPictures::take);
}

QImage PaperPictures::find(const QString& path) {
    const auto known = m_pictures.constFind(path);
    if (known != m_pictures.constEnd()) {
        return *known;
    }
    if (path != m_reading) {
        m_waiting.removeOne(path);
        m_waiting.append(path);
        readNext();
    }
    return {};
}

bool PaperPictures::isReading(const QString& path) const {
    return !path.isEmpty() && (path == m_reading || m_waiting.contains(path));
}

void PaperPictures::readNext() {
    if (!m_reading.isEmpty() || m_waiting.isEmpty()) {
        return;
    }
    m_reading = m_waiting.takeLast();
    m_reader.setFuture(QtConcurrent::run(readPaperPicture, m_reading, swatchSide));
}

void PaperPictures::take() {
    const QString path = std::exchange(m_reading, {});
    m_pictures.insert(path, m_reader.result());
    readNext();
    emit ready(path);
}

}  // namespace matwright::app
