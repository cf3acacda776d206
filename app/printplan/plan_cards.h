// SPDX-License-Identifier: MIT
#pragma once

#include <QWidget>
#include <memory>

#include "app/printplan/plan_run.h"

class QLabel;
class QToolButton;
class QVBoxLayout;

namespace matwright::app {

class PhotoService;

// Every sheet of a plan, one below the other: how it looks, how it is cut, and what its room could
// be used for. `service` may be null; then no photos are shown.
class PlanCards final : public QWidget {
    Q_OBJECT

  public:
    PlanCards(PhotoService* service, Scale scale, QWidget* parent = nullptr);

    // Nothing: `sentence` says what to do.
    void show(std::shared_ptr<const ReadyPlan> ready, const QString& sentence = {});
    // Offers are taken only while the plan is the latest.
    void setAcceptsOffers(bool accepts);

    // For tests.
    int count() const;
    QStringList titles() const;
    QStringList rooms() const;
    QList<QToolButton*> offers() const;

  signals:
    void offerChosen(const matwright::PrintOffer& offer);

  private:
    QWidget* makeCard(std::size_t sheet);
    QWidget* makeWords(std::size_t sheet);
    void addRoom(QVBoxLayout* column, std::size_t sheet);
    QToolButton* makeOffer(const PrintOffer& offer);
    void showPictures();

    PhotoService* m_service;
    const Scale m_scale;
    std::shared_ptr<const ReadyPlan> m_ready;
    QVBoxLayout* m_column;
};

}  // namespace matwright::app
