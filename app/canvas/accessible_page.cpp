// SPDX-License-Identifier: MIT
#include "app/canvas/accessible_page.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <algorithm>
#include <map>

#include "app/canvas/canvas_words.h"
#include "app/canvas/drags/snapping.h"
#include "app/canvas/page_view.h"

namespace matwright::app {

namespace {

// One piece. It holds an id only, so it stays harmless after the piece is gone.
class AccessiblePiece final : public QAccessibleInterface, public QAccessibleActionInterface {
  public:
    AccessiblePiece(PageView& page, PieceId id) : m_page(page), m_id(id) {}

    PieceId pieceId() const { return m_id; }
    bool isValid() const override { return find(m_page.sessionShown().sketch(), m_id) != nullptr; }
    QObject* object() const override { return nullptr; }
    QAccessibleInterface* parent() const override {
        return QAccessible::queryAccessibleInterface(&m_page);
    }
    QAccessibleInterface* child(int) const override { return nullptr; }
    int childCount() const override { return 0; }
    int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    QAccessibleInterface* childAt(int, int) const override { return nullptr; }

    QString text(QAccessible::Text what) const override {
        const Piece* piece = find(m_page.sessionShown().sketch(), m_id);
        if (!piece) {
            return {};
        }
        if (what == QAccessible::Name) {
            return spokenName(m_page.sessionShown().sketch(), m_id, m_page.scale());
        }
        return what == QAccessible::Description ? QString::fromStdString(piece->note) : QString();
    }
    void setText(QAccessible::Text, const QString&) override {}
    QRect rect() const override {
        const Piece* piece = find(m_page.sessionShown().sketch(), m_id);
        if (!piece) {
            return {};
        }
        const QRect box = m_page.viewport().toView(outermostBounds(*piece)).toAlignedRect();
        return box.translated(m_page.mapToGlobal(QPoint(0, 0)));
    }
    QAccessible::Role role() const override { return QAccessible::Graphic; }
    QAccessible::State state() const override {
        QAccessible::State state;
        const auto& session = m_page.sessionShown();
        const Piece* piece = find(session.sketch(), m_id);
        state.invalid = !piece;
        state.selectable = true;
        state.focusable = true;
        state.multiSelectable = true;
        state.selected = session.selection().contains(m_id);
        state.focused = m_page.hasFocus() && session.onlySelected() == m_id;
        state.movable = piece && !piece->locked;
        state.sizeable = state.movable;
        state.offscreen =
            !m_page.rect().intersects(rect().translated(-m_page.mapToGlobal(QPoint(0, 0))));
        return state;
    }
    void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                    : nullptr;
    }

    QStringList actionNames() const override { return {pressAction(), setFocusAction()}; }
    void doAction(const QString& name) override {
        if (isValid() && (name == pressAction() || name == setFocusAction())) {
            m_page.setFocus();
            m_page.revealPiece(m_id);
        }
    }
    QStringList keyBindingsForAction(const QString&) const override { return {}; }

  private:
    PageView& m_page;
    PieceId m_id;
};

class AccessiblePage final : public QAccessibleWidget {
  public:
    explicit AccessiblePage(PageView* page)
        : QAccessibleWidget(page, QAccessible::Canvas), m_page(*page) {}
    ~AccessiblePage() override {
        for (const auto& entry : m_pieces) {
            QAccessible::deleteAccessibleInterface(entry.second);
        }
    }

    int childCount() const override { return static_cast<int>(order().size()); }
    QAccessibleInterface* child(int index) const override {
        return index >= 0 && index < childCount() ? ofPiece(order()[std::size_t(index)]) : nullptr;
    }
    int indexOfChild(const QAccessibleInterface* child) const override {
        const auto* piece = dynamic_cast<const AccessiblePiece*>(child);
        const auto found = piece ? std::ranges::find(order(), piece->pieceId()) : order().end();
        return found == order().end() ? -1 : static_cast<int>(found - order().begin());
    }
    QAccessibleInterface* childAt(int x, int y) const override {
        for (int i = childCount() - 1; i >= 0; --i) {
            if (child(i)->rect().contains(x, y)) {
                return child(i);
            }
        }
        return nullptr;
    }
    QAccessibleInterface* focusChild() const override {
        const PieceId id = m_page.sessionShown().onlySelected();
        return m_page.hasFocus() && id != PieceId{} ? ofPiece(id) : nullptr;
    }

  private:
    const std::vector<PieceId>& order() const { return m_page.sessionShown().sketch().order; }
    QAccessibleInterface* ofPiece(PieceId id) const {
        auto found = m_pieces.find(id);
        if (found == m_pieces.end()) {
            const auto key =
                QAccessible::registerAccessibleInterface(new AccessiblePiece(m_page, id));
            found = m_pieces.emplace(id, key).first;
        }
        return QAccessible::accessibleInterface(found->second);
    }

    PageView& m_page;
    mutable std::map<PieceId, QAccessible::Id> m_pieces;  // made when asked for
};

QAccessibleInterface* makeInterface(const QString&, QObject* object) {
    auto* page = qobject_cast<PageView*>(object);
    return page ? new AccessiblePage(page) : nullptr;
}

}  // namespace

void installPageAccessibility() {
    static const bool installed = [] {
        QAccessible::installFactory(makeInterface);
        return true;
    }();
    static_cast<void>(installed);
}

void announceChange(PageView& page, const Change& change) {
    if (!QAccessible::isActive()) {
        return;
    }
    const auto& session = page.sessionShown();
    if (change.has(Change::Selection) && page.hasFocus() && session.onlySelected() != PieceId{}) {
        const auto& order = session.sketch().order;
        const auto at = std::ranges::find(order, session.onlySelected());
        QAccessibleEvent event(&page, QAccessible::Focus);
        event.setChild(static_cast<int>(at - order.begin()));
        QAccessible::updateAccessibility(&event);
    }
    if (change.has(Change::Pieces)) {
        QAccessibleEvent event(&page, QAccessible::VisibleDataChanged);
        QAccessible::updateAccessibility(&event);
    }
}

QString spokenName(const Sketch& sketch, PieceId id, Scale scale) {
    const Piece& piece = sketch.pieces.at(id);
    const auto length = [scale](Length l) { return QString::fromStdString(lengthText(l, scale)); };
    QStringList parts{
        canvasWords("Piece %1 of %2").arg(pieceNumber(sketch, id)).arg(sketch.order.size())};
    if (!piece.name.empty()) {
        parts.append(QString::fromStdString(piece.name));
    }
    parts.append(QString::fromUtf8(kindName(piece.kind)) + QChar(' ') +
                 sizeReadout(piece.size, scale));
    const Rect bounds = trimBounds(piece);
    const std::vector<Rect> all = pages(sketch.page);
    const std::size_t page = pageOf(all, bounds.left());
    if (all.size() > 1) {
        parts.append(page > 0 ? canvasWords("right page") : canvasWords("left page"));
    }
    parts.append(canvasWords("left %1").arg(length(bounds.left() - all[page].left())));
    parts.append(canvasWords("top %1").arg(length(bounds.top())));
    if (!piece.rotation.isZero()) {
        parts.append(canvasWords("turned %1").arg(angleReadout(piece.rotation)));
    }
    if (!piece.mats.empty()) {
        parts.append(piece.mats.size() == 1 ? canvasWords("one mat") : canvasWords("two mats"));
    }
    if (piece.locked) {
        parts.append(canvasWords("locked"));
    }
    return parts.join(QStringLiteral(", "));
}

}  // namespace matwright::app
