// SPDX-License-Identifier: MIT
#include <QObject>

#include "app/printing/template_dialog.h"
#include "app/printing/template_part.h"

namespace matwright::app {

// The root of the part "template".
class TemplatePlugin final : public QObject, public TemplatePart {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "org.matwright.TemplatePart" FILE "part.json")
    Q_INTERFACES(matwright::app::TemplatePart)

  public:
    QDialog* makeWindow(const Making& making, SettingsStore& settings, const QString& suggestedName,
                        std::function<void()> showChecks, QWidget* parent) override {
        auto* dialog = new TemplateDialog(making, settings, suggestedName, parent);
        connect(dialog, &TemplateDialog::checksRequested, dialog, std::move(showChecks));
        return dialog;
    }
};

}  // namespace matwright::app

#include "template_plugin.moc"
