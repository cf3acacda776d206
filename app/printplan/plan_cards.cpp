// SPDX-License-Identifier: MIT
#include "app/printplan/plan_cards.h"

#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/panels/tint.h"
#include "app/photos/photo_service.h"
#include "app/printplan/plan_output.h"
#include "app/printplan/print_picture.h"
#include "app/printplan/print_sheet_view.h"
#include "core/printplan/drawn_sheet.h"

namespace matwright::app {

namespace {

constexpr std::size_t mostOffersShown = 5;
constexpr int offerPictureSide = 72;
const char* const cardName = "card";
const char* const titleName = "title";
const char* const roomName = "room";
const char* const offerName = "offer";

QString capitalized(QString text) {
    if (!text.isEmpty()) {
        text[0] = text[0].toUpper();
    }
    return text;
}

QLabel* boldLabel(const QString& text, const char* name) {
    auto* label = new QLabel(text);
    label->setObjectName(QLatin1StringView(name));
    label->setWordWrap(true);
    QFont strong = label->font();
    strong.setBold(true);
    label->setFont(strong);
    return label;
}

QLabel* selectable(const QString& text) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

QLabel* wordsOf(const std::vector<std::string>& lines) {
    QStringList words;
    for (const std::string& line : lines) {
        words << QString::fromStdString(line);
    }
    return selectable(words.join(QLatin1Char('\n')));
}

// How the sheet is corrected; empty where its printer was not measured on this paper.
QString correctionToldOf(const ReadyPlan& ready, std::size_t sheet) {
    const PrintSheet& planned = ready.plan.sheets[sheet];
    const Printer* printer = find(ready.input.printers, planned.printer);
    const PrinterPaper* paper = printer ? find(*printer, planned.paper) : nullptr;
    return paper && paper->correction() ? QString::fromStdString(correctionText(
                                              paper->size, paper->borderless, *paper->correction()))
                                        : QString();
}

QString photoNameOf(const Photo& photo) {
    return QFileInfo(QString::fromStdString(photo.path)).completeBaseName();
}

}  // namespace

PlanCards::PlanCards(PhotoService* service, Scale scale, QWidget* parent)
    : QWidget(parent), m_service(service), m_scale(scale), m_column(new QVBoxLayout(this)) {
    m_column->setContentsMargins(0, 0, 6, 0);
    m_column->setSpacing(12);
    m_column->addStretch(1);
    if (m_service) {
        connect(m_service, &PhotoService::thumbnailReady, this, &PlanCards::showPictures);
    }
}

void PlanCards::show(std::shared_ptr<const ReadyPlan> ready, const QString& sentence) {
    while (QLayoutItem* item = m_column->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_ready = std::move(ready);
    if (!sentence.isEmpty()) {
        auto* words = new QLabel(sentence);
        words->setWordWrap(true);
        words->setAlignment(Qt::AlignCenter);
        words->setMinimumHeight(200);
        m_column->addWidget(words);
    }
    for (std::size_t i = 0; m_ready && i < m_ready->plan.sheets.size(); ++i) {
        m_column->addWidget(makeCard(i));
    }
    if (m_ready && std::ranges::any_of(m_ready->plan.sheets, [this](const PrintSheet& sheet) {
            return !stepsOf(sheet, m_scale).steps.empty();
        })) {
        m_column->addWidget(new TintedLabel(Tint::Quiet, QString::fromUtf8(bladeCaution)));
    }
    m_column->addStretch(1);
}

QWidget* PlanCards::makeCard(std::size_t sheet) {
    auto* card = new QFrame;
    card->setObjectName(QLatin1StringView(cardName));
    card->setFrameShape(QFrame::StyledPanel);
    card->setAccessibleName(sheetTitle(*m_ready, sheet));
    auto* row = new QHBoxLayout(card);
    row->setSpacing(16);
    const PrintSheet& planned = m_ready->plan.sheets[sheet];
    auto* view =
        new PrintSheetView(planned, stepsOf(planned, m_scale),
                           [service = m_service, ready = m_ready](std::size_t print, int longSide) {
                               const PlannedPrint& each = ready->plan.prints[print];
                               return printPicture(service, each.photo, each.print, longSide);
                           });
    view->setAccessibleName(tr("Picture of: %1").arg(sheetTitle(*m_ready, sheet)));
    row->addWidget(view, 0, Qt::AlignTop);
    row->addWidget(makeWords(sheet), 1);
    return card;
}

QWidget* PlanCards::makeWords(std::size_t sheet) {
    auto* words = new QWidget;
    auto* column = new QVBoxLayout(words);
    column->setContentsMargins({});
    column->addWidget(boldLabel(sheetTitle(*m_ready, sheet), titleName));
    const PlannedSheet drawn = drawnSheet(m_ready->plan, m_ready->input, sheet, m_scale);
    column->addWidget(wordsOf(pieceLines(drawn)));
    QStringList lines;
    for (const std::string& sentence : stepSentences(drawn)) {
        lines
            << QStringLiteral("%1. %2").arg(lines.size() + 1).arg(QString::fromStdString(sentence));
    }
    column->addWidget(
        selectable(lines.isEmpty() ? tr("Nothing to cut.") : lines.join(QLatin1Char('\n'))));
    if (const QString told = correctionToldOf(*m_ready, sheet); !told.isEmpty()) {
        column->addWidget(new TintedLabel(Tint::Quiet, told));
    }
    addRoom(column, sheet);
    column->addStretch(1);
    return words;
}

void PlanCards::addRoom(QVBoxLayout* column, std::size_t sheet) {
    const PrintSheet& planned = m_ready->plan.sheets[sheet];
    column->addSpacing(6);
    if (planned.room.empty()) {
        auto* full = new TintedLabel(Tint::Quiet, tr("No room is left on it."));
        full->setObjectName(QLatin1StringView(roomName));
        column->addWidget(full);
        return;
    }
    const std::vector<PrintOffer>& offers = m_ready->offers[sheet];
    column->addWidget(boldLabel(
        capitalized(QString::fromStdString(roomText(planned.room.front()))) + QLatin1Char('.'),
        roomName));
    if (offers.empty()) {
        column->addWidget(new TintedLabel(
            Tint::Quiet, tr("Mark photos as favourites, or add a page that waits, and their photos "
                            "are offered here.")));
        return;
    }
    column->addWidget(new TintedLabel(Tint::Quiet, tr("Press a photo to print it too; it is kept "
                                                      "as a print on hand.")));
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    for (std::size_t i = 0; i < std::min(offers.size(), mostOffersShown); ++i) {
        row->addWidget(makeOffer(offers[i]));
    }
    row->addStretch(1);
    column->addLayout(row);
}

QToolButton* PlanCards::makeOffer(const PrintOffer& offer) {
    auto* button = new QToolButton;
    button->setObjectName(QLatin1StringView(offerName));
    button->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    button->setIconSize({offerPictureSide, offerPictureSide});
    button->setFocusPolicy(Qt::StrongFocus);
    const QString why = QString::fromStdString(offer.print.why);
    button->setText(button->fontMetrics().elidedText(tr("Add"), Qt::ElideRight, offerPictureSide));
    const QString size = QString::fromStdString(naturalSizeText(offer.print.print.paper));
    QString words = tr("Add %1 as %2: %3").arg(photoNameOf(offer.print.photo), size, why);
    if (!offer.warning.empty()) {
        words += QStringLiteral(". ") + QString::fromStdString(offer.warning);
        button->setText(tr("Add (soft)"));
    }
    button->setAccessibleName(words);
    button->setToolTip(words);
    const QPixmap icon =
        printIcon(m_service, offer.print.photo, offer.print.print, offerPictureSide);
    if (!icon.isNull()) {
        button->setIcon(icon);
    }
    connect(button, &QToolButton::clicked, this, [this, offer] { emit offerChosen(offer); });
    return button;
}

void PlanCards::showPictures() {
    for (PrintSheetView* view : findChildren<PrintSheetView*>()) {
        view->update();
    }
    const QList<QToolButton*> buttons = offers();
    qsizetype next = 0;
    for (std::size_t sheet = 0; m_ready && sheet < m_ready->offers.size(); ++sheet) {
        const bool shows = !m_ready->plan.sheets[sheet].room.empty();
        const std::vector<PrintOffer>& each = m_ready->offers[sheet];
        for (std::size_t i = 0; shows && i < std::min(each.size(), mostOffersShown); ++i) {
            QToolButton* button = buttons.value(next++);
            if (button && button->icon().isNull()) {
                button->setIcon(printIcon(m_service, each[i].print.photo, each[i].print.print,
                                          offerPictureSide));
            }
        }
    }
}

void PlanCards::setAcceptsOffers(bool accepts) {
    for (QToolButton* button : offers()) {
        button->setEnabled(accepts);
    }
}

int PlanCards::count() const {
    return static_cast<int>(
        findChildren<QFrame*>(QLatin1StringView(cardName), Qt::FindDirectChildrenOnly).size());
}

QStringList PlanCards::titles() const {
    QStringList texts;
    for (const QLabel* label : findChildren<QLabel*>(QLatin1StringView(titleName))) {
        texts << label->text();
    }
    return texts;
}

QStringList PlanCards::rooms() const {
    QStringList texts;
    for (const QLabel* label : findChildren<QLabel*>(QLatin1StringView(roomName))) {
        texts << label->text();
    }
    return texts;
}

QList<QToolButton*> PlanCards::offers() const {
    return findChildren<QToolButton*>(QLatin1StringView(offerName));
}

}  // namespace matwright::app
