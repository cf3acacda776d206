// SPDX-License-Identifier: MIT
#include "app/window/help_actions.h"

#include <QCoreApplication>
#include <QMessageBox>

#include "app/canvas/page_keys.h"
#include "app/window/new_action.h"
#include "app/window/shortcuts_dialog.h"

namespace matwright::app {
namespace {

// "&Save" -> "S"; nothing where there is no mnemonic.
QString mnemonicOf(const QString& text) {
    return QKeySequence::mnemonic(text).toString(QKeySequence::NativeText).section(u'+', -1);
}

QString plain(QString text) {
    text.remove(u'&');
    return text;
}

QString nameOf(const QAction& action) {
    const QString lasting = lastingName(action);
    return lasting.isEmpty() ? plain(action.text()) : lasting;
}

void addCommandsOf(const QMenu& menu, const QString& names, const QString& keys,
                   QList<ShortcutLine>& out) {
    for (const QAction* action : menu.actions()) {
        const QString way = keys + QStringLiteral(", ") + mnemonicOf(action->text());
        if (const QMenu* inner = action->menu(); inner && !listsFiles(*inner)) {
            addCommandsOf(*inner, names + plain(action->text()) + QStringLiteral(": "), way, out);
        } else if (!action->isSeparator()) {
            const QString shortcut = action->shortcut().toString(QKeySequence::NativeText);
            out.append({names + nameOf(*action), shortcut.isEmpty() ? way : shortcut});
        }
    }
}

}  // namespace

QList<ShortcutLine> shortcutsOf(const QMenuBar& bar) {
    QList<ShortcutLine> lines;
    for (const QAction* top : bar.actions()) {
        addCommandsOf(*top->menu(), plain(top->text()) + QStringLiteral(": "),
                      QStringLiteral("Alt+") + mnemonicOf(top->text()), lines);
    }
    for (const PageKey& key : pageKeys()) {
        lines.append(
            {QCoreApplication::translate("HelpActions", "On the page: ") + key.effect, key.keys});
    }
    return lines;
}

HelpActions::HelpActions(QMenuBar& bar, QWidget& window)
    : QObject(&window), m_bar(bar), m_window(window) {}

void HelpActions::addTo(QMenu& menu) {
    menu.addAction(newAction(this,
                             {tr("&Keyboard shortcuts"),
                              tr("List every command and its keys"),
                              QKeySequence(Qt::Key_F1),
                              {},
                              {}},
                             [this] { showShortcuts(); }));
    menu.addAction(newAction(this, {tr("&About Matwright"), tr("Version and licence"), {}, {}, {}},
                             [this] { showAbout(); }));
}

void HelpActions::showShortcuts() {
    auto* dialog = new ShortcutsDialog(shortcutsOf(m_bar), &m_window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void HelpActions::showAbout() {
    auto* box = new QMessageBox(&m_window);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setWindowTitle(tr("About Matwright"));
    box->setText(tr("Matwright %1").arg(QCoreApplication::applicationVersion()));
    box->setInformativeText(
        tr("Plan, measure and cut scrapbook pages: block out a sketch, then print a template of it "
           "that is true to size.\n\nFree software under the MIT licence."));
    box->open();
}

}  // namespace matwright::app
