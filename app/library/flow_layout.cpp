// SPDX-License-Identifier: MIT
#include "app/library/flow_layout.h"

#include <algorithm>

namespace matwright::app {
namespace {

constexpr int between = 4;

}  // namespace

FlowLayout::FlowLayout(QWidget* parent) : QLayout(parent) {
    setContentsMargins({});
}

FlowLayout::~FlowLayout() {
    qDeleteAll(m_items);
}

QLayoutItem* FlowLayout::takeAt(int index) {
    return index >= 0 && index < count() ? m_items.takeAt(index) : nullptr;
}

int FlowLayout::heightForWidth(int width) const {
    return layOut({0, 0, width, 0}, false);
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : m_items) {
        size = size.expandedTo(item->minimumSize());
    }
    return size;
}

void FlowLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    layOut(rect, true);
}

int FlowLayout::layOut(const QRect& rect, bool isReal) const {
    QPoint at = rect.topLeft();
    int lineHeight = 0;
    for (QLayoutItem* item : m_items) {
        const QSize size = item->sizeHint().boundedTo({rect.width(), QLAYOUTSIZE_MAX});
        if (at.x() > rect.left() && at.x() + size.width() > rect.right() + 1) {
            at = {rect.left(), at.y() + lineHeight + between};
            lineHeight = 0;
        }
        if (isReal) {
            item->setGeometry({at, size});
        }
        at.rx() += size.width() + between;
        lineHeight = std::max(lineHeight, size.height());
    }
    return at.y() + lineHeight - rect.top();
}

}  // namespace matwright::app
