// SPDX-License-Identifier: MIT
#include <QObject>

#include "app/crop/crop_flow.h"
#include "app/prints/page_export_dialog.h"
#include "app/prints/prints_part.h"
#include "app/prints/prints_window.h"
#include "app/prints/slot_pixels.h"
#include "app/settings/settings.h"

namespace matwright::app {

// The root of the part "prints".
class PrintsPlugin final : public QObject, public PrintsPart {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "org.matwright.PrintsPart" FILE "part.json")
    Q_INTERFACES(matwright::app::PrintsPart)

  public:
    QDialog* makeCropDialog(Session& session, PieceId slot, SettingsStore& settings,
                            PhotoService* service, QWidget* parent) override {
        return app::makeCropDialog(session, slot, settings.value().scale, service, finalPixelsOf,
                                   parent);
    }
    QDialog* makePrintsWindow(const Making& making, const QString& suggestedName,
                              SettingsStore& settings, PhotoService* service,
                              QWidget* parent) override {
        return new PrintsWindow(making, suggestedName, settings, service, parent);
    }
    QDialog* makePagePictureWindow(const Making& making, const QString& suggestedName,
                                   QWidget* parent) override {
        return new PageExportDialog(making, suggestedName, parent);
    }
};

}  // namespace matwright::app

#include "prints_plugin.moc"
