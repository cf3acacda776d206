// SPDX-License-Identifier: MIT
#pragma once

#include <QFutureWatcher>
#include <QImage>
#include <QObject>
#include <functional>
#include <stop_token>

#include "core/error/error.h"
#include "core/raster/raster.h"

namespace matwright::app {

// Makes the finished pixels of a print in the background, one wish at a time: a new wish stops the
// one before. Belongs to the window's thread.
class FinalPixels final : public QObject {
    Q_OBJECT

  public:
    using Make = std::function<Result<Raster>(std::stop_token)>;

    explicit FinalPixels(QObject* parent = nullptr);
    // Waits for what is being made; it is told to stop.
    ~FinalPixels() override;

    void want(Make make);
    void cancel();
    bool isWorking() const { return m_watcher.isRunning() || m_next; }

  signals:
    void ready(const QImage& print);
    void failed(const QString& sentence);

  private:
    void start();
    void finished();

    QFutureWatcher<Result<Raster>> m_watcher;
    std::stop_source m_stop;
    Make m_next;  // to be started when the one before has stopped
};

}  // namespace matwright::app
