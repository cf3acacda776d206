// SPDX-License-Identifier: MIT
#pragma once

#include <QPushButton>
#include <QWidget>
#include <initializer_list>

class QBoxLayout;
class QHBoxLayout;
class QLabel;
class QProgressBar;

namespace matwright::app {

class TintedLabel;

// Buttons at a window's foot are a little higher than its other controls.
inline constexpr int footControlHeight = 32;

// Puts the button at the row's end, with the height that a control has. Enter presses it only where
// it has the focus.
QPushButton* addButton(QBoxLayout* row, QPushButton* button);

// The same for a new one that calls a function of the window: its own, or a dialog's.
template <typename Window, typename Base>
QPushButton* addButton(QBoxLayout* row, const QString& text, Window* window,
                       void (Base::*pressed)()) {
    auto* button = addButton(row, new QPushButton(text));
    QObject::connect(button, &QPushButton::clicked, window, pressed);
    return button;
}

// The foot of a window: what is wrong across its whole width; under that what was done, or how far
// something is, and at the right the window's buttons.
class WindowFoot final : public QWidget {
    Q_OBJECT

  public:
    explicit WindowFoot(QWidget* parent = nullptr);

    // At the right, in this order. A button that is the window's default has to be told so itself.
    void add(std::initializer_list<QPushButton*> buttons);
    template <typename Window, typename Base>
    QPushButton* add(const QString& text, Window* window, void (Base::*pressed)()) {
        auto* button = new QPushButton(text);
        connect(button, &QPushButton::clicked, window, pressed);
        add({button});
        return button;
    }
    // Another control, in the same row.
    void addBeside(QWidget* control, int stretch = 0);

    // Whole sentences, heard by assistive technology; an empty one takes its line away.
    void say(const QString& news, const QString& problem = {});
    QString news() const;
    QString problem() const;

    // In the place of the news while it is shown, with `words` in it: so much of `total` is done. A
    // total of 0 only says that something is going on. Begins hidden.
    void showProgress(int done, int total, const QString& words = {});
    void hideProgress();

  private:
    TintedLabel* m_problem;
    QLabel* m_news;
    QProgressBar* m_progress;
    QHBoxLayout* m_row;
};

}  // namespace matwright::app
