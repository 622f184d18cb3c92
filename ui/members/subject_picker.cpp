#include "ui/members/subject_picker.h"

#include "casebook/subject_name.h"

#include <QCompleter>
#include <QLineEdit>

namespace ladlework::ui {

namespace {

/// The two words that cover a whole class of animals.
QString wideName(const QString& id) {
    if (id == u"poultry")
        return SubjectPicker::tr("all poultry");
    return id == u"fish" ? SubjectPicker::tr("all fish") : QString();
}

} // namespace

SubjectPicker::SubjectPicker(const kitchen::Catalogue& catalogue, QWidget* parent)
    : QComboBox(parent) {
    using Kind = people::Subject::Kind;
    setEditable(true);
    setInsertPolicy(QComboBox::NoInsert);
    for (const QString& wide : {QStringLiteral("poultry"), QStringLiteral("fish")})
        add(wideName(wide), Kind::Animal, wide);
    for (const kitchen::Animal& animal : catalogue.animals())
        if (wideName(animal.id).isEmpty())
            add(animal.name, Kind::Animal, animal.id);
    for (const kitchen::Cut& cut : catalogue.cuts())
        add(cut.name, Kind::Cut, cut.id);
    for (const kitchen::Extra& extra : catalogue.extras())
        add(extra.name, Kind::Ingredient, extra.id);
    completer()->setFilterMode(Qt::MatchContains);
    completer()->setCompletionMode(QCompleter::PopupCompletion);
    completer()->setCaseSensitivity(Qt::CaseInsensitive);
    lineEdit()->setPlaceholderText(tr("Animal, cut or ingredient"));
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(16);
    clearSubject();
}

void SubjectPicker::add(const QString& name, people::Subject::Kind kind, const QString& id) {
    addItem(name, QStringList{people::subjectKindId(kind), id});
}

std::optional<people::Subject> SubjectPicker::subject() const {
    const int row = findText(currentText().trimmed(), Qt::MatchFixedString);
    if (row < 0)
        return std::nullopt;
    const QStringList parts = itemData(row).toStringList();
    return people::Subject{
        people::subjectKindFromId(parts.at(0)).value_or(people::Subject::Kind::Animal),
        parts.at(1)};
}

void SubjectPicker::setSubject(const people::Subject& subject) {
    setCurrentIndex(findData(QStringList{people::subjectKindId(subject.kind), subject.id}));
}

void SubjectPicker::clearSubject() {
    setCurrentIndex(-1);
    clearEditText();
}

QString subjectName(const people::Subject& subject, const kitchen::Catalogue& catalogue) {
    const QString wide = wideName(subject.id);
    if (!wide.isEmpty())
        return wide;
    return casebook::subjectName(subject, catalogue);
}

} // namespace ladlework::ui
