#include "ui/importing/import_screen.h"

#include <QStackedWidget>
#include <QVBoxLayout>

namespace panside {

ImportScreen::ImportScreen(QWidget* parent)
    : QWidget{parent}, leaves_{new QStackedWidget}, page_{new KeyedPage{QStringLiteral("importPage")}},
      map_{new MapScreen} {
    setObjectName(QStringLiteral("importing"));
    setAutoFillBackground(true);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(leaves_);
    leaves_->addWidget(page_);
    leaves_->addWidget(map_);
    connect(page_, &KeyedPage::pressed, this, &ImportScreen::pressed);
    connect(page_, &KeyedPage::left, this, &ImportScreen::left);
    connect(map_, &MapScreen::left, this, &ImportScreen::showPage);
    connect(map_, &MapScreen::kept, this, [this](const ForeignMap& map) {
        showPage();
        emit mapped(map);
    });
    setFocusProxy(leaves_);
    leaves_->setFocusProxy(page_);
}

void ImportScreen::wear(const Dress& dress) {
    setPalette(paletteOf(dress.look));
    page_->wear(dress);
    map_->wear(dress);
}

void ImportScreen::display(const ImportState& state) {
    page_->show(importWords(state), importKeys(state));
    if (!state.working)
        page_->progress(std::nullopt);
}

void ImportScreen::askMap(const QString& name, std::string beginning, ForeignMap map, Units units) {
    leaves_->setCurrentWidget(map_);
    map_->open(name, std::move(beginning), std::move(map), units);
}

void ImportScreen::showPage() {
    leaves_->setCurrentWidget(page_);
    page_->setFocus();
}

} // namespace panside
