// SPDX-License-Identifier: MIT
#include "app/library/tag_field.h"

#include <QCompleter>
#include <QStringListModel>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/library/flow_layout.h"

namespace matwright::app {

TagField::TagField(QWidget* parent)
    : QWidget(parent),
      m_chips(new QWidget),
      m_flow(new FlowLayout(m_chips)),
      m_typed(new QLineEdit),
      m_known(new QStringListModel(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(4);
    layout->addWidget(m_chips);
    layout->addWidget(m_typed);
    m_typed->setPlaceholderText(tr("Add a tag and press Enter"));
    m_typed->setAccessibleName(tr("Add a tag"));
    m_typed->setMinimumHeight(28);
    auto* completer = new QCompleter(m_known, this);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    m_typed->setCompleter(completer);
    connect(m_typed, &QLineEdit::returnPressed, this, &TagField::addTyped);
}

void TagField::setKnown(const QStringList& tags) {
    if (tags != m_known->stringList()) {
        m_known->setStringList(tags);
    }
}

void TagField::setTags(const QStringList& tags) {
    if (tags == m_tags) {
        return;
    }
    m_tags = tags;
    const bool hadFocus = m_chips->isAncestorOf(focusWidget()) && focusWidget()->hasFocus();
    while (QLayoutItem* item = m_flow->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    for (const QString& tag : tags) {
        auto* chip = new QToolButton;
        chip->setText(QString(tag).replace(u'&', QStringLiteral("&&")) + QStringLiteral("  ×"));
        chip->setMinimumHeight(26);
        chip->setToolTip(tr("Take the tag %1 away").arg(tag));
        chip->setAccessibleName(chip->toolTip());
        chip->setFocusPolicy(Qt::StrongFocus);
        connect(chip, &QToolButton::clicked, this, [this, tag] { emit removed(tag); });
        m_flow->addWidget(chip);
        chip->show();
    }
    m_chips->setVisible(!tags.isEmpty());
    m_chips->updateGeometry();
    if (hadFocus) {
        m_typed->setFocus();
    }
}

void TagField::addTyped() {
    const QString tag = m_typed->text().simplified();
    if (!tag.isEmpty()) {
        emit added(tag);
    }
    // A completer that was chosen from with Enter writes its text after this.
    QMetaObject::invokeMethod(m_typed, &QLineEdit::clear, Qt::QueuedConnection);
}

}  // namespace matwright::app
