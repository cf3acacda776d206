// SPDX-License-Identifier: MIT
#include "app/panels/photo_section.h"

#include <QAccessible>
#include <QComboBox>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <algorithm>

#include "app/panels/tint.h"
#include "core/crop/crop.h"
#include "core/making/fold.h"
#include "core/measure/catalogue.h"
#include "core/photo/photo_words.h"

namespace matwright::app {

namespace {

Size printOf(const Piece& piece) {
    return piece.printSize.value_or(piece.size);
}

bool isTrimmed(const Piece* piece) {
    return printOf(*piece) != piece->size;
}

// A size travels as its two tick counts in an item's data.
QVariant dataOf(Size size) {
    return QVariantList{qlonglong{size.width.ticks()}, qlonglong{size.height.ticks()}};
}

std::optional<Size> sizeOf(const QVariant& data) {
    const QVariantList ticks = data.toList();
    if (ticks.size() != 2) {
        return std::nullopt;
    }
    return Size{Length::fromTicks(ticks[0].toLongLong()), Length::fromTicks(ticks[1].toLongLong())};
}

void addSize(QComboBox* box, const QString& text, Size size) {
    box->addItem(text, dataOf(size));
}

}  // namespace

PhotoSection::PhotoSection(Session& session, SettingsStore& settings, QWidget* parent)
    : PieceSection(tr("Photo"), session, settings, parent),
      m_photo(new QLabel(this)),
      m_coarse(new TintedLabel(Tint::Wrong, {}, this)),
      m_crop(new QPushButton(tr("C&rop…"), this)),
      m_print(new QComboBox(this)),
      m_printWidth(newLength(smallestSide, largestSide)),
      m_printHeight(newLength(smallestSide, largestSide)),
      m_trim(new QComboBox(this)),
      m_trimToPrint(new QPushButton(tr("Tr&im to whole print"), this)),
      m_printNow(new TintedLabel(Tint::Quiet, {}, this)) {
    for (QLabel* label : {m_photo, static_cast<QLabel*>(m_coarse)}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        addWide(label);
    }
    settle(m_crop);
    m_crop->setToolTip(tr("Large: choose what shows of the photo, straighten it, even it out"));
    addWide(m_crop);
    connect(m_crop, &QPushButton::clicked, this, &PhotoSection::cropRequested);
    addRow(tr("Print si&ze"), m_print);
    addRow(tr("Print width"), m_printWidth);
    addRow(tr("Print height"), m_printHeight);
    addRow(tr("Tri&m to"), m_trim);
    settle(m_trimToPrint);
    addBelow(m_trimToPrint);
    addWide(m_printNow);
    setRowShown(m_printNow, false);
    m_print->setToolTip(tr("What is printed; the trim is what is left after cutting."));
    m_print->setMaxVisibleItems(20);
    m_trim->setMaxVisibleItems(20);
    connect(m_print, &QComboBox::activated, this, &PhotoSection::printChosen);
    connect(m_trim, &QComboBox::activated, this, &PhotoSection::trimChosen);
    connect(m_trimToPrint, &QPushButton::clicked, this, [this] {
        change(tr("Trim to print"), 0, [](Piece& p) { p = p.locked ? p : trimmedToPrint(p); });
    });
    connect(m_printWidth, &LengthField::valueChanged, this, [this](Length to, int gesture) {
        setPrint([to](Piece& p) { p = withPrint(p, {to, printOf(p).height}); }, gesture,
                 m_printWidth);
    });
    connect(m_printHeight, &LengthField::valueChanged, this, [this](Length to, int gesture) {
        setPrint([to](Piece& p) { p = withPrint(p, {printOf(p).width, to}); }, gesture,
                 m_printHeight);
    });
}

void PhotoSection::showPieces(Pieces pieces) {
    const bool allPhotos =
        std::ranges::all_of(pieces, [](const Piece* p) { return p->kind == PieceKind::PhotoSlot; });
    setVisible(allPhotos);
    if (!allPhotos) {
        forgetWishes();
        return;
    }
    showPhoto(pieces);
    tellPrint(pieces);
    fillPrints(pieces);
    fillTrims(pieces);
    showLength(m_printWidth, pieces, [](const Piece& p) { return printOf(p).width; });
    showLength(m_printHeight, pieces, [](const Piece& p) { return printOf(p).height; });
    const bool free = !std::ranges::all_of(pieces, [](const Piece* p) { return p->locked; });
    m_trim->setEnabled(free && m_trim->count() > 0);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_print, m_printWidth, m_printHeight, m_trimToPrint}) {
        widget->setEnabled(free);
    }
    setRowShown(m_trimToPrint, std::ranges::any_of(pieces, isTrimmed));
}

// The photo in the slot, where one slot with a photo is selected.
void PhotoSection::showPhoto(Pieces pieces) {
    const auto& work = session().work();
    const auto placed = work.placements.find(session().onlySelected());
    const bool hasPhoto = pieces.size() == 1 && placed != work.placements.end();
    bool isFine = true;
    if (hasPhoto) {
        const Placement& placement = placed->second;
        const Photo& photo = work.photos.at(placement.photo);
        const Size window = shownWindow(*pieces.front(), placement.border, session().sketch().page);
        const double ppi = effectivePpi(placement.crop, photo.upright, window);
        const QString text = tr("%1 prints at %2.")
                                 .arg(QFileInfo(QString::fromStdString(photo.path)).fileName(),
                                      QString::fromStdString(ppiText(ppi)));
        isFine = sharpnessAt(ppi) == Sharpness::Fine;
        m_photo->setText(text);
        m_coarse->setText(text);
    }
    setRowShown(m_photo, hasPhoto && isFine);
    setRowShown(m_coarse, hasPhoto && !isFine);
    setRowShown(m_crop, hasPhoto);
}

void PhotoSection::forgetWishes() {
    m_customAsked = false;
    m_lastPrint.reset();
    setRowShown(m_printNow, false);
}

// A trim that outgrows its print gets another print. Nobody asked for that one, so it is told.
void PhotoSection::tellPrint(Pieces pieces) {
    const auto print = commonOf(pieces, printOf);
    const bool followed = m_lastPrint && print && *print != *m_lastPrint;
    if (followed && !m_isPrintAsked) {
        m_printNow->setText(tr("Print size is now %1.").arg(printName(*print)));
        QAccessibleEvent alert(m_printNow, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
    if (followed) {
        setRowShown(m_printNow, !m_isPrintAsked);
    }
    m_lastPrint = print;
}

// The catalogue as the slots lie; of slots that lie differently the first decides.
void PhotoSection::fillPrints(Pieces pieces) {
    const QSignalBlocker quiet(m_print);
    const auto common = commonOf(pieces, printOf);
    const bool upright = printOf(*pieces.front()).width <= printOf(*pieces.front()).height;
    m_print->clear();
    for (const NamedSize& known : printSizes()) {
        const Size size = upright ? known.size : known.size.turned();
        addSize(m_print, printName(size), size);
    }
    m_print->addItem(tr("Custom…"));
    const int custom = m_print->count() - 1;
    const int found = common ? m_print->findData(dataOf(*common)) : -1;
    const bool isCustom = common && (found < 0 || m_customAsked);
    m_print->setPlaceholderText(tr("differ"));
    m_print->setCurrentIndex(!common ? -1 : isCustom ? custom : found);
    showCustom(isCustom);
}

void PhotoSection::showCustom(bool shown) {
    setRowShown(m_printWidth, shown);
    setRowShown(m_printHeight, shown);
}

void PhotoSection::fillTrims(Pieces pieces) {
    const QSignalBlocker quiet(m_trim);
    m_trim->clear();
    m_trim->setPlaceholderText(tr("differ"));
    const auto print = commonOf(pieces, printOf);
    const auto trim = commonOf(pieces, [](const Piece& p) { return p.size; });
    if (!print) {  // each its own whole print is all they can have in common
        m_trim->addItem(tr("Whole print"));
        m_trim->setCurrentIndex(std::ranges::none_of(pieces, isTrimmed) ? 0 : -1);
        return;
    }
    for (const Size size : commonTrims(*print)) {
        addSize(m_trim, size == *print ? tr("Whole print") : printName(size), size);
    }
    int current = trim ? m_trim->findData(dataOf(*trim)) : -1;
    if (trim && current < 0) {
        addSize(m_trim, printName(*trim), *trim);
        current = m_trim->count() - 1;
    }
    m_trim->setCurrentIndex(current);
}

void PhotoSection::printChosen(int index) {
    const auto size = sizeOf(m_print->itemData(index));
    m_customAsked = !size;
    if (!size) {
        showCustom(true);
        m_printWidth->setFocus(Qt::OtherFocusReason);
        return;
    }
    showCustom(false);
    setPrint([&](Piece& p) { p = withPrint(p, *size); }, 0, nullptr);
}

void PhotoSection::trimChosen(int index) {
    if (const auto size = sizeOf(m_trim->itemData(index))) {
        const auto trim = [&](Piece& p) { p = p.locked ? p : withTrim(p, *size); };
        change(tr("Trim"), 0, trim);
    } else {
        change(tr("Trim to print"), 0, [](Piece& p) { p = p.locked ? p : trimmedToPrint(p); });
    }
}

void PhotoSection::setPrint(const PieceChange& set, int gesture, TypedField* field) {
    const auto unlessLocked = [&](Piece& p) {
        if (!p.locked) {
            set(p);
        }
    };
    m_isPrintAsked = true;
    change(tr("Change print size"), gesture, unlessLocked, field);
    m_isPrintAsked = false;
}

}  // namespace matwright::app
