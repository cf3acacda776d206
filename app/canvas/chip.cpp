// SPDX-License-Identifier: MIT
#include "app/canvas/chip.h"

#include <QCache>
#include <QColor>
#include <QFontMetricsF>
#include <QGlyphRun>
#include <QHash>
#include <QPixmap>
#include <QRawFont>
#include <cmath>
#include <optional>

#include "app/canvas/overlay.h"

namespace matwright::app {

namespace {

constexpr QColor wordFill(38, 46, 54);
constexpr QColor wordText(255, 255, 255);
constexpr QColor figureFill(255, 255, 255, 245);
constexpr int mostGrounds = 128;

double paddingOf(ChipKind kind) {
    return kind == ChipKind::Word ? 7 : 4;
}

// The letters of one font: which glyph each is and how far it leads.
class Letters {
  public:
    explicit Letters(const QFont& font)
        : m_raw(QRawFont::fromFont(font)), m_height(QFontMetricsF(font).height()) {}

    double height() const { return m_height; }

    // The text as one run on a baseline that starts at the origin, and its width; nothing where the
    // font lacks a letter.
    struct Run {
        QGlyphRun glyphs;
        double width = 0;
    };
    std::optional<Run> runOf(const QString& text) {
        QList<quint32> indexes;
        QList<QPointF> places;
        double x = 0;
        for (const QChar c : text) {
            const Letter letter = letterOf(c);
            if (letter.glyph == 0) {
                return std::nullopt;
            }
            indexes.append(letter.glyph);
            places.append({x, 0});
            x += letter.advance;
        }
        Run run{{}, x};
        run.glyphs.setRawFont(m_raw);
        run.glyphs.setGlyphIndexes(indexes);
        run.glyphs.setPositions(places);
        return run;
    }
    double ascent() const { return m_raw.ascent(); }
    double descent() const { return m_raw.descent(); }

  private:
    struct Letter {
        quint32 glyph = 0;
        double advance = 0;
    };
    Letter letterOf(QChar c) {
        const auto known = m_letters.constFind(c);
        if (known != m_letters.constEnd()) {
            return *known;
        }
        Letter letter;
        const QList<quint32> indexes = m_raw.glyphIndexesForString(QString(c));
        if (indexes.size() == 1 && !c.isSurrogate() && c.category() != QChar::Mark_NonSpacing) {
            letter = {indexes.front(), m_raw.advancesForGlyphIndexes(indexes).front().x()};
        }
        m_letters.insert(c, letter);
        return letter;
    }

    QRawFont m_raw;
    double m_height;
    QHash<QChar, Letter> m_letters;
};

Letters& lettersOf(const QFont& font) {
    static std::optional<Letters> letters;
    static QFont lettersFont;
    if (!letters || font != lettersFont) {
        letters.emplace(font);
        lettersFont = font;
    }
    return *letters;
}

// The empty chip: there are few widths.
QPixmap groundOf(QSize size, ChipKind kind, double devicePixelRatio) {
    static QCache<QString, QPixmap> grounds(mostGrounds);
    const bool isWord = kind == ChipKind::Word;
    const QString key = QStringLiteral("%1 %2 %3 %4")
                            .arg(size.width())
                            .arg(size.height())
                            .arg(int(isWord))
                            .arg(devicePixelRatio);
    if (const QPixmap* known = grounds.object(key)) {
        return *known;
    }
    auto* ground = new QPixmap(size * devicePixelRatio);
    ground->setDevicePixelRatio(devicePixelRatio);
    ground->fill(Qt::transparent);
    QPainter painter(ground);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(isWord ? wordFill : figureFill);
    painter.drawRoundedRect(QRect({}, size), isWord ? 5 : 3, isWord ? 5 : 3);
    painter.end();
    const QPixmap result = *ground;
    grounds.insert(key, ground);
    return result;
}

}  // namespace

QSize chipSize(const QString& text, ChipKind kind, const QFont& font) {
    Letters& letters = lettersOf(font);
    const auto run = letters.runOf(text);
    const double width = run ? run->width : QFontMetricsF(font).horizontalAdvance(text);
    return QSizeF(std::ceil(width) + 2 * paddingOf(kind),
                  std::ceil(letters.height()) + (kind == ChipKind::Word ? 5 : 1))
        .toSize();
}

void paintChip(QPainter& painter, const QRectF& rect, const QString& text, ChipKind kind,
               const QFont& font) {
    painter.drawPixmap(rect.topLeft(),
                       groundOf(rect.size().toSize(), kind, painter.device()->devicePixelRatioF()));
    painter.setPen(kind == ChipKind::Word ? wordText : guideColour);
    Letters& letters = lettersOf(font);
    if (const auto run = letters.runOf(text)) {
        const double above = (rect.height() - letters.ascent() - letters.descent()) / 2;
        painter.drawGlyphRun({std::round(rect.x() + (rect.width() - run->width) / 2),
                              std::round(rect.y() + above + letters.ascent())},
                             run->glyphs);
    } else {
        painter.setFont(font);
        painter.drawText(rect, Qt::AlignCenter, text);
    }
}

}  // namespace matwright::app
