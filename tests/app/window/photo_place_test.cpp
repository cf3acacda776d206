// SPDX-License-Identifier: MIT
#include "app/window/photo_place.h"

#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QTest>
#include <QUrl>

#include "app/canvas/page_view.h"
#include "app/photos/photo_commands.h"
#include "app/photos/photo_tray_panel.h"
#include "tests/app/window/window_fixture.h"
#include "tests/support/painted_photos.h"

namespace matwright::app {
namespace {

class PhotosInTheWindow : public WindowTest {
  protected:
    PhotosInTheWindow() {
        qputenv("XDG_CACHE_HOME", inFolder("cache").toUtf8());
        window.resize(1280, 800);
        window.show();
        EXPECT_TRUE(QTest::qWaitFor([this] { return window.photos().panel() != nullptr; }));
        window.photos().panel()->parentWidget()->show();
    }
    QString paint(const char* name, int scene, QSize size = {800, 600}) {
        const QString path = inFolder(name);
        test::writeJpeg(path.toStdString(), test::paintedPhoto(scene, size), {});
        return path;
    }
    PieceId addSlot(int x, int width, int height) {
        Piece piece = block(x, 2, width, height);
        piece.kind = PieceKind::PhotoSlot;
        piece.printSize = piece.size;
        add({piece});
        const PieceId id = session().onlySelected();
        session().clearSelection();
        return id;
    }
    void addPhotos(const QStringList& paths) {
        window.photos().add(paths);
        settle();
    }
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor(
            [this] {
                return !window.photos().intake().isBusy() &&
                       window.photos().access().ifOpen()->isIdle();
            },
            20'000));
        QCoreApplication::processEvents();
    }
    PhotoTrayView& tray() { return window.photos().panel()->view(); }
    QPoint middleOf(PieceId slot) {
        const Piece& piece = sketch().pieces.at(slot);
        return window.canvas()
            .page()
            .viewport()
            .toView(Rect::at(piece.place, piece.size))
            .center()
            .toPoint();
    }
    // Drags the data over the page to this slot and lets it go.
    void drop(const QMimeData& mime, PieceId slot) {
        PageView& page = window.canvas().page();
        const QPoint at = middleOf(slot);
        QDragEnterEvent enter(at, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&page, &enter);
        ASSERT_TRUE(enter.isAccepted());
        QDragMoveEvent move(at, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&page, &move);
        m_hintOnTheWay = says();
        m_targetOnTheWay = page.preview().target;
        QDropEvent let(QPointF(at), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(&page, &let);
        QCoreApplication::processEvents();  // files are taken once the drop is over
    }
    PhotoId in(PieceId slot) {
        const Placement* placement = find(session().work(), slot);
        return placement ? placement->photo : PhotoId{};
    }

    QString m_hintOnTheWay;
    std::optional<PieceId> m_targetOnTheWay;
};

TEST_F(PhotosInTheWindow, DoNotOpenThePartBeforeThereIsOne) {
    EXPECT_EQ(window.photos().access().ifOpen(), nullptr);
    addSlot(1, 6, 4);
    EXPECT_EQ(window.photos().access().ifOpen(), nullptr);
    addPhotos({paint("a.jpg", 0)});
    EXPECT_NE(window.photos().access().ifOpen(), nullptr);
    EXPECT_EQ(says(), QStringLiteral("One photo added."));
    EXPECT_TRUE(window.windowTitle().contains(QStringLiteral("(page)")));
}

TEST_F(PhotosInTheWindow, GoIntoTheNextSlotWithEnter) {
    const PieceId slot = addSlot(1, 6, 4);
    addPhotos({paint("a.jpg", 0)});
    tray().setFocus(Qt::TabFocusReason);
    tray().setCurrentIndex(tray().model()->index(0, 0));
    QTest::keyClick(&tray(), Qt::Key_Return);
    EXPECT_EQ(in(slot), PhotoId{1});
    EXPECT_TRUE(says().contains(QStringLiteral("takes off 1/9"))) << says().toStdString();
    trigger("Undo Put in a.jpg");
    EXPECT_EQ(in(slot), PhotoId{});
}

TEST_F(PhotosInTheWindow, GoAlongWhenTheirSlotIsCutPastedAndDuplicated) {
    const PieceId slot = addSlot(1, 6, 4);
    addPhotos({paint("a.jpg", 0)});
    tray().setFocus(Qt::TabFocusReason);
    tray().setCurrentIndex(tray().model()->index(0, 0));
    QTest::keyClick(&tray(), Qt::Key_Return);
    ASSERT_EQ(in(slot), PhotoId{1});
    session().select({slot});
    trigger("Cut");
    EXPECT_TRUE(session().work().placements.empty());
    trigger("Paste");
    const PieceId pasted = session().onlySelected();
    EXPECT_EQ(in(pasted), PhotoId{1});
    trigger("Duplicate");
    EXPECT_NE(session().onlySelected(), pasted);
    EXPECT_EQ(in(session().onlySelected()), PhotoId{1});
    trigger("Undo duplicate");
    trigger("Undo paste");
    EXPECT_TRUE(session().work().placements.empty());
    trigger("Undo cut");
    EXPECT_EQ(in(slot), PhotoId{1});
}

TEST_F(PhotosInTheWindow, FallIntoTheSlotUnderThePointer) {
    addSlot(1, 3, 4);
    const PieceId slot = addSlot(5, 6, 4);
    addPhotos({paint("a.jpg", 0)});
    const std::unique_ptr<QMimeData> mime(
        window.photos().panel()->model().mimeData({tray().model()->index(0, 0)}));
    drop(*mime, slot);
    EXPECT_EQ(m_targetOnTheWay, slot);
    EXPECT_TRUE(m_hintOnTheWay.contains(QStringLiteral("takes off 1/9")))
        << m_hintOnTheWay.toStdString();
    EXPECT_EQ(in(slot), PhotoId{1});
    EXPECT_FALSE(window.canvas().page().preview().target);
}

TEST_F(PhotosInTheWindow, ComeFromAFileManagerIntoASlot) {
    const PieceId slot = addSlot(1, 6, 4);
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(paint("a.jpg", 0))});
    drop(mime, slot);
    settle();
    EXPECT_EQ(session().work().photos.size(), 1u);
    EXPECT_EQ(in(slot), PhotoId{1});
}

TEST_F(PhotosInTheWindow, ChangePlacesWhenDraggedWithCtrl) {
    const PieceId a = addSlot(1, 4, 3);
    const PieceId b = addSlot(6, 4, 3);
    addPhotos({paint("a.jpg", 0), paint("b.jpg", 1)});
    putIntoSlot(session(), a, PhotoId{1});
    putIntoSlot(session(), b, PhotoId{2});
    const Sketch before = sketch();
    PageView& page = window.canvas().page();
    QTest::mousePress(&page, Qt::LeftButton, Qt::ControlModifier, middleOf(a));
    const QPointF to = middleOf(b);
    QMouseEvent move(QEvent::MouseMove, to, page.mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                     Qt::ControlModifier);
    QCoreApplication::sendEvent(&page, &move);
    EXPECT_EQ(page.preview().target, b);
    QTest::mouseRelease(&page, Qt::LeftButton, Qt::ControlModifier, middleOf(b));
    EXPECT_EQ(in(a), PhotoId{2});
    EXPECT_EQ(in(b), PhotoId{1});
    EXPECT_EQ(sketch(), before);
}

TEST_F(PhotosInTheWindow, StayWhereTheyWereWhenADragIsGivenUp) {
    const PieceId a = addSlot(1, 4, 3);
    const PieceId b = addSlot(6, 4, 3);
    addPhotos({paint("a.jpg", 0)});
    putIntoSlot(session(), a, PhotoId{1});
    PageView& page = window.canvas().page();
    QTest::mousePress(&page, Qt::LeftButton, Qt::ControlModifier, middleOf(a));
    const QPointF to = middleOf(b);
    QMouseEvent move(QEvent::MouseMove, to, page.mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                     Qt::ControlModifier);
    QCoreApplication::sendEvent(&page, &move);
    QTest::keyClick(&page, Qt::Key_Escape);
    QTest::mouseRelease(&page, Qt::LeftButton, Qt::ControlModifier, middleOf(b));
    EXPECT_EQ(in(a), PhotoId{1});
    EXPECT_FALSE(page.preview().target);
}

TEST_F(PhotosInTheWindow, LeaveTheTrayWithDeleteAndComeBackWithUndo) {
    const PieceId slot = addSlot(1, 6, 4);
    addPhotos({paint("a.jpg", 0)});
    putIntoSlot(session(), slot, PhotoId{1});
    session().select({slot});
    tray().setFocus(Qt::TabFocusReason);
    tray().setCurrentIndex(tray().model()->index(0, 0));
    QTest::keyClick(&tray(), Qt::Key_Delete);
    EXPECT_TRUE(session().work().photos.empty());
    EXPECT_TRUE(sketch().pieces.contains(slot));  // the slot is not what was meant
    EXPECT_TRUE(QFile::exists(inFolder("a.jpg")));
    session().undoStack().undo();
    EXPECT_EQ(in(slot), PhotoId{1});
}

TEST_F(PhotosInTheWindow, AreSavedAsAPageBesideTheSketch) {
    const PieceId slot = addSlot(1, 6, 4);
    questions.saveAnswer = inFolder("garden.sketch.svg");
    ASSERT_TRUE(window.files().save());
    addPhotos({paint("a.jpg", 0)});
    putIntoSlot(session(), slot, PhotoId{1});
    settle();
    questions.saveAnswer = inFolder("garden.page.svg");
    ASSERT_TRUE(window.files().save());
    EXPECT_EQ(questions.asked.last(), QStringLiteral("save ") + inFolder("garden.page.svg"));
    EXPECT_TRUE(session().isClean());
    const Making saved = session().making();
    QFile file(inFolder("garden.page.svg"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().contains("data:image/jpeg;base64,"));
    ASSERT_TRUE(window.files().open(inFolder("garden.sketch.svg")));
    EXPECT_TRUE(session().work().isEmpty());
    ASSERT_TRUE(window.files().open(inFolder("garden.page.svg")));
    EXPECT_EQ(session().making(), saved);
    EXPECT_EQ(settings.value().recentFiles.first(), inFolder("garden.page.svg"));
}

TEST_F(PhotosInTheWindow, AreTakenWithoutTheDocumentThatCameAlong) {
    QMimeData mime;
    mime.setUrls(
        {QUrl::fromLocalFile(paint("a.jpg", 0)), QUrl::fromLocalFile(inFolder("other.page.svg"))});
    drop(mime, addSlot(1, 6, 4));
    settle();
    EXPECT_EQ(session().work().photos.size(), 1u);
    EXPECT_TRUE(questions.asked.last().contains(QStringLiteral("document was not opened")));
}

TEST_F(PhotosInTheWindow, AreFoundAgainOrAskedFor) {
    const PieceId slot = addSlot(1, 6, 4);
    addPhotos({paint("a.jpg", 0)});
    putIntoSlot(session(), slot, PhotoId{1});
    const Placement before = *find(session().work(), slot);
    QDir().mkpath(inFolder("away"));
    ASSERT_TRUE(QFile::rename(inFolder("a.jpg"), inFolder("away/renamed.jpg")));
    window.photos().lookAgain();  // where it was and below is looked through by itself
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            return session().work().photos.at(PhotoId{1}).path ==
                   inFolder("away/renamed.jpg").toStdString();
        },
        10'000));
    EXPECT_EQ(*find(session().work(), slot), before);

    settle();  // it is read where it was found
    ASSERT_TRUE(QFile::remove(inFolder("away/renamed.jpg")));
    window.photos().lookAgain();
    settle();
    const ContentKey content = session().work().photos.at(PhotoId{1}).content;
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return window.photos().access().ifOpen()->stateOf(content) == PhotoState::Missing; },
        10'000));
    EXPECT_TRUE(window.photos().isOutOfReach(PhotoId{1}));
    questions.whereAnswer = paint("other.jpg", 4);
    window.photos().askWhere(PhotoId{1});
    settle();
    EXPECT_TRUE(questions.wasAsked(QStringLiteral("instead other.jpg")));
    EXPECT_EQ(session().work().photos.at(PhotoId{1}).content, content);  // the answer was no
    questions.insteadAnswer = true;
    window.photos().askWhere(PhotoId{1});
    settle();
    EXPECT_NE(session().work().photos.at(PhotoId{1}).content, content);
    EXPECT_EQ(*find(session().work(), slot), before);
}

TEST_F(PhotosInTheWindow, ComeFromAWatchedFolder) {
    QDir().mkpath(inFolder("phone"));
    questions.photoFolderAnswer = inFolder("phone");
    trigger("Watch a folder");
    EXPECT_EQ(settings.value().watchedFolder, inFolder("phone"));
    QTest::qWait(300);
    addPhotos({paint("first.jpg", 1)});  // the page has photos, so it takes more
    paint("phone/new.jpg", 0);
    EXPECT_TRUE(QTest::qWaitFor([&] { return session().work().photos.size() == 2u; }, 10'000));
    trigger("Stop watching phone");
    EXPECT_TRUE(settings.value().watchedFolder.isEmpty());
}

TEST(PhotosWithoutThePart, LeaveEverythingElseWorking) {
    const QTemporaryDir folder;
    DiskFileStore files;
    SettingsStore settings(folder.filePath(QStringLiteral("settings.ini")));
    ScriptedQuestions questions;
    OpenWork work(files, folder.filePath(QStringLiteral("recovery")));
    MainWindow window(work, settings, questions, folder.path());
    window.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.photos().panel() != nullptr; }));
    window.photos().add({folder.filePath(QStringLiteral("a.jpg"))});
    EXPECT_TRUE(window.statusLine().sentence().contains(QStringLiteral("Photos cannot be read")));
    Making making{blankSketch(), {}};
    Photo photo;
    photo.path = "/photos/a.jpg";
    photo.upright = {4032, 3024};
    ASSERT_TRUE(apply(making, PageEdit{{}, addPhotos(making.work, {&photo, 1})}));
    work.session.reset(making);
    ASSERT_TRUE(work.document.saveAs(folder.filePath(QStringLiteral("a.page.svg"))));
    ASSERT_TRUE(window.files().open(folder.filePath(QStringLiteral("a.page.svg"))));
    EXPECT_EQ(work.session.making(), making);
}

}  // namespace
}  // namespace matwright::app
