// SPDX-License-Identifier: MIT
#include "app/prints/prints_window.h"

#include <QCloseEvent>
#include <QDataStream>
#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QTableWidget>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>
#include <utility>

#include "app/panels/list_rows.h"
#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "app/panels/window_foot.h"
#include "app/photos/cropped_picture.h"
#include "app/photos/photo_access.h"
#include "app/photos/photo_tray_model.h"
#include "app/prints/double_check_pdf.h"
#include "app/prints/print_rows.h"
#include "app/prints/prints_choice_bytes.h"
#include "app/prints/prints_options_panel.h"
#include "app/rendering/pdf.h"
#include "app/settings/settings.h"
#include "core/prints/print_notes.h"

namespace matwright::app {

namespace {

constexpr QSize picturePlace(88, 66);
constexpr int rowHeight = 76;
constexpr int sideWidth = 300;
const QString choiceKey = QStringLiteral("prints");
enum Column { Picture, Name, PrintSize, Fineness, Loss, Columns };

}  // namespace

PrintsWindow::PrintsWindow(const Making& making, const QString& suggestedName,
                           SettingsStore& settings, PhotoService* service, QWidget* parent)
    : PrintsWindow(making, suggestedName, settings, service, PrintsAsks::ofTheSystem(), parent) {}

PrintsWindow::PrintsWindow(Making making, QString suggestedName, SettingsStore& settings,
                           PhotoService* service, PrintsAsks asks, QWidget* parent)
    : QDialog(parent),
      m_making(std::move(making)),
      m_suggestedName(std::move(suggestedName)),
      m_settings(settings),
      m_service(service),
      m_asks(std::move(asks)),
      m_summary(new QLabel),
      m_list(new QTableWidget),
      m_options(new PrintsOptionsPanel(choiceFrom(settings.windowState(choiceKey)),
                                       settings.value().scale)),
      m_foot(new WindowFoot),
      m_save(new PrimaryButton(tr("&Save prints…"))),
      m_check(new QPushButton(tr("&Double-check sheet…"))),
      m_close(new QPushButton(tr("Close"))),
      m_openFolder(new QPushButton(tr("Open &folder"))),
      m_run(new PrintsRun(m_asks.files, this)) {
    setWindowTitle(tr("Prints"));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    QFont strong = m_summary->font();
    strong.setBold(true);
    m_summary->setFont(strong);
    m_summary->setWordWrap(true);
    column->addWidget(m_summary);
    auto* row = new QHBoxLayout;
    row->setSpacing(14);
    row->addWidget(makeList(), 1);
    row->addWidget(makeSide());
    column->addLayout(row, 1);
    buildFoot();
    column->addWidget(m_foot);
    resize((screen()->availableSize() * 0.86).boundedTo({1180, 760}));
    connect(m_options, &PrintsOptionsPanel::changed, this, [this] {
        remember();
        showRows();
    });
    connect(m_run, &PrintsRun::progressed, this, &PrintsWindow::showProgress);
    connect(m_run, &PrintsRun::finished, this, &PrintsWindow::showOutcome);
    if (m_service) {
        connect(m_service, &PhotoService::workingCopyReady, this, &PrintsWindow::showPictures);
        connect(m_service, &PhotoService::toneSampleReady, this, &PrintsWindow::showPictures);
        connect(m_service, &PhotoService::stateChanged, this, &PrintsWindow::showRows);
    }
    showRows();
    setWorking(false);
}

PrintsWindow::~PrintsWindow() {
    m_checkWatcher.waitForFinished();
}

QWidget* PrintsWindow::makeList() {
    m_list->setColumnCount(Columns);
    m_list->setHorizontalHeaderLabels(
        {QString(), tr("Print"), tr("Size"), tr("Fineness"), tr("Crop")});
    setUpRows(*m_list, tr("Prints of this page"));
    m_list->verticalHeader()->setDefaultSectionSize(rowHeight);
    m_list->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_list->horizontalHeader()->setSectionResizeMode(Picture, QHeaderView::Fixed);
    m_list->setColumnWidth(Picture, picturePlace.width() + 16);
    m_list->setIconSize(picturePlace);
    m_list->setWordWrap(true);
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    return m_list;
}

QWidget* PrintsWindow::makeSide() {
    auto* side = new QWidget;
    side->setFixedWidth(sideWidth);
    addScrolled(side, m_options);
    return side;
}

void PrintsWindow::buildFoot() {
    m_foot->add({m_openFolder, m_check, m_close, m_save});
    m_save->setDefault(true);
    m_openFolder->hide();
    m_check->setToolTip(
        tr("A PDF of all prints with their sizes, crops and photo names, to look "
           "over before money is spent"));
    connect(m_check, &QPushButton::clicked, this, &PrintsWindow::saveDoubleCheck);
    connect(&m_checkWatcher, &QFutureWatcherBase::finished, this, &PrintsWindow::checkSaved);
    connect(m_save, &QPushButton::clicked, this, &PrintsWindow::savePrints);
    connect(m_close, &QPushButton::clicked, this, &PrintsWindow::reject);
    connect(m_openFolder, &QPushButton::clicked, this, [this] { m_asks.show(m_folder); });
}

Making PrintsWindow::chosenMaking() const {
    const PrintsChoice& choice = m_options->choice();
    return choice.ownBorders ? m_making : withBorders(m_making, choice.border);
}

void PrintsWindow::showRows() {
    const Making making = chosenMaking();
    m_prints = printsOf(making, m_options->choice().options);
    const std::vector<PrintRow> rows = printRows(making, m_prints);
    m_list->setRowCount(static_cast<int>(rows.size()));
    for (std::size_t i = 0; i < rows.size(); ++i) {
        fillRow(static_cast<int>(i), rows[i]);
    }
    m_summary->setText(summaryOf(rows, freeSlotsOf(making)));
    QStringList notes;
    for (const std::string& note :
         printNotes(making, m_options->choice().options, m_options->choice().ganged)) {
        notes << QString::fromStdString(note);
    }
    m_options->showNotes(notes);
    showEnabled();
    showPictures();
}

void PrintsWindow::fillRow(int row, const PrintRow& words) {
    m_list->setItem(row, Picture, wordsItem({}));
    m_list->setItem(row, Name, wordsItem(words.name + QLatin1Char('\n') + words.photo));
    m_list->setItem(row, PrintSize, wordsItem(words.size));
    const QString fault = faultOf(m_prints[static_cast<std::size_t>(row)].photo);
    auto* fineness = wordsItem(fault.isEmpty() ? words.fineness : fault);
    if (!fault.isEmpty() || words.sharpness != Sharpness::Fine) {
        fineness->setForeground(tintOf(palette(), Tint::Wrong));
    }
    m_list->setItem(row, Fineness, fineness);
    m_list->setItem(row, Loss, wordsItem(words.loss));
}

// Why the photo will not be printed, as far as is known now.
QString PrintsWindow::faultOf(PhotoId photo) const {
    const ContentKey& content = m_making.work.photos.at(photo).content;
    return m_service ? stateText(m_service->stateOf(content), m_service->faultOf(content))
                     : QString();
}

void PrintsWindow::showPictures() {
    const Making making = chosenMaking();
    for (int row = 0; m_service && row < m_list->rowCount(); ++row) {
        const Print& print = m_prints[static_cast<std::size_t>(row)];
        const std::string jpeg =
            m_service->smallPicture(making.work.photos.at(print.photo),
                                    making.work.placements.at(print.slot), print.window);
        const QImage whole = QImage::fromData(reinterpret_cast<const uchar*>(jpeg.data()),
                                              static_cast<int>(jpeg.size()), "JPG");
        if (!whole.isNull()) {
            const QPixmap picture = QPixmap::fromImage(shareOf(whole, print.from, print.to));
            m_list->item(row, Picture)
                ->setIcon(QIcon(picture.scaled(picturePlace * devicePixelRatioF(),
                                               Qt::KeepAspectRatio, Qt::SmoothTransformation)));
        }
    }
}

void PrintsWindow::remember() {
    m_settings.setWindowState(choiceKey, bytesOf(m_options->choice()));
}

void PrintsWindow::savePrints() {
    if (isWorking()) {
        return;
    }
    const PrintsChoice& choice = m_options->choice();
    const QString begin = m_folder.isEmpty() ? QFileInfo(m_suggestedName).absolutePath() : m_folder;
    const QString folder = m_asks.folder(this, tr("Folder for the prints"), begin);
    if (folder.isEmpty()) {
        return;
    }
    m_folder = folder;
    PrintsPlan plan = planOf(chosenMaking(), choice.options, choice.ganged);
    m_foot->say({});
    showProgress(0, static_cast<int>(plan.files.size()));
    m_run->start(std::move(plan), folder.toStdString());
    setWorking(true);
}

void PrintsWindow::saveDoubleCheck() {
    const QString base =
        m_suggestedName.isEmpty() ? QDir::home().filePath(tr("Page")) : m_suggestedName;
    const QString path = m_asks.fileName(this, tr("Save the double-check sheet"),
                                         base + tr(" double-check.pdf"), tr("PDF files (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    m_checkPath = path;
    m_foot->say(tr("Making the double-check sheet…"));
    m_checkWatcher.setFuture(QtConcurrent::run(
        [making = chosenMaking(), options = m_options->choice().options,
         scale = m_settings.value().scale, files = m_asks.files, path]() -> Result<void> {
            const auto pdf = doubleCheckPdf(making, options, sheetOfThisPlace(), scale);
            if (!pdf) {
                return std::unexpected(pdf.error());
            }
            return files->replace(path.toStdString(),
                                  {pdf->constData(), static_cast<std::size_t>(pdf->size())});
        }));
    showEnabled();
}

void PrintsWindow::checkSaved() {
    showEnabled();
    const Result<void> saved = m_checkWatcher.result();
    if (!saved) {
        return m_foot->say({}, QString::fromStdString(saved.error().text()));
    }
    m_folder = QFileInfo(m_checkPath).absolutePath();
    m_foot->say(tr("Saved %1.").arg(QFileInfo(m_checkPath).fileName()));
    m_openFolder->show();
}

// One thing at a time, also where the rows are shown anew meanwhile.
void PrintsWindow::showEnabled() {
    const bool ready = !isWorking() && m_list->rowCount() > 0;
    m_save->setEnabled(ready);
    m_check->setEnabled(ready && !m_checkWatcher.isRunning());
}

void PrintsWindow::setWorking(bool working) {
    m_isWorking = working;
    if (!working) {
        m_foot->hideProgress();
    }
    m_options->setEnabled(!working);
    showEnabled();
    m_close->setText(working ? tr("Cancel") : tr("Close"));
    // Else the focus would wander into the list as its button goes grey.
    (working ? m_close : m_save)->setFocus();
}

void PrintsWindow::showProgress(int done, int total) {
    m_foot->showProgress(done, total, tr("%1 of %2 made").arg(done).arg(total));
}

void PrintsWindow::showOutcome(const PrintsRun::Outcome& outcome) {
    setWorking(false);
    const auto count = outcome.written.size();
    const QString folder = QDir::toNativeSeparators(m_folder);
    QString news;
    if (outcome.wasCancelled) {
        news = count == 0 ? tr("Cancelled; no file was made.")
                          : tr("Cancelled; %1 finished files are in %2.").arg(count).arg(folder);
    } else if (count > 0) {
        news = count == 1 ? tr("1 file is in %1.").arg(folder)
                          : tr("%1 files are in %2.").arg(count).arg(folder);
    }
    m_foot->say(news, outcome.problems.join(QLatin1Char('\n')));
    m_openFolder->setVisible(count > 0);
}

QString PrintsWindow::summary() const {
    return m_summary->text();
}

QString PrintsWindow::result() const {
    return m_foot->news();
}

QString PrintsWindow::problem() const {
    return m_foot->problem();
}

// While prints are made, closing means to stop.
void PrintsWindow::reject() {
    if (isWorking()) {
        m_run->cancel();
    } else {
        QDialog::reject();
    }
}

void PrintsWindow::closeEvent(QCloseEvent* event) {
    m_run->cancel();
    QDialog::closeEvent(event);
}

}  // namespace matwright::app
