// SPDX-License-Identifier: MIT
#include "app/panels/paper_look_button.h"

#include <QPainter>

#include "app/panels/paper_look_dialog.h"
#include "app/panels/section.h"
#include "app/rendering/colours.h"
#include "app/settings/palettes.h"

namespace matwright::app {

namespace {

constexpr QSize swatchSize(22, 14);

}  // namespace

PaperLookButton::PaperLookButton(Session& session, SettingsStore& settings, QWidget* parent)
    : QPushButton(tr("Look…"), parent), m_session(session), m_settings(settings) {
    settle(this);
    setAutoDefault(false);
    setIconSize(swatchSize);
    connect(this, &QPushButton::clicked, this, &PaperLookButton::ask);
    connect(&session, &Session::changed, this, [this](const Change& change) {
        if (change.has(Change::Papers)) {
            showPaper(m_paper);
        }
    });
    showPaper(std::nullopt);
}

std::optional<PaperLook> PaperLookButton::look() const {
    const auto& papers = m_session.work().papers;
    const auto known = papers.find(m_paper);
    return known == papers.end() ? std::nullopt : std::optional(known->second);
}

void PaperLookButton::showPaper(const std::optional<std::string>& paper) {
    m_paper = paper.value_or(std::string());
    setEnabled(!m_paper.empty());
    setToolTip(m_paper.empty() ? tr("Give the paper a name first; every paper of one name looks "
                                    "alike.")
                               : tr("A colour, or a picture of the paper, for the finished page"));
    const auto known = look();
    if (!known) {
        setIcon({});
        return;
    }
    QPixmap swatch(swatchSize * devicePixelRatioF());
    swatch.setDevicePixelRatio(devicePixelRatioF());
    swatch.fill(toColor(known->colour));
    QPainter painter(&swatch);
    painter.setPen(edgeColour(palette()));
    painter.drawRect(QRectF({}, swatchSize).adjusted(0.5, 0.5, -0.5, -0.5));
    painter.end();
    setIcon(swatch);
}

void PaperLookButton::setLook(const std::optional<PaperLook>& wanted) {
    if (wanted == look()) {
        return;
    }
    PhotoEdit edit;
    edit.papers[m_paper] = wanted;
    (void)m_session.perform(edit, tr("Change look of paper"));
}

void PaperLookButton::ask() {
    PaperLookDialog dialog(QString::fromStdString(m_paper), look(), m_settings.value().scale,
                           window());
    if (dialog.exec() == QDialog::Accepted) {
        setLook(dialog.look());
    }
}

}  // namespace matwright::app
