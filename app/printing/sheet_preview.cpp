// SPDX-License-Identifier: MIT
#include "app/printing/sheet_preview.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QToolButton>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace matwright::app {

namespace {

constexpr double zoomStep = 1.25;
constexpr int buttonSide = 32;

}  // namespace

SheetPreview::SheetPreview(QWidget* parent)
    : QWidget(parent), m_view(new SheetView), m_scroll(new QScrollArea) {
    m_view->setAccessibleName(tr("Preview"));
    m_scroll->setWidget(m_view);
    m_scroll->setAlignment(Qt::AlignCenter);
    m_scroll->setBackgroundRole(QPalette::Mid);
    m_scroll->setAccessibleName(tr("Preview of the sheets"));
    m_scroll->viewport()->installEventFilter(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    column->addWidget(m_scroll, 1);
    column->addWidget(makeBar());
    connect(m_view, &SheetView::sheetChosen, this, &SheetPreview::showSheet);
    refresh();
}

QToolButton* SheetPreview::addButton(QWidget* bar, const QString& text, const QString& name,
                                     std::function<void()> pressed) {
    auto* button = new QToolButton;
    button->setText(text);
    button->setAccessibleName(name);
    button->setToolTip(name);
    button->setMinimumSize(buttonSide, buttonSide);
    button->setFocusPolicy(Qt::StrongFocus);
    connect(button, &QToolButton::clicked, this, std::move(pressed));
    bar->layout()->addWidget(button);
    return button;
}

QWidget* SheetPreview::makeBar() {
    auto* bar = new QWidget;
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 4, 0, 0);
    m_all = addButton(bar, tr("All sheets"), tr("Show all sheets"), [this] { showAll(); });
    m_previous =
        addButton(bar, QStringLiteral("‹"), tr("Previous sheet"), [this] { showNext(-1); });
    m_place = new QLabel;
    m_place->setAlignment(Qt::AlignCenter);
    row->addWidget(m_place);
    m_next = addButton(bar, QStringLiteral("›"), tr("Next sheet"), [this] { showNext(1); });
    row->addStretch();
    m_further =
        addButton(bar, QStringLiteral("−"), tr("Zoom out"), [this] { setZoom(m_zoom / zoomStep); });
    m_fit = addButton(bar, tr("Fit"), tr("Zoom to fit"), [this] { setZoom(1); });
    m_closer =
        addButton(bar, QStringLiteral("+"), tr("Zoom in"), [this] { setZoom(m_zoom * zoomStep); });
    return bar;
}

void SheetPreview::setSheets(std::optional<TemplateSheets> sheets) {
    m_view->setSheets(std::move(sheets));
    refresh();
}

void SheetPreview::setZoom(double zoom) {
    const double before = m_zoom;
    m_zoom = std::clamp(zoom, 1.0, maxZoom);
    const auto keepMiddle = [&](QScrollBar* bar, int room) {
        const double middle = (bar->value() + room / 2.0) * m_zoom / before;
        return static_cast<int>(std::lround(middle - room / 2.0));
    };
    const int x = keepMiddle(m_scroll->horizontalScrollBar(), m_scroll->viewport()->width());
    const int y = keepMiddle(m_scroll->verticalScrollBar(), m_scroll->viewport()->height());
    refresh();
    m_scroll->horizontalScrollBar()->setValue(x);
    m_scroll->verticalScrollBar()->setValue(y);
}

void SheetPreview::showSheet(int index) {
    if (index >= 0 && index < m_view->sheetCount()) {
        m_view->show(index);
        refresh();
    }
}

void SheetPreview::showAll() {
    m_view->show(std::nullopt);
    setZoom(1);
}

void SheetPreview::showNext(int step) {
    const int count = m_view->sheetCount();
    if (count > 0) {
        const int from = m_view->shown().value_or(step > 0 ? -1 : count);
        showSheet(std::clamp(from + step, 0, count - 1));
    }
}

// The view gets the room there is, times the zoom, in the shape of what it shows.
void SheetPreview::layOut() {
    const QSizeF content = m_view->contentInches();
    const QSize room = m_scroll->maximumViewportSize();
    const double scale =
        std::min(room.width() / content.width(), room.height() / content.height()) * m_zoom;
    m_view->resize(std::max(1, static_cast<int>(content.width() * scale)),
                   std::max(1, static_cast<int>(content.height() * scale)));
}

void SheetPreview::refresh() {
    const int count = m_view->sheetCount();
    const std::optional<int> shown = m_view->shown();
    for (QWidget* part : {static_cast<QWidget*>(m_all), static_cast<QWidget*>(m_previous),
                          static_cast<QWidget*>(m_next), static_cast<QWidget*>(m_place)}) {
        part->setVisible(count > 1);
    }
    m_all->setEnabled(shown.has_value());
    m_previous->setEnabled(shown != 0);
    m_next->setEnabled(shown != count - 1);
    if (shown && m_view->sheets()->tilePlan) {
        const auto& tile = m_view->sheets()->tilePlan->tiles[static_cast<std::size_t>(*shown)];
        m_place->setText(tr("Sheet %1 of %2 (%3)")
                             .arg(*shown + 1)
                             .arg(count)
                             .arg(QString::fromStdString(tile.name())));
    } else {
        m_place->setText(tr("%1 sheets").arg(count));
    }
    m_further->setEnabled(m_zoom > 1);
    m_fit->setEnabled(m_zoom > 1);
    m_closer->setEnabled(m_zoom < maxZoom);
    layOut();
}

void SheetPreview::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layOut();
}

bool SheetPreview::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Wheel) {
        auto* wheel = static_cast<QWheelEvent*>(event);
        if (wheel->modifiers() & Qt::ControlModifier) {
            setZoom(m_zoom * std::pow(zoomStep, wheel->angleDelta().y() / 120.0));
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

}  // namespace matwright::app
