// SPDX-License-Identifier: MIT
#include "app/window/file_actions.h"

#include <QFileInfo>
#include <QWidget>

#include "app/files/paths.h"
#include "app/window/new_action.h"

namespace matwright::app {

FileActions::FileActions(FileFlow& flow, SettingsStore& settings, QWidget& window)
    : QObject(&window),
      startNew(newAction(this,
                         {tr("&New…"), tr("Start a new sketch"), QKeySequence::New,
                          QStringLiteral("new"), tr("New")},
                         [&flow] { flow.startNew(); })),
      open(newAction(this,
                     {tr("&Open…"), tr("Open a sketch or a page in the making"), QKeySequence::Open,
                      QStringLiteral("open"), tr("Open")},
                     [&flow] { flow.chooseAndOpen(); })),
      save(newAction(this,
                     {tr("&Save"), tr("Save this sketch or page"), QKeySequence::Save,
                      QStringLiteral("save"), tr("Save")},
                     [&flow] { flow.save(); })),
      saveAs(newAction(this,
                       {tr("Save &as…"),
                        tr("Save this sketch or page under another name"),
                        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S),
                        {},
                        {}},
                       [&flow] { flow.saveAs(); })),
      recovered(newAction(this, {tr("Re&covered work…"),
                                 tr("Look for unsaved work that a crash left behind"),
                                 {},
                                 {},
                                 {}})),
      makeTemplate(newAction(
          this, {tr("&Template…"), tr("Print or save a template, true to size"),
                 QKeySequence(Qt::CTRL | Qt::Key_P), QStringLiteral("template"), tr("Template…")})),
      quit(newAction(
          this, {tr("&Quit"), tr("Close Matwright"), QKeySequence(Qt::CTRL | Qt::Key_Q), {}, {}})),
      m_flow(flow),
      m_settings(settings),
      m_recentMenu(new QMenu(tr("Open &recent"), &window)) {
    setListsFiles(*m_recentMenu);
    connect(quit, &QAction::triggered, &window, &QWidget::close);
    connect(recovered, &QAction::triggered, this, [&flow] { flow.lookForRecoveredWork(); });
    // Later, because it is often an entry of that menu that changes the list.
    connect(&settings, &SettingsStore::changed, this, &FileActions::fillRecentMenu,
            Qt::QueuedConnection);
    fillRecentMenu();
}

void FileActions::addTo(QMenu& menu) {
    menu.addActions({startNew, open});
    menu.addMenu(m_recentMenu);
    menu.addSeparator();
    menu.addActions({save, saveAs});
    menu.addSeparator();
    menu.addAction(makeTemplate);
    menu.addSeparator();
    menu.addAction(recovered);
    menu.addSeparator();
    menu.addAction(quit);
}

void FileActions::fillRecentMenu() {
    m_recentMenu->clear();
    int number = 0;
    for (const QString& path : m_settings.value().recentFiles) {
        number = (number + 1) % 10;  // the tenth is reached with 0
        QString name = documentNameOf(path);
        name.replace(u'&', QStringLiteral("&&"));
        if (kindOfPath(path) == DocumentKind::Page) {
            name = tr("%1 (page)").arg(name);
        }
        QAction* action = m_recentMenu->addAction(
            tr("&%1  %2 – %3").arg(number).arg(name, QFileInfo(path).path()));
        action->setStatusTip(path);
        connect(action, &QAction::triggered, this, [this, path] {
            if (m_flow.mayLeave()) {
                m_flow.open(path);
            }
        });
    }
    m_recentMenu->setEnabled(number > 0);
}

}  // namespace matwright::app
