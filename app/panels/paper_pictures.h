// SPDX-License-Identifier: MIT
#pragma once

#include <QFutureWatcher>
#include <QHash>
#include <QImage>
#include <QObject>
#include <QStringList>

namespace matwright::app {

// Small pictures of papers for a window: read in the background, one at a time, the one asked for
// last first, and kept. All calls belong to the window's thread.
class PaperPictures final : public QObject {
    Q_OBJECT

  public:
    explicit PaperPictures(QObject* parent = nullptr);

    // Null while it is read, which this begins where it is needed, and where there is none that can
    // be shown.
    QImage find(const QString& path);
    // Whether ready() is still to come.
    bool isReading(const QString& path) const;
    // The file is read anew when it is asked for again.
    void forget(const QString& path) { m_pictures.remove(path); }

  signals:
    // The picture is there now, or cannot be had.
    void ready(const QString& path);

  private:
    void readNext();
    void take();

    QHash<QString, QImage> m_pictures;
    QStringList m_waiting;  // the last is the next
    QString m_reading;
    QFutureWatcher<QImage> m_reader;
};

}  // namespace matwright::app
