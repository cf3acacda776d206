// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>
#include <optional>

#include "app/rendering/template_sheets.h"

namespace matwright::app {

// Paper as it will come out: one sheet, or all of them as they lie side by side. Fills its own
// area; the owner decides how large that is. A click on one of several sheets asks for that one.
class SheetView final : public QWidget {
    Q_OBJECT

  public:
    explicit SheetView(QWidget* parent = nullptr);

    // Nothing shows the empty desk.
    void setSheets(std::optional<TemplateSheets> sheets);
    const std::optional<TemplateSheets>& sheets() const { return m_sheets; }
    int sheetCount() const;
    // One sheet (0 first), or all.
    void show(std::optional<int> sheet);
    std::optional<int> shown() const { return m_shown; }

    // Of what is shown, in inches, with a free rim around it.
    QSizeF contentInches() const;
    // Where sheet `index` is in the widget, in pixels; empty where it is not shown.
    QRectF sheetRect(int index) const;

  signals:
    void sheetChosen(int index);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;

  private:
    // The plan of the sheets that are shown side by side; nullptr where one is shown.
    const TilePlan* spreadOut() const;
    // Of sheet `index` within the content.
    QPointF cornerInches(int index) const;
    // The sheet under this place, when all are shown.
    std::optional<int> sheetAt(QPointF position) const;
    void paintSheet(QPainter& painter, int index) const;

    std::optional<TemplateSheets> m_sheets;
    std::optional<int> m_shown;
};

}  // namespace matwright::app
