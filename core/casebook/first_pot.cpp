#include "casebook/first_pot.h"

#include "foundation/reference_table.h"

#include <stdexcept>

namespace ladlework::casebook {

namespace {

using quantity::Mass;

struct FirstValues {
    kitchen::Pot pot;
    Mass anotherCut;
};

FirstValues load() {
    const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("first-pot")));
    FirstValues values;
    for (qsizetype index = 0; index < table.size(); ++index) {
        const ReferenceTable::Row row = table.row(index);
        const QString& part = row.text(QStringLiteral("part"));
        const double value = row.number(QStringLiteral("value"));
        if (part == u"cut")
            values.pot.cuts.append(
                {row.text(QStringLiteral("item")), Mass::fromPounds(value), true});
        else if (part == u"water")
            values.pot.water = quantity::Volume::fromQuarts(value);
        else if (part == u"simmer")
            values.pot.simmer = quantity::Duration::fromHours(value);
        else if (part == u"another-cut")
            values.anotherCut = Mass::fromPounds(value);
        else
            throw std::runtime_error("first-pot.csv: unknown part " + part.toStdString());
    }
    return values;
}

const FirstValues& firstValues() {
    static const FirstValues values = load();
    return values;
}

} // namespace

kitchen::Pot firstPot() {
    return firstValues().pot;
}

Mass firstCutMass() {
    return firstValues().anotherCut;
}

} // namespace ladlework::casebook
