#pragma once
// The system's style with scroll bars that a glove can take hold of.
#include <QProxyStyle>

namespace panside {

class BroadBars : public QProxyStyle {
public:
    void setBreadth(int pixels) { breadth_ = pixels; }
    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override {
        return metric == PM_ScrollBarExtent && breadth_ > 0 ? breadth_
                                                            : QProxyStyle::pixelMetric(metric, option, widget);
    }

private:
    int breadth_ = 0;
};

} // namespace panside
