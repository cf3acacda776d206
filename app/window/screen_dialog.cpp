// SPDX-License-Identifier: MIT
#include "app/window/screen_dialog.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/settings/settings.h"

namespace matwright::app {
namespace {

// A line with a tick at both ends, exactly as long as said.
class Bar final : public QWidget {
  public:
    Bar() {
        setMinimumSize(ScreenDialog::barPixels + 2 * margin, 40);
        setAccessibleName(ScreenDialog::tr("The bar to measure"));
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setPen(palette().color(QPalette::WindowText));
        const int right = margin + ScreenDialog::barPixels;
        painter.drawLine(margin, 20, right, 20);
        painter.drawLine(margin, 8, margin, 32);
        painter.drawLine(right, 8, right, 32);
    }

  private:
    static constexpr int margin = 12;
};

}  // namespace

ScreenDialog::ScreenDialog(double current, double systemPpi, Scale scale, QWidget* parent)
    : QDialog(parent), m_length(new LengthField(tr("Measured length of the bar"))) {
    setWindowTitle(tr("Measure this screen"));
    m_length->setScale(scale);
    m_length->setRange(Length::roundedFromInches(barPixels / maxScreenPpi),
                       Length::roundedFromInches(barPixels / minScreenPpi));
    const double ppi = current > 0 ? current : systemPpi;
    m_ppi = ppi;
    // Few rulers are finer than 1/32 in, and a long fraction only asks to be retyped. (1/64 in
    // would be one: it is no whole number of ticks.)
    m_proposed = Length::roundedFromInches(barPixels / ppi).roundedTo(Length::inches(0, 1, 32));
    m_length->setValue(m_proposed);

    auto* question =
        new QLabel(tr("Hold a ruler to the screen. How &long is this bar, from tick to "
                      "tick?"));
    question->setBuddy(m_length);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    auto* system = buttons->addButton(tr("Use the &system's figure"), QDialogButtonBox::ResetRole);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(system, &QPushButton::clicked, this, [this] {
        m_useSystem = true;
        accept();
    });
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(new Bar);
    layout->addWidget(question);
    layout->addWidget(m_length);
    layout->addWidget(buttons);
}

double ScreenDialog::ppi() const {
    if (m_useSystem) {
        return 0;
    }
    // Left as proposed, the figure stays what it was rather than what it is rounded to.
    const Length measured = m_length->value();
    return measured == m_proposed ? m_ppi : barPixels / measured.toInches();
}

}  // namespace matwright::app
