// SPDX-License-Identifier: MIT
#pragma once

#include <QLineEdit>
#include <QTableView>
#include <QTimer>

#include "app/cutting/paper_dialog.h"
#include "app/cutting/papers_model.h"
#include "app/cutting/papers_window.h"
#include "tests/app/cutting/cutting_fixture.h"

namespace matwright::app {

// The window of the papers on hand over such a list, and what a person does in it.
class PapersWindowFixture : public CuttingFixture {
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

}  // namespace matwright::app
