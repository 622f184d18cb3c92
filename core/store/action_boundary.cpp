#include "store/action_boundary.h"

#include "store/store_error.h"

#include <QCoreApplication>

namespace ladlework::store {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(ActionBoundary)
};
} // namespace

Outcome atBoundary(const std::function<Outcome()>& work) {
    try {
        return work();
    } catch (const StoreError& error) {
        return tl::unexpected<Problem>(error.toProblem());
    } catch (const std::exception& error) {
        return problem(Problem::Kind::Unavailable,
                       Words::tr("Something went wrong inside the program, so nothing was saved. "
                                 "Try again; if it happens again, restart the program."),
                       {}, QString::fromUtf8(error.what()));
    }
}

} // namespace ladlework::store
