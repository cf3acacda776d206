// SPDX-License-Identifier: MIT
#include "app/cutting/papers_window.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSpinBox>
#include <QTableView>
#include <QTimer>

#include "app/cutting/paper_dialog.h"
#include "app/cutting/papers_model.h"
#include "tests/app/cutting/cutting_fixture.h"
#include "tests/support/temporary_folder.h"

namespace matwright::app {
namespace {

class PapersWindowTest : public CuttingFixture {
  protected:
    void open() {
        window = std::make_unique<PapersWindow>(file(), settings, asks, nullptr);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    int rows() const { return window->table().model()->rowCount(); }
    QString cell(int row, int column) const {
        return window->table().model()->index(row, column).data().toString();
    }
    void chooseRow(int row) {
        const QRect place =
            window->table().visualRect(window->table().model()->index(row, PapersModel::Count));
        QTest::mouseClick(window->table().viewport(), Qt::LeftButton, {}, place.center());
    }
    QLineEdit* search() { return window->findChild<QLineEdit*>(); }
    // Types into the dialog that comes up, as a person does; `then` looks at it before it goes.
    template <typename Then>
    void inDialog(Then then) {
        QTimer::singleShot(0, window.get(), [this, then] {
            auto* dialog = window->findChild<PaperDialog*>();
            ASSERT_NE(dialog, nullptr);
            then(*dialog);
        });
    }
    static QLineEdit* field(const QWidget& dialog, const QString& name) {
        for (auto* edit : dialog.findChildren<QLineEdit*>()) {
            if (edit->accessibleName() == name) {
                return edit;
            }
        }
        ADD_FAILURE() << "no field " << name.toStdString();
        return nullptr;
    }
    static void type(const QWidget& dialog, const QString& name, const QString& text) {
        QLineEdit* edit = field(dialog, name);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
    }

    std::unique_ptr<PapersWindow> window;
};

TEST_F(PapersWindowTest, SaysWhatToDoWhereThereIsNoPaperYet) {
    open();
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(button(*window, "Add paper…")->isEnabled());
    EXPECT_FALSE(button(*window, "Change…")->isEnabled());
    EXPECT_FALSE(button(*window, "Remove")->isEnabled());
    EXPECT_FALSE(button(*window, "Undo")->isEnabled());
    EXPECT_FALSE(button(*window, "Export CSV…")->isEnabled());
}

TEST_F(PapersWindowTest, KeepsAPaperThatWasTypedWithFractions) {
    open();
    inDialog([](PaperDialog& dialog) {
        type(dialog, "Name", "kraft cardstock");
        type(dialog, "Width", "5 1/2");
        type(dialog, "Height", "178 mm");
        dialog.findChild<QSpinBox*>()->setValue(3);
        press(dialog, "OK");
    });
    press(*window, "Add paper…");
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(cell(0, PapersModel::Name), "kraft cardstock");
    EXPECT_EQ(cell(0, PapersModel::Count), "3");
    const auto kept = store().list();
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->front().size.width, Length::inches(5, 1, 2));
    EXPECT_EQ(kept->front().size.height, Length::hundredthMillimetres(17'800));
    EXPECT_EQ(window->news(), "Added kraft cardstock.");
}

TEST_F(PapersWindowTest, TellsInTheDialogWhatKeepsAPaperFromBeingAdded) {
    open();
    inDialog([](PaperDialog& dialog) {
        press(dialog, "OK");
        EXPECT_TRUE(dialog.problem().contains("name"));
        type(dialog, "Name", "kraft");
        type(dialog, "Width", "wide");
        press(dialog, "OK");
        EXPECT_TRUE(dialog.problem().contains("wide"));
        EXPECT_TRUE(dialog.isVisible());
        dialog.reject();
    });
    press(*window, "Add paper…");
    EXPECT_EQ(rows(), 0);
}

TEST_F(PapersWindowTest, ChangesTheChosenPaper) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12), 5)));
    open();
    chooseRow(0);
    inDialog([](PaperDialog& dialog) {
        dialog.findChild<QSpinBox*>()->setValue(4);
        press(dialog, "OK");
    });
    press(*window, "Change…");
    EXPECT_EQ(cell(0, PapersModel::Count), "4");
    EXPECT_EQ(store().list()->front().count, 4);
}

TEST_F(PapersWindowTest, UndoesAndBringsBackByButtonAndKey) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    chooseRow(0);
    QTest::keyClick(&window->table(), Qt::Key_Delete);
    EXPECT_EQ(rows(), 0);
    press(*window, "Undo");
    EXPECT_EQ(rows(), 1);
    QTest::keySequence(window.get(), QKeySequence(QKeySequence::Redo));
    EXPECT_EQ(rows(), 0);
    QTest::keySequence(window.get(), QKeySequence(QKeySequence::Undo));
    EXPECT_EQ(rows(), 1);
}

TEST_F(PapersWindowTest, FindsByWordsInAnyOrder) {
    const PaperOnHand papers[] = {paper("blue dots", inches(12, 12)),
                                  paper("blue cardstock", inches(12, 12)),
                                  paper("kraft", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    QTest::keyClicks(search(), "DOTS blue");
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(cell(0, PapersModel::Name), "blue dots");
}

TEST_F(PapersWindowTest, SortsSizesByTheirArea) {
    const PaperOnHand papers[] = {paper("a", inches(12, 12)), paper("b", inches(9, 9)),
                                  paper("c", inches(4, 6))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    window->table().sortByColumn(PapersModel::PaperSize, Qt::AscendingOrder);
    EXPECT_EQ(cell(0, PapersModel::Name), "c");
    EXPECT_EQ(cell(1, PapersModel::Name), "b");
    EXPECT_EQ(cell(2, PapersModel::Name), "a");
}

TEST_F(PapersWindowTest, ExportsATableThatCanBeImportedAgain) {
    ASSERT_TRUE(store().add(paper("dots, \"blue\"", inches(12, 12), 2)));
    open();
    toSave = QString::fromStdString(folder() / "papers");
    press(*window, "Export CSV…");
    toOpen = toSave + ".csv";
    toImport = ImportChoice::All;
    press(*window, "Import CSV…");
    EXPECT_EQ(window->problem(), "");
    ASSERT_EQ(rows(), 2);
    EXPECT_EQ(cell(0, PapersModel::Name), cell(1, PapersModel::Name));
    press(*window, "Undo");
    EXPECT_EQ(rows(), 1);
}

TEST_F(PapersWindowTest, ATableOfWhatIsThereAlreadyDoesNotDoubleTheList) {
    const PaperOnHand papers[] = {paper("dots", inches(12, 12), 2), paper("kraft", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    toSave = QString::fromStdString(folder() / "papers.csv");
    press(*window, "Export CSV…");
    toOpen = toSave;
    press(*window, "Import CSV…");
    EXPECT_EQ(rows(), 2);
    EXPECT_EQ(asked, QStringList{"Everything in papers.csv is on the list already (2)."});
    std::string table = test::readFile(folder() / "papers.csv");
    test::writeFile(folder() / "papers.csv", table + "plum,12,12,3,,,,,,,\r\n");
    toImport = ImportChoice::OnlyNew;
    press(*window, "Import CSV…");
    EXPECT_EQ(asked.back(),
              "Of the papers in papers.csv there are 2 on the list already and 1 new.");
    EXPECT_EQ(rows(), 3);
    EXPECT_EQ(window->news(), "Imported 1 paper from papers.csv.");
    press(*window, "Undo");
    EXPECT_EQ(rows(), 2);
}

TEST_F(PapersWindowTest, AListThatAnotherProgramHoldsIsASentenceAndReadLater) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    auto holding = std::make_unique<Holding>(file());
    open();
    EXPECT_TRUE(window->problem().contains("Another program is busy"))
        << window->problem().toStdString();
    EXPECT_FALSE(button(*window, "Add paper…")->isEnabled());
    holding.reset();
    ASSERT_TRUE(QTest::qWaitFor([this] { return rows() == 1; }, 20'000));
    EXPECT_EQ(window->problem(), "");
    EXPECT_TRUE(button(*window, "Add paper…")->isEnabled());
}

TEST_F(PapersWindowTest, NamesTheLineOfATableThatCannotBeRead) {
    test::writeFile(folder() / "broken.csv", "Name,Width,Height\r\nkraft,12 in,tall\r\n");
    open();
    toOpen = QString::fromStdString(folder() / "broken.csv");
    press(*window, "Import CSV…");
    EXPECT_TRUE(window->problem().contains("2")) << window->problem().toStdString();
    EXPECT_EQ(rows(), 0);
}

TEST_F(PapersWindowTest, ShowsWhatAnotherProgramChangedWhenItComesToTheFront) {
    open();
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    QEvent front(QEvent::WindowActivate);
    QCoreApplication::sendEvent(window.get(), &front);
    EXPECT_EQ(rows(), 1);
}

TEST_F(PapersWindowTest, SaysThatTheListCannotBeOpenedAndOffersNothingThen) {
    test::writeFile(file(), "this is no database, and long enough to be looked at");
    open();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_FALSE(button(*window, "Add paper…")->isEnabled());
}

}  // namespace
}  // namespace matwright::app
