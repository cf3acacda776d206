// SPDX-License-Identifier: MIT
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <memory>

#include "app/crop/crop_dialog.h"
#include "app/crop/crop_panel.h"

namespace matwright::app {

// A picture whose every pixel tells where it is: red runs to the right, green downwards.
inline QImage tellingPicture(QSize size) {
    QImage image(size, QImage::Format_RGB32);
    for (int y = 0; y < size.height(); ++y) {
        for (int x = 0; x < size.width(); ++x) {
            image.setPixel(x, y, qRgb(x * 255 / size.width(), y * 255 / size.height(), 60));
        }
    }
    return image;
}

// A crop window for a 4:3 photo in an untrimmed 4x6 slot that lies, driven by real events.
class CropFixture : public testing::Test {
  protected:
    static CropTask task() {
        CropTask task;
        task.photoName = QStringLiteral("harbour.jpg");
        task.slotName = QStringLiteral("photo slot 6 × 4 in");
        task.subject = {{4000, 3000},
                        {Length::inches(6), Length::inches(4)},
                        {Length::inches(6), Length::inches(4)}};
        task.start.crop = startingCrop(task.subject.upright, task.subject.trim);
        return task;
    }

    void open(CropTask given = task()) {
        window = std::make_unique<CropDialog>(std::move(given));
        window->resize(1100, 760);
        window->show();
        window->setCopy(tellingPicture({800, 600}));
        window->setSample({});
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }

    CropView& view() { return window->view(); }
    QPointF middle() { return view().frame().window.center(); }
    const Crop& crop() { return window->state().crop; }

    void send(QEvent::Type type, QPointF at, Qt::MouseButtons buttons) {
        const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
        QMouseEvent event(type, at, view().mapToGlobal(at), button, buttons, {});
        QApplication::sendEvent(&view(), &event);
    }
    void press(QPointF at) { send(QEvent::MouseButtonPress, at, Qt::LeftButton); }
    void moveTo(QPointF at) { send(QEvent::MouseMove, at, Qt::LeftButton); }
    void release(QPointF at) { send(QEvent::MouseButtonRelease, at, Qt::NoButton); }
    void drag(QPointF from, QPointF to) {
        press(from);
        moveTo(from + (to - from) / 2);
        moveTo(to);
        release(to);
    }
    void wheel(QPointF at, int notches) {
        QWheelEvent event(at, view().mapToGlobal(at), {}, {0, 120 * notches}, {}, {},
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(&view(), &event);
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(&view(), key, modifiers);
    }
    std::size_t steps() { return window->steps().size(); }

    std::unique_ptr<CropDialog> window;
};

}  // namespace matwright::app
