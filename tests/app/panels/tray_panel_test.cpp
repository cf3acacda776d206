// SPDX-License-Identifier: MIT
#include "app/panels/tray_panel.h"

#include <QCheckBox>
#include <QMimeData>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <set>

#include "app/editing/piece_mime.h"
#include "app/panels/tray_view.h"
#include "core/measure/catalogue.h"
#include "core/sketch/soundness.h"
#include "tests/app/panels/panel_bench.h"

namespace matwright::app {
namespace {

class TrayPanelTest : public PanelBench {
  protected:
    TrayPanelTest() : panel(settings) {
        show(panel, {280, 700});
        photos = control<TrayView>(panel, "Photo slots");
        papers = control<TrayView>(panel, "Papers and places");
        QObject::connect(&panel, &TrayPanel::placeRequested, &panel,
                         [this](const Piece& piece) { placed.push_back(piece); });
    }
    QModelIndex indexOf(const TrayView& view, Size size) {
        for (int row = 0; row < view.pieces().rowCount(); ++row) {
            const QModelIndex index = view.pieces().index(row);
            if (view.pieces().at(index).piece.size == size) {
                return index;
            }
        }
        return {};
    }

    TrayPanel panel;
    TrayView* photos;
    TrayView* papers;
    std::vector<Piece> placed;
};

TEST_F(TrayPanelTest, OffersEveryPrintOfTheCatalogueBothWaysUp) {
    for (const NamedSize& known : printSizes()) {
        for (const Size size : {known.size, known.size.turned()}) {
            const QModelIndex index = indexOf(*photos, size);
            ASSERT_TRUE(index.isValid()) << known.id;
            const Piece& piece = photos->pieces().at(index).piece;
            EXPECT_EQ(piece.kind, PieceKind::PhotoSlot);
            EXPECT_EQ(piece.printSize, size);
        }
    }
}

TEST_F(TrayPanelTest, OffersEveryOtherKindAndNothingUnsound) {
    std::set<PieceKind> kinds;
    for (const TrayView* view : {photos, papers}) {
        for (int row = 0; row < view->pieces().rowCount(); ++row) {
            const QModelIndex index = view->pieces().index(row);
            const Piece& piece = view->pieces().at(index).piece;
            kinds.insert(piece.kind);
            EXPECT_FALSE(findFault(piece));
            EXPECT_FALSE(index.data(Qt::AccessibleTextRole).toString().isEmpty());
        }
    }
    EXPECT_EQ(kinds.size(), std::size(allPieceKinds));
}

TEST_F(TrayPanelTest, ADoubleClickPlaces) {
    const QModelIndex index = indexOf(*photos, inchSize(4, 6));
    const QPoint at = photos->visualRect(index).center();
    QTest::mouseClick(photos->viewport(), Qt::LeftButton, {}, at);
    EXPECT_TRUE(placed.empty()) << "one click only picks";
    QTest::mouseDClick(photos->viewport(), Qt::LeftButton, {}, at);
    ASSERT_EQ(placed.size(), 1U);
    EXPECT_EQ(placed[0].size, inchSize(4, 6));
}

TEST_F(TrayPanelTest, EnterPlacesWhatTheArrowsPicked) {
    photos->setFocus(Qt::TabFocusReason);
    QTest::keyClick(photos, Qt::Key_Right);
    QTest::keyClick(photos, Qt::Key_Return);
    ASSERT_EQ(placed.size(), 1U);
    EXPECT_EQ(placed[0], photos->pieces().at(photos->pieces().index(1)).piece);
}

TEST_F(TrayPanelTest, ArrowsReachEveryPieceOfBothGroupsAndBringItIntoSight) {
    photos->setFocus(Qt::TabFocusReason);
    const auto* area = panel.findChild<QScrollArea*>();
    std::set<int> seen;
    for (int i = 0; i < photos->pieces().rowCount(); ++i) {
        seen.insert(photos->currentIndex().row());
        const QRect cell = photos->visualRect(photos->currentIndex());
        const QPoint top = photos->viewport()->mapTo(area->viewport(), cell.topLeft());
        EXPECT_GE(top.y(), 0);
        EXPECT_LE(top.y() + cell.height(), area->viewport()->height());
        QTest::keyClick(photos, Qt::Key_Right);
    }
    EXPECT_EQ(seen.size(), static_cast<std::size_t>(photos->pieces().rowCount()));
    QTest::keyClick(photos, Qt::Key_Down);
    EXPECT_TRUE(papers->hasFocus());
    QTest::keyClick(papers, Qt::Key_Up);
    EXPECT_TRUE(photos->hasFocus());
}

TEST_F(TrayPanelTest, TheDragCarriesThePieceAndAPictureOfItsRelativeSize) {
    const QModelIndex small = indexOf(*photos, inchSize(3, 4));
    const QModelIndex large = indexOf(*photos, inchSize(6, 8));
    const std::unique_ptr<QMimeData> mime(photos->model()->mimeData({small}));
    EXPECT_EQ(fromMime(mime.get()), std::vector<Piece>{photos->pieces().at(small).piece});
    const QSizeF a = photos->dragPicture(small).deviceIndependentSize() - QSizeF(2, 2);
    const QSizeF b = photos->dragPicture(large).deviceIndependentSize() - QSizeF(2, 2);
    EXPECT_NEAR(b.width() / a.width(), 2, 0.05);
    EXPECT_NEAR(b.height() / a.height(), 2, 0.05);
}

TEST_F(TrayPanelTest, GivesPhotoSlotsAMatWhereAskedAndRemembersThat) {
    const QModelIndex index = indexOf(*photos, inchSize(4, 6));
    const auto matsOf = [&] { return photos->pieces().at(index).piece.mats.size(); };
    EXPECT_EQ(matsOf(), 0U);
    labelled<QCheckBox>(panel, "With a 1/8 in mat")->click();
    ASSERT_EQ(matsOf(), 1U);
    EXPECT_EQ(photos->pieces().at(index).piece.mats[0].border, inches(0, 1, 8));
    EXPECT_TRUE(papers->pieces().at(papers->pieces().index(0)).piece.mats.empty());
    const std::unique_ptr<QMimeData> mime(photos->model()->mimeData({index}));
    EXPECT_EQ(fromMime(mime.get()).at(0).mats.size(), 1U);

    TrayPanel later(settings);
    show(later, {280, 700});
    auto* box = labelled<QCheckBox>(later, "With a 1/8 in mat");
    EXPECT_TRUE(box->isChecked());
    labelled<QCheckBox>(panel, "With a 1/8 in mat")->click();
    EXPECT_EQ(matsOf(), 0U);
}

TEST_F(TrayPanelTest, ShowsEveryPieceWholeWhateverItsWidth) {
    for (const int width : {200, 280, 520}) {
        panel.resize(width, 700);
        QTest::qWait(20);
        for (const TrayView* view : {photos, papers}) {
            for (int row = 0; row < view->pieces().rowCount(); ++row) {
                const QRect cell = view->visualRect(view->pieces().index(row));
                EXPECT_TRUE(view->viewport()->rect().contains(cell)) << width << " px, row " << row;
            }
        }
    }
}

}  // namespace
}  // namespace matwright::app
