// SPDX-License-Identifier: MIT
#pragma once

#include <QDialog>
#include <QFutureWatcher>
#include <stop_token>
#include <string_view>

#include "app/printing/template_asks.h"
#include "app/printing/template_choice.h"
#include "core/checks/checks.h"
#include "core/making/making.h"

class QLabel;
class QPushButton;

namespace matwright::app {

class ChoicesPanel;
class SettingsStore;
class SheetPreview;
class TintedLabel;

// The measured template of a sketch: shown as it will come out, then printed or saved. It works on
// a copy of the sketch. Choices about paper are remembered in the settings. Where the checks find
// something, a line says how much, and pressing it leads there.
class TemplateDialog final : public QDialog {
    Q_OBJECT

  public:
    // `suggestedName` is a path without a suffix, or empty.
    TemplateDialog(const Making& making, SettingsStore& settings, const QString& suggestedName,
                   QWidget* parent = nullptr);
    TemplateDialog(const Making& making, SettingsStore& settings, QString suggestedName,
                   TemplateAsks asks, QWidget* parent = nullptr);
    ~TemplateDialog() override;

    const SheetPreview& preview() const { return *m_preview; }
    const QString& suggestedName() const { return m_suggestedName; }
    // What went wrong or what is in the way; empty when nothing is.
    QString problem() const;
    // What was done last: "Saved …".
    QString news() const;

  signals:
    // To look at what the checks found; the dialog closes.
    void checksRequested();

  public slots:
    void print();
    void savePdf();
    void saveSvg();
    void saveCutLines();

  private:
    QWidget* makeSide();
    QWidget* makeButtons();
    void lookForFindings();
    void redraw();
    void layOutSheets();
    void remember();
    void say(const QString& problem, const QString& news = {});
    void makeDefault(QPushButton* button);
    // Asks for a name that ends in `suffix` and writes there, never over a sketch; `what` opens
    // the news.
    void save(const QString& title, const QString& part, const QString& suffix,
              const QString& filter, std::string_view bytes, const QString& what);

    const Making m_making;
    SettingsStore& m_settings;
    const QString m_suggestedName;
    TemplateAsks m_asks;
    Drawing m_drawing;
    SheetPreview* m_preview;
    ChoicesPanel* m_choices;
    QLabel* m_outcome;
    QLabel* m_trueSize;
    TintedLabel* m_problem;
    TintedLabel* m_news;
    QPushButton* m_findings;
    QFutureWatcher<std::vector<CheckFinding>> m_checks;
    std::stop_source m_stop;
    QPushButton* m_print;
    QPushButton* m_savePdf;
};

}  // namespace matwright::app
