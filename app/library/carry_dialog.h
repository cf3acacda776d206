// SPDX-License-Identifier: MIT
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

#include "app/library/page_picture.h"
#include "core/carry/carry_over.h"

namespace matwright::app {

// Asks for the page that a sketch is carried over to, another size or a double page instead of a
// single one or the other way round, and shows before and after, with what has to give way.
class CarryDialog final : public QDialog {
    Q_OBJECT

  public:
    CarryDialog(const Sketch& sketch, Length trimmerStep, QWidget* parent = nullptr);

    const CarriedOver& result() const { return m_result; }
    QComboBox& sizes() { return *m_sizes; }
    QCheckBox& doublePage() { return *m_doublePage; }
    QPushButton& startButton() { return *m_start; }
    QString verdict() const { return m_verdict->text(); }
    QString losses() const { return m_losses->toPlainText(); }

  private:
    void addSizes();
    QWidget* makePictures();
    PageSetup target() const;
    void carry();
    void showVerdict();

    const Sketch m_sketch;
    const Length m_trimmerStep;
    CarriedOver m_result;
    QComboBox* m_sizes;
    QCheckBox* m_doublePage;
    PagePicture* m_before;
    PagePicture* m_after;
    QLabel* m_afterName;
    QLabel* m_verdict;
    QPlainTextEdit* m_losses;
    QPushButton* m_start;
};

}  // namespace matwright::app
