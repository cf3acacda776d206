// SPDX-License-Identifier: MIT
#include "app/library/entry_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QStringList>
#include <ranges>

#include "core/library/printable.h"
#include "core/measure/catalogue.h"
#include "core/measure/length_text.h"

namespace matwright::app {
namespace {

// Where translators find these texts.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(LibraryWords)
};

QString countWord(int count) {
    switch (count) {
        case 2:
            return Words::tr("two");
        case 3:
            return Words::tr("three");
        case 4:
            return Words::tr("four");
        case 5:
            return Words::tr("five");
        case 6:
            return Words::tr("six");
        case 7:
            return Words::tr("seven");
        case 8:
            return Words::tr("eight");
        case 9:
            return Words::tr("nine");
        default:
            return QString::number(count);
    }
}

// "8 1/2 × 11 in" as "8 1/2×11".
QString shortened(QString size) {
    size.replace(QStringLiteral(" × "), QStringLiteral("×"));
    return size.endsWith(QStringLiteral(" in")) ? size.chopped(3) : size;
}

}  // namespace

QString asText(std::string_view utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString shownPath(std::string_view path) {
    return asText(printablePath(path));
}

QString pageSizeWords(Size size) {
    const NamedSize* named = pageSizeOf(size);
    // People know these by their names; the inch sizes are their own names.
    if (named && named->id == "a4") {
        return Words::tr("A4");
    }
    if (named && named->id == "a4-lying") {
        return Words::tr("A4 lying");
    }
    return asText(naturalSizeText(size));
}

QString shortSizeWords(Size size) {
    return shortened(pageSizeWords(size));
}

QString pageWords(const SketchFacts& facts) {
    const QString size = pageSizeWords(facts.pageSize);
    return facts.doublePage ? Words::tr("%1, double page").arg(size) : size;
}

QString photoWords(int photos) {
    switch (photos) {
        case 0:
            return Words::tr("no photos");
        case 1:
            return Words::tr("1 photo");
        default:
            return Words::tr("%1 photos").arg(photos);
    }
}

QString printWords(Size size) {
    const Length centimetre = Length::millimetres(10);
    if (size.width.ticks() % centimetre.ticks() == 0 &&
        size.height.ticks() % centimetre.ticks() == 0) {
        return Words::tr("%1×%2 cm")
            .arg(size.width.ticks() / centimetre.ticks())
            .arg(size.height.ticks() / centimetre.ticks());
    }
    return shortened(asText(naturalSizeText(size)));
}

QString printNeedWords(const std::vector<PrintNeed>& prints) {
    QStringList parts;
    // The largest first: that is the photo the page is about.
    for (const PrintNeed& need : prints | std::views::reverse) {
        const QString size = printWords(need.size);
        parts << (need.count == 1 ? size : Words::tr("%1 %2").arg(countWord(need.count), size));
    }
    return parts.join(QStringLiteral(", "));
}

QString useWords(const Labels& labels) {
    if (labels.useCount == 0 || !labels.lastUsed) {
        return Words::tr("Not used yet");
    }
    const auto last = QDateTime::fromSecsSinceEpoch(labels.lastUsed->time_since_epoch().count());
    const QString day = QLocale().toString(last.date(), QLocale::LongFormat);
    return labels.useCount == 1
               ? Words::tr("Used once, on %1").arg(day)
               : Words::tr("Used %1 times, last on %2").arg(QString::number(labels.useCount), day);
}

QString spokenEntry(const LibraryEntry& entry, int alike) {
    QStringList parts{asText(shownName(entry)), pageWords(entry.facts),
                      photoWords(entry.facts.photos)};
    if (const QString prints = printNeedWords(entry.facts.prints); !prints.isEmpty()) {
        parts << Words::tr("prints %1").arg(prints);
    }
    if (entry.labels.favourite) {
        parts << Words::tr("favourite");
    }
    if (alike > 0) {
        parts << Words::tr("%1 more alike").arg(alike);
    }
    return parts.join(QStringLiteral(", "));
}

}  // namespace matwright::app
