// SPDX-License-Identifier: MIT
#include "app/printplan/plan_pages_panel.h"

#include <QAccessible>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>
#include <filesystem>

#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/panels/window_foot.h"
#include "core/pagefile/page_file.h"

namespace matwright::app {

namespace {

constexpr int pagesHeight = 92;

// A folder that was moved as a whole has its photos beside it.
void takeMovedPhotos(LoadedPage& loaded) {
    std::error_code fault;
    for (const auto& [id, elsewhere] : loaded.photosElsewhere) {
        Photo& photo = loaded.making.work.photos.at(id);
        if (!std::filesystem::exists(photo.path, fault) &&
            std::filesystem::exists(elsewhere, fault)) {
            photo.path = elsewhere;
        }
    }
}

}  // namespace

PlanPagesPanel::PlanPagesPanel(const PlanAsks& asks, QWidget* parent)
    : QWidget(parent),
      m_asks(asks),
      m_list(new QListWidget),
      m_add(new QPushButton(tr("&Add pages…"))),
      m_remove(new QPushButton(tr("&Remove"))),
      m_problem(new TintedLabel(Tint::Wrong)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins({});
    auto* section = new Section(tr("Pages"));
    column->addWidget(section);
    m_list->setFixedHeight(pagesHeight);
    m_list->setAccessibleName(tr("Pages; ticked ones are printed"));
    section->addWide(m_list);
    auto* buttons = new QWidget;
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins({});
    for (QPushButton* button : {m_add, m_remove}) {
        addButton(row, button);
    }
    row->addStretch(1);
    section->addWide(buttons);
    section->addWide(new TintedLabel(
        Tint::Quiet, tr("Ticked pages are printed now. The others wait; their photos may fill the "
                        "room that is left.")));
    m_problem->hide();
    column->addWidget(m_problem);
    connect(m_add, &QPushButton::clicked, this, &PlanPagesPanel::addFiles);
    connect(m_remove, &QPushButton::clicked, this, [this] { emit removed(m_list->currentRow()); });
    connect(m_list, &QListWidget::currentRowChanged, this, &PlanPagesPanel::showEnabled);
    connect(m_list, &QListWidget::itemChanged, this, [this](QListWidgetItem* item) {
        if (!m_showing) {
            emit printedChanged(m_list->row(item), item->checkState() == Qt::Checked);
        }
    });
    connect(&m_reading, &QFutureWatcherBase::finished, this, &PlanPagesPanel::takeRead);
}

PlanPagesPanel::~PlanPagesPanel() {
    m_reading.waitForFinished();
}

void PlanPagesPanel::show(const std::vector<DraftPage>& pages) {
    m_showing = true;
    const int row = m_list->currentRow();
    m_list->clear();
    m_files.clear();
    for (const DraftPage& each : pages) {
        if (!each.file.isEmpty()) {
            m_files << QFileInfo(each.file).canonicalFilePath();
        }
        auto* item = new QListWidgetItem(QString::fromStdString(each.page.name));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(each.isPrinted ? Qt::Checked : Qt::Unchecked);
        item->setToolTip(each.file.isEmpty() ? tr("The page that is open; it is not saved yet")
                                             : each.file);
        m_list->addItem(item);
    }
    m_list->setCurrentRow(qBound(0, row, m_list->count() - 1));
    m_showing = false;
    showEnabled();
}

void PlanPagesPanel::showEnabled() {
    m_remove->setEnabled(m_list->count() > 1 && m_list->currentRow() >= 0);
    m_add->setEnabled(!m_reading.isRunning());
}

void PlanPagesPanel::addFiles() {
    const QStringList files = m_asks.pageFiles(this, tr("Add pages to the plan"), m_begin);
    if (files.isEmpty() || m_reading.isRunning()) {
        return;
    }
    m_begin = QFileInfo(files.front()).absolutePath();
    QStringList fresh;
    QStringList problems;
    for (const QString& file : files) {
        if (m_files.contains(QFileInfo(file).canonicalFilePath())) {
            problems << tr("%1 is in the plan already.").arg(QFileInfo(file).fileName());
        } else {
            fresh << file;
        }
    }
    tell(problems);
    if (!fresh.isEmpty()) {
        m_reading.setFuture(QtConcurrent::run(read, fresh, m_asks.files));
    }
    showEnabled();
}

PlanPagesPanel::Reading PlanPagesPanel::read(const QStringList& files,
                                             const std::shared_ptr<FileStore>& store) {
    Reading reading;
    for (const QString& file : files) {
        const std::string path = file.toStdString();
        auto loaded = loadPage(*store, path);
        if (!loaded) {
            reading.problems << QString::fromStdString(loaded.error().text());
            continue;
        }
        for (const std::string& warning : loaded->warnings) {
            reading.problems << QFileInfo(file).fileName() + QStringLiteral(": ") +
                                    QString::fromStdString(warning);
        }
        takeMovedPhotos(*loaded);
        reading.pages.push_back({{planNameOf(file), std::move(loaded->making)}, file, true});
    }
    return reading;
}

void PlanPagesPanel::takeRead() {
    const Reading reading = m_reading.result();
    tell(m_told + reading.problems);
    showEnabled();
    if (!reading.pages.empty()) {
        emit pagesRead(reading.pages);
    }
}

void PlanPagesPanel::tell(const QStringList& problems) {
    m_told = problems;
    m_problem->setText(problems.join(QLatin1Char('\n')));
    m_problem->setVisible(!problems.isEmpty());
    if (!problems.isEmpty()) {
        QAccessibleEvent alert(m_problem, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    }
}

QString PlanPagesPanel::problem() const {
    return m_problem->text();
}

}  // namespace matwright::app
