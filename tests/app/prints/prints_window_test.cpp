// SPDX-License-Identifier: MIT
#include "app/prints/prints_window.h"

#include <QCheckBox>
#include <QImage>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>
#include <algorithm>

#include "app/prints/prints_options_panel.h"
#include "app/settings/settings.h"
#include "tests/app/photos/fake_photo_service.h"
#include "tests/app/prints/prints_fixture.h"

namespace matwright::app {
namespace {

class PrintsWindowTest : public PrintsFixture {
  protected:
    PrintsWindowTest() {
        const PhotoId photo = addPhoto(1, {1600, 1200});
        put(photo, addSlot({}, {Length::inches(3), Length::inches(4)}));
        put(photo, addSlot({Length::inches(4), {}}, {Length::inches(3), Length::inches(4)}));
        asks.folder = [this](QWidget*, const QString&, const QString&) { return answer; };
        asks.fileName = [](QWidget*, const QString&, const QString&, const QString&) {
            return QString();
        };
        asks.show = [this](const QString& path) { shown = path; };
        asks.files = std::make_shared<DiskFileStore>();
        std::filesystem::create_directory(folder() / "out");
        answer = QString::fromStdString(folder() / "out");
    }
    void open(PhotoService* service = nullptr) {
        window =
            std::make_unique<PrintsWindow>(making, QString(), settings, service, asks, nullptr);
        window->show();
    }
    void waitUntilDone() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !window->isWorking(); }, 60'000));
        QCoreApplication::processEvents();
    }
    QStringList files() const {
        return QDir(QString::fromStdString(folder() / "out")).entryList(QDir::Files, QDir::Name);
    }

    SettingsStore settings{QString::fromStdString(folder() / "settings.ini")};
    PrintsAsks asks;
    QString answer;
    QString shown;
    std::unique_ptr<PrintsWindow> window;
};

TEST_F(PrintsWindowTest, SavesEveryPrintInItsExactSize) {
    open();
    EXPECT_EQ(window->list().rowCount(), 2);
    window->savePrints();
    waitUntilDone();
    ASSERT_EQ(files().size(), 2);
    for (const QString& name : files()) {
        const QImage image(answer + u'/' + name);
        EXPECT_EQ(image.size(), QSize(900, 1200));
        EXPECT_NEAR(image.dotsPerMeterX() * 0.0254, 300, 0.1);
    }
    EXPECT_TRUE(window->result().contains("2 files")) << window->result().toStdString();
}

TEST_F(PrintsWindowTest, SaysUnderTheChoicesWhatTheyDoNotDo) {
    open();
    EXPECT_EQ(window->options().notes(), QString());
    for (auto* box : window->findChildren<QCheckBox*>()) {
        if (box->text().contains(QStringLiteral("marks"))) {
            box->click();
        }
    }
    EXPECT_TRUE(window->options().notes().contains(QStringLiteral("cut marks")));
}

TEST_F(PrintsWindowTest, NeverOverwritesAFile) {
    open();
    window->savePrints();
    waitUntilDone();
    window->savePrints();
    waitUntilDone();
    EXPECT_EQ(files().size(), 4);
}

TEST_F(PrintsWindowTest, TellsWhichPhotoCouldNotBeRead) {
    making.work.photos.at(PhotoId{1}).path = (folder() / "gone.jpg").string();
    open();
    window->savePrints();
    waitUntilDone();
    EXPECT_TRUE(files().isEmpty());
    EXPECT_FALSE(window->result().contains("files are in"));
}

TEST_F(PrintsWindowTest, NoFolderMeansNothingIsDone) {
    answer.clear();
    open();
    window->savePrints();
    EXPECT_FALSE(window->isWorking());
    EXPECT_TRUE(files().isEmpty());
}

// News of a photo shows the rows anew, and a second run would hide what the first one made.
TEST_F(PrintsWindowTest, NewsOfAPhotoDoNotLetTheSameBeBegunTwice) {
    FakePhotoService service;
    open(&service);
    const auto saveIsEnabled = [this] {
        const auto buttons = window->findChildren<QPushButton*>();
        return std::ranges::any_of(buttons, [](const QPushButton* button) {
            return button->text().contains(QStringLiteral("prints…")) && button->isEnabled();
        });
    };
    EXPECT_TRUE(saveIsEnabled());
    window->savePrints();
    ASSERT_TRUE(window->isWorking());
    service.setState(making.work.photos.begin()->second.content, PhotoState::There);
    EXPECT_FALSE(saveIsEnabled());
    window->savePrints();
    waitUntilDone();
    EXPECT_EQ(files().size(), 2);
    EXPECT_TRUE(window->result().contains("2 files")) << window->result().toStdString();
    EXPECT_TRUE(saveIsEnabled());
    window.reset();
}

TEST_F(PrintsWindowTest, CancelLeavesNoHalfFile) {
    open();
    window->savePrints();
    QTest::keyClick(window.get(), Qt::Key_Escape);
    waitUntilDone();
    EXPECT_TRUE(window->isVisible());
    for (const QString& name : files()) {
        EXPECT_FALSE(QImage(answer + u'/' + name).isNull());
    }
}

}  // namespace
}  // namespace matwright::app
