#pragma once
// The page of all keys, which is also the way to everything: each screen and each action stands on it as a key that can
// be pressed, by mouse, by glove, or by what is written on it.
#include "ui/frame/frame_view.h"

namespace panside {

class KeyMap : public QWidget {
    Q_OBJECT
public:
    explicit KeyMap(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const std::vector<std::pair<Place, std::vector<FrameTab>>>& places);

signals:
    void screenWanted(panside::Action screen);
    void actionWanted(panside::Action action);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Column {
        Place place;
        std::vector<Press*> keys;
        QRect head;
    };
    Press* add(const QString& word, const QString& key, const QString& name);
    void arrange();
    std::vector<int> columnWidths(int room) const;
    Dress dress_;
    std::vector<Column> columns_;
    std::vector<Press*> actions_;
    QRect actionsHead_;
};

} // namespace panside
