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

CarryDialog::CarryDialog(const Sketch& sketch, QWidget* parent)
    : QDialog(parent),
      m_sketch(sketch),
      m_sizes(new QComboBox),
      m_before(new PagePicture(pictureHeight)),
      m_after(new PagePicture(pictureHeight)),
      m_afterName(new QLabel),
      m_verdict(new QLabel),
      m_losses(new QPlainTextEdit) {
    setWindowTitle(tr("Carry over to another page size"));
    for (const NamedSize& size : pageSizes()) {
        if (size.size != sketch.page.size) {
            m_sizes->addItem(asText(size.name), asText(size.id));
        }
    }
    m_sizes->setMinimumHeight(28);
    auto* layout = new QVBoxLayout(this);
    auto* form = new QFormLayout;
    form->addRow(tr("&Page size"), m_sizes);
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
    QPushButton* start = buttons->addButton(tr("&Start this page"), QDialogButtonBox::AcceptRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout->addWidget(buttons);
    start->setDefault(true);
    connect(m_sizes, &QComboBox::currentIndexChanged, this, &CarryDialog::carry);
    resize(680, 560);
    carry();
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
    m_before->setPicture(thumbnailOf(m_sketch, m_before->sidePixels()));
    return pictures;
}

void CarryDialog::carry() {
    const NamedSize* size = findPageSize(m_sizes->currentData().toString().toStdString());
    if (!size) {
        return;
    }
    m_result = matwright::carriedOver(m_sketch, onPageSize(m_sketch.page, size->size));
    m_after->setPicture(thumbnailOf(m_result.sketch, m_after->sidePixels()));
    m_afterName->setText(tr("Then: %1").arg(pageWords(factsOf(m_result.sketch))));
    QStringList losses;
    for (const std::string& sentence : m_result.gaveWay) {
        losses << asText(sentence);
    }
    m_losses->setPlainText(losses.join(u'\n'));
    m_losses->setVisible(!losses.isEmpty());
    m_verdict->setText(losses.isEmpty()
                           ? tr("Everything is kept: margins, gutters, mats and print sizes.")
                           : tr("This has to give way:"));
}

}  // namespace matwright::app
