// SPDX-License-Identifier: MIT
#include "app/parts/parts.h"

#include <gtest/gtest.h>

#include <QDialog>
#include <QFile>
#include <QTemporaryDir>
#include <memory>

#include "app/photos/photo_service.h"
#include "app/photos/photos_part.h"
#include "app/printing/template_part.h"
#include "app/settings/settings.h"

// An interface that no part has.
class StrangePart {
  public:
    virtual ~StrangePart() = default;
};
Q_DECLARE_INTERFACE(StrangePart, "org.matwright.StrangePart")

namespace matwright::app {
namespace {

const QString parts = QStringLiteral(PARTS_FOLDER);

// The code of the refusal; that it says where and what to do, too.
ErrorCode refused(const QString& folder, const QString& name) {
    const auto part = openPart<TemplatePart>(folder, name);
    EXPECT_FALSE(part);
    if (part) {
        return {};
    }
    const std::string text = part.error().text();
    EXPECT_NE(text.find((folder + u'/').toStdString()), std::string::npos) << text;
    EXPECT_NE(text.find("Install Matwright again"), std::string::npos) << text;
    return part.error().code;
}

TEST(Parts, OpenOnFirstUseAndAreTheSameAfterwards) {
    const auto first = openPart<TemplatePart>(parts, QStringLiteral("template"));
    ASSERT_TRUE(first) << first.error().text();
    EXPECT_EQ(openPart<TemplatePart>(parts, QStringLiteral("template")), first);
}

TEST(Parts, TheTemplatePartMakesAWindowOfItsParent) {
    const auto part = openPart<TemplatePart>(parts, QStringLiteral("template"));
    ASSERT_TRUE(part) << part.error().text();
    const QTemporaryDir folder;
    SettingsStore settings(folder.filePath(QStringLiteral("settings.ini")));
    QWidget parent;
    const QDialog* window = (*part)->makeWindow({blankSketch(), {}}, settings, {}, [] {}, &parent);
    ASSERT_NE(window, nullptr);
    EXPECT_EQ(window->parent(), &parent);
    EXPECT_FALSE(window->isVisible());
    EXPECT_EQ(window->windowTitle(), QStringLiteral("Template"));
}

TEST(Parts, ThePhotosPartMakesAServiceThatReadsNothingYet) {
    const auto part = openPart<PhotosPart>(parts, QStringLiteral("photos"));
    ASSERT_TRUE(part) << part.error().text();
    const QTemporaryDir folder;
    const std::unique_ptr<PhotoService> service((*part)->makeService(folder.path()));
    ASSERT_TRUE(service);
    EXPECT_TRUE(service->isIdle());
    EXPECT_EQ(service->memoryUsed(), 0);
}

TEST(Parts, OneThatIsMissingIsNamedWithWhatToDo) {
    const QTemporaryDir folder;
    EXPECT_EQ(refused(folder.path(), QStringLiteral("template")), ErrorCode::NotFound);
}

TEST(Parts, AFileThatIsNoPartIsRefused) {
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("libmatwright-template.so")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("cut short");
    file.close();
    EXPECT_EQ(refused(folder.path(), QStringLiteral("template")), ErrorCode::WrongFormat);
}

TEST(Parts, OneOfAnotherVersionIsRefusedWithoutBeingOpened) {
    EXPECT_EQ(refused(QStringLiteral(OTHER_PARTS_FOLDER), QStringLiteral("earlier")),
              ErrorCode::NewerVersion);
}

TEST(Parts, OneThatIsSomethingElseIsRefused) {
    const auto part = openPart<StrangePart>(parts, QStringLiteral("template"));
    ASSERT_FALSE(part);
    EXPECT_EQ(part.error().code, ErrorCode::WrongFormat);
}

}  // namespace
}  // namespace matwright::app
