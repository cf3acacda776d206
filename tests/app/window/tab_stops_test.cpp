// SPDX-License-Identifier: MIT
#include <QAccessible>
#include <QApplication>
#include <QDockWidget>
#include <QMenu>
#include <QTest>

#include "app/panels/page_panel.h"
#include "app/panels/piece_panel.h"
#include "app/settings/palettes.h"
#include "app/settings/theme.h"
#include "tests/app/window/window_fixture.h"

namespace matwright::app {
namespace {

class TabStops : public WindowTest {
  protected:
    TabStops() {
        QApplication::setStyle(new ThemeStyle);
        window.resize(1280, 800);
        window.show();
        window.activateWindow();
    }
    ~TabStops() override {
        QApplication::setStyle(QStringLiteral("Fusion"));
        QApplication::setPalette(QPalette());
    }
    bool isReady() {
        const bool isFilled = QTest::qWaitForWindowActive(&window) && QTest::qWaitFor([this] {
                                  return window.findChild<PiecePanel*>() != nullptr;
                              });
        QTest::qWait(50);  // the panels get their places
        return isFilled;
    }
    // What Tab comes to from the page on, once around; each is visited while it has the focus.
    template <typename Visit>
    void walk(Visit visit) {
        window.canvas().setFocus();
        const QWidget* first = QApplication::focusWidget();
        int stops = 0;
        for (QWidget* at = QApplication::focusWidget(); at && stops < 200; ++stops) {
            visit(*at);
            at->setFocus(Qt::TabFocusReason);
            QTest::keyClick(at, Qt::Key_Tab);
            at = QApplication::focusWidget();
            if (at == first) {
                break;
            }
        }
        EXPECT_GT(stops, 5);
        EXPECT_LT(stops, 200) << "Tab never comes back";
    }
    static QString described(const QWidget* widget) {
        QString text;
        for (const QWidget* at = widget; at; at = at->parentWidget()) {
            text += QLatin1String(at->metaObject()->className()) + QStringLiteral(" '") +
                    at->objectName() + at->accessibleName() + QStringLiteral("' < ");
        }
        return text;
    }
    // The widget and a little around it, as the window shows them.
    QImage pictureOf(const QWidget& widget) {
        QApplication::processEvents();
        const QRect rect(widget.mapTo(&window, QPoint(-3, -3)), widget.size() + QSize(6, 6));
        return window.grab(rect & window.rect()).toImage();
    }
};

TEST_F(TabStops, EachShowsThatItHasTheFocusInBothThemes) {
    ASSERT_TRUE(isReady());
    for (const QPalette& palette : {lightPalette(), darkPalette()}) {
        QApplication::setPalette(palette);
        for (const bool withSelection : {false, true}) {
            if (withSelection) {
                session().selectAll();
            }
            walk([this](QWidget& stop) {
                const QImage with = pictureOf(stop);
                stop.clearFocus();
                EXPECT_FALSE(with == pictureOf(stop)) << described(&stop).toStdString();
            });
        }
        add({block(1, 1)});
    }
}

TEST_F(TabStops, NoneIsBehindAnotherTab) {
    ASSERT_TRUE(isReady());
    walk([this](QWidget& stop) {
        const QRect place(stop.mapTo(&window, QPoint()), stop.size());
        EXPECT_TRUE(window.rect().intersects(place)) << described(&stop).toStdString();
        EXPECT_FALSE(window.findChild<PagePanel*>()->isAncestorOf(&stop));
    });
    auto* page = window.findChild<QDockWidget*>(QStringLiteral("page"));
    page->raise();
    int onPage = 0;
    walk([&](QWidget& stop) { onPage += page->isAncestorOf(&stop) ? 1 : 0; });
    EXPECT_GT(onPage, 4);
}

TEST_F(TabStops, EachHasANameForThoseWhoCannotSeeIt) {
    ASSERT_TRUE(isReady());
    add({block(1, 1)});
    walk([](QWidget& stop) {
        QAccessibleInterface* its = QAccessible::queryAccessibleInterface(&stop);
        ASSERT_NE(its, nullptr);
        EXPECT_FALSE(its->text(QAccessible::Name).isEmpty()) << described(&stop).toStdString();
    });
}

}  // namespace
}  // namespace matwright::app
