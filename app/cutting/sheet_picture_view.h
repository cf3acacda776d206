// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>
#include <optional>

#include "core/cutpicture/sheet_picture.h"

namespace matwright::app {

// One planned sheet, or one step of it as it lies on the trimmer, as large as fits. Always on white
// like paper.
class SheetPictureView final : public QWidget {
    Q_OBJECT

  public:
    enum class Shows { Sheet, Step };
    explicit SheetPictureView(Shows shows, QWidget* parent = nullptr);

    // A step counts from 0; one that there is not is none.
    void show(std::optional<PlannedSheet> sheet, std::optional<std::size_t> step);
    std::optional<std::size_t> step() const { return m_step; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void draw();

    const Shows m_shows;
    std::optional<PlannedSheet> m_sheet;
    std::optional<std::size_t> m_step;
    std::vector<DrawingItem> m_items;
};

}  // namespace matwright::app
