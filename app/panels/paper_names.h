// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QStringList>
#include <functional>
#include <optional>

#include "app/editing/session.h"

class QStringListModel;

namespace matwright::app {

class TextField;

// The papers at home, as far as fields for the name of a paper need them. Either may be empty.
struct KnownPapers {
    std::function<QStringList()> names;  // each once; asked when a field gets the focus
    std::function<std::optional<PaperLook>(const QString& name)> look;  // of one of those names
};

// Offers the names of papers where one is typed: those at home, and those of the open page.
class PaperNames final : public QObject {
    Q_OBJECT

  public:
    explicit PaperNames(Session& session, QObject* parent = nullptr);

    void use(KnownPapers known) { m_known = std::move(known); }
    // A name that is chosen counts as typed. The field is outlived by this.
    void offerIn(TextField* field);
    // The look of this paper at home, where the page has none for it.
    PhotoEdit lookOf(const QString& paper) const;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    QStringList namesOnPage() const;
    void readNames();

    Session& m_session;
    KnownPapers m_known;
    QStringList m_atHome;
    QStringListModel* m_offered;
};

}  // namespace matwright::app
