#pragma once

#include "casebook/family_records.h"

#include <QDate>
#include <random>

namespace ladlework::exchange {

/// Chances that come out the same on every machine: the distributions of the standard library do
/// not promise that, so the numbers are made from the bits of the generator here.
class Chance {
public:
    explicit Chance(quint64 seed) : m_bits(seed) {}

    /// At least 0 and below 1.
    double share() { return static_cast<double>(m_bits() >> 11U) * 0x1.0p-53; }
    bool happens(double probability) { return share() < probability; }
    /// From `least` to `most`, both included.
    int whole(int least, int most) {
        return least + static_cast<int>(share() * static_cast<double>(most - least + 1));
    }
    template <class List>
    const typename List::value_type& oneOf(const List& list) {
        const int index = whole(0, static_cast<int>(list.size()) - 1);
        return list[static_cast<typename List::size_type>(index)];
    }

private:
    std::mt19937_64 m_bits;
};

/// What an invented family is made from.
struct InventedGround {
    QDate today;
    int years = 1;
    QList<people::Phase> phases;
    QList<kitchen::Pot> practicePots; ///< with provisional ids
};

/// One invented family with all its records; ids are provisional. Every record passes its check.
casebook::FamilyRecords inventFamily(Chance& chance, const InventedGround& ground);

} // namespace ladlework::exchange
