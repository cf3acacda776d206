// SPDX-License-Identifier: MIT
#include "app/cutting/papers_window.h"

#include <QComboBox>
#include <QIcon>
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

// How many dialogs about a paper come up one after the other while `act` runs; each is cancelled.
template <typename Act>
int dialogsOf(const PapersWindow& window, Act act) {
    int count = 0;
    QTimer looking;
    QObject::connect(&looking, &QTimer::timeout, &window, [&] {
        for (auto* dialog : window.findChildren<PaperDialog*>()) {
            if (dialog->isVisible()) {
                ++count;
                dialog->reject();
            }
        }
    });
    looking.start(5);
    act();
    QTest::qWait(30);
    return count;
}

TEST_F(PapersWindowTest, SaysWhatToDoWhereThereIsNoPaperYet) {
    open();
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(button(*window, "Add paper…")->isEnabled());
    EXPECT_FALSE(button(*window, "Change…")->isEnabled());
    EXPECT_FALSE(button(*window, "Remove")->isEnabled());
    EXPECT_FALSE(button(*window, "Undo")->isEnabled());
    EXPECT_FALSE(button(*window, "Export CSV…")->isEnabled());
    const QImage shown = window->grab().toImage();
    const QRect list(window->table().mapTo(window.get(), QPoint()), window->table().size());
    const QRgb paper = shown.pixel(list.center() + QPoint(0, list.height() / 3));
    bool hasWords = false;
    for (int x = list.left() + 30; x < list.right() - 30 && !hasWords; ++x) {
        for (int y = list.center().y() - 40; y < list.center().y() + 40; ++y) {
            hasWords = hasWords || shown.pixel(x, y) != paper;
        }
    }
    EXPECT_TRUE(hasWords) << "the list is bare";
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

TEST_F(PapersWindowTest, EnterOnARowOpensChangeAndNothingAfterIt) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    chooseRow(0);
    EXPECT_EQ(dialogsOf(*window, [this] { QTest::keyClick(&window->table(), Qt::Key_Return); }), 1);
    EXPECT_TRUE(window->isVisible());
}

TEST_F(PapersWindowTest, EnterPressesTheButtonWithTheFocusAndNoOther) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    button(*window, "Undo")->setFocus();
    EXPECT_EQ(
        dialogsOf(*window, [this] { QTest::keyClick(window->focusWidget(), Qt::Key_Return); }), 0);
    EXPECT_EQ(rows(), 0);
    search()->setFocus();
    EXPECT_EQ(
        dialogsOf(*window, [this] { QTest::keyClick(window->focusWidget(), Qt::Key_Return); }), 0);
    button(*window, "Add paper…")->setFocus();
    EXPECT_EQ(dialogsOf(*window, [this] { QTest::keyClick(window->focusWidget(), Qt::Key_Enter); }),
              1);
    button(*window, "Close")->setFocus();
    EXPECT_EQ(
        dialogsOf(*window, [this] { QTest::keyClick(window->focusWidget(), Qt::Key_Return); }), 0);
    EXPECT_FALSE(window->isVisible());
}

TEST_F(PapersWindowTest, KeepsTheChosenRowsWhenTheListIsReadAgain) {
    const PaperOnHand papers[] = {paper("a", inches(12, 12)), paper("b", inches(12, 12)),
                                  paper("c", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    window->table().selectAll();
    ASSERT_TRUE(store().add(paper("d", inches(12, 12))));
    QEvent front(QEvent::WindowActivate);
    QCoreApplication::sendEvent(window.get(), &front);
    EXPECT_EQ(rows(), 4);
    EXPECT_EQ(window->table().selectionModel()->selectedRows().size(), 3);
    press(*window, "Remove");
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(cell(0, PapersModel::Name), "d");
}

TEST_F(PapersWindowTest, ChoosesTheNextRowAfterRemovalAndWhatComesBack) {
    const PaperOnHand papers[] = {paper("a", inches(12, 12)), paper("b", inches(12, 12)),
                                  paper("c", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    open();
    const auto chosen = [this] {
        QStringList names;
        for (const QModelIndex& row : window->table().selectionModel()->selectedRows()) {
            names << row.data().toString();
        }
        return names;
    };
    chooseRow(1);
    press(*window, "Remove");
    EXPECT_EQ(chosen(), QStringList{"c"});
    press(*window, "Remove");
    EXPECT_EQ(chosen(), QStringList{"a"});
    press(*window, "Undo");
    EXPECT_EQ(chosen(), QStringList{"c"});
    QTest::keySequence(window.get(), QKeySequence(Qt::CTRL | Qt::Key_Y));
    EXPECT_EQ(rows(), 1);
}

TEST_F(PapersWindowTest, SaysSoWhereNothingWasChanged) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    chooseRow(0);
    inDialog([](PaperDialog& dialog) { press(dialog, "OK"); });
    press(*window, "Change…");
    EXPECT_EQ(window->news(), "Nothing was changed.");
}

TEST_F(PapersWindowTest, KeepsTheChosenRowWhenAKeyTakesBackAChange) {
    const PaperOnHand papers[] = {paper("a", inches(12, 12)), paper("b", inches(12, 12))};
    ASSERT_TRUE(store().add(papers, "Add"));
    ASSERT_TRUE(store().add(paper("c", inches(12, 12))));
    open();
    chooseRow(0);
    QTest::keyPress(window.get(), Qt::Key_Control, Qt::ControlModifier);
    QTest::keySequence(window.get(), QKeySequence(QKeySequence::Undo));
    QTest::keyRelease(window.get(), Qt::Key_Control);
    ASSERT_EQ(rows(), 2);
    const QModelIndexList chosen = window->table().selectionModel()->selectedRows();
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(cell(chosen.front().row(), PapersModel::Name), "a");
}

TEST_F(PapersWindowTest, ChoosesEveryPaperThatWasImported) {
    test::writeFile(folder() / "new.csv",
                    "Name,Width,Height\r\nred,12 in,12 in\r\nblue,12 in,12 in\r\n");
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    toOpen = QString::fromStdString(folder() / "new.csv");
    press(*window, "Import CSV…");
    EXPECT_EQ(rows(), 3);
    EXPECT_EQ(window->table().selectionModel()->selectedRows().size(), 2);
}

TEST_F(PapersWindowTest, TakesBackOnlyTheChangeThatItsButtonNames) {
    ASSERT_TRUE(store().add(paper("kraft", inches(12, 12))));
    open();
    ASSERT_TRUE(store().add(paper("vellum", inches(12, 12))));
    window->undo();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_EQ(rows(), 2);
    EXPECT_TRUE(button(*window, "Undo")->toolTip().contains("vellum"));
    window->undo();
    EXPECT_EQ(rows(), 1);
    ASSERT_TRUE(store().undo());
    window->redo();
    EXPECT_FALSE(window->problem().isEmpty());
    EXPECT_EQ(rows(), 0);
}

TEST_F(PapersWindowTest, NameThatNobodyTouchedStaysWhole) {
    const std::string name = "  " + std::string(130, 'k') + "  raft ";
    ASSERT_TRUE(store().add(paper(name.c_str(), inches(12, 12), 5)));
    open();
    chooseRow(0);
    inDialog([](PaperDialog& dialog) {
        dialog.findChild<QSpinBox*>()->setValue(4);
        press(dialog, "OK");
    });
    press(*window, "Change…");
    EXPECT_EQ(store().list()->front().count, 4);
    EXPECT_EQ(store().list()->front().name, name);
}

TEST_F(PapersWindowTest, NameThatIsTooLongIsRefusedNotCut) {
    open();
    inDialog([](PaperDialog& dialog) {
        field(dialog, "Name")->insert(QString(maxPaperNameBytes + 1, u'k'));
        press(dialog, "OK");
        EXPECT_TRUE(dialog.problem().contains("400 of its 401 letters"));
        EXPECT_TRUE(dialog.isVisible());
        dialog.reject();
    });
    press(*window, "Add paper…");
    EXPECT_EQ(rows(), 0);
}

TEST_F(PapersWindowTest, ShowsThePictureOfAPaperOnceItIsRead) {
    QImage picture(600, 600, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(QString::fromStdString(folder() / "dots.png")));
    PaperOnHand dots = paper("dots", inches(12, 12));
    dots.colour = {200, 170, 130};
    dots.picture = folder() / "dots.png";
    dots.pictureWidth = Length::inches(12);
    ASSERT_TRUE(store().add(dots));
    open();
    const auto middle = [this](QIcon::Mode mode) {
        const QImage swatch = window->table()
                                  .model()
                                  ->index(0, PapersModel::Name)
                                  .data(Qt::DecorationRole)
                                  .value<QIcon>()
                                  .pixmap(PapersModel::swatchSize, mode)
                                  .toImage();
        return swatch.pixelColor(swatch.width() / 2, swatch.height() / 2);
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return middle(QIcon::Normal) == QColor(40, 90, 140); }));
    EXPECT_EQ(middle(QIcon::Selected), QColor(40, 90, 140));
}

TEST_F(PapersWindowTest, TakesAChosenPictureWithItsMeanColour) {
    QImage picture(600, 300, QImage::Format_RGB32);
    picture.fill(QColor(40, 90, 140));
    ASSERT_TRUE(picture.save(QString::fromStdString(folder() / "dots.png")));
    test::writeFile(folder() / "words.png", "no picture");
    ASSERT_TRUE(store().add(paper("dots", inches(12, 12))));
    open();
    chooseRow(0);
    inDialog([this](PaperDialog& dialog) {
        dialog.setPicture(QString::fromStdString(folder() / "words.png"));
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isReading(); }));
        EXPECT_TRUE(dialog.problem().contains("words.png"));
        dialog.setPicture(QString::fromStdString(folder() / "dots.png"));
        EXPECT_EQ(dialog.problem(), "");
        press(dialog, "OK");
        EXPECT_TRUE(dialog.isVisible()) << "accepted before the picture was read";
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isReading(); }));
        press(dialog, "OK");
    });
    press(*window, "Change…");
    const PaperOnHand kept = store().list()->front();
    EXPECT_EQ(kept.picture, (folder() / "dots.png").string());
    EXPECT_EQ(kept.colour, (Colour{40, 90, 140}));
    EXPECT_EQ(kept.pictureWidth, Length::inches(12));
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
