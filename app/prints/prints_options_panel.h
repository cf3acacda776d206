// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include "core/measure/length_text.h"
#include "core/prints/print_job.h"

class QCheckBox;
class QComboBox;
class QSpinBox;

namespace matwright::app {

class LengthField;
class Section;
class TintedLabel;

// How the prints come out, as a value.
struct PrintsChoice {
    PrintOptions options;
    bool ganged = false;     // two small prints on one sheet where they fill it
    bool ownBorders = true;  // each photo's own white border, as it is cropped
    Length border;           // else this one for all
    friend bool operator==(const PrintsChoice&, const PrintsChoice&) = default;
};

// The choices beside the list of prints.
class PrintsOptionsPanel final : public QWidget {
    Q_OBJECT

  public:
    PrintsOptionsPanel(const PrintsChoice& choice, Scale scale, QWidget* parent = nullptr);

    const PrintsChoice& choice() const { return m_choice; }
    // What these choices do not do for the prints of the page, under them.
    void showNotes(const QStringList& sentences);
    QString notes() const;

  signals:
    void changed();

  private:
    void addFile(Section& section);
    void addPrint(Section& section, Scale scale);
    void showEnabled();

    PrintsChoice m_choice;
    QSpinBox* m_quality;
    LengthField* m_border;
    QCheckBox* m_sameBorder;
    TintedLabel* m_notes;
};

}  // namespace matwright::app
