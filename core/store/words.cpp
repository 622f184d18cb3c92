#include "store/words.h"

namespace ladlework::store {

QString measuresWord(quantity::MeasureSystem measures) {
    return measures == quantity::MeasureSystem::Metric ? QStringLiteral("metric")
                                                       : QStringLiteral("us");
}

std::optional<quantity::MeasureSystem> measuresFromWord(QStringView word) {
    if (word == u"us")
        return quantity::MeasureSystem::UsCustomary;
    if (word == u"metric")
        return quantity::MeasureSystem::Metric;
    return std::nullopt;
}

QString paperWord(people::Paper paper) {
    return paper == people::Paper::A4 ? QStringLiteral("a4") : QStringLiteral("letter");
}

std::optional<people::Paper> paperFromWord(QStringView word) {
    if (word == u"letter")
        return people::Paper::Letter;
    if (word == u"a4")
        return people::Paper::A4;
    return std::nullopt;
}

QString brewWord(kitchen::Pot::Brew brew) {
    return brew == kitchen::Pot::Brew::BoneBroth ? QStringLiteral("bone-broth")
                                                 : QStringLiteral("meat-stock");
}

std::optional<kitchen::Pot::Brew> brewFromWord(QStringView word) {
    if (word == u"meat-stock")
        return kitchen::Pot::Brew::MeatStock;
    if (word == u"bone-broth")
        return kitchen::Pot::Brew::BoneBroth;
    return std::nullopt;
}

} // namespace ladlework::store
