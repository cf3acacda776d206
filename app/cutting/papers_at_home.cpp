// SPDX-License-Identifier: MIT
#include "app/cutting/papers_at_home.h"

#include <QFile>
#include <algorithm>

#include "core/content/content_key.h"
#include "core/database/store.h"
#include "core/papers/papers_store.h"

namespace matwright::app {

namespace {

constexpr qint64 maxPictureBytes = qint64{200} * 1000 * 1000;

std::vector<PaperOnHand> papersAtHome(const std::filesystem::path& file) {
    std::error_code ignored;
    if (!std::filesystem::exists(file, ignored)) {
        return {};
    }
    auto store = PapersStore::open(file, windowPatience);
    if (!store) {
        return {};
    }
    return store->list().value_or(std::vector<PaperOnHand>());
}

std::optional<ContentKey> keyOfPicture(const std::string& path) {
    QFile picture(QString::fromStdString(path));
    if (picture.size() > maxPictureBytes || !picture.open(QIODevice::ReadOnly)) {
        return std::nullopt;
    }
    const QByteArray bytes = picture.readAll();
    if (bytes.isEmpty()) {
        return std::nullopt;
    }
    return contentKeyOf({bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

}  // namespace

QStringList namesAtHome(const std::filesystem::path& file) {
    QStringList names;
    for (const PaperOnHand& paper : papersAtHome(file)) {
        const QString name = QString::fromStdString(paper.name);
        if (!names.contains(name)) {
            names.append(name);
        }
    }
    return names;
}

std::optional<PaperLook> lookAtHome(const std::filesystem::path& file, const QString& name) {
    const std::vector<PaperOnHand> papers = papersAtHome(file);
    const auto paper = std::ranges::find(papers, name.toStdString(), &PaperOnHand::name);
    if (paper == papers.end()) {
        return std::nullopt;
    }
    PaperLook look;
    look.colour = paper->colour;
    if (const auto key = paper->picture.empty() ? std::nullopt : keyOfPicture(paper->picture)) {
        look.picture = paper->picture;
        look.content = *key;
        look.pictureWidth = paper->pictureWidth;
    }
    return look;
}

PhotoEdit lookFromHome(const std::filesystem::path& file, const PhotoWork& page,
                       const QString& name) {
    PhotoEdit edit;
    if (page.papers.contains(name.toStdString())) {
        return edit;
    }
    if (const std::optional<PaperLook> look = lookAtHome(file, name)) {
        edit.papers.emplace(name.toStdString(), look);
    }
    return edit;
}

}  // namespace matwright::app
