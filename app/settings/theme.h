// SPDX-License-Identifier: MIT
#pragma once

#include <QProxyStyle>

#include "app/settings/settings.h"

class QApplication;

namespace matwright::app {

// Fusion with a clear focus mark, edges that can be seen in both themes, words only on the buttons
// of dialogs, and no control lower or narrower than 24 px.
class ThemeStyle final : public QProxyStyle {
    Q_OBJECT

  public:
    ThemeStyle();

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override;
    void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                            QPainter* painter, const QWidget* widget = nullptr) const override;
    QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& contents,
                           const QWidget* widget) const override;
    int styleHint(StyleHint hint, const QStyleOption* option = nullptr,
                  const QWidget* widget = nullptr,
                  QStyleHintReturn* result = nullptr) const override;
    int pixelMetric(PixelMetric metric, const QStyleOption* option,
                    const QWidget* widget) const override;
    QIcon standardIcon(StandardPixmap which, const QStyleOption* option,
                       const QWidget* widget) const override;
};

// Gives the program its style and keeps its palette as the settings say, from now on. System
// follows what the desktop showed when the program started. Call once; `settings` must outlive
// the event loop.
void keepTheme(QApplication& app, SettingsStore& settings);

}  // namespace matwright::app
