// SPDX-License-Identifier: MIT
#include "app/photos/photo_tray_panel.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/photos/photo_details.h"

namespace matwright::app {

namespace {

const QString sortKey = QStringLiteral("photoSort");

}  // namespace

PhotoTrayPanel::PhotoTrayPanel(Session& session, PhotoAccess& access, SettingsStore& settings,
                               const QList<QAction*>& add, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_model(new PhotoTrayModel(session, access, this)),
      m_view(new PhotoTrayView(*m_model)),
      m_details(new PhotoDetails(session, access)),
      m_fault(new TintedLabel(Tint::Wrong)) {
    setAccessibleName(tr("Photos"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins({});
    layout->setSpacing(0);
    layout->addWidget(makeTop(settings, add));
    m_fault->setContentsMargins(10, 2, 6, 2);
    m_fault->hide();
    layout->addWidget(m_fault);
    layout->addWidget(m_view, 1);
    layout->addWidget(m_details);
    layout->addWidget(makeProgress());
    m_view->setMinimumWidth(150);
    connect(m_view, &PhotoTrayView::choiceChanged, this, &PhotoTrayPanel::showChosen);
    connect(m_details, &PhotoDetails::whereIsIt, this, &PhotoTrayPanel::whereIsIt);
    connect(m_details, &PhotoDetails::said, this, &PhotoTrayPanel::said);
    connect(&session, &Session::changed, this, [this](const Change& change) {
        if (change.has(Change::Photos)) {
            showChosen();
        }
        if (change.has(Change::Placements) || change.has(Change::Photos)) {
            m_view->viewport()->update();
        }
    });
    connect(&access, &PhotoAccess::opened, this, &PhotoTrayPanel::listenTo);
    if (access.ifOpen()) {
        listenTo(access.ifOpen());
    }
    showChosen();
}

QWidget* PhotoTrayPanel::makeTop(SettingsStore& settings, const QList<QAction*>& add) {
    auto* button = new QPushButton(tr("Add"));
    button->setToolTip(tr("Add photos to the tray"));
    button->setAutoDefault(false);
    auto* menu = new QMenu(button);
    menu->addActions(add);
    button->setMenu(menu);
    auto* sort = new QComboBox;
    sort->addItems({tr("By time taken"), tr("By rating"), tr("By name")});
    sort->setAccessibleName(tr("Sort the photos"));
    sort->setToolTip(tr("Sort the photos"));
    for (QWidget* control : std::initializer_list<QWidget*>{button, sort}) {
        settle(control);
    }
    const int kept = qBound(0, settings.windowState(sortKey).toInt(), sort->count() - 1);
    sort->setCurrentIndex(kept);
    m_model->setSort(static_cast<TraySort>(kept));
    connect(sort, &QComboBox::activated, this, [this, &settings](int row) {
        m_model->setSort(static_cast<TraySort>(row));
        settings.setWindowState(sortKey, QByteArray::number(row));
    });
    auto* top = new QWidget;
    auto* row = new QHBoxLayout(top);
    row->setContentsMargins(10, 8, 6, 4);
    row->addWidget(button);
    row->addWidget(sort, 1);
    return top;
}

QWidget* PhotoTrayPanel::makeProgress() {
    m_progressRow = new QWidget;
    m_progressText = new QLabel;
    m_progress = new QProgressBar;
    m_progress->setTextVisible(false);
    m_progress->setFixedHeight(8);
    m_progress->setAccessibleName(tr("Reading photos"));
    auto* cancel = new QPushButton(tr("Cancel"));
    settle(cancel);
    connect(cancel, &QPushButton::clicked, this, &PhotoTrayPanel::cancelRequested);
    auto* bars = new QVBoxLayout;
    bars->setSpacing(2);
    bars->addWidget(m_progressText);
    bars->addWidget(m_progress);
    auto* row = new QHBoxLayout(m_progressRow);
    row->setContentsMargins(10, 4, 6, 6);
    row->addLayout(bars, 1);
    row->addWidget(cancel);
    m_progressRow->hide();
    return m_progressRow;
}

void PhotoTrayPanel::listenTo(PhotoService* service) {
    connect(service, &PhotoService::progressed, this, &PhotoTrayPanel::showProgress);
    connect(service, &PhotoService::stateChanged, this, [this] { m_details->renew(); });
}

void PhotoTrayPanel::showProgress(int done, int total) {
    m_progressRow->setVisible(total > 0);
    // Not in photos: each counts twice, for what it says and for its small picture.
    m_progressText->setText(
        tr("Reading photos: %1 %").arg(total > 0 ? qint64(100) * done / total : 0));
    m_progress->setRange(0, total);
    m_progress->setValue(done);
}

void PhotoTrayPanel::showFault(const QString& sentence) {
    m_fault->setText(sentence);
    m_fault->setVisible(!sentence.isEmpty());
}

void PhotoTrayPanel::showChosen() {
    m_details->show(m_view->selectedPhotos());
}

}  // namespace matwright::app
