// SPDX-License-Identifier: MIT
// What a step costs when a photo of 48 megapixels is dragged in the crop view: as a ratio to a bare
// widget that puts down a plain pixmap, once of the frame's size and once of all that the step
// repaints. Both in this run, in turns, in processor time, medians. Nothing may be decoded or
// drawn anew meanwhile. The bar is 2 against the frame, in the best of three attempts.
#include <QApplication>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>
#include <cstdio>
#include <functional>

#include "app/crop/crop_flow.h"
#include "app/editing/session.h"
#include "app/photos/reading/photo_reader.h"
#include "core/photo/photo_source.h"
#include "tests/support/painted_photos.h"
#include "tests/support/step_cost.h"
#include "tests/support/timed_bar.h"

using namespace matwright;
using namespace matwright::app;

namespace {

constexpr int stepCount = 120;
constexpr int rounds = 5;
constexpr double bar = 2;
constexpr QSize photoSize(8000, 6000);

// Puts down a part of a larger pixmap, another part each step.
class PlainPixmap final : public QWidget {
  public:
    explicit PlainPixmap(QSize size) : m_pixmap(size + QSize(200, 200)) {
        setAttribute(Qt::WA_OpaquePaintEvent);
        m_pixmap.fill(Qt::darkCyan);
        resize(size);
    }
    void shift(int step) {
        m_at = {step % 150, step % 90};
        update();
    }
    void paintEvent(QPaintEvent*) override {
        QPainter(this).drawPixmap(rect(), m_pixmap, QRect(m_at, size()));
    }

  private:
    QPixmap m_pixmap;
    QPoint m_at;
};

double measure(QWidget& widget, const std::function<void(int)>& step) {
    const test::PaintCounter counter(widget);
    return test::medianStepMs(counter, stepCount, step);
}

void send(QWidget& view, QEvent::Type type, QPointF at) {
    const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
    const auto buttons = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, view.mapToGlobal(at), button, buttons, {});
    QApplication::sendEvent(&view, &event);
}

double measureDrag(CropView& view) {
    const QPointF from = view.frame().window.center();
    send(view, QEvent::MouseButtonPress, from);
    send(view, QEvent::MouseMove, from + QPointF(1, 1));
    view.repaint();
    // There and back, so that every step moves the photo.
    const double ms = measure(view, [&](int i) {
        const int way = i % 40 < 20 ? i % 20 : 20 - i % 20;
        send(view, QEvent::MouseMove, from + QPointF(2 * way + 1, way));
    });
    send(view, QEvent::MouseButtonRelease, from);
    QCoreApplication::processEvents();
    return ms;
}

Making makingWith(const std::filesystem::path& file) {
    Making making;
    making.sketch = blankSketch();
    Piece slot;
    slot.kind = PieceKind::PhotoSlot;
    slot.size = {Length::inches(6), Length::inches(4)};
    slot.printSize = slot.size;
    (void)apply(making.sketch, addPieces(making.sketch, std::span(&slot, 1)));
    const auto facts = photoFacts(file);
    if (!facts) {
        std::puts(facts.error().text().c_str());
        std::exit(2);
    }
    Photo photo;
    photo.path = file;
    photo.content = facts->content;
    photo.upright = facts->upright;
    making.work.photos[PhotoId{1}] = photo;
    Crop crop = startingCrop(photo.upright, slot.size);
    crop.zoom = 3 * Crop::one / 2;
    making.work.placements[PieceId{1}] = {PhotoId{1}, crop, {}};
    return making;
}

}  // namespace

int main(int argc, char** argv) {
    if (test::timingsMeanNothing()) {
        return test::skippedBar;
    }
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QApplication app(argc, argv);
    QApplication::setStyle("Fusion");
    const QTemporaryDir folder;
    const std::filesystem::path file =
        std::filesystem::path(folder.path().toStdString()) / "large.jpg";
    test::writeJpeg(file, test::paintedPhoto(1, photoSize / 4).scaled(photoSize), {});
    Session session;
    session.reset(makingWith(file));
    PhotoReader reader(folder.filePath("cache"));
    int copies = 0;
    QObject::connect(&reader, &PhotoService::workingCopyReady, [&copies] { ++copies; });
    app::CropDialog* window =
        makeCropDialog(session, PieceId{1}, Scale::SixteenthInch, &reader, {}, nullptr);
    window->resize(1280, 800);
    window->show();
    if (!QTest::qWaitForWindowExposed(window) ||
        !QTest::qWaitFor([&] { return reader.isIdle() && window->view().tile().hasCopy(); },
                         60'000)) {
        std::puts("the photo was never there");
        return 2;
    }
    CropView& view = window->view();
    view.repaint();
    PlainPixmap frame(view.frame().window.size().toSize());
    PlainPixmap whole(view.size());
    frame.show();
    whole.show();
    if (!QTest::qWaitForWindowExposed(&frame) || !QTest::qWaitForWindowExposed(&whole)) {
        return 2;
    }
    const int copiesBefore = copies;
    const int rendersBefore = view.tile().renders();
    double againstWhole = 0;
    const double ratio = test::bestRatio(bar, [&] {
        std::vector<double> ours;
        std::vector<double> ofFrame;
        std::vector<double> ofWhole;
        for (int round = 0; round < rounds; ++round) {
            ours.push_back(measureDrag(view));
            ofFrame.push_back(measure(frame, [&](int i) { frame.shift(i); }));
            ofWhole.push_back(measure(whole, [&](int i) { whole.shift(i); }));
        }
        std::printf(
            "a step: %.3f ms; plain pixmap of the frame %.3f ms, of the whole view %.3f ms\n",
            test::median(ours), test::median(ofFrame), test::median(ofWhole));
        againstWhole = test::median(ours) / test::median(ofWhole);
        return test::median(ours) / test::median(ofFrame);
    });
    std::printf(
        "dragging a photo of 48 megapixels: %.2fx a plain pixmap of the frame (bar %.2f), "
        "%.2fx one of the whole view\n",
        ratio, bar, againstWhole);
    const int rendered = view.tile().renders() - rendersBefore;
    std::printf("meanwhile decoded: %d, drawn anew: %d\n", copies - copiesBefore, rendered);
    delete window;
    const bool nothingAnew = copies == copiesBefore && rendered == 0;
    return ratio <= bar && nothingAnew ? 0 : 1;
}
