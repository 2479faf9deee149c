#pragma once
// The system's style with scroll bars that a glove can take hold of, and lists in place of menus.
#include <QProxyStyle>

namespace panside {

class BroadBars : public QProxyStyle {
public:
    void setBreadth(int pixels) { breadth_ = pixels; }
    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override {
        return metric == PM_ScrollBarExtent && breadth_ > 0 ? breadth_
                                                            : QProxyStyle::pixelMetric(metric, option, widget);
    }

    // A choice opens as a list under it, which rolls, and not as a menu over it.
    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                  QStyleHintReturn* data) const override {
        return hint == SH_ComboBox_Popup ? 0 : QProxyStyle::styleHint(hint, option, widget, data);
    }

private:
    int breadth_ = 0;
};

} // namespace panside
