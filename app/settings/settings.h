// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QStringList>
#include <string>

#include "core/measure/length_text.h"
#include "core/snap/snap.h"

namespace matwright::app {

// What a person has chosen once and finds again in every window and every session, as a regular
// value.
struct Settings {
    enum class Theme { System, Light, Dark };

    Scale scale = Scale::SixteenthInch;
    bool snapOn = true;
    SnapSettings snap;  // its scale always follows `scale`
    Length trimmerStep = Length::inches(0, 1, 16);
    Theme theme = Theme::System;
    bool rulersShown = true;
    // Measured logical pixels per inch (Qt's coordinates of widgets, so at a device pixel ratio of
    // 2 half as many as the screen has dots); 0: what the system says.
    double screenPpi = 0;
    std::string sheetId = "letter";  // of the catalogue's sheet sizes
    Length printerMargin = Length::inches(0, 1, 4);
    Length overlap = Length::inches(0, 1, 4);
    bool templateTiled = false;
    QString libraryFolder;    // of sketches; empty: the standard one
    QString watchedFolder;    // photos that arrive there come into the tray; empty: none
    QStringList recentFiles;  // absolute paths, latest first, at most maxRecentFiles

    friend bool operator==(const Settings&, const Settings&) = default;
};
inline constexpr int maxRecentFiles = 10;
// The most a printer margin or an overlap may be.
inline constexpr Length largestSheetMargin = Length::inches(2);
// A measured screen has at least and at most this many logical pixels per inch.
inline constexpr double minScreenPpi = 20;
inline constexpr double maxScreenPpi = 1000;

// `settings` with everything out of range put back to its default, the snap words in the scale of
// the rest, and the recent files without repeats.
Settings madeSound(Settings settings);

// `settings` with another scale. The trimmer's step goes along from 1/16 in to 1 mm and back,
// unless the person has set it to something else.
Settings withScale(Settings settings, Scale scale);

// Keeps the settings in an ini file that a person may edit: whatever cannot be read there, or is
// out of range, counts as not set. Every change is written by the next turn of the event loop.
class SettingsStore final : public QObject {
    Q_OBJECT

  public:
    // An empty path stands for matwright/settings.ini in the person's configuration folder.
    explicit SettingsStore(QString iniPath = {});

    const Settings& value() const { return m_value; }
    // Made sound first. Emits changed() when the value differs from the one before.
    void set(Settings settings);

    // Opaque state of windows ("geometry", "docks"), kept beside the settings; empty where unset.
    QByteArray windowState(const QString& name) const;
    void setWindowState(const QString& name, const QByteArray& bytes);

    const QString& iniPath() const { return m_iniPath; }

  signals:
    void changed();

  private:
    QString m_iniPath;
    Settings m_value;
};

}  // namespace matwright::app
