// SPDX-License-Identifier: MIT
#include <QObject>

#include "app/library/library_dialogs.h"
#include "app/library/library_part.h"
#include "app/library/library_view.h"

namespace matwright::app {

// The root of the part "library".
class LibraryPlugin final : public QObject, public LibraryPart {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "org.matwright.LibraryPart" FILE "part.json")
    Q_INTERFACES(matwright::app::LibraryPart)

  public:
    QWidget* makeView(LibraryHost& host, SettingsStore& settings, QWidget* parent) override {
        auto* view = new LibraryView(host, settings, m_dialogs, standardLibraryPlaces(), parent);
        m_dialogs.setParentWidget(view);
        return view;
    }
    QList<QAction*> commandsOf(QWidget& view) override {
        return static_cast<LibraryView&>(view).actions().inMenu();
    }

  private:
    LibraryDialogs m_dialogs;
};

}  // namespace matwright::app

#include "library_plugin.moc"
