// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>

#include "app/printplan/plan_draft.h"
#include "app/printplan/plan_run.h"

class QComboBox;
class QTableWidget;

namespace matwright::app {

class PhotoService;
class TintedLabel;

// The prints of a plan: where each is wished to come out, and where it does.
class PlanPrintsPanel final : public QWidget {
    Q_OBJECT

  public:
    explicit PlanPrintsPanel(PhotoService* service, QWidget* parent = nullptr);

    // Anew; where the prints are the same, rows and focus stay. Emits nothing.
    void show(const PlanDraft& draft, const std::vector<Printer>& printers);
    // What the plan says of every print; nothing while it is being made.
    void showPlan(const ReadyPlan* ready);

    QTableWidget& list() { return *m_list; }
    // The wish box of a row; nullptr for a print ahead.
    QComboBox* wishBox(int row) const;

  signals:
    void wished(std::size_t page, matwright::PieceId slot,
                const matwright::app::WishedPlace& place);
    void takenOut(std::size_t ahead);

  private:
    void fillRow(int row);
    QComboBox* makeWish(const DraftPrint& print);
    QString placeOf(const ReadyPlan& ready, const DraftPrint& print) const;
    void showPictures();

    PhotoService* m_service;
    PlanDraft m_draft;
    std::vector<Printer> m_printers;
    std::vector<DraftPrint> m_prints;
    QTableWidget* m_list;
    TintedLabel* m_anew;  // how to have printed ones once more
};

}  // namespace matwright::app
