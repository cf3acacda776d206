// SPDX-License-Identifier: MIT
#include "app/printplan/prints_on_hand_window.h"

#include <QComboBox>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

#include "app/photos/photo_access.h"
#include "app/photos/reading/photo_reader.h"
#include "core/printplan/plan_input.h"
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
    void open(PhotoService* service = nullptr) {
        window = std::make_unique<PrintsOnHandWindow>(settings, service, asks, nullptr);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    void press(const QString& text) {
        for (QPushButton* button : window->findChildren<QPushButton*>()) {
            if (button->text() == text) {
                ASSERT_TRUE(button->isEnabled()) << text.toStdString();
                QTest::mouseClick(button, Qt::LeftButton);
                return;
            }
        }
        FAIL() << text.toStdString();
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
    EXPECT_FALSE(window->list().item(0, 0)->icon().isNull());
    window.reset();
}

TEST_F(PrintsOnHandWindowTest, APrintIsUsedAndPutBack) {
    keepOne("kite.jpg");
    open();
    ASSERT_EQ(window->list().rowCount(), 1);
    window->list().selectRow(0);
    press("&Used");
    EXPECT_EQ(window->list().rowCount(), 0);
    window->shown().setCurrentIndex(1);
    ASSERT_EQ(window->list().rowCount(), 1);
    window->list().selectRow(0);
    press("Put &back");
    window->shown().setCurrentIndex(0);
    EXPECT_EQ(window->list().rowCount(), 1);
    EXPECT_TRUE(window->problem().isEmpty());
}

TEST_F(PrintsOnHandWindowTest, UndoTakesBackTheLatestChange) {
    keepOne("kite.jpg");
    open();
    window->list().selectRow(0);
    press("&Thrown away");
    EXPECT_EQ(window->list().rowCount(), 0);
    press("U&ndo");
    EXPECT_EQ(window->list().rowCount(), 1);
}

}  // namespace
}  // namespace matwright::app
