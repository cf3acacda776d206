// SPDX-License-Identifier: MIT
#pragma once

#include <map>
#include <set>
#include <string>

#include "app/photos/photo_service.h"

namespace matwright::app {

// A photo service that knows what a test tells it and answers when the test says so.
class FakePhotoService final : public PhotoService {
  public:
    std::vector<std::string> askedToLookAt;
    std::vector<WantedPhoto> onPage;
    std::vector<WantedPhoto> searched;
    std::vector<std::vector<WantedPhoto>> checked;
    std::map<ContentKey, PhotoState> states;
    std::map<ContentKey, QImage> copies;
    std::set<ContentKey> coming;
    std::map<ContentKey, QImage> thumbnails;
    int thumbnailsAsked = 0;
    int cancelled = 0;
    int searches = 0;
    std::vector<LookedAt> toldOnCancel;  // what was looked at and not told yet

    void lookAt(std::vector<std::string> paths) override { askedToLookAt = std::move(paths); }
    void cancel() override {
        ++cancelled;
        if (!toldOnCancel.empty()) {
            emit lookedAt(toldOnCancel);
        }
        emit lookedAtAll();
    }
    void checkStates(std::vector<WantedPhoto> photos) override {
        checked.push_back(std::move(photos));
    }
    int search(std::vector<WantedPhoto> photos, std::vector<std::string>) override {
        searched = std::move(photos);
        return ++searches;
    }
    PhotoState stateOf(const ContentKey& content) const override {
        const auto known = states.find(content);
        return known == states.end() ? PhotoState::Unknown : known->second;
    }
    QString faultOf(const ContentKey&) const override { return {}; }
    QImage thumbnail(const WantedPhoto& photo) override {
        ++thumbnailsAsked;
        const auto known = thumbnails.find(photo.content);
        return known == thumbnails.end() ? QImage() : known->second;
    }
    void makeThumbnails(std::vector<WantedPhoto>) override {}
    void showOnPage(std::vector<WantedPhoto> photos) override { onPage = std::move(photos); }
    void showLarge(std::optional<WantedPhoto>) override {}
    QImage workingCopy(const ContentKey& content) const override {
        const auto known = copies.find(content);
        return known == copies.end() ? QImage() : known->second;
    }
    bool isCopyComing(const ContentKey& content) const override { return coming.contains(content); }
    std::optional<Histogram> toneSample(const WantedPhoto&) override { return {}; }
    std::string smallPicture(const Photo&, const Placement&, Size) override { return {}; }
    qint64 memoryUsed() const override { return 0; }
    bool isIdle() const override { return true; }

    void setState(const ContentKey& content, PhotoState state) {
        states[content] = state;
        emit stateChanged(content);
    }
};

}  // namespace matwright::app
