// SPDX-License-Identifier: MIT
#include "app/library/finder.h"

#include <utility>

namespace matwright::app {

Finder::Finder(QObject* parent) : QObject(parent), m_holdings(Holdings::of({})) {}

void Finder::setHoldings(std::shared_ptr<const Holdings> holdings) {
    m_holdings = std::move(holdings);
    countFamilies();
    if (m_query.family != 0) {
        const auto member = m_holdings->indexOf(m_familyMember);
        m_query.family = member ? m_holdings->family(*member) : 0;
    }
    look();
}

void Finder::setQuery(Query query) {
    if (query == m_query) {
        return;
    }
    m_query = std::move(query);
    if (m_query.family != 0) {
        const auto members = m_holdings->membersOf(m_query.family);
        m_familyMember = members.empty() ? std::string() : m_holdings->path(members.front());
    }
    look();
}

void Finder::showAll() {
    Query all;
    all.order = m_query.order;
    all.wordMatch = m_query.wordMatch;
    setQuery(std::move(all));
}

bool Finder::showsAll() const {
    Query all;
    all.order = m_query.order;
    all.wordMatch = m_query.wordMatch;
    return m_query == all;
}

int Finder::alike(std::size_t entry) const {
    const auto family = static_cast<std::size_t>(m_holdings->family(entry));
    return family == 0 ? 0 : m_familySizes[family] - 1;
}

void Finder::look() {
    m_found = search(*m_holdings, m_query);
    emit changed();
}

void Finder::countFamilies() {
    m_familySizes.clear();
    for (std::size_t i = 0; i < m_holdings->size(); ++i) {
        const auto family = static_cast<std::size_t>(m_holdings->family(i));
        if (family >= m_familySizes.size()) {
            m_familySizes.resize(family + 1);
        }
        ++m_familySizes[family];
    }
}

}  // namespace matwright::app
