// SPDX-License-Identifier: MIT
#pragma once

#include <QLineEdit>
#include <QStringList>
#include <QWidget>

class QStringListModel;

namespace matwright::app {

class FlowLayout;

// The tags of a sketch: each can be clicked away, and Enter puts in what is typed.
class TagField final : public QWidget {
    Q_OBJECT

  public:
    explicit TagField(QWidget* parent = nullptr);

    void setTags(const QStringList& tags);
    const QStringList& tags() const { return m_tags; }
    // Offered while one types.
    void setKnown(const QStringList& tags);
    QLineEdit& typed() { return *m_typed; }

  signals:
    void added(const QString& tag);
    void removed(const QString& tag);

  private:
    void addTyped();

    QStringList m_tags;
    QWidget* m_chips;
    FlowLayout* m_flow;
    QLineEdit* m_typed;
    QStringListModel* m_known;
};

}  // namespace matwright::app
