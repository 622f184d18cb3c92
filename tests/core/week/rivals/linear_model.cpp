#include "core/week/rivals/linear_model.h"

#include <algorithm>
#include <cmath>
#include <glpk.h>
#include <map>
#include <stdexcept>
#include <string>

namespace ladlework::week::rivals {

namespace {
constexpr int millisecondsPerSecond = 1000;

int boundType(double lower, double upper) {
    if (std::isinf(lower))
        return std::isinf(upper) ? GLP_FR : GLP_UP;
    if (std::isinf(upper))
        return GLP_LO;
    return lower == upper ? GLP_FX : GLP_DB;
}

[[noreturn]] void giveUp(const char* what, int code) {
    throw std::runtime_error(std::string("GLPK: ") + what + " ended with " + std::to_string(code));
}

/// Hands the solution known from before to the search, so that it starts with a plan.
void offerKnown(glp_tree* tree, void* known) {
    const auto& values = *static_cast<const std::vector<double>*>(known);
    if (glp_ios_reason(tree) == GLP_IHEUR && glp_ios_curr_node(tree) == 1 && !values.empty())
        glp_ios_heur_sol(tree, values.data());
}
} // namespace

void LinearModel::Deleter::operator()(glp_prob* problem) const {
    glp_delete_prob(problem);
}

LinearModel::LinearModel() : m_problem(glp_create_prob()) {
    glp_term_out(GLP_OFF);
    glp_set_obj_dir(m_problem.get(), GLP_MIN);
}

int LinearModel::addColumn(double lower, double upper) {
    const int column = glp_add_cols(m_problem.get(), 1);
    glp_set_col_bnds(m_problem.get(), column, boundType(lower, upper), lower, upper);
    return column;
}

int LinearModel::addWholeColumn(double lower, double upper) {
    const int column = addColumn(lower, upper);
    glp_set_col_kind(m_problem.get(), column, GLP_IV);
    return column;
}

void LinearModel::addRow(double lower, double upper, const Terms& sum) {
    std::map<int, double> merged;
    for (const Term& term : sum)
        merged[term.column] += term.factor;
    std::vector<int> columns{0};
    std::vector<double> factors{0};
    for (const auto& [column, factor] : merged) {
        columns.push_back(column);
        factors.push_back(factor);
    }
    const int row = glp_add_rows(m_problem.get(), 1);
    glp_set_row_bnds(m_problem.get(), row, boundType(lower, upper), lower, upper);
    glp_set_mat_row(m_problem.get(), row, static_cast<int>(merged.size()), columns.data(),
                    factors.data());
}

bool LinearModel::simplex() {
    glp_smcp how;
    glp_init_smcp(&how);
    how.msg_lev = GLP_MSG_OFF;
    if (m_seconds > 0)
        how.tm_lim = static_cast<int>(m_seconds * millisecondsPerSecond);
    int code = glp_simplex(m_problem.get(), &how);
    if (code == GLP_EBADB || code == GLP_ESING || code == GLP_ECOND) {
        glp_adv_basis(m_problem.get(), 0);
        code = glp_simplex(m_problem.get(), &how);
    }
    if (code != 0)
        giveUp("the simplex method", code);
    return glp_get_status(m_problem.get()) == GLP_OPT;
}

std::vector<int> LinearModel::wholeColumns() const {
    std::vector<int> whole;
    for (int column = 1; column <= columns(); ++column) {
        if (glp_get_col_kind(m_problem.get(), column) != GLP_CV)
            whole.push_back(column);
    }
    return whole;
}

/// After the simplex method: branch and cut, then the whole columns fixed to whole numbers and the
/// rest solved again, so that no tolerance of wholeness is left in the value.
std::optional<double> LinearModel::minimiseWhole() {
    glp_prob* const lp = m_problem.get();
    glp_iocp how;
    glp_init_iocp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.mir_cuts = GLP_ON;
    how.gmi_cuts = GLP_ON;
    how.cov_cuts = GLP_ON;
    how.cb_func = offerKnown;
    how.cb_info = &m_values;
    if (m_seconds > 0)
        how.tm_lim = static_cast<int>(m_seconds * millisecondsPerSecond);
    const int code = glp_intopt(lp, &how);
    if (code != 0)
        giveUp("branch and cut", code);
    if (glp_mip_status(lp) != GLP_OPT)
        return std::nullopt;
    struct Bounds {
        int column;
        double lower;
        double upper;
    };
    std::vector<Bounds> before;
    for (const int column : wholeColumns()) {
        before.push_back({column, glp_get_col_lb(lp, column), glp_get_col_ub(lp, column)});
        const double whole = std::round(glp_mip_col_val(lp, column));
        glp_set_col_bnds(lp, column, GLP_FX, whole, whole);
    }
    // From a basis without the fixed columns: in the old one they would stay as nearly whole as
    // they were.
    glp_adv_basis(lp, 0);
    const bool isSolved = simplex();
    for (const Bounds& bounds : before)
        glp_set_col_bnds(lp, bounds.column, boundType(bounds.lower, bounds.upper), bounds.lower,
                         bounds.upper);
    if (!isSolved)
        giveUp("the rest with whole numbers fixed", glp_get_status(lp));
    return glp_get_obj_val(lp);
}

std::optional<double> LinearModel::minimise(const Terms& sum) {
    glp_prob* const lp = m_problem.get();
    for (int column = 0; column <= columns(); ++column)
        glp_set_obj_coef(lp, column, 0);
    for (const Term& term : sum)
        glp_set_obj_coef(lp, term.column, glp_get_obj_coef(lp, term.column) + term.factor);
    if (!simplex())
        return std::nullopt;
    std::optional<double> least = glp_get_obj_val(lp);
    if (!wholeColumns().empty())
        least = minimiseWhole();
    if (least) {
        m_values.assign(1, 0.0);
        for (int column = 1; column <= columns(); ++column)
            m_values.push_back(glp_get_col_prim(lp, column));
    }
    return least;
}

std::optional<std::vector<double>> LinearModel::minimiseInOrder(const std::vector<Terms>& sums) {
    constexpr double slack = 1e-6;
    constexpr double relativeSlack = 1e-7;
    std::vector<double> least;
    for (const Terms& sum : sums) {
        const std::optional<double> value = minimise(sum);
        if (!value)
            return std::nullopt;
        least.push_back(*value);
        addRow(-unbounded, *value + slack + relativeSlack * std::abs(*value), sum);
    }
    return least;
}

double LinearModel::valueOf(int column) const {
    return m_values[static_cast<std::size_t>(column)];
}

double LinearModel::valueOf(const Terms& sum) const {
    double value = 0;
    for (const Term& term : sum)
        value += term.factor * valueOf(term.column);
    return value;
}

int LinearModel::columns() const {
    return glp_get_num_cols(m_problem.get());
}

int LinearModel::rows() const {
    return glp_get_num_rows(m_problem.get());
}

} // namespace ladlework::week::rivals
