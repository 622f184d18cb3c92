#include "ui/shared/amount_edit.h"

namespace ladlework::ui {

template class AmountEdit<quantity::Volume>;
template class AmountEdit<quantity::Mass>;
template class AmountEdit<quantity::Duration>;
template class AmountEdit<quantity::Length>;
template class AmountEdit<quantity::Temperature>;
template class AmountEdit<quantity::Length, AltitudeText>;

} // namespace ladlework::ui
