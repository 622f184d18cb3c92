#include "casebook/usual_vessel.h"

#include "foundation/reference_table.h"

#include <QCoreApplication>
#include <stdexcept>

namespace ladlework::casebook {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(UsualVessel)
};

kitchen::Vessel load() {
    const ReferenceTable table = valueOrThrow(ReferenceTable::load(QStringLiteral("usual-vessel")));
    kitchen::Vessel vessel;
    for (qsizetype index = 0; index < table.size(); ++index) {
        const ReferenceTable::Row row = table.row(index);
        const auto size = quantity::Length::fromCentimetres(row.number(QStringLiteral("value")));
        const QString& id = row.text(QStringLiteral("id"));
        if (id == QLatin1String("diameter"))
            vessel.diameter = size;
        else if (id == QLatin1String("height"))
            vessel.height = size;
        else
            throw std::runtime_error("usual-vessel.csv: unknown id");
    }
    return vessel;
}
} // namespace

kitchen::Vessel usualVessel() {
    static const kitchen::Vessel sized = load();
    kitchen::Vessel vessel = sized;
    vessel.name = Words::tr("a usual stockpot");
    return vessel;
}

} // namespace ladlework::casebook
