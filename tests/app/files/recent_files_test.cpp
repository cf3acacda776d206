// SPDX-License-Identifier: MIT
#include "app/files/recent_files.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QTemporaryDir>

namespace matwright::app {
namespace {

class RecentFiles : public testing::Test {
  protected:
    const QStringList& list() const { return m_settings.value().recentFiles; }

    QTemporaryDir m_folder;
    SettingsStore m_settings{m_folder.filePath(QStringLiteral("s.ini"))};
};

TEST_F(RecentFiles, BeginWithTheLatestAndListEachOnce) {
    rememberFile(m_settings, QStringLiteral("/a"));
    rememberFile(m_settings, QStringLiteral("/b"));
    rememberFile(m_settings, QStringLiteral("/a"));
    EXPECT_EQ(list(), QStringList({QStringLiteral("/a"), QStringLiteral("/b")}));
}

TEST_F(RecentFiles, LetGoOfTheEleventh) {
    for (int i = 1; i <= 11; ++i) {
        rememberFile(m_settings, QStringLiteral("/%1").arg(i));
    }
    EXPECT_EQ(list().size(), 10);
    EXPECT_EQ(list().first(), QStringLiteral("/11"));
    EXPECT_EQ(list().last(), QStringLiteral("/2"));
}

TEST_F(RecentFiles, AreKeptAsAbsolutePaths) {
    rememberFile(m_settings, QStringLiteral("page.sketch.svg"));
    EXPECT_EQ(list().first(), QDir::current().absoluteFilePath(QStringLiteral("page.sketch.svg")));
}

TEST_F(RecentFiles, CanBeForgotten) {
    rememberFile(m_settings, QStringLiteral("/a"));
    rememberFile(m_settings, QStringLiteral("/b"));
    forgetFile(m_settings, QStringLiteral("/b"));
    forgetFile(m_settings, QStringLiteral("/c"));
    EXPECT_EQ(list(), QStringList(QStringLiteral("/a")));
}

}  // namespace
}  // namespace matwright::app
