#include "casebook/subject_name.h"

namespace ladlework::casebook {

QString subjectName(const people::Subject& subject, const kitchen::Catalogue& catalogue) {
    if (const kitchen::Animal* animal = catalogue.animal(subject.id))
        return animal->name;
    if (const kitchen::Cut* cut = catalogue.cut(subject.id))
        return cut->name;
    if (const kitchen::Extra* extra = catalogue.extra(subject.id))
        return extra->name;
    return subject.id;
}

} // namespace ladlework::casebook
