#include "foundation/name.h"

#include <QCoreApplication>

namespace ladlework {

Result<Name> Name::from(const QString& text, const QString& what) {
    QString cleaned = text.simplified();
    if (cleaned.isEmpty())
        return problem(Problem::Kind::BadInput,
                       QCoreApplication::translate("Name", "The %1 needs a name.").arg(what));
    if (cleaned.size() > longest)
        return problem(Problem::Kind::BadInput,
                       QCoreApplication::translate("Name",
                                                   "The %1's name is longer than %2 characters; "
                                                   "shorten it, and put the rest in a note.")
                           .arg(what)
                           .arg(longest));
    return Name(std::move(cleaned));
}

} // namespace ladlework
