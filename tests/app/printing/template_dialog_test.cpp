// SPDX-License-Identifier: MIT
#include "app/printing/template_dialog.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QComboBox>
#include <QPrinter>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest/QTest>

#include "app/panels/length_field.h"
#include "app/printing/sheet_preview.h"
#include "app/settings/settings.h"
#include "core/sketch/edit.h"

namespace matwright::app {
namespace {

Sketch pageWithPhoto(Size size) {
    Sketch sketch = blankSketch();
    sketch.page.size = size;
    Piece photo;
    photo.kind = PieceKind::PhotoSlot;
    photo.place = {Length::inches(1), Length::inches(1)};
    photo.size = {Length::inches(6), Length::inches(4)};
    photo.printSize = photo.size;
    (void)apply(sketch, addPieces(sketch, {&photo, 1}));
    return sketch;
}

class TemplateWindow : public testing::Test {
  protected:
    TemplateWindow() : m_settings(m_folder.filePath(QStringLiteral("settings.ini"))) {
        m_asks.fileName = [this](QWidget*, const QString&, const QString& suggested,
                                 const QString&) {
            m_suggested = suggested;
            return m_answer;
        };
        m_asks.replace = [this](QWidget*, const QString& name) {
            m_replaced = name;
            return m_replaceAccepted;
        };
        m_asks.printers = [this] { return m_printers; };
        m_asks.print = [this](QWidget*, QPrinter& printer, int pages) {
            m_pagesOffered = pages;
            printer.setOutputFormat(QPrinter::PdfFormat);
            printer.setOutputFileName(m_folder.filePath(QStringLiteral("printed.pdf")));
            return m_printAccepted;
        };
        m_asks.goOn = [](QWidget*, const QString&) { return false; };
        m_asks.files = m_files;
    }

    TemplateDialog& open(Size page = {Length::inches(12), Length::inches(12)}) {
        return open(pageWithPhoto(page));
    }
    TemplateDialog& open(const Sketch& sketch) { return open(Making{sketch, {}}); }
    TemplateDialog& open(const Making& making) {
        m_dialog = std::make_unique<TemplateDialog>(making, m_settings,
                                                    QStringLiteral("/home/ma/Beach"), m_asks);
        m_dialog->show();
        return *m_dialog;
    }
    QPushButton* button(const QString& start) {
        for (auto* one : m_dialog->findChildren<QPushButton*>()) {
            if (one->text().remove(QLatin1Char('&')).startsWith(start)) {
                return one;
            }
        }
        return nullptr;
    }
    template <typename Field>
    Field* field(const QString& name) {
        for (auto* one : m_dialog->findChildren<Field*>()) {
            if (one->accessibleName() == name || one->objectName() == name) {
                return one;
            }
        }
        return nullptr;
    }
    void choose(bool whole) { m_dialog->findChildren<QRadioButton*>().at(whole)->click(); }
    bool wrote(const char* path) { return m_files->files.contains(path); }

    QTemporaryDir m_folder;
    SettingsStore m_settings;
    TemplateAsks m_asks;
    std::shared_ptr<MemoryFileStore> m_files = std::make_shared<MemoryFileStore>();
    QString m_answer = QStringLiteral("/home/ma/out");
    QString m_suggested;
    QString m_replaced;
    bool m_replaceAccepted = false;
    QStringList m_printers = {QStringLiteral("Kitchen")};
    bool m_printAccepted = true;
    int m_pagesOffered = 0;
    std::unique_ptr<TemplateDialog> m_dialog;
};

TEST_F(TemplateWindow, ShowsEverySheetOfAPageInParts) {
    TemplateDialog& dialog = open();
    const SheetView& view = dialog.preview().view();
    ASSERT_EQ(view.sheetCount(), 4);
    for (int i = 0; i < 4; ++i) {
        EXPECT_TRUE(QRectF(view.rect()).contains(view.sheetRect(i))) << i;
        for (int j = 0; j < i; ++j) {
            EXPECT_FALSE(view.sheetRect(i).intersects(view.sheetRect(j)));
        }
    }
    EXPECT_TRUE(button(QStringLiteral("Print"))->isDefault());
    EXPECT_EQ(dialog.problem(), QString());
}

TEST_F(TemplateWindow, ShowsTheSheetsOfADoublePageAsThePagesLie) {
    Sketch sketch = blankSketch();
    sketch.page.doublePage = true;
    const SheetView& view = open(sketch).preview().view();
    ASSERT_EQ(view.sheetCount(), 8);
    for (int i = 0; i < 8; ++i) {
        EXPECT_TRUE(QRectF(view.rect()).contains(view.sheetRect(i))) << i;
        for (int j = 0; j < i; ++j) {
            EXPECT_FALSE(view.sheetRect(i).intersects(view.sheetRect(j)));
        }
    }
    // Left A2 and right A1 are neighbours, further apart than two sheets of one page.
    EXPECT_EQ(view.sheetRect(1).top(), view.sheetRect(4).top());
    const double joined = view.sheetRect(1).left() - view.sheetRect(0).right();
    const double folded = view.sheetRect(4).left() - view.sheetRect(1).right();
    EXPECT_GT(folded, 2 * joined);
    EXPECT_GT(joined, 0);
}

TEST_F(TemplateWindow, SaysHowMuchTheChecksFoundAndLeadsThere) {
    Sketch sketch = pageWithPhoto({Length::inches(12), Length::inches(12)});
    Piece outside = sketch.pieces.begin()->second;
    outside.place.x = Length::inches(10);
    outside.size.height = Length::inches(5);  // larger than its print, too
    ASSERT_TRUE(apply(sketch, addPieces(sketch, {&outside, 1})));
    const std::size_t found = checkSketch(sketch, {}).size();
    ASSERT_GT(found, 1u);
    TemplateDialog& dialog = open(sketch);
    const QString start = QStringLiteral("%1 things to look at").arg(found);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return button(start) != nullptr && button(start)->isVisible(); }, 5000));
    EXPECT_FALSE(button(start)->isDefault());
    EXPECT_GE(button(start)->height(), 24);
    QSignalSpy asked(&dialog, &TemplateDialog::checksRequested);
    button(start)->click();
    EXPECT_EQ(asked.count(), 1);
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(TemplateWindow, CountsPrintsThatWillNotLookSharp) {
    Making making{pageWithPhoto({Length::inches(12), Length::inches(12)}), {}};
    making.work.photos[PhotoId{1}].upright = {60, 40};
    making.work.placements[making.sketch.order.front()] = Placement{PhotoId{1}, {}, {}};
    open(making);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            const QPushButton* findings = button(QStringLiteral("1 thing to look at"));
            return findings && findings->isVisible();
        },
        5000));
}

TEST_F(TemplateWindow, SaysNothingOfChecksThatFoundNothing) {
    TemplateDialog& dialog = open();
    QTest::qWait(200);
    for (auto* one : dialog.findChildren<QPushButton*>()) {
        EXPECT_FALSE(one->isVisible() && one->text().contains(QStringLiteral("to look at")));
    }
}

TEST_F(TemplateWindow, SavesTheWholePageAsSvgAlsoInParts) {
    TemplateDialog& dialog = open();
    ASSERT_EQ(dialog.preview().view().sheetCount(), 4);
    EXPECT_TRUE(button(QStringLiteral("Save the whole page as SVG")));
    dialog.saveSvg();
    const std::string inParts = m_files->files["/home/ma/out.svg"];
    choose(true);
    dialog.saveSvg();
    EXPECT_EQ(m_files->files["/home/ma/out.svg"], inParts);
    EXPECT_NE(inParts.find("width=\"304.8mm\""), std::string::npos);
}

TEST_F(TemplateWindow, OtherPaperIsNoWishForParts) {
    TemplateDialog& dialog = open();
    auto* paper = dialog.findChildren<QComboBox*>().first();
    paper->setCurrentIndex(paper->findText(QStringLiteral("A4"), Qt::MatchStartsWith));
    EXPECT_EQ(m_settings.value().sheetId, "a4");
    EXPECT_FALSE(m_settings.value().templateTiled);
    choose(true);
    choose(false);
    EXPECT_TRUE(m_settings.value().templateTiled);
}

TEST_F(TemplateWindow, LooksAtOneSheetAfterTheOther) {
    TemplateDialog& dialog = open();
    auto* preview = dialog.findChild<SheetPreview*>();
    preview->showNext(1);
    EXPECT_EQ(preview->view().shown(), 0);
    preview->showNext(1);
    EXPECT_EQ(preview->view().shown(), 1);
    EXPECT_TRUE(preview->view().sheetRect(0).isEmpty());
    preview->showNext(-1);
    preview->showNext(-1);
    EXPECT_EQ(preview->view().shown(), 0);  // the first stays
    preview->showAll();
    EXPECT_EQ(preview->view().shown(), std::nullopt);
    preview->showNext(-1);
    EXPECT_EQ(preview->view().shown(), 3);  // backwards from all is the last
}

TEST_F(TemplateWindow, AClickOnASheetShowsItAlone) {
    TemplateDialog& dialog = open();
    auto* view = dialog.findChild<SheetView*>();
    QTest::mouseClick(view, Qt::LeftButton, {}, view->sheetRect(2).center().toPoint());
    EXPECT_EQ(view->shown(), 2);
    QTest::mouseClick(view, Qt::LeftButton, {}, view->sheetRect(2).center().toPoint());
    EXPECT_EQ(view->shown(), 2);
}

TEST_F(TemplateWindow, ZoomStaysWithinItsEndsAndFitShowsEverything) {
    TemplateDialog& dialog = open();
    auto* preview = dialog.findChild<SheetPreview*>();
    const QSize fitting = preview->view().size();
    preview->setZoom(0.1);
    EXPECT_EQ(preview->zoom(), 1);
    preview->setZoom(2);
    EXPECT_NEAR(preview->view().width(), fitting.width() * 2, 2);
    preview->setZoom(100);
    EXPECT_EQ(preview->zoom(), SheetPreview::maxZoom);
    preview->setZoom(1);
    EXPECT_EQ(preview->view().size(), fitting);
}

TEST_F(TemplateWindow, APageTooLargeToPrintWholeMakesSavingTheNextStep) {
    TemplateDialog& dialog = open();
    choose(true);
    EXPECT_EQ(dialog.preview().view().sheetCount(), 1);
    EXPECT_FALSE(button(QStringLiteral("Print"))->isEnabled());
    EXPECT_TRUE(button(QStringLiteral("Save PDF"))->isDefault());
    choose(false);
    EXPECT_TRUE(button(QStringLiteral("Print"))->isEnabled());
    EXPECT_TRUE(button(QStringLiteral("Print"))->isDefault());
}

TEST_F(TemplateWindow, PaperIsRememberedAndChangesTheSheets) {
    TemplateDialog& dialog = open();
    auto* paper = dialog.findChildren<QComboBox*>().first();
    paper->setCurrentIndex(paper->findText(QStringLiteral("A3"), Qt::MatchStartsWith));
    EXPECT_EQ(dialog.preview().view().sheetCount(), 2);
    EXPECT_EQ(m_settings.value().sheetId, "a3");
    choose(true);
    EXPECT_FALSE(m_settings.value().templateTiled);
}

TEST_F(TemplateWindow, AMarginThatLeavesNoRoomIsAnsweredInPlace) {
    TemplateDialog& dialog = open();
    auto* margin = field<LengthField>(QStringLiteral("Printer margin"));
    ASSERT_TRUE(margin);
    emit margin->valueChanged(Length::inches(4), 0);
    EXPECT_FALSE(dialog.problem().isEmpty());
    EXPECT_FALSE(button(QStringLiteral("Print"))->isEnabled());
    EXPECT_FALSE(button(QStringLiteral("Save PDF"))->isEnabled());
    emit margin->valueChanged(Length::inches(0, 1, 4), 0);
    EXPECT_TRUE(dialog.problem().isEmpty());
    EXPECT_EQ(dialog.preview().view().sheetCount(), 4);
}

TEST_F(TemplateWindow, SavesUnderTheNameThatWasGivenWithItsSuffix) {
    TemplateDialog& dialog = open();
    dialog.savePdf();
    EXPECT_EQ(m_suggested, QStringLiteral("/home/ma/Beach template.pdf"));
    EXPECT_TRUE(m_files->files["/home/ma/out.pdf"].starts_with("%PDF-1.7"));
    EXPECT_EQ(dialog.news(), QStringLiteral("Saved out.pdf."));
    dialog.saveSvg();
    EXPECT_TRUE(wrote("/home/ma/out.svg"));
    m_answer = QStringLiteral("/home/ma/cut.SVG");
    dialog.saveCutLines();
    EXPECT_EQ(m_suggested, QStringLiteral("/home/ma/Beach cut lines.svg"));
    EXPECT_TRUE(wrote("/home/ma/cut.SVG"));
    EXPECT_EQ(dialog.problem(), QString());
}

TEST_F(TemplateWindow, AsksBeforeAnAddedSuffixMeetsAnotherFile) {
    TemplateDialog& dialog = open();
    m_answer = m_folder.filePath(QStringLiteral("out"));
    QFile there(m_answer + QStringLiteral(".pdf"));
    ASSERT_TRUE(there.open(QIODevice::WriteOnly));
    dialog.savePdf();
    EXPECT_EQ(m_replaced, there.fileName());
    EXPECT_TRUE(m_files->files.empty());
    EXPECT_EQ(dialog.news(), QString());
    m_replaceAccepted = true;
    dialog.savePdf();
    EXPECT_TRUE(m_files->files.contains(there.fileName().toStdString()));
    // Of a name that has the suffix the file dialog asks itself.
    m_replaced.clear();
    m_answer = there.fileName();
    dialog.savePdf();
    EXPECT_EQ(m_replaced, QString());
}

TEST_F(TemplateWindow, NeverWritesOverASketch) {
    TemplateDialog& dialog = open();
    for (const char* name : {"/home/ma/Beach.sketch.svg", "/home/ma/Beach.sketch"}) {
        m_answer = QString::fromLatin1(name);
        dialog.saveSvg();
        EXPECT_TRUE(m_files->files.empty()) << name;
        EXPECT_TRUE(dialog.problem().contains(QStringLiteral(".sketch.svg"))) << name;
        dialog.saveCutLines();
        EXPECT_TRUE(m_files->files.empty()) << name;
    }
}

TEST_F(TemplateWindow, ACancelledSaveDoesNothing) {
    TemplateDialog& dialog = open();
    m_answer.clear();
    dialog.savePdf();
    dialog.saveSvg();
    dialog.saveCutLines();
    EXPECT_TRUE(m_files->files.empty());
    EXPECT_EQ(dialog.news(), QString());
}

TEST_F(TemplateWindow, AFailedSaveIsAnsweredInPlace) {
    TemplateDialog& dialog = open();
    m_files->failReplacesWith = Error{ErrorCode::WriteFailed, "The disk is full.", "out.pdf"};
    dialog.savePdf();
    EXPECT_EQ(dialog.problem(), QStringLiteral("out.pdf: The disk is full."));
    EXPECT_EQ(dialog.news(), QString());
    m_files->failReplacesWith.reset();
    dialog.savePdf();
    EXPECT_EQ(dialog.problem(), QString());
}

TEST_F(TemplateWindow, WithoutAPrinterItOffersAPdfAndNoDialog) {
    m_printers.clear();
    TemplateDialog& dialog = open();
    dialog.print();
    EXPECT_EQ(m_pagesOffered, 0);
    EXPECT_TRUE(dialog.problem().contains(QStringLiteral("PDF")));
    EXPECT_TRUE(button(QStringLiteral("Save PDF"))->isDefault());
}

TEST_F(TemplateWindow, PrintsWhatItShows) {
    TemplateDialog& dialog = open();
    dialog.print();
    EXPECT_EQ(m_pagesOffered, 4);
    EXPECT_EQ(dialog.problem(), QString());
    EXPECT_EQ(dialog.news(), QStringLiteral("Saved printed.pdf."));
    EXPECT_TRUE(QFile::exists(m_folder.filePath(QStringLiteral("printed.pdf"))));
}

TEST_F(TemplateWindow, ACancelledPrintDoesNothing) {
    m_printAccepted = false;
    TemplateDialog& dialog = open();
    dialog.print();
    EXPECT_EQ(dialog.news(), QString());
    EXPECT_FALSE(QFile::exists(m_folder.filePath(QStringLiteral("printed.pdf"))));
}

TEST_F(TemplateWindow, APrintThatCannotStartIsAnsweredInPlace) {
    m_asks.print = [](QWidget*, QPrinter& printer, int) {
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(QStringLiteral("/no-such-folder/printed.pdf"));
        return true;
    };
    TemplateDialog& dialog = open();
    dialog.print();
    EXPECT_TRUE(dialog.problem().contains(QStringLiteral("could not be written")));
    EXPECT_EQ(dialog.news(), QString());
}

TEST_F(TemplateWindow, EverythingCanBeReachedByKeyboardAndHasANameAndASize) {
    TemplateDialog& dialog = open();
    int reached = 0;
    for (QWidget* widget : dialog.findChildren<QWidget*>()) {
        if (widget->isVisible() &&
            (qobject_cast<QAbstractButton*>(widget) || qobject_cast<QComboBox*>(widget))) {
            ++reached;
            EXPECT_TRUE(widget->focusPolicy() & Qt::TabFocus) << widget->metaObject()->className();
            EXPECT_GE(widget->height(), 24);
            EXPECT_GE(widget->width(), 24);
            auto* accessible = QAccessible::queryAccessibleInterface(widget);
            ASSERT_TRUE(accessible);
            EXPECT_FALSE(accessible->text(QAccessible::Name).isEmpty())
                << widget->metaObject()->className();
        }
    }
    EXPECT_GE(reached, 15);
}

}  // namespace
}  // namespace matwright::app
