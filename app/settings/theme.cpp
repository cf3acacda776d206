// SPDX-License-Identifier: MIT
#include "app/settings/theme.h"

#include <QApplication>
#include <QPainter>
#include <QPlainTextEdit>
#include <QStyleOption>

#include "app/settings/palettes.h"
#include "app/settings/theme_icons.h"

namespace matwright::app {
namespace {

constexpr int smallestControl = 24;

void drawFocus(const QStyleOption& option, QPainter& painter) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(option.palette.color(QPalette::Highlight), 2));
    painter.drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -1), 2, 2);
    painter.restore();
}

// Fusion derives its outlines from the window's colour, which leaves none to be seen in the dark.
void drawEdge(const QStyleOption& option, QPainter& painter, bool round) {
    const bool focused = option.state & QStyle::State_HasFocus;
    const double width = round ? 1.5 : focused ? 2 : 1;  // a circle pales by its smooth steps
    const double inset = width / 2;
    const QRectF rect = QRectF(option.rect).adjusted(inset, inset, -inset, -inset);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(
        focused ? option.palette.color(QPalette::Highlight) : edgeColour(option.palette), width));
    if (round) {
        painter.drawEllipse(rect);
    } else {
        painter.drawRoundedRect(rect, 2, 2);
    }
    painter.restore();
}

bool isPressable(QStyle::ContentsType type) {
    switch (type) {
        case QStyle::CT_PushButton:
        case QStyle::CT_CheckBox:
        case QStyle::CT_RadioButton:
        case QStyle::CT_ToolButton:
        case QStyle::CT_ComboBox:
        case QStyle::CT_LineEdit:
        case QStyle::CT_SpinBox:
        case QStyle::CT_TabBarTab:
        case QStyle::CT_Slider:
        case QStyle::CT_ItemViewItem:
        case QStyle::CT_MenuBarItem:
            return true;
        default:
            return false;
    }
}

}  // namespace

ThemeStyle::ThemeStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

void ThemeStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                               QPainter* painter, const QWidget* widget) const {
    if (element == PE_FrameFocusRect) {
        drawFocus(*option, *painter);
        return;
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    if (element == PE_FrameLineEdit || element == PE_IndicatorCheckBox ||
        (element == PE_Frame && qobject_cast<const QPlainTextEdit*>(widget))) {
        drawEdge(*option, *painter, false);
    } else if (element == PE_IndicatorRadioButton) {
        drawEdge(*option, *painter, true);
    }
}

void ThemeStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                    QPainter* painter, const QWidget* widget) const {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control == CC_ComboBox || control == CC_SpinBox) {
        drawEdge(*option, *painter, false);
    }
}

QSize ThemeStyle::sizeFromContents(ContentsType type, const QStyleOption* option,
                                   const QSize& contents, const QWidget* widget) const {
    const QSize size = QProxyStyle::sizeFromContents(type, option, contents, widget);
    if (type == CT_MenuItem) {  // separators stay thin
        return contents.height() > 8 ? size.expandedTo({0, smallestControl}) : size;
    }
    return isPressable(type) ? size.expandedTo({smallestControl, smallestControl}) : size;
}

int ThemeStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                          QStyleHintReturn* result) const {
    // Its tick and cross are coloured for light grounds only, and say less than the words.
    return hint == SH_DialogButtonBox_ButtonsHaveIcons
               ? 0
               : QProxyStyle::styleHint(hint, option, widget, result);
}

int ThemeStyle::pixelMetric(PixelMetric metric, const QStyleOption* option,
                            const QWidget* widget) const {
    switch (metric) {
        case PM_SplitterWidth:
        case PM_DockWidgetSeparatorExtent:
            return 8;
        case PM_DockWidgetTitleBarButtonMargin:
            return 4;  // around an icon of 16
        case PM_ToolBarExtensionExtent:
        case PM_ScrollBarSliderMin:
        case PM_SliderThickness:
        case PM_SliderLength:
            return smallestControl;
        default:
            return QProxyStyle::pixelMetric(metric, option, widget);
    }
}

QIcon ThemeStyle::standardIcon(StandardPixmap which, const QStyleOption* option,
                               const QWidget* widget) const {
    const QIcon own = themeIcon(which);
    return own.isNull() ? QProxyStyle::standardIcon(which, option, widget) : own;
}

void keepTheme(QApplication& app, SettingsStore& settings) {
    const bool systemIsDark = isDark(QApplication::palette());
    QApplication::setStyle(new ThemeStyle);
    const auto applyPalette = [&settings, systemIsDark] {
        const Settings::Theme theme = settings.value().theme;
        const bool dark =
            theme == Settings::Theme::Dark || (theme == Settings::Theme::System && systemIsDark);
        QApplication::setPalette(dark ? darkPalette() : lightPalette());
    };
    applyPalette();
    QObject::connect(&settings, &SettingsStore::changed, &app, applyPalette);
}

}  // namespace matwright::app
