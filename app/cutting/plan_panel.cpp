// SPDX-License-Identifier: MIT
#include "app/cutting/plan_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QStyledItemDelegate>
#include <QVBoxLayout>
#include <utility>

#include "app/cutting/sheet_picture_view.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/rendering/paint.h"

namespace matwright::app {

namespace {

constexpr int rightWidth = 300;
constexpr int stepPictureHeight = 150;
constexpr QSize thumbnailSide(64, 64);
constexpr int wordsRim = 8;
constexpr qsizetype mostLines = 6;

QString fromCore(const std::string& text) {
    return QString::fromStdString(text);
}

// With ranges of letters ("B–D") that are not broken over two lines.
QString sentenceFromCore(const std::string& text) {
    return fromCore(text).replace(QChar(0x2013), QStringLiteral("\u2013\u2060"));
}

QStringList linesFromCore(const std::vector<std::string>& texts) {
    QStringList lines;
    for (const std::string& text : texts) {
        lines << fromCore(text);
    }
    return lines;
}

QLabel* wrapping(bool bold) {
    auto* label = new QLabel;
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    QFont font = label->font();
    font.setBold(bold);
    label->setFont(font);
    return label;
}

QIcon thumbnailOf(const PlannedSheet& sheet, double pixelRatio) {
    const Length side = Length::fromTicks(thumbnailSide.width() * (Length::ticksPerInch / 96));
    const Drawing drawing =
        sheetPicture(sheet, {side, side}, {.numbers = false, .words = false, .current = {}});
    QPixmap pixmap = QPixmap::fromImage(imageOf(drawing, 96 * pixelRatio));
    pixmap.setDevicePixelRatio(pixelRatio);
    return pixmap;
}

// Lines under each other, so many at most.
QString listed(const QStringList& lines, qsizetype most) {
    QStringList shown = lines.mid(0, most);
    if (lines.size() > shown.size()) {
        shown << PlanPanel::tr("… and %1 more; the printed plan has them all.")
                     .arg(lines.size() - shown.size());
    }
    return shown.join(u'\n');
}

// Measures wrapped words by the width they are really given; the list's own measure is wider, and
// the last words of a caution would be cut short.
class WrappedWords final : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const auto* list = qobject_cast<const QListView*>(option.widget);
        if (!list) {
            return QStyledItemDelegate::sizeHint(option, index);
        }
        const int width = list->viewport()->width() - 2 * list->spacing();
        const QRect words = option.fontMetrics.boundingRect(
            QRect(0, 0, width - 2 * wordsRim, 10'000), Qt::TextWordWrap,
            index.data(Qt::DisplayRole).toString());
        return {width, words.height() + wordsRim};
    }
};

QListWidget* wordList(const QString& name) {
    auto* list = new QListWidget;
    list->setWordWrap(true);
    list->setItemDelegate(new WrappedWords(list));
    list->setAlternatingRowColors(true);
    list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list->setResizeMode(QListView::Adjust);
    list->setSpacing(2);
    list->setAccessibleName(name);
    return list;
}

}  // namespace

PlanPanel::PlanPanel(QWidget* parent)
    : QWidget(parent),
      m_bound(wrapping(true)),
      m_buy(wrapping(false)),
      m_missing(new TintedLabel(Tint::Wrong)),
      m_sheets(new QListWidget),
      m_heading(wrapping(true)),
      m_picture(new SheetPictureView(SheetPictureView::Shows::Sheet)),
      m_instead(wrapping(false)),
      m_caution(new TintedLabel(Tint::Quiet)),
      m_pieces(wordList(tr("Pieces of this sheet"))),
      m_steps(wordList(tr("Steps of this sheet"))),
      m_stepPicture(new SheetPictureView(SheetPictureView::Shows::Step)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins({});
    row->setSpacing(12);
    row->addWidget(makeMiddle(), 1);
    m_right = makeRight();
    row->addWidget(m_right);
    connect(m_sheets, &QListWidget::currentRowChanged, this, &PlanPanel::showSheet);
    connect(m_steps, &QListWidget::currentRowChanged, this, &PlanPanel::showStep);
    setPlan({}, {});
}

QWidget* PlanPanel::makeMiddle() {
    auto* middle = new QWidget;
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins({});
    column->setSpacing(6);
    m_sheets->setViewMode(QListView::IconMode);
    m_sheets->setFlow(QListView::LeftToRight);
    m_sheets->setWrapping(false);
    m_sheets->setMovement(QListView::Static);
    m_sheets->setIconSize(thumbnailSide);
    m_sheets->setSpacing(4);
    m_sheets->setFixedHeight(thumbnailSide.height() + 42);
    m_sheets->setAccessibleName(tr("Sheets"));
    m_missing->setTextFormat(Qt::PlainText);
    m_instead->setAlignment(Qt::AlignCenter);
    m_picture->setAccessibleName(tr("Picture of the sheet"));
    for (QWidget* widget : {static_cast<QWidget*>(m_bound), static_cast<QWidget*>(m_buy),
                            static_cast<QWidget*>(m_missing), static_cast<QWidget*>(m_sheets),
                            static_cast<QWidget*>(m_heading)}) {
        column->addWidget(widget);
    }
    column->addWidget(m_picture, 1);
    column->addWidget(m_instead, 1);
    column->addWidget(m_caution);
    m_caution->setText(QString::fromUtf8(bladeCaution));
    return middle;
}

QWidget* PlanPanel::makeRight() {
    auto* right = new QWidget;
    right->setFixedWidth(rightWidth);
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins({});
    column->setSpacing(6);
    column->addWidget(m_pieces, 2);
    column->addWidget(m_steps, 3);
    m_stepPicture->setFixedHeight(stepPictureHeight);
    m_stepPicture->setAccessibleName(tr("The step on the trimmer"));
    column->addWidget(m_stepPicture);
    return right;
}

void PlanPanel::setPlan(FoundPlan plan, const QString& instead) {
    const int sheet = chosenSheet();
    const int step = m_steps->currentRow();
    const FoundPlan before = std::exchange(m_plan, std::move(plan));
    m_instead->setText(instead);
    const bool hasSheets = m_plan && !this->plan().sheets.empty();
    m_instead->setVisible(!hasSheets);
    for (QWidget* widget : {static_cast<QWidget*>(m_picture), static_cast<QWidget*>(m_sheets),
                            static_cast<QWidget*>(m_heading), static_cast<QWidget*>(m_caution)}) {
        widget->setVisible(hasSheets);
    }
    m_right->setVisible(hasSheets);
    showWords();
    listSheets();
    chooseSheet(sheet);
    if (before && isSameSheet(**before, sheet)) {
        m_steps->setCurrentRow(std::min(step, m_steps->count() - 1));
    }
}

bool PlanPanel::isSameSheet(const PaperPlan& before, int sheet) const {
    const auto at = static_cast<std::size_t>(sheet);
    return m_plan && sheet >= 0 && at < before.sheets.size() && at < plan().sheets.size() &&
           before.sheets[at].planned.plan == plan().sheets[at].planned.plan &&
           before.sheets[at].planned.steps == plan().sheets[at].planned.steps;
}

void PlanPanel::showWords() {
    QStringList buy;
    QStringList missing;
    if (m_plan) {
        buy = linesFromCore(plan().buyLines()) + linesFromCore(plan().remarks);
        missing = linesFromCore(plan().missingLines());
    }
    const QString bound = m_plan ? fromCore(plan().bound) : QString();
    m_bound->setText(bound.isEmpty() ? bound : bound + u'.');
    for (const auto& [label, lines] : {std::pair<QLabel*, QStringList>(m_buy, buy),
                                       std::pair<QLabel*, QStringList>(m_missing, missing)}) {
        label->setText(listed(lines, mostLines));
        label->setToolTip(lines.join(u'\n'));
        label->setAccessibleDescription(lines.size() > mostLines ? lines.join(u'\n') : QString());
    }
    m_bound->setVisible(!bound.isEmpty());
    m_buy->setVisible(!buy.isEmpty());
    m_missing->setVisible(!missing.isEmpty());
}

void PlanPanel::listSheets() {
    const QSignalBlocker quiet(m_sheets);
    m_sheets->clear();
    if (!m_plan) {
        return;
    }
    for (std::size_t i = 0; i < plan().sheets.size(); ++i) {
        const PlannedSheet& sheet = plan().sheets[i].planned;
        auto* item =
            new QListWidgetItem(thumbnailOf(sheet, devicePixelRatioF()), tr("Sheet %1").arg(i + 1));
        item->setToolTip(fromCore(sheet.heading));
        item->setData(Qt::AccessibleTextRole, fromCore(sheet.heading));
        m_sheets->addItem(item);
    }
}

int PlanPanel::chosenSheet() const {
    return m_sheets->currentRow();
}

void PlanPanel::chooseSheet(int index) {
    const QSignalBlocker quiet(m_sheets);
    m_sheets->setCurrentRow(std::clamp(index, 0, std::max(0, m_sheets->count() - 1)));
    showSheet();
}

void PlanPanel::showSheet() {
    const QSignalBlocker quiet(m_steps);
    m_steps->clear();
    m_pieces->clear();
    const int index = chosenSheet();
    if (m_plan && index >= 0) {
        const PlannedSheet& sheet = plan().sheets[static_cast<std::size_t>(index)].planned;
        m_heading->setText(fromCore(sheet.heading));
        m_pieces->addItems(linesFromCore(pieceLines(sheet)));
        int number = 0;
        for (const std::string& sentence : stepSentences(sheet)) {
            m_steps->addItem(tr("%1. %2").arg(++number).arg(sentenceFromCore(sentence)));
        }
        for (const KnifeCut& cut : sheet.knifeCuts) {
            m_steps->addItem(tr("%1. %2").arg(++number).arg(fromCore(knifeSentence(sheet, cut))));
        }
        for (const std::string& note : sheet.notes) {
            m_steps->addItem(fromCore(note));
        }
    }
    showStep();
}

void PlanPanel::showStep() {
    const int index = chosenSheet();
    if (!m_plan || index < 0) {
        m_picture->show({}, {});
        m_stepPicture->show({}, {});
        return;
    }
    const PlannedSheet& sheet = plan().sheets[static_cast<std::size_t>(index)].planned;
    const int row = m_steps->currentRow();
    const auto step = row >= 0 ? std::optional(static_cast<std::size_t>(row)) : std::nullopt;
    m_picture->show(sheet, step);
    m_stepPicture->show(sheet, step);
    m_stepPicture->setVisible(m_stepPicture->step().has_value());
}

QString PlanPanel::heading() const {
    return m_heading->text();
}

QString PlanPanel::words() const {
    return QStringList{m_bound->text(), m_buy->text(), m_missing->text(),
                       m_instead->isHidden() ? QString() : m_instead->text()}
        .join(u'\n')
        .trimmed();
}

}  // namespace matwright::app
