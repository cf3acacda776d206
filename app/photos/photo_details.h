// SPDX-License-Identifier: MIT
#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <vector>

#include "app/photos/photo_tray_model.h"

namespace matwright::app {

// What is known of the chosen photos, beneath the tray, and what a person wishes for them:
// favourite, focal photo, print size. A projection; each choice is one undo step.
class PhotoDetails final : public QWidget {
    Q_OBJECT

  public:
    PhotoDetails(Session& session, PhotoAccess& access, QWidget* parent = nullptr);
    void show(std::vector<PhotoId> photos);
    void renew() { show(m_photos); }

  signals:
    void said(const QString& sentence);
    // The person wants to say where this photo is.
    void whereIsIt(matwright::PhotoId photo);

  private:
    void fillWishes();
    void tell(const QString& sentence);

    Session& m_session;
    PhotoAccess& m_access;
    std::vector<PhotoId> m_photos;
    QLabel* m_name;
    QLabel* m_about;
    QCheckBox* m_favourite;
    QCheckBox* m_focal;
    QComboBox* m_wish;
    QPushButton* m_where;
};

}  // namespace matwright::app
