// SPDX-License-Identifier: MIT
#pragma once

#include <QLayout>
#include <QList>

namespace matwright::app {

// Widgets side by side in their own sizes, going on in the next line where there is no more room.
class FlowLayout final : public QLayout {
  public:
    explicit FlowLayout(QWidget* parent = nullptr);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override { m_items.append(item); }
    int count() const override { return static_cast<int>(m_items.size()); }
    QLayoutItem* itemAt(int index) const override { return m_items.value(index); }
    QLayoutItem* takeAt(int index) override;
    Qt::Orientations expandingDirections() const override { return {}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override { return minimumSize(); }
    QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

  private:
    // The height it takes; moves the widgets only when `isReal`.
    int layOut(const QRect& rect, bool isReal) const;

    QList<QLayoutItem*> m_items;
};

}  // namespace matwright::app
