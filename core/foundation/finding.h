#pragma once

#include <QList>
#include <QString>
#include <optional>

namespace ladlework {

/// What a check has to say. Checks return a list of findings, never a bare yes or no; the window,
/// the handout, the command line and the tests all read the same list.
struct Finding {
    enum class Severity { Note, Caution, Stop };

    Severity severity = Severity::Note;
    QString code;                ///< stable, kebab-case: "water-above-most"
    QString text;                ///< one sentence: what, and what to do
    QString why;                 ///< the reason behind it, may be empty
    std::optional<double> value; ///< the number found, in `unit`
    std::optional<double> limit; ///< the limit it is held against, in `unit`
    QString unit;                ///< "mL/kg", "g", "h"; empty when there is no number
    QString source;              ///< where the limit comes from, with its basis
    QString field;               ///< the input that causes it ("water", "cuts[1]"), may be empty

    friend bool operator==(const Finding&, const Finding&) = default;
};

using Findings = QList<Finding>;

/// A finding without a number; `field` is the input that causes it.
Finding makeFinding(Finding::Severity severity, const QString& code, const QString& text,
                    const QString& field = {});

/// "note", "caution" or "stop": the word of the command line and of JSON.
QString severityId(Finding::Severity severity);

/// The worst severity in the list; nothing when the list is empty.
std::optional<Finding::Severity> worstOf(const Findings& findings);

/// True when the list holds a finding with this code.
bool hasCode(const Findings& findings, QStringView code);

} // namespace ladlework
