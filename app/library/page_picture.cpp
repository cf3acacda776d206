// SPDX-License-Identifier: MIT
#include "app/library/page_picture.h"

#include <QPainter>

#include "app/library/wall_cell.h"

namespace matwright::app {
namespace {

constexpr int ground = 8;  // on each side of the page
// These pictures stand in places that are about so much wider than high, and lying pages fill them.
constexpr double lyingShare = 1.3;

}  // namespace

PagePicture::PagePicture(int height, QWidget* parent) : QWidget(parent) {
    setFixedHeight(height);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void PagePicture::setPicture(const QImage& picture) {
    m_picture = picture;
    update();
}

int PagePicture::sidePixels(const SketchFacts& facts) const {
    const bool isLying = facts.doublePage || facts.pageSize.width > facts.pageSize.height;
    return qRound((height() - 2 * ground) * (isLying ? lyingShare : 1) * devicePixelRatioF());
}

void PagePicture::paintEvent(QPaintEvent* /*event*/) {
    if (m_picture.isNull()) {
        return;
    }
    QPainter painter(this);
    const QRect room = rect().adjusted(ground, ground, -ground, -ground);
    QRect page(QPoint(), m_picture.size().scaled(room.size(), Qt::KeepAspectRatio));
    page.moveCenter(room.center());
    paintPageOn(painter, page, m_picture, palette());
}

}  // namespace matwright::app
