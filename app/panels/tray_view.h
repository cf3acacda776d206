// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QListView>
#include <vector>

#include "app/panels/ready_pieces.h"

namespace matwright::app {

// The ready-made pieces of one group; dragging takes a piece along as a mime object.
class TrayModel final : public QAbstractListModel {
    Q_OBJECT

  public:
    explicit TrayModel(std::vector<ReadyPiece> ready, QObject* parent = nullptr);
    const ReadyPiece& at(const QModelIndex& index) const;
    // Whether the photo slots carry one mat with the usual border; at first they carry none.
    void setMatted(bool matted);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QStringList mimeTypes() const override;
    QMimeData* mimeData(const QModelIndexList& indexes) const override;
    Qt::DropActions supportedDragActions() const override { return Qt::CopyAction; }

  private:
    std::vector<ReadyPiece> m_ready;
};

// The group as little pictures of true relative size that wrap into rows; as tall as its content.
// Arrow keys move, Enter and a double click place, the mouse drags.
class TrayView final : public QListView {
    Q_OBJECT

  public:
    TrayView(std::vector<ReadyPiece> ready, double pixelsPerInch, QWidget* parent = nullptr);
    const TrayModel& pieces() const { return *m_model; }
    void setMatted(bool matted) { m_model->setMatted(matted); }
    // What goes along with the pointer while the piece is dragged.
    QPixmap dragPicture(const QModelIndex& index) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

  signals:
    void placeRequested(const matwright::Piece& piece);
    // Down in the last row, up in the first: the next group's turn.
    void leftDownwards();
    void leftUpwards();

  protected:
    void startDrag(Qt::DropActions actions) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void updateGeometries() override;

  private:
    TrayModel* m_model;
    double m_pixelsPerInch;
};

}  // namespace matwright::app
