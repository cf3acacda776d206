// SPDX-License-Identifier: MIT
#include "app/panels/mat_rows.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "app/panels/neighbour_gap.h"
#include "app/panels/paper_look_button.h"
#include "app/panels/paper_names.h"
#include "app/panels/text_field.h"
#include "app/panels/tint.h"

namespace matwright::app {

MatRows::MatRows(std::size_t index, Session& session, SettingsStore& settings, PaperNames& papers,
                 QWidget* parent)
    : PieceSection({}, session, settings, parent),
      m_index(index),
      m_size(new TintedLabel(Tint::Quiet, {}, this)),
      m_remove(new QPushButton(tr("Remove"), this)),
      m_border(newLength(smallestSide, largestBorder)),
      m_bottomDiffers(new QCheckBox(tr("Bottom border differs"), this)),
      m_bottom(newLength(smallestSide, largestBorder)),
      m_paper(new TextField(this)),
      m_look(new PaperLookButton(session, settings, this)) {
    const QString name = index == 0 ? tr("First mat") : tr("Second mat");
    auto* head = new QWidget(this);
    auto* row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_size, 1);
    row->addWidget(m_remove);
    m_remove->setAccessibleName(tr("Remove: %1").arg(name));
    m_border->lineEdit()->setAccessibleName(tr("Border: %1").arg(name));
    settle(m_remove);
    settle(m_bottomDiffers);
    addWide(head);
    addRow(index == 0 ? tr("&Border") : tr("Border"), m_border);
    addBelow(m_bottomDiffers);
    addRow(tr("Bottom border"), m_bottom);
    addRow(tr("Mat paper"), m_paper);
    m_look->setAccessibleName(tr("Look: %1").arg(name));
    addBelow(m_look);
    m_paper->setAccessibleName(tr("Paper: %1").arg(name));
    m_paper->setToolTip(tr("What it is cut from, in your own words."));

    connect(m_remove, &QPushButton::clicked, this, [this] {
        change(tr("Remove mat"), 0, [this](Piece& p) {
            if (m_index < p.mats.size()) {
                p.mats.erase(p.mats.begin() + static_cast<std::ptrdiff_t>(m_index));
            }
        });
    });
    connect(m_border, &LengthField::valueChanged, this, [this](Length to, int gesture) {
        changeMat(tr("Change mat border"), gesture, [to](Mat& m) { m.border = to; }, m_border);
    });
    connect(m_bottom, &LengthField::valueChanged, this, [this](Length to, int gesture) {
        changeMat(
            tr("Change mat border"), gesture, [to](Mat& m) { m.bottomBorder = to; }, m_bottom);
    });
    connect(m_bottomDiffers, &QCheckBox::clicked, this, [this](bool on) {
        m_bottomDiffers->setTristate(false);
        changeMat(tr("Change bottom border"), 0, [on](Mat& m) {
            m.bottomBorder =
                on ? std::optional(m.bottomBorder.value_or(m.border * 2)) : std::nullopt;
        });
    });
    papers.offerIn(m_paper);
    connect(m_paper, &TextField::typed, this, [this, &papers](const QString& text, int gesture) {
        changeMat(
            tr("Change mat paper"), gesture, [&](Mat& m) { m.paper = text.toStdString(); }, nullptr,
            papers.lookOf(text));
    });
}

void MatRows::changeMat(const QString& label, int gesture, const std::function<void(Mat&)>& set,
                        TypedField* field, const PhotoEdit& along) {
    const auto ofPiece = [&](Piece& p) {
        if (m_index < p.mats.size()) {
            set(p.mats[m_index]);
        }
    };
    change(label, gesture, ofPiece, field, along);
}

void MatRows::showPieces(Pieces pieces) {
    std::vector<const Piece*> withMat;
    std::ranges::copy_if(pieces, std::back_inserter(withMat),
                         [this](const Piece* p) { return m_index < p->mats.size(); });
    setVisible(!withMat.empty());
    if (withMat.empty()) {
        return;
    }
    m_size->setText(sizeSentence(withMat, pieces.size()));
    showLength(m_border, withMat, [this](const Piece& p) { return p.mats[m_index].border; });
    showBottom(withMat);
    const auto paper =
        commonOf(Pieces(withMat), [this](const Piece& p) { return p.mats[m_index].paper; });
    m_paper->showText(QString::fromStdString(paper.value_or("")), !paper);
    m_look->showPaper(paper);
}

void MatRows::showBottom(Pieces withMat) {
    const auto differs = commonOf(
        withMat, [this](const Piece& p) { return p.mats[m_index].bottomBorder.has_value(); });
    m_bottomDiffers->setTristate(!differs);
    m_bottomDiffers->setCheckState(!differs   ? Qt::PartiallyChecked
                                   : *differs ? Qt::Checked
                                              : Qt::Unchecked);
    setRowShown(m_bottom, differs.value_or(true));
    showLength(m_bottom, withMat, [this](const Piece& p) {
        const Mat& mat = p.mats[m_index];
        return mat.bottomBorder.value_or(mat.border);
    });
}

QString MatRows::sizeSentence(Pieces withMat, std::size_t of) const {
    const auto size =
        commonOf(withMat, [this](const Piece& p) { return matBox(p, m_index).size(); });
    const QString name = m_index == 0 ? tr("First mat") : tr("Second mat");
    QString text = size ? tr("%1: %2").arg(name, QString::fromStdString(sizeText(*size, scale())))
                        : tr("%1: sizes differ").arg(name);
    if (withMat.size() < of) {
        text += tr(" (on %1 of %2)").arg(withMat.size()).arg(of);
    }
    return text;
}

MatsSection::MatsSection(Session& session, SettingsStore& settings, PaperNames& papers,
                         QWidget* parent)
    : PieceSection(tr("Mats"), session, settings, parent) {
    for (std::size_t i = 0; i < maxMats; ++i) {
        auto* rows = new MatRows(i, session, settings, papers, this);
        connect(rows, &PieceSection::refreshAsked, this, &PieceSection::refreshAsked);
        m_rows.push_back(rows);
        addWide(rows);
    }
    m_add = new QPushButton(tr("Add mat"), this);
    settle(m_add);
    addWide(m_add);
    m_gap = new TintedLabel(Tint::Quiet, {}, this);
    addWide(m_gap);
    m_add->setToolTip(tr("Paper under the photo with a 1/8 in border."));
    connect(m_add, &QPushButton::clicked, this,
            [this] { change(tr("Add mat"), 0, [](Piece& p) { p = withOneMoreMat(p); }); });
}

// Mats grow outwards, the photos keep their places: so it is said where the gap gets narrow.
QString MatsSection::gapSentence() const {
    const Sketch& sketch = session().sketch();
    std::vector<PieceId> matted;
    for (const PieceId id : session().selection()) {
        if (!sketch.pieces.at(id).mats.empty()) {
            matted.push_back(id);
        }
    }
    const auto gap = tightestGap(sketch, matted);
    const auto words = [this](Length l) { return QString::fromStdString(lengthText(l, scale())); };
    if (!gap || *gap >= sketch.page.gutter) {
        return {};
    }
    if (gap->isNegative()) {
        return tr("The mat and a neighbour overlap by %1.").arg(words(-*gap));
    }
    return gap->isZero() ? tr("The mat touches its neighbour; the gutter is %1.")
                               .arg(words(sketch.page.gutter))
                         : tr("The mat leaves %1 to its neighbour; the gutter is %2.")
                               .arg(words(*gap), words(sketch.page.gutter));
}

void MatsSection::showPieces(Pieces pieces) {
    std::vector<const Piece*> photos;
    std::ranges::copy_if(pieces, std::back_inserter(photos),
                         [](const Piece* p) { return p->kind == PieceKind::PhotoSlot; });
    setVisible(!photos.empty());
    if (photos.empty()) {
        return;
    }
    for (MatRows* rows : m_rows) {
        rows->complain({});
        rows->showPieces(photos);
    }
    const auto hasRoom = [](const Piece* p) { return p->mats.size() < maxMats; };
    const auto room = std::ranges::count_if(photos, hasRoom);
    const bool second = !photos.front()->mats.empty();
    m_add->setEnabled(room > 0);
    m_add->setText(room == 0  ? tr("Two mats is the most")
                   : room > 1 ? tr("Add mat to %1 photo slots").arg(room)
                   : second   ? tr("Add second mat")
                              : tr("Add mat"));
    const QString gap = gapSentence();
    m_gap->setText(gap);
    setRowShown(m_gap, !gap.isEmpty());
}

}  // namespace matwright::app
