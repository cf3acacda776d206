// SPDX-License-Identifier: MIT
// The least a program with a main window can be: an empty QMainWindow that ends the program as
// soon as it has been painted. What start_up_check holds the real program against.
#include <QApplication>
#include <QMainWindow>

class BareWindow final : public QMainWindow {
  protected:
    void paintEvent(QPaintEvent* event) override {
        QMainWindow::paintEvent(event);
        QCoreApplication::exit(0);
    }
};

int main(int argc, char** argv) {
    const QApplication app(argc, argv);
    QApplication::setStyle(QStringLiteral("Fusion"));
    BareWindow window;
    window.resize(1178, 736);
    window.show();
    return QApplication::exec();
}
