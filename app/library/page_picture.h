// SPDX-License-Identifier: MIT
#pragma once

#include <QImage>
#include <QWidget>

#include "core/library/facts.h"

namespace matwright::app {

// The picture of a page, as large as fits, on a quiet ground; never distorted.
class PagePicture final : public QWidget {
    Q_OBJECT

  public:
    explicit PagePicture(int height, QWidget* parent = nullptr);

    // A null image leaves the ground empty.
    void setPicture(const QImage& picture);
    // The square the picture of such a page should fill, in device pixels.
    int sidePixels(const SketchFacts& facts) const;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    QImage m_picture;
};

}  // namespace matwright::app
