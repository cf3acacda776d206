// SPDX-License-Identifier: MIT
#include "app/printplan/plan_prints_panel.h"

#include <QComboBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/panels/list_rows.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/photos/photo_service.h"
#include "app/printplan/print_picture.h"
#include "core/printplan/drawn_sheet.h"

namespace matwright::app {

namespace {

constexpr int planPictureSide = 48;
constexpr int planRowGap = 10;
constexpr int wishWidth = 132;
enum PlanColumn { PlanPicture, PlanName, PlanWish, PlanColumns };

// In a combo box: nothing, a printer, or a printer and a paper.
QVariant dataOf(const WishedPlace& place) {
    return QVariant::fromValue(QList<qlonglong>{place.printer ? place.printer->value : 0,
                                                place.paper ? place.paper->value : 0});
}

WishedPlace placeIn(const QVariant& data) {
    const auto ids = data.value<QList<qlonglong>>();
    WishedPlace place;
    if (ids.value(0) != 0) {
        place.printer = PrinterId{ids[0]};
    }
    if (ids.value(1) != 0) {
        place.paper = PrinterPaperId{ids[1]};
    }
    return place;
}

// A table stretches what is in its cells.
QWidget* inTheMiddle(QWidget* control) {
    auto* cell = new QWidget;
    auto* column = new QVBoxLayout(cell);
    column->setContentsMargins(2, 2, 6, 2);
    column->addStretch(1);
    column->addWidget(control);
    column->addStretch(1);
    return cell;
}

QString sheetOf(const PrintPlan& plan, std::size_t print) {
    for (std::size_t i = 0; i < plan.sheets.size(); ++i) {
        for (const Gang::Place& place : plan.sheets[i].gang.places) {
            if (place.print == print) {
                return PlanPrintsPanel::tr("%1 on sheet %2")
                    .arg(QString::fromStdString(letterOn(plan.sheets[i], print)))
                    .arg(i + 1);
            }
        }
    }
    for (const LeftOutPrint& left : plan.leftOut) {
        if (left.print == print) {
            return QString::fromStdString(left.sentence);
        }
    }
    return {};
}

}  // namespace

PlanPrintsPanel::PlanPrintsPanel(PhotoService* service, QWidget* parent)
    : QWidget(parent),
      m_service(service),
      m_list(new QTableWidget),
      m_anew(new TintedLabel(Tint::Quiet,
                             tr("To print one anew, call it thrown away in Plan > Prints on hand."),
                             this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    auto* heading = new Section(tr("Prints"));
    column->addWidget(heading);
    m_list->setColumnCount(PlanColumns);
    m_list->horizontalHeader()->hide();
    m_list->verticalHeader()->hide();
    m_list->horizontalHeader()->setSectionResizeMode(PlanName, QHeaderView::Stretch);
    m_list->horizontalHeader()->setSectionResizeMode(PlanPicture, QHeaderView::Fixed);
    m_list->horizontalHeader()->setSectionResizeMode(PlanWish, QHeaderView::Fixed);
    m_list->setColumnWidth(PlanPicture, planPictureSide + 10);
    m_list->setColumnWidth(PlanWish, wishWidth);
    m_list->setIconSize({planPictureSide, planPictureSide});
    m_list->setShowGrid(false);
    m_list->setWordWrap(true);
    m_list->setSelectionMode(QAbstractItemView::NoSelection);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setTabKeyNavigation(false);
    m_list->setAccessibleName(tr("Prints of the plan"));
    column->addWidget(m_list, 1);
    m_anew->setWordWrap(true);
    m_anew->hide();
    column->addWidget(m_anew);
    if (m_service) {
        connect(m_service, &PhotoService::thumbnailReady, this, &PlanPrintsPanel::showPictures);
    }
}

void PlanPrintsPanel::show(const PlanDraft& draft, const std::vector<Printer>& printers) {
    const std::vector<DraftPrint> prints = printsOf(draft);
    const bool sameRows = prints == m_prints && printers == m_printers;
    m_draft = draft;
    m_printers = printers;
    m_prints = prints;
    if (sameRows) {
        return;
    }
    m_list->setRowCount(0);
    m_list->setRowCount(static_cast<int>(m_prints.size()));
    QWidget* before = m_list;
    for (int row = 0; row < m_list->rowCount(); ++row) {
        fillRow(row);
        for (QWidget* control : m_list->cellWidget(row, PlanWish)
                                    ->findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
            setTabOrder(std::exchange(before, control), control);
        }
    }
    showPlan(nullptr);
    showPictures();
}

void PlanPrintsPanel::fillRow(int row) {
    const DraftPrint& print = m_prints[static_cast<std::size_t>(row)];
    m_list->setItem(row, PlanPicture, wordsItem({}));
    m_list->setItem(row, PlanName, wordsItem({}));
    if (print.ahead) {
        auto* takeOut = new QPushButton(tr("Take out"));
        takeOut->setAccessibleName(tr("Take out %1").arg(QString::fromStdString(print.print.name)));
        settle(takeOut);
        takeOut->setAutoDefault(false);
        connect(takeOut, &QPushButton::clicked, this,
                [this, ahead = *print.ahead] { emit takenOut(ahead); });
        m_list->setCellWidget(row, PlanWish, inTheMiddle(takeOut));
    } else {
        m_list->setCellWidget(row, PlanWish, inTheMiddle(makeWish(print)));
    }
}

QComboBox* PlanPrintsPanel::makeWish(const DraftPrint& print) {
    auto* box = new QComboBox;
    box->addItem(tr("Any printer"), dataOf({}));
    for (const Printer& printer : m_printers) {
        if (printer.papers.empty()) {
            continue;
        }
        const QString name = QString::fromStdString(printer.name);
        box->addItem(name, dataOf({printer.id, std::nullopt}));
        for (const PrinterPaper& paper : printer.papers) {
            box->addItem(tr("%1: %2").arg(name, QString::fromStdString(paper.name)),
                         dataOf({printer.id, paper.id}));
        }
    }
    box->setCurrentIndex(
        qMax(0, box->findData(dataOf(m_draft.wished(*print.page, print.print.slot)))));
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(8);
    box->view()->setMinimumWidth(box->view()->sizeHintForColumn(0) + 24);
    box->setAccessibleName(tr("Where %1 is printed").arg(QString::fromStdString(print.print.name)));
    settle(box);
    box->setToolTip(box->currentText());  // it is wider than its place
    connect(box, &QComboBox::activated, this,
            [this, box, page = *print.page, slot = print.print.slot] {
                emit wished(page, slot, placeIn(box->currentData()));
            });
    return box;
}

QString PlanPrintsPanel::placeOf(const ReadyPlan& ready, const DraftPrint& print) const {
    for (const TherePrint& there : ready.plan.there) {
        if (print.page && m_draft.pageOf(there.page) == *print.page && there.print == print.print) {
            return tr("printed before");
        }
    }
    for (const TakenPrint& taken : ready.plan.taken) {
        if (print.page && m_draft.pageOf(taken.page) == *print.page && taken.print == print.print) {
            return tr("taken from prints on hand");
        }
    }
    for (std::size_t i = 0; i < ready.plan.prints.size(); ++i) {
        const PlannedPrint& each = ready.plan.prints[i];
        const bool same = print.page ? each.page && m_draft.pageOf(*each.page) == *print.page
                                     : each.ahead == print.ahead;
        if (same && each.print == print.print) {
            const QString place = sheetOf(ready.plan, i);
            const bool alike = std::ranges::any_of(
                ready.plan.alike, [i](const AlikePrint& other) { return other.print == i; });
            return alike ? place + tr("; a print like it is on hand, cropped otherwise") : place;
        }
    }
    return {};
}

void PlanPrintsPanel::showPlan(const ReadyPlan* ready) {
    for (int row = 0; row < m_list->rowCount(); ++row) {
        const DraftPrint& print = m_prints[static_cast<std::size_t>(row)];
        const QString size = QString::fromStdString(naturalSizeText(print.print.paper));
        const QString of = print.page ? QString::fromStdString(m_draft.pages[*print.page].page.name)
                                      : tr("kept on hand");
        const QString place = ready ? placeOf(*ready, print) : tr("…");
        const QString slot = QString::fromStdString(print.print.name);
        const QString photo =
            QFileInfo(QString::fromStdString(print.photo.path)).completeBaseName();
        const bool isNamedSo = photo.isEmpty() || slot == photo;
        m_list->item(row, PlanName)
            ->setText((isNamedSo ? slot : photo) + QStringLiteral(", ") + size + QLatin1Char('\n') +
                      (isNamedSo ? of : of + QStringLiteral(", ") + slot) + QLatin1Char('\n') +
                      place);
        m_list->resizeRowToContents(row);
        m_list->setRowHeight(row, qMax(m_list->rowHeight(row), planPictureSide) + planRowGap);
    }
    m_anew->setVisible(ready && !ready->plan.there.empty());
}

void PlanPrintsPanel::showPictures() {
    for (int row = 0; row < m_list->rowCount(); ++row) {
        const DraftPrint& print = m_prints[static_cast<std::size_t>(row)];
        QTableWidgetItem* item = m_list->item(row, PlanPicture);
        const QPixmap picture =
            item->icon().isNull() ? printIcon(m_service, print.photo, print.print, planPictureSide)
                                  : QPixmap();
        if (!picture.isNull()) {
            item->setIcon(QIcon(picture));
        }
    }
}

QComboBox* PlanPrintsPanel::wishBox(int row) const {
    const QWidget* cell = m_list->cellWidget(row, PlanWish);
    return cell ? cell->findChild<QComboBox*>() : nullptr;
}

}  // namespace matwright::app
