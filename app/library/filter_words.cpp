// SPDX-License-Identifier: MIT
#include "app/library/filter_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/library/entry_words.h"

namespace matwright::app {
namespace {

struct AskedWords {
    Q_DECLARE_TR_FUNCTIONS(FilterWords)
};

QString photosAsked(const Query& query) {
    const QString photos = photoWords(query.photos->count);
    return query.photos->orFewer ? AskedWords::tr("the limit of %1").arg(photos)
                                 : AskedWords::tr("the wish for %1").arg(photos);
}

QString printsAsked(const Query& query) {
    QStringList sizes;
    for (const Size size : query.prints) {
        sizes << printWords(size);
    }
    return AskedWords::tr("the prints %1").arg(sizes.join(QStringLiteral(", ")));
}

QString tagsAsked(const Query& query) {
    QStringList tags;
    for (const std::string& tag : query.tags) {
        tags << asText(tag);
    }
    return query.tags.size() == 1
               ? AskedWords::tr("the tag %1").arg(tags.constFirst())
               : AskedWords::tr("the tags %1").arg(tags.join(QStringLiteral(", ")));
}

}  // namespace

QString filterWords(Filter filter, const Query& query) {
    switch (filter) {
        case Filter::Words:
            return AskedWords::tr("the words “%1”").arg(asText(query.words));
        case Filter::Photos:
            return photosAsked(query);
        case Filter::Prints:
            return printsAsked(query);
        case Filter::PageSizes:
            return AskedWords::tr("the page size %1").arg(pageSizeWords(query.pageSizes.front()));
        case Filter::DoublePage:
            return query.doublePage == true ? AskedWords::tr("the wish for double pages")
                                            : AskedWords::tr("the wish for single pages");
        case Filter::PhotoWay:
            return AskedWords::tr("the choice of upright or lying photos");
        case Filter::RoomForTitle:
            return AskedWords::tr("room for a title");
        case Filter::RoomForJournaling:
            return AskedWords::tr("room for journaling");
        case Filter::Favourites:
            return AskedWords::tr("the choice of favourites");
        case Filter::Tags:
            return tagsAsked(query);
        case Filter::Folder:
            return AskedWords::tr("the folder %1").arg(shownPath(query.folder));
        case Filter::Family:
            return AskedWords::tr("the choice of those alike");
    }
    return {};
}

}  // namespace matwright::app
