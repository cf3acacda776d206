// SPDX-License-Identifier: MIT
#include <QDialog>
#include <QObject>

#include "app/printplan/print_plan_part.h"
#include "app/printplan/print_plan_window.h"
#include "app/printplan/printers_window.h"
#include "app/printplan/prints_on_hand_window.h"

namespace matwright::app {

// The root of the part "print-plan".
class PrintPlanPlugin final : public QObject, public PrintPlanPart {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "org.matwright.PrintPlanPart" FILE "part.json")
    Q_INTERFACES(matwright::app::PrintPlanPart)

  public:
    QDialog* makePrintPlanWindow(const Making& making, const QString& suggestedName,
                                 const QString& file, SettingsStore& settings,
                                 PhotoService* service, QWidget* parent) override {
        return new PrintPlanWindow(making, suggestedName, file, settings, service, parent);
    }
    QDialog* makePrintersWindow(SettingsStore& settings, QWidget* parent) override {
        return new PrintersWindow(settings, parent);
    }
    QDialog* makePrintsOnHandWindow(SettingsStore& settings, PhotoService* service,
                                    QWidget* parent) override {
        return new PrintsOnHandWindow(settings, service, parent);
    }
};

}  // namespace matwright::app

#include "print_plan_plugin.moc"
