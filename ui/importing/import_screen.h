#pragma once
#include "ui/importing/import_view.h"
#include "ui/importing/map_screen.h"

class QStackedWidget;

namespace panside {

// Reading logs in: the page that tells what came of each, and the one on which another logger's columns are named.
class ImportScreen : public QWidget {
    Q_OBJECT
public:
    explicit ImportScreen(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    void display(const ImportState& state);
    void progress(std::optional<int> percent) { page_->progress(percent); }
    void say(const QString& words) { page_->say(words); }
    void askMap(const QString& name, std::string beginning, ForeignMap map, Units units);

signals:
    void pressed(const QString& key);
    void mapped(const panside::ForeignMap& map);
    void left();

private:
    void showPage();
    QStackedWidget* leaves_;
    KeyedPage* page_;
    MapScreen* map_;
};

} // namespace panside
