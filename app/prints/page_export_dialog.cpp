// SPDX-License-Identifier: MIT
#include "app/prints/page_export_dialog.h"

#include <QComboBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>
#include <QtConcurrent/QtConcurrentRun>
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "app/panels/primary_button.h"
#include "app/panels/section.h"
#include "app/panels/tint.h"
#include "core/prints/print_names.h"

namespace matwright::app {

namespace {

constexpr std::array pictureDensities{72, 150, 300, 600};
constexpr std::array formats{PrintFormat::Jpeg, PrintFormat::Png, PrintFormat::Pdf};

// The first few in full, so that the window stays small.
QString missingText(const QStringList& missing) {
    constexpr qsizetype told = 4;
    QStringList lines = missing.mid(0, told);
    lines.prepend(PageExportDialog::tr("Grey in the picture:"));
    if (missing.size() > told) {
        lines << PageExportDialog::tr("and %1 more").arg(missing.size() - told);
    }
    return lines.join(u'\n');
}

}  // namespace

PageExportDialog::PageExportDialog(const Making& making, const QString& suggestedName,
                                   QWidget* parent)
    : PageExportDialog(making, suggestedName, PrintsAsks::ofTheSystem(), parent) {}

PageExportDialog::PageExportDialog(Making making, QString suggestedName, PrintsAsks asks,
                                   QWidget* parent)
    : QDialog(parent),
      m_making(std::move(making)),
      m_suggestedName(std::move(suggestedName)),
      m_asks(std::move(asks)),
      m_format(new QComboBox),
      m_ppi(new QComboBox),
      m_size(new QLabel),
      m_result(new QLabel),
      m_problem(new TintedLabel(Tint::Wrong)),
      m_progress(new QProgressBar),
      m_save(new PrimaryButton(tr("&Save picture…"))),
      m_close(new QPushButton(tr("Close"))),
      m_openFolder(new QPushButton(tr("Open &folder"))) {
    setWindowTitle(tr("Page as a picture"));
    build();
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &PageExportDialog::finished);
    showSize();
    setWorking(false);
}

PageExportDialog::~PageExportDialog() {
    m_stop.request_stop();
    m_watcher.waitForFinished();
}

void PageExportDialog::build() {
    auto* column = new QVBoxLayout(this);
    column->setSpacing(10);
    auto* what =
        new QLabel(tr("The finished page with its photos and papers, for looking at and "
                      "sharing. To print the photos, use Prints."));
    what->setWordWrap(true);
    column->addWidget(what);
    auto* section = new Section({});
    m_format->addItems({tr("JPEG"), tr("PNG"), tr("PDF of exact size")});
    section->addRow(tr("&Kind"), m_format);
    for (const int density : pictureDensities) {
        m_ppi->addItem(tr("%1 ppi").arg(density), density);
    }
    m_ppi->setCurrentIndex(1);
    section->addRow(tr("&Fineness"), m_ppi);
    section->addBelow(m_size);
    column->addWidget(section);
    m_result->setWordWrap(true);
    m_progress->setRange(0, 0);
    column->addWidget(m_problem);
    column->addWidget(m_result);
    column->addWidget(m_progress);
    column->addStretch(1);
    auto* row = new QHBoxLayout;
    row->addWidget(m_openFolder);
    row->addStretch(1);
    row->addWidget(m_close);
    row->addWidget(m_save);
    for (QPushButton* button : {m_openFolder, m_close, m_save}) {
        button->setMinimumHeight(controlHeight + 4);
        button->setAutoDefault(false);
    }
    m_save->setDefault(true);
    m_problem->hide();
    m_openFolder->hide();
    column->addLayout(row);
    setMinimumWidth(440);
    connect(m_ppi, &QComboBox::currentIndexChanged, this, &PageExportDialog::showSize);
    connect(m_save, &QPushButton::clicked, this, &PageExportDialog::save);
    connect(m_close, &QPushButton::clicked, this, &PageExportDialog::reject);
    connect(m_openFolder, &QPushButton::clicked, this,
            [this] { m_asks.show(QFileInfo(m_path).absolutePath()); });
}

PrintFormat PageExportDialog::format() const {
    return formats.at(static_cast<std::size_t>(m_format->currentIndex()));
}

int PageExportDialog::ppi() const {
    return m_ppi->currentData().toInt();
}

void PageExportDialog::showSize() {
    const Size page = surface(m_making.sketch.page).size();
    const auto pixels = [this](Length length) { return std::lround(length.toInches() * ppi()); };
    m_size->setText(tr("%1 × %2 pixels").arg(pixels(page.width)).arg(pixels(page.height)));
}

void PageExportDialog::save() {
    const QString suffix = QString::fromUtf8(suffixOf(format()));
    QString path = m_asks.fileName(this, tr("Save the page as a picture"), m_suggestedName + suffix,
                                   tr("Pictures (*%1)").arg(suffix));
    if (path.isEmpty()) {
        return;
    }
    path += path.endsWith(suffix, Qt::CaseInsensitive) ? QString() : suffix;
    m_path = path;
    m_stop = {};
    setWorking(true);
    m_watcher.setFuture(
        QtConcurrent::run([making = m_making, ppi = ppi(), format = format(), files = m_asks.files,
                           path, stop = m_stop.get_token()]() -> Saved {
            const Result<PageImage> page = pageImage(making, ppi, stop);
            if (!page) {
                return {std::unexpected(page.error()), {}};
            }
            const auto bytes = pageFile(making, *page, format, ppi, making.sketch.name);
            if (!bytes) {
                return {std::unexpected(bytes.error()), {}};
            }
            return {files->replace(path.toStdString(), *bytes), page->missing};
        }));
}

void PageExportDialog::setWorking(bool working) {
    m_progress->setVisible(working);
    m_result->setVisible(!working && !m_result->text().isEmpty());
    m_save->setEnabled(!working);
    m_format->setEnabled(!working);
    m_ppi->setEnabled(!working);
    m_close->setText(working ? tr("Cancel") : tr("Close"));
}

void PageExportDialog::finished() {
    const Saved saved = m_watcher.result();
    const bool wasStopped = m_stop.stop_requested();
    QString problem;
    if (!saved.done && !wasStopped) {
        problem = QString::fromStdString(saved.done.error().text());
    } else if (!saved.missing.isEmpty()) {
        problem = missingText(saved.missing);
    }
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    m_result->setText(wasStopped   ? tr("Cancelled; nothing was saved.")
                      : saved.done ? tr("Saved %1.").arg(QFileInfo(m_path).fileName())
                                   : QString());
    m_openFolder->setVisible(saved.done.has_value() && !wasStopped);
    setWorking(false);
    layout()->activate();
    resize(width(), std::max(height(), layout()->totalHeightForWidth(width())));
}

void PageExportDialog::reject() {
    if (isWorking()) {
        m_stop.request_stop();
    } else {
        QDialog::reject();
    }
}

QString PageExportDialog::result() const {
    return m_result->text();
}

QString PageExportDialog::problem() const {
    return m_problem->text();
}

}  // namespace matwright::app
