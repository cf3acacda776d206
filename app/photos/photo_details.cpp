// SPDX-License-Identifier: MIT
#include "app/photos/photo_details.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/panels/section.h"
#include "app/photos/photo_commands.h"
#include "core/measure/catalogue.h"
#include "core/measure/length_text.h"
#include "core/photo/photo_words.h"

namespace matwright::app {

namespace {

// "3024 × 4032 pixels, 14 July 2026 16:03" in plain figures.
QString factsText(const Photo& photo) {
    QString text =
        PhotoDetails::tr("%1 × %2 pixels").arg(photo.upright.width).arg(photo.upright.height);
    if (!photo.taken.empty()) {
        text += QStringLiteral(", ") + QString::fromStdString(photo.taken).chopped(3);
    }
    if (photo.rating && *photo.rating > 0) {
        text += QStringLiteral(", ") + QString(*photo.rating, u'★');
    }
    return text;
}

}  // namespace

PhotoDetails::PhotoDetails(Session& session, PhotoAccess& access, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_access(access),
      m_name(new QLabel),
      m_about(new QLabel),
      m_favourite(new QCheckBox(tr("Favourite"))),
      m_focal(new QCheckBox(tr("Focal photo"))),
      m_wish(new QComboBox),
      m_where(new QPushButton(tr("Where is it?…"))) {
    QFont bold = m_name->font();
    bold.setBold(true);
    m_name->setFont(bold);
    for (QLabel* label : {m_name, m_about}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    }
    m_favourite->setToolTip(tr("Favourites come first when sorted by rating."));
    m_focal->setToolTip(tr("The one photo the page is about; it gets the largest slot."));
    m_wish->setToolTip(tr("The print size that filling the slots looks for."));
    fillWishes();
    for (QWidget* control :
         std::initializer_list<QWidget*>{m_favourite, m_focal, m_wish, m_where}) {
        settle(control);
    }
    auto* marks = new QHBoxLayout;
    marks->addWidget(m_favourite);
    marks->addWidget(m_focal);
    marks->addStretch(1);
    auto* wish = new QHBoxLayout;
    auto* label = new QLabel(tr("Print size"));
    label->setBuddy(m_wish);
    wish->addWidget(label);
    wish->addWidget(m_wish, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(10, 4, 6, 6);
    layout->setSpacing(3);
    layout->addWidget(m_name);
    layout->addWidget(m_about);
    layout->addWidget(m_where);
    layout->addLayout(marks);
    layout->addLayout(wish);
    connect(m_favourite, &QCheckBox::clicked, this,
            [this](bool on) { tell(setFavourite(m_session, m_photos, on)); });
    connect(m_focal, &QCheckBox::clicked, this, [this](bool on) {
        tell(setFocal(m_session, on ? std::optional(m_photos.front()) : std::nullopt));
    });
    connect(m_wish, &QComboBox::activated, this, [this](int row) {
        const auto sizes = printSizes();
        tell(setWish(m_session, m_photos,
                     row == 0 ? std::nullopt
                              : std::optional(sizes[static_cast<std::size_t>(row - 1)].size)));
    });
    connect(m_where, &QPushButton::clicked, this, [this] { emit whereIsIt(m_photos.front()); });
    show({});
}

void PhotoDetails::fillWishes() {
    m_wish->addItem(tr("Any"));
    for (const NamedSize& size : printSizes()) {
        m_wish->addItem(QString::fromStdString(naturalSizeText(size.size)));
    }
}

void PhotoDetails::tell(const QString& sentence) {
    emit said(sentence);
}

void PhotoDetails::show(std::vector<PhotoId> photos) {
    m_photos = std::move(photos);
    std::erase_if(m_photos, [this](PhotoId id) { return !matwright::find(m_session.work(), id); });
    const bool isOne = m_photos.size() == 1;
    setVisible(!m_photos.empty());
    if (m_photos.empty()) {
        return;
    }
    const Photo& first = *matwright::find(m_session.work(), m_photos.front());
    const PhotoState state =
        m_access.ifOpen() ? m_access.ifOpen()->stateOf(first.content) : PhotoState::Unknown;
    m_name->setText(isOne ? nameOf(first) : tr("%1 photos").arg(m_photos.size()));
    QStringList about;
    if (isOne) {
        const QString print = QString::fromStdString(largestPrintText(first.upright));
        about << factsText(first) << print.left(1).toUpper() + print.mid(1);
        const QString fault =
            m_access.ifOpen() ? m_access.ifOpen()->faultOf(first.content) : QString();
        if (const QString words = stateText(state, fault); !words.isEmpty()) {
            about << words;
        }
    }
    m_about->setText(about.join(u'\n'));
    m_about->setVisible(isOne);
    m_where->setVisible(isOne && (state == PhotoState::Missing || state == PhotoState::Changed));
    const auto all = [this](auto holds) {
        return std::ranges::all_of(
            m_photos, [&](PhotoId id) { return holds(*matwright::find(m_session.work(), id)); });
    };
    m_favourite->setChecked(all([](const Photo& photo) { return photo.favourite; }));
    m_focal->setEnabled(isOne);
    m_focal->setChecked(isOne && m_session.work().focal == m_photos.front());
    const bool sameWish = all([&](const Photo& photo) { return photo.wish == first.wish; });
    int row = first.wish ? -1 : 0;
    for (std::size_t i = 0; first.wish && i < printSizes().size(); ++i) {
        const Size size = printSizes()[i].size;
        if (size == *first.wish || size == first.wish->turned()) {
            row = static_cast<int>(i) + 1;
        }
    }
    m_wish->setCurrentIndex(sameWish ? row : -1);
}

}  // namespace matwright::app
