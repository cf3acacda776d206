// SPDX-License-Identifier: MIT
#include "app/library/carry_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/library/entry_words.h"
#include "app/library/thumbnail_drawing.h"
#include "core/library/facts.h"
#include "core/measure/catalogue.h"

namespace matwright::app {
namespace {

constexpr int pictureHeight = 260;

}  // namespace

CarryDialog::CarryDialog(const Sketch& sketch, Length trimmerStep, QWidget* parent)
    : QDialog(parent),
      m_sketch(sketch),
      m_trimmerStep(trimmerStep),
      m_sizes(new QComboBox),
      m_doublePage(new QCheckBox(tr("&Double page"))),
      m_before(new PagePicture(pictureHeight)),
      m_after(new PagePicture(pictureHeight)),
      m_afterName(new QLabel),
      m_verdict(new QLabel),
      m_losses(new QPlainTextEdit),
      m_start(new QPushButton(tr("&Start this page"))) {
    setWindowTitle(tr("Carry over to another page"));
    addSizes();
    m_sizes->setMinimumHeight(28);
    m_doublePage->setMinimumHeight(28);
    m_doublePage->setChecked(sketch.page.doublePage);
    auto* layout = new QVBoxLayout(this);
    auto* form = new QFormLayout;
    form->addRow(tr("&Page size"), m_sizes);
    form->addRow(QString(), m_doublePage);
    layout->addLayout(form);
    layout->addWidget(makePictures(), 1);
    m_verdict->setWordWrap(true);
    layout->addWidget(m_verdict);
    m_losses->setReadOnly(true);
    m_losses->setTabChangesFocus(true);
    m_losses->setFixedHeight(110);
    m_losses->setAccessibleName(tr("What gives way"));
    layout->addWidget(m_losses);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    buttons->addButton(m_start, QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout->addWidget(buttons);
    m_start->setDefault(true);
    connect(m_sizes, &QComboBox::currentIndexChanged, this, &CarryDialog::carry);
    connect(m_doublePage, &QCheckBox::toggled, this, &CarryDialog::carry);
    resize(680, 560);
    carry();
}

// The sketch's own size too: it may become a double page. Another one is chosen at first.
void CarryDialog::addSizes() {
    int first = -1;
    for (const NamedSize& size : pageSizes()) {
        if (size.size != m_sketch.page.size && first < 0) {
            first = m_sizes->count();
        }
        m_sizes->addItem(asText(size.name), asText(size.id));
    }
    if (!pageSizeOf(m_sketch.page.size)) {
        m_sizes->addItem(pageSizeWords(m_sketch.page.size));
    }
    m_sizes->setCurrentIndex(first);
}

QWidget* CarryDialog::makePictures() {
    auto* pictures = new QWidget;
    auto* grid = new QGridLayout(pictures);
    grid->setContentsMargins({});
    grid->addWidget(new QLabel(tr("Now: %1").arg(pageWords(factsOf(m_sketch)))), 0, 0);
    grid->addWidget(m_afterName, 0, 1);
    grid->addWidget(m_before, 1, 0);
    grid->addWidget(m_after, 1, 1);
    grid->setRowStretch(1, 1);
    m_before->setAccessibleName(tr("The sketch as it is"));
    m_after->setAccessibleName(tr("The sketch carried over"));
    m_before->setPicture(thumbnailOf(m_sketch, m_before->sidePixels(factsOf(m_sketch))));
    return pictures;
}

PageSetup CarryDialog::target() const {
    const NamedSize* size = findPageSize(m_sizes->currentData().toString().toStdString());
    PageSetup page = onPageSize(m_sketch.page, size ? size->size : m_sketch.page.size);
    page.doublePage = m_doublePage->isChecked();
    if (!page.doublePage) {
        page.foldGap = {};
    }
    return page;
}

void CarryDialog::carry() {
    m_result = matwright::carriedOver(m_sketch, target(), m_trimmerStep);
    const SketchFacts facts = factsOf(m_result.sketch);
    m_after->setPicture(thumbnailOf(m_result.sketch, m_after->sidePixels(facts)));
    m_afterName->setText(tr("Then: %1").arg(pageWords(facts)));
    m_start->setEnabled(m_result.sketch.page != m_sketch.page);
    showVerdict();
}

void CarryDialog::showVerdict() {
    QStringList losses;
    for (const std::string& sentence : m_result.gaveWay) {
        losses << asText(sentence);
    }
    m_losses->setPlainText(losses.join(u'\n'));
    m_losses->setVisible(!losses.isEmpty());
    const PageSetup& page = m_result.sketch.page;
    QStringList sentences;
    if (page == m_sketch.page) {
        sentences << tr(
            "This is the page it is on; choose another size, or change whether it is "
            "a double page.");
    } else if (page.doublePage && !m_sketch.page.doublePage) {
        sentences << tr("The sketch goes onto the left page; the right one is free.");
    } else if (m_sketch.page.doublePage && !page.doublePage) {
        sentences << tr("Both pages are brought together on one.");
    }
    if (!losses.isEmpty()) {
        sentences << tr("This has to give way:");
    } else if (page != m_sketch.page) {
        sentences << tr("Everything is kept: margins, gutters, mats and print sizes.");
    }
    m_verdict->setText(sentences.join(u' '));
}

}  // namespace matwright::app
