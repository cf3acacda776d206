// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <QAction>
#include <QCoreApplication>
#include <QMenu>
#include <QTemporaryDir>

#include "app/canvas/canvas.h"
#include "app/window/file_flow.h"
#include "app/window/main_window.h"
#include "app/window/status_line.h"
#include "tests/app/window/scripted_questions.h"

namespace matwright::app {

// A whole window over a real disk in a folder of its own, with nobody to ask.
class WindowTest : public testing::Test {
  protected:
    // The action of this text, without mnemonic and dots, wherever it is.
    QAction& action(const QString& text) {
        QCoreApplication::processEvents();
        for (QAction* candidate : window.findChildren<QAction*>()) {
            QString plain = candidate->text();
            if (plain.remove(u'&').remove(u'…') == text && !candidate->menu()) {
                return *candidate;
            }
        }
        ADD_FAILURE() << "no action " << text.toStdString();
        return m_none;
    }
    QAction& action(const char* text) { return action(QString::fromUtf8(text)); }
    void trigger(const char* text) {
        QAction& found = action(text);
        ASSERT_TRUE(found.isEnabled()) << text;
        found.trigger();
    }

    Piece block(int x, int y, int width = 2, int height = 1) const {
        Piece piece;
        piece.place = {Length::inches(x), Length::inches(y)};
        piece.size = {Length::inches(width), Length::inches(height)};
        return piece;
    }
    // Adds the pieces and selects them.
    void add(std::vector<Piece> pieces) {
        ASSERT_TRUE(
            session().performAndSelectAdded(addPieces(sketch(), pieces), QStringLiteral("add")));
    }
    Session& session() { return work.session; }
    const Sketch& sketch() const { return work.session.sketch(); }
    const Piece& piece(std::size_t index) const {
        return sketch().pieces.at(sketch().order.at(index));
    }
    QString inFolder(const char* name) const { return m_folder.filePath(QString::fromUtf8(name)); }
    QString says() { return window.statusLine().sentence(); }

  private:
    QTemporaryDir m_folder;
    QAction m_none;

  protected:
    DiskFileStore files;
    SettingsStore settings{m_folder.filePath(QStringLiteral("settings.ini"))};
    ScriptedQuestions questions;
    OpenWork work{files, m_folder.filePath(QStringLiteral("recovery"))};
    MainWindow window{work, settings, questions, QStringLiteral(PARTS_FOLDER)};
};

}  // namespace matwright::app
