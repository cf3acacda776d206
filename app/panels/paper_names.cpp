// SPDX-License-Identifier: MIT
#include "app/panels/paper_names.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QEvent>
#include <QStringListModel>
#include <set>

#include "app/panels/text_field.h"

namespace matwright::app {

PaperNames::PaperNames(Session& session, QObject* parent)
    : QObject(parent), m_session(session), m_offered(new QStringListModel(this)) {}

void PaperNames::offerIn(TextField* field) {
    auto* completer = new QCompleter(m_offered, field);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains);
    completer->popup()->setAccessibleName(tr("Papers"));
    field->setCompleter(completer);
    connect(completer, qOverload<const QString&>(&QCompleter::activated), field,
            [field](const QString& name) {
                field->setText(name);
                emit field->textEdited(name);
            });
    field->installEventFilter(this);
}

bool PaperNames::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn &&
        static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason) {
        readNames();
    }
    return QObject::eventFilter(watched, event);
}

QStringList PaperNames::namesOnPage() const {
    std::set<std::string> names;
    for (const auto& [id, piece] : m_session.sketch().pieces) {
        names.insert(piece.paper);
        for (const Mat& mat : piece.mats) {
            names.insert(mat.paper);
        }
    }
    names.erase("");
    QStringList all;
    for (const std::string& name : names) {
        all.append(QString::fromStdString(name));
    }
    return all;
}

void PaperNames::readNames() {
    m_atHome = m_known.names ? m_known.names() : QStringList();
    QStringList offered = m_atHome;
    for (const QString& name : namesOnPage()) {
        if (!offered.contains(name)) {
            offered.append(name);
        }
    }
    if (offered != m_offered->stringList()) {
        m_offered->setStringList(offered);
    }
}

PhotoEdit PaperNames::lookOf(const QString& paper) const {
    PhotoEdit edit;
    const std::string name = paper.toStdString();
    if (m_known.look && m_atHome.contains(paper) && !m_session.work().papers.contains(name)) {
        if (const auto look = m_known.look(paper)) {
            edit.papers.emplace(name, look);
        }
    }
    return edit;
}

}  // namespace matwright::app
