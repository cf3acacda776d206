// SPDX-License-Identifier: MIT
#include <QDialog>
#include <QObject>

#include "app/cutting/cutting_part.h"
#include "app/cutting/cutting_window.h"
#include "app/cutting/papers_at_home.h"
#include "app/cutting/papers_window.h"

namespace matwright::app {

// The root of the part "cutting".
class CuttingPlugin final : public QObject, public CuttingPart {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "org.matwright.CuttingPart" FILE "part.json")
    Q_INTERFACES(matwright::app::CuttingPart)

  public:
    QDialog* makeCuttingWindow(Session& session, const QString& suggestedName,
                               SettingsStore& settings, QWidget* parent) override {
        return new CuttingWindow(session, suggestedName, settings, personalPapersFile(),
                                 CuttingAsks::ofTheSystem(), parent);
    }
    QDialog* makePapersWindow(SettingsStore& settings, QWidget* parent) override {
        return new PapersWindow(personalPapersFile(), settings, CuttingAsks::ofTheSystem(), parent);
    }
    QStringList paperNames() override { return namesAtHome(personalPapersFile()); }
    std::optional<PaperLook> paperLook(const QString& name) override {
        return lookAtHome(personalPapersFile(), name);
    }
};

}  // namespace matwright::app

#include "cutting_plugin.moc"
