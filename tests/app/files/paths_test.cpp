// SPDX-License-Identifier: MIT
#include "app/files/paths.h"

#include <gtest/gtest.h>

namespace matwright::app {
namespace {

TEST(WithSketchSuffix, AddsWhatIsMissing) {
    struct Case {
        const char* given;
        const char* expected;
    };
    for (const auto& [given, expected] : {Case{"/a/page", "/a/page.sketch.svg"},
                                          {"/a/page.svg", "/a/page.sketch.svg"},
                                          {"/a/page.sketch", "/a/page.sketch.svg"},
                                          {"/a/page.sketch.svg", "/a/page.sketch.svg"},
                                          {"/a/PAGE.SKETCH.SVG", "/a/PAGE.SKETCH.SVG"},
                                          {"/a/page.v2", "/a/page.v2.sketch.svg"},
                                          {"/a.svg/page", "/a.svg/page.sketch.svg"}}) {
        EXPECT_EQ(withSketchSuffix(QString::fromUtf8(given)), QString::fromUtf8(expected));
    }
}

TEST(WithSuffix, TurnsASketchsNameIntoAPagesAndBack) {
    struct Case {
        const char* given;
        const char* expected;
    };
    for (const auto& [given, expected] : {Case{"/a/garden.sketch.svg", "/a/garden.page.svg"},
                                          {"/a/garden", "/a/garden.page.svg"},
                                          {"/a/garden.page", "/a/garden.page.svg"},
                                          {"/a/garden.page.svg", "/a/garden.page.svg"},
                                          {"/a/my.sketch", "/a/my.sketch.page.svg"}}) {
        EXPECT_EQ(withSuffix(QString::fromUtf8(given), DocumentKind::Page),
                  QString::fromUtf8(expected));
    }
    EXPECT_EQ(withSketchSuffix(QStringLiteral("/a/garden.page.svg")),
              QStringLiteral("/a/garden.sketch.svg"));
    EXPECT_EQ(kindOfPath(QStringLiteral("/a/GARDEN.PAGE.SVG")), DocumentKind::Page);
    EXPECT_EQ(kindOfPath(QStringLiteral("/a/garden.svg")), DocumentKind::Sketch);
}

TEST(DocumentNameOf, IsTheFileNameWithoutFolderAndSuffix) {
    EXPECT_EQ(documentNameOf(QStringLiteral("/a/Our garden.sketch.svg")),
              QStringLiteral("Our garden"));
    EXPECT_EQ(documentNameOf(QStringLiteral("/a/Our garden.page.svg")),
              QStringLiteral("Our garden"));
    EXPECT_EQ(documentNameOf(QStringLiteral("drawing.svg")), QStringLiteral("drawing"));
    EXPECT_EQ(documentNameOf(QStringLiteral("/a/notes.txt")), QStringLiteral("notes.txt"));
}

TEST(ToPath, KeepsLettersOfAllLanguages) {
    const QString path = QStringLiteral("/a/\u00dcbung \u9875.sketch.svg");
    EXPECT_EQ(toPath(path).string(), path.toStdString());
}

TEST(ShownText, NamesThePlaceFirst) {
    EXPECT_EQ(shownText({ErrorCode::NotFound, "It is not there.", "a.svg"}),
              QStringLiteral("a.svg: It is not there."));
}

}  // namespace
}  // namespace matwright::app
