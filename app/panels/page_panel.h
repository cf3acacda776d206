// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>
#include <functional>

#include "app/editing/session.h"
#include "app/panels/section.h"
#include "app/settings/settings.h"

class QCheckBox;
class QComboBox;
class QPushButton;

namespace matwright::app {

class LengthField;
class MarginsSection;
class NoteField;
class TextField;

// Page size, double page, margins and gutter, and the sketch's own name and note. Shown for the
// sketch as a whole; every change is one undo step.
class PagePanel final : public QWidget {
    Q_OBJECT

  public:
    // Both must outlive the panel.
    PagePanel(Session& session, SettingsStore& settings, QWidget* parent = nullptr);

  private:
    using Set = std::function<void(PageSetup&, Length)>;
    Section* buildSize();
    Section* buildWords();
    LengthField* addLength(Section* section, const QString& label, Length low, Length high,
                           const Set& set);
    // A refusal is told in the field, or at the section's end.
    void change(const QString& label, int gesture, const PageSetup& after, Section* section,
                LengthField* field = nullptr);
    void changeWords(const QString& label, int gesture);
    void sizeChosen(int index);
    // Another sketch is open: what was typed or asked for was meant for the one before.
    void forgetWishes();
    void refreshPage();
    void refreshSize(const PageSetup& page);
    void refreshWords();
    void offerMillimetres();

    Session& m_session;
    SettingsStore& m_settings;
    bool m_customAsked = false;
    QComboBox* m_size = nullptr;
    LengthField* m_width = nullptr;
    LengthField* m_height = nullptr;
    QPushButton* m_toMillimetres = nullptr;
    QCheckBox* m_double = nullptr;
    LengthField* m_fold = nullptr;
    Section* m_sizeSection = nullptr;
    MarginsSection* m_margins = nullptr;
    TextField* m_name = nullptr;
    NoteField* m_note = nullptr;
};

}  // namespace matwright::app
