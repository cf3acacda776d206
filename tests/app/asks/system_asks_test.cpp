// SPDX-License-Identifier: MIT
#include "app/asks/system_asks.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QFileDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QTemporaryDir>
#include <QTimer>

namespace matwright::app {
namespace {

struct Answer {
    QString name;
    int questions = 0;  // about a file that is there
};

// Types the name into the save dialog, and declines whatever is asked about it.
Answer saveAs(const QTemporaryDir& folder, const QString& typed) {
    Answer answer;
    QCoreApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
    QTimer driver;
    bool isTyped = false;
    QObject::connect(&driver, &QTimer::timeout, [&] {
        QWidget* modal = QApplication::activeModalWidget();
        if (auto* question = qobject_cast<QMessageBox*>(modal)) {
            ++answer.questions;
            question->reject();
        } else if (auto* dialog = qobject_cast<QFileDialog*>(modal)) {
            if (std::exchange(isTyped, true)) {
                return dialog->reject();
            }
            dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))->setText(typed);
            QMetaObject::invokeMethod(dialog, "accept", Qt::QueuedConnection);
        }
    });
    driver.start(50);
    QWidget parent;
    answer.name = askToSaveAs(&parent, QStringLiteral("Save"), folder.filePath("suggested.pdf"),
                              QStringLiteral("PDF files (*.pdf)"));
    return answer;
}

TEST(AskingToSaveAs, GivesTheEndingAndAsksAboutTheFileThatIsReallyMeant) {
    const QTemporaryDir folder;
    const Answer free = saveAs(folder, QStringLiteral("test"));
    EXPECT_EQ(free.name, folder.filePath("test.pdf"));
    EXPECT_EQ(free.questions, 0);
    QFile there(folder.filePath("test.pdf"));
    ASSERT_TRUE(there.open(QIODevice::WriteOnly));
    const Answer taken = saveAs(folder, QStringLiteral("test"));
    EXPECT_EQ(taken.questions, 1);
    EXPECT_TRUE(taken.name.isEmpty());
}

}  // namespace
}  // namespace matwright::app
