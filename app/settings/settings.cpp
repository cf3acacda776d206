// SPDX-License-Identifier: MIT
#include "app/settings/settings.h"

#include <QSettings>
#include <cmath>
#include <utility>

#include "app/settings/settings_file.h"
#include "app/settings/settings_text.h"
#include "core/measure/catalogue.h"

namespace matwright::app {
namespace {

void keepWithin(Length& value, Length low, Length high, Length standard) {
    if (value < low || value > high) {
        value = standard;
    }
}

Length usualTrimmerStep(Unit unit) {
    return unit == Unit::Inch ? Length::inches(0, 1, 16) : Length::millimetres(1);
}

}  // namespace

Settings withScale(Settings settings, Scale scale) {
    if (settings.trimmerStep == usualTrimmerStep(unitOf(settings.scale))) {
        settings.trimmerStep = usualTrimmerStep(unitOf(scale));
    }
    settings.scale = scale;
    return settings;
}

Settings madeSound(Settings settings) {
    const Settings standard;
    const Length smallest = Length::inches(0, 1, 64);
    keepWithin(settings.trimmerStep, smallest, Length::inches(1), standard.trimmerStep);
    keepWithin(settings.printerMargin, Length(), largestSheetMargin, standard.printerMargin);
    keepWithin(settings.overlap, Length(), largestSheetMargin, standard.overlap);
    keepWithin(settings.snap.gridStep, Length::inches(0, 1, 32), Length::inches(6),
               standard.snap.gridStep);
    keepWithin(settings.snap.reach, smallest, Length::inches(1), standard.snap.reach);
    settings.snap.scale = settings.scale;
    if (!(settings.screenPpi >= minScreenPpi && settings.screenPpi <= maxScreenPpi)) {
        settings.screenPpi = 0;
    }
    if (!findSheetSize(settings.sheetId)) {
        settings.sheetId = standard.sheetId;
    }
    settings.recentFiles.removeAll(QString());
    settings.recentFiles.removeDuplicates();
    settings.recentFiles = settings.recentFiles.mid(0, maxRecentFiles);
    return settings;
}

SettingsStore::SettingsStore(QString iniPath)
    : m_iniPath(iniPath.isEmpty() ? standardSettingsFile() : std::move(iniPath)) {
    const QSettings file(m_iniPath, QSettings::IniFormat);
    m_value = madeSound(readSettings(file));
}

void SettingsStore::set(Settings settings) {
    settings = madeSound(std::move(settings));
    if (settings == m_value) {
        return;
    }
    m_value = std::move(settings);
    QSettings file(m_iniPath, QSettings::IniFormat);
    writeSettings(file, m_value);
    emit changed();
}

QByteArray SettingsStore::windowState(const QString& name) const {
    return QSettings(m_iniPath, QSettings::IniFormat)
        .value(QStringLiteral("window/") + name)
        .toByteArray();
}

void SettingsStore::setWindowState(const QString& name, const QByteArray& bytes) {
    QSettings(m_iniPath, QSettings::IniFormat).setValue(QStringLiteral("window/") + name, bytes);
}

}  // namespace matwright::app
