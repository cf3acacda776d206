// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>

#include "app/editing/session.h"
#include "app/panels/length_field.h"
#include "app/settings/settings.h"

namespace matwright::app {

// A session with settings of its own to try a panel on, and ways to find and work its controls.
class PanelBench : public testing::Test {
  protected:
    PanelBench() : settings(m_folder.filePath(QStringLiteral("settings.ini"))) {}

    static Piece photoSlot(Size print, Point place = {}) {
        Piece piece;
        piece.kind = PieceKind::PhotoSlot;
        piece.size = print;
        piece.printSize = print;
        piece.place = place;
        return piece;
    }
    static Piece block(Size size) {
        Piece piece;
        piece.kind = PieceKind::Block;
        piece.size = size;
        return piece;
    }
    // Replaces the sketch; the pieces get the ids 1, 2, ...
    void fill(const std::vector<Piece>& pieces) {
        Sketch sketch = blankSketch();
        ASSERT_TRUE(apply(sketch, addPieces(sketch, pieces)));
        session.reset(sketch);
    }
    const Piece& piece(std::uint32_t id) const { return session.sketch().pieces.at(PieceId{id}); }
    int undoSteps() { return session.undoStack().count(); }

    // Shows the panel and waits until it can take the focus.
    static void show(QWidget& panel, QSize size = {300, 700}) {
        panel.resize(size);
        panel.show();
        panel.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&panel));
    }
    // The shown control with this accessible name, or nullptr.
    template <typename T>
    static T* control(QWidget& panel, const char* name) {
        for (T* found : panel.findChildren<T*>()) {
            if (found->accessibleName() == QLatin1String(name) && found->isVisible()) {
                return found;
            }
        }
        return nullptr;
    }
    template <typename T>
    static T* labelled(QWidget& panel, const char* text) {
        for (T* found : panel.findChildren<T*>()) {
            if (found->text().remove(QLatin1Char('&')) == QString::fromUtf8(text) &&
                found->isVisible()) {
                return found;
            }
        }
        return nullptr;
    }
    static void type(TypedField* field, const char* text, Qt::Key end = Qt::Key_Return) {
        field->setFocus(Qt::TabFocusReason);
        field->lineEdit()->selectAll();
        QTest::keyClicks(field->lineEdit(), QLatin1String(text));
        QTest::keyClick(field->lineEdit(), end);
    }
    // Presses Tab from the first control on, once around, and expects to go down all the way.
    static void expectTabGoesDown(QWidget& panel, QWidget* first) {
        ASSERT_NE(first, nullptr);
        first->setFocus(Qt::TabFocusReason);
        int height = -1;
        int stops = 0;
        for (QWidget* at = QApplication::focusWidget(); at && stops < 100; ++stops) {
            const int now = at->mapTo(&panel, QPoint()).y();
            EXPECT_GE(now, height) << at->accessibleName().toStdString();
            height = now;
            QTest::keyClick(at, Qt::Key_Tab);
            at = QApplication::focusWidget();
            if (at == first || at == first->focusProxy()) {
                break;
            }
        }
        EXPECT_GT(stops, 3);
        EXPECT_LT(stops, 100) << "Tab never comes back";
    }
    // Opens the list of a combo box and takes an entry with the keyboard.
    static void choose(QComboBox* box, int index) {
        ASSERT_NE(box, nullptr);
        ASSERT_GE(index, 0);
        box->showPopup();
        box->view()->setCurrentIndex(box->model()->index(index, 0));
        QTest::keyClick(box->view(), Qt::Key_Return);
    }

  private:
    QTemporaryDir m_folder;

  protected:
    SettingsStore settings;
    Session session;
};

constexpr Length inches(std::int64_t whole, std::int64_t n = 0, std::int64_t d = 1) {
    return Length::inches(whole, n, d);
}
constexpr Size inchSize(std::int64_t width, std::int64_t height) {
    return {Length::inches(width), Length::inches(height)};
}

}  // namespace matwright::app
