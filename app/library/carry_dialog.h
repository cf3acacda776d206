// SPDX-License-Identifier: MIT
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QPlainTextEdit>

#include "app/library/page_picture.h"
#include "core/carry/carry_over.h"

namespace matwright::app {

// Asks for the page size a sketch is carried over to, and shows before and after, with what has to
// give way.
class CarryDialog final : public QDialog {
    Q_OBJECT

  public:
    explicit CarryDialog(const Sketch& sketch, QWidget* parent = nullptr);

    const CarriedOver& result() const { return m_result; }
    QComboBox& sizes() { return *m_sizes; }
    QString losses() const { return m_losses->toPlainText(); }

  private:
    QWidget* makePictures();
    void carry();

    const Sketch m_sketch;
    CarriedOver m_result;
    QComboBox* m_sizes;
    PagePicture* m_before;
    PagePicture* m_after;
    QLabel* m_afterName;
    QLabel* m_verdict;
    QPlainTextEdit* m_losses;
};

}  // namespace matwright::app
