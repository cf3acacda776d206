// SPDX-License-Identifier: MIT
#pragma once

#include <QAction>
#include <QCheckBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QTimer>
#include <QToolButton>
#include <QWidget>
#include <functional>
#include <string>
#include <vector>

#include "app/library/library_actions.h"
#include "app/library/page_picture.h"
#include "app/library/tag_field.h"
#include "core/library/holdings.h"

namespace matwright::app {

class TintedLabel;

// What is known of the selected sketch, and what can be done with it. Of several sketches it shows
// the tags that all have, and what can be done with all of them.
class DetailsPanel final : public QWidget {
    Q_OBJECT

  public:
    DetailsPanel(const LibraryActions& actions, QWidget* parent = nullptr);

    // None, one or several.
    void show(const std::vector<LibraryEntry>& entries);
    void setPicture(const QImage& picture) { m_picture->setPicture(picture); }
    int pictureSidePixels(const SketchFacts& facts) const { return m_picture->sidePixels(facts); }
    void setKnownTags(const QStringList& tags) { m_tags->setKnown(tags); }
    // A note that is being typed counts from now on.
    void finishNote();

    TagField& tags() { return *m_tags; }

  signals:
    void labelsChanged(const std::vector<std::string>& sketches,
                       const std::function<void(matwright::Labels&)>& change);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QWidget* makeContent();
    QWidget* makeButtons(const LibraryActions& actions);
    void showOne(const LibraryEntry& entry);
    void showSeveral(const std::vector<LibraryEntry>& entries);
    void changeTags(const QString& tag, bool add);

    std::vector<std::string> m_shown;
    QLabel* m_hint;
    QWidget* m_content;
    PagePicture* m_picture;
    QLabel* m_name;
    QLabel* m_facts;
    TintedLabel* m_sketchNote;
    QCheckBox* m_favourite;
    TagField* m_tags;
    QLabel* m_noteLabel;
    QPlainTextEdit* m_note;
    TintedLabel* m_use;
    std::vector<QWidget*> m_forOne;
    std::vector<QWidget*> m_forSeveral;
    QString m_noteAsKept;
};

}  // namespace matwright::app
