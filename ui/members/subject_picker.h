#pragma once

#include "kitchen/catalogue.h"
#include "people/tolerance.h"

#include <QComboBox>
#include <optional>

namespace ladlework::ui {

/// Finds an animal, a cut or an ingredient of the catalogue by typing a part of its name.
class SubjectPicker final : public QComboBox {
    Q_OBJECT
public:
    SubjectPicker(const kitchen::Catalogue& catalogue, QWidget* parent);

    /// The subject picked; nothing while the text names none.
    [[nodiscard]] std::optional<people::Subject> subject() const;
    void clearSubject();
    void setSubject(const people::Subject& subject);

private:
    void add(const QString& name, people::Subject::Kind kind, const QString& id);
};

/// The name of a subject for people: the catalogue's name, else the id.
QString subjectName(const people::Subject& subject, const kitchen::Catalogue& catalogue);

} // namespace ladlework::ui
