#include "casebook/subject_name.h"

namespace ladlework::casebook {

QString subjectName(const people::Subject& subject, const kitchen::Catalogue& catalogue) {
    return catalogue.nameOf(subject.id);
}

} // namespace ladlework::casebook
