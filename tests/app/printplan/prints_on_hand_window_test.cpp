// SPDX-License-Identifier: MIT
#include "app/printplan/prints_on_hand_window.h"

#include <QComboBox>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include "app/photos/photo_access.h"
#include "app/photos/reading/photo_reader.h"
#include "core/printplan/plan_input.h"
#include "tests/app/photos/fake_photo_service.h"
#include "tests/app/printplan/plan_fixture.h"

namespace matwright::app {
namespace {

class PrintsOnHandWindowTest : public PlanFixture {
  protected:
    void keepOne(const std::string& name) {
        const Size size{Length::inches(3), Length::inches(4)};
        const PhotoId photo = addPhoto(1, {400, 300});
        put(photo, addSlot({}, size));
        const Print print = matwright::printsOf(making, {}).back();
        ASSERT_TRUE(store().addOnHand({lookOf(print, making.work.photos.at(photo)), name, ""},
                                      "2026-07-01"));
    }
    int rows() const { return window->list().model()->rowCount(); }
    bool hasPicture(int row) const {
        return !window->list().model()->index(row, 0).data(Qt::DecorationRole).isNull();
    }
    int selected() const {
        return static_cast<int>(window->list().selectionModel()->selectedRows().size());
    }
    void open(PhotoService* service = nullptr) {
        window = std::make_unique<PrintsOnHandWindow>(settings, service, asks, nullptr);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    // "U&ndo" goes on with what it takes back.
    QPushButton* button(const QString& text) const {
        for (QPushButton* button : window->findChildren<QPushButton*>()) {
            if (button->text().startsWith(text)) {
                return button;
            }
        }
        return nullptr;
    }
    void press(const QString& text) {
        ASSERT_TRUE(button(text)) << text.toStdString();
        ASSERT_TRUE(button(text)->isEnabled()) << text.toStdString();
        QTest::mouseClick(button(text), Qt::LeftButton);
    }
    std::unique_ptr<PrintsOnHandWindow> window;
};

TEST_F(PrintsOnHandWindowTest, AnEmptyListSaysHowPrintsComeThere) {
    open();
    EXPECT_EQ(window->summary(), "0 prints");
    EXPECT_FALSE(window->list().isVisible());
}

// The file's place and the photo's size are not kept with a print.
TEST_F(PrintsOnHandWindowTest, ShowsAPictureOfAPhotoThatIsKnownByWhatItHolds) {
    keepOne("kite.jpg");
    PhotoReader service(QString::fromStdString(folder() / "cache"));
    const WantedPhoto photo = wanted(making.work.photos.begin()->second);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !service.thumbnail(photo).isNull(); }, 30'000));
    open(&service);
    EXPECT_TRUE(hasPicture(0));
    window.reset();
}

TEST_F(PrintsOnHandWindowTest, APrintIsUsedAndPutBack) {
    keepOne("kite.jpg");
    open();
    ASSERT_EQ(rows(), 1);
    window->list().selectRow(0);
    press("&Used");
    EXPECT_EQ(rows(), 0);
    window->shown().setCurrentIndex(1);
    ASSERT_EQ(rows(), 1);
    window->list().selectRow(0);
    press("Put &back");
    window->shown().setCurrentIndex(0);
    EXPECT_EQ(rows(), 1);
    EXPECT_TRUE(window->problem().isEmpty());
}

TEST_F(PrintsOnHandWindowTest, UndoTakesBackTheLatestChange) {
    keepOne("kite.jpg");
    open();
    window->list().selectRow(0);
    press("&Thrown away");
    EXPECT_EQ(rows(), 0);
    press("U&ndo");
    EXPECT_EQ(rows(), 1);
}

TEST_F(PrintsOnHandWindowTest, PressedTwiceAButtonActsOnWhatWasChosenOnly) {
    for (const char* name : {"kite.jpg", "boat.jpg", "dune.jpg"}) {
        keepOne(name);
    }
    open();
    window->list().selectRow(0);
    press("&Thrown away");
    EXPECT_EQ(selected(), 0);
    EXPECT_FALSE(button("&Thrown away")->isEnabled());
    QTest::mouseClick(button("&Thrown away"), Qt::LeftButton);
    window->throwAway();
    EXPECT_EQ(rows(), 2);
    EXPECT_EQ(store().prints(PrintState::Wasted)->size(), 1U);
    EXPECT_TRUE(window->list().hasFocus());
}

TEST_F(PrintsOnHandWindowTest, AnotherViewChoosesNothingElse) {
    keepOne("kite.jpg");
    keepOne("boat.jpg");
    const auto kept = *store().prints();
    ASSERT_TRUE(store().waste(kept[0].id, "2026-07-02"));
    open();
    window->list().selectRow(0);
    window->shown().setCurrentIndex(2);
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(selected(), 0);
    window->shown().setCurrentIndex(0);
    window->list().selectRow(0);
    window->shown().setCurrentIndex(3);
    EXPECT_EQ(rows(), 2);
    ASSERT_EQ(selected(), 1);
    EXPECT_EQ(window->list().selectionModel()->selectedRows(1).front().data(), "boat.jpg");
}

TEST_F(PrintsOnHandWindowTest, SeveralPrintsAreOneChangeAndComeBackTogether) {
    for (const char* name : {"kite.jpg", "boat.jpg", "dune.jpg"}) {
        keepOne(name);
    }
    open();
    window->list().selectAll();
    press("&Thrown away");
    EXPECT_EQ(rows(), 0);
    EXPECT_EQ(window->news(), "3 prints are thrown away.");
    press("U&ndo");
    EXPECT_EQ(rows(), 3);
}

TEST_F(PrintsOnHandWindowTest, UndoTakesBackOnlyWhatItsButtonNames) {
    keepOne("kite.jpg");
    open();
    window->list().selectRow(0);
    press("&Used");
    ASSERT_TRUE(store().addOnHand({store().prints()->front().look, "dune.jpg", ""},
                                  "2026-07-03"));  // by another program
    press("U&ndo");
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_EQ(store().prints(PrintState::Used)->size(), 1U);
    EXPECT_EQ(store().prints()->size(), 2U);
    EXPECT_TRUE(button("U&ndo")->toolTip().contains("Added 1 print"));
}

TEST_F(PrintsOnHandWindowTest, WhatWasNotDoneHereIsTakenBackOnlyAfterAQuestion) {
    keepOne("kite.jpg");
    open();
    EXPECT_TRUE(button("U&ndo")->text().contains("Added 1 print"));
    agrees = false;
    press("U&ndo");
    EXPECT_EQ(questions.size(), 1);
    EXPECT_EQ(rows(), 1);
    agrees = true;
    press("U&ndo");
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(window->news().contains("Added 1 print")) << window->news().toStdString();
}

TEST_F(PrintsOnHandWindowTest, APrintThatIsGluedOnMayBeSpoiledToo) {
    keepOne("kite.jpg");
    ASSERT_TRUE(store().take(store().prints()->front().id, "Harbour", "2026-07-02"));
    open();
    window->shown().setCurrentIndex(1);
    window->list().selectRow(0);
    press("&Thrown away");
    EXPECT_EQ(store().prints()->front().state, PrintState::Wasted);
}

TEST_F(PrintsOnHandWindowTest, PicturesAreMadeOnceAndOnlyOfWhatIsInSight) {
    FakePhotoService service;
    const PhotoId id = addPhoto(1, {400, 300});
    const ContentKey content = making.work.photos.at(id).content;
    constexpr int prints = 60;
    for (int i = 0; i < prints; ++i) {
        keepOne("kite.jpg");
    }
    open(&service);
    EXPECT_EQ(service.thumbnailsAsked, 1);  // the photo of all
    service.thumbnails[content] = QImage(256, 192, QImage::Format_RGB32);
    emit service.thumbnailReady(content);
    window->list().viewport()->repaint();
    const int asked = service.thumbnailsAsked;
    EXPECT_GT(asked, 1);
    EXPECT_LT(asked, prints / 2);
    for (int i = 0; i < 20; ++i) {
        emit service.thumbnailReady(content);
        window->list().viewport()->repaint();
    }
    EXPECT_EQ(service.thumbnailsAsked, asked);
    window.reset();
}

}  // namespace
}  // namespace matwright::app
