// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include "app/printing/sheet_view.h"

class QLabel;
class QScrollArea;
class QToolButton;

namespace matwright::app {

// The sheets with what is needed to look at them: all at once or one after the other, as large as
// the room allows or closer. Ctrl and the wheel zooms.
class SheetPreview final : public QWidget {
    Q_OBJECT

  public:
    explicit SheetPreview(QWidget* parent = nullptr);

    void setSheets(std::optional<TemplateSheets> sheets);
    const SheetView& view() const { return *m_view; }

    // 1 shows everything, up to maxZoom.
    static constexpr double maxZoom = 8;
    double zoom() const { return m_zoom; }
    void setZoom(double zoom);
    void showSheet(int index);
    void showAll();
    void showNext(int step);

  protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget* makeBar();
    QToolButton* addButton(QWidget* bar, const QString& text, const QString& name,
                           std::function<void()> pressed);
    void layOut();
    void refresh();

    SheetView* m_view;
    QScrollArea* m_scroll;
    QToolButton* m_all = nullptr;
    QToolButton* m_previous = nullptr;
    QToolButton* m_next = nullptr;
    QToolButton* m_closer = nullptr;
    QToolButton* m_further = nullptr;
    QToolButton* m_fit = nullptr;
    QLabel* m_place = nullptr;
    double m_zoom = 1;
};

}  // namespace matwright::app
