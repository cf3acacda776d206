// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <memory>
#include <vector>

#include "core/library/holdings.h"
#include "core/library/search.h"

namespace matwright::app {

// What is in the library, what is looked for in it and what was found: the one state that filters,
// wall and details show.
class Finder final : public QObject {
    Q_OBJECT

  public:
    explicit Finder(QObject* parent = nullptr);

    // Never null; empty before the first ones come.
    const std::shared_ptr<const Holdings>& holdings() const { return m_holdings; }
    const Query& query() const { return m_query; }
    const Found& found() const { return m_found; }

    // The query goes on with the new holdings; a family is looked up again by one of its members.
    void setHoldings(std::shared_ptr<const Holdings> holdings);
    void setQuery(Query query);
    // Nothing is looked for any more; the order stays.
    void showAll();
    bool showsAll() const;

    // How many others of its family a sketch has.
    int alike(std::size_t entry) const;

  signals:
    void changed();

  private:
    void look();
    void countFamilies();

    std::shared_ptr<const Holdings> m_holdings;
    Query m_query;
    Found m_found;
    std::string m_familyMember;
    std::vector<int> m_familySizes;
};

}  // namespace matwright::app
