#include "ui/ledger/grade_form.h"

#include "ui/words/place_words.h"
#include "ui/words/said.h"

#include <QCoreApplication>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("GradeForm", text); }

} // namespace

BookForm gradeForm(BookForm form, const PlaceLaw& law, const QString& vessel) {
    form.put(Key::vessel, vessel);
    std::erase_if(form.fields, [](const BookField& field) { return field.key == Key::lot; }); // one or the other
    if (BookField* off = form.field(Key::off))
        for (const auto word : offFlavours(law).words)
            off->offers << utf8(word);
    if (BookField* eye = form.field(Key::light_class))
        for (const char* word : {"golden", "amber", "dark", "very dark"})
            eye->offers << QString::fromLatin1(word);
    form.live = [law](const BookForm& typed) {
        const auto light = siOf(typed, std::nullopt);
        return light ? tr("Class by the rule of %1: %2").arg(placeName(law), classOf(*light, law)) : QString{};
    };
    form.caution =
        tr("Compared by eye, it is a class, not a number. An off-flavor keeps the vessel apart: for processing only.");
    return form;
}

} // namespace panside
