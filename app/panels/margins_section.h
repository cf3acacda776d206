// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <map>

#include "app/panels/length_field.h"
#include "app/panels/section.h"
#include "core/sketch/sketch.h"

class QCheckBox;

namespace matwright::app {

// The margins, as one figure or one for each side, and the gutter.
class MarginsSection final : public Section {
    Q_OBJECT

  public:
    explicit MarginsSection(QWidget* parent = nullptr);
    // Emits nothing.
    void showPage(const PageSetup& page);
    // Another sketch: a wish for four fields was meant for the one before.
    void forgetWishes() { m_same = true; }

  signals:
    // What the page would be; `field` is where a refusal is told, or nullptr.
    void pageChanged(const QString& label, int gesture, const matwright::PageSetup& after,
                     matwright::app::LengthField* field);

  private:
    using Set = std::function<void(PageSetup&, Length)>;
    LengthField* addField(const QString& label, const QString& undoLabel, const Set& set);
    void sameClicked(bool on);
    void showRows();

    PageSetup m_page;
    bool m_same = true;  // what the person wants to type: one figure or four
    QCheckBox* m_sameBox;
    LengthField* m_all;
    LengthField* m_left;
    LengthField* m_top;
    LengthField* m_right;
    LengthField* m_bottom;
    LengthField* m_gutter;
};

}  // namespace matwright::app
