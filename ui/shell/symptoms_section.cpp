#include "ui/shell/symptoms_section.h"

#include "intake/red_flags.h"
#include "ui/shared/problem_line.h"
#include "ui/shared/section.h"
#include "ui/shared/table_look.h"
#include "ui/shell/symptoms_model.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace ladlework::ui {

namespace {

constexpr int mostRows = 10;

QString publishedFlags() {
    QStringList names;
    for (const intake::SymptomKind& kind : intake::symptomKinds())
        if (kind.redFlag)
            names.append(kind.name);
    return SymptomsSection::tr("Always there beside them, and always a red flag by what is "
                               "published: %1.")
        .arg(names.join(QStringLiteral("; ")));
}

} // namespace

SymptomsSection::SymptomsSection(const ScreenContext& context, QWidget* parent)
    : QWidget(parent), m_model(new SymptomsModel(context, this)),
      m_table(makeTable(m_model, tr("Reactions"), SymptomsModel::NameColumn, this)),
      m_name(new QLineEdit(this)), m_problem(new ProblemLine(this)) {
    auto* section = new Section(tr("Reactions"), this);
    section->setRemark(tr("what the log offers while one types, in this order"));
    const auto button = [&](const QString& text, auto&& work) {
        auto* made = new QPushButton(text, this);
        connect(made, &QPushButton::clicked, this, work);
        section->addAction(made);
    };
    button(tr("Earlier"), [this] { move(-1); });
    button(tr("Later"), [this] { move(1); });
    button(tr("Remove"), [this] { m_model->removeSymptom(m_table->currentIndex().row()); });
    section->body()->addWidget(m_table);
    section->body()->addWidget(makeAddLine());
    section->body()->addWidget(m_problem);
    auto* published = new QLabel(publishedFlags(), this);
    published->setForegroundRole(QPalette::PlaceholderText);
    published->setWordWrap(true);
    section->body()->addWidget(published);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(section);
    connect(m_model, &SymptomsModel::said, m_problem, &ProblemLine::say);
    fitRows(*m_table, 1, mostRows);
}

QWidget* SymptomsSection::makeAddLine() {
    m_name->setAccessibleName(tr("Name of another reaction"));
    m_name->setPlaceholderText(tr("another reaction"));
    auto* add = new QPushButton(tr("Add a reaction"), this);
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_name, 1);
    row->addWidget(add);
    connect(add, &QPushButton::clicked, this, &SymptomsSection::add);
    connect(m_name, &QLineEdit::returnPressed, this, &SymptomsSection::add);
    return line;
}

void SymptomsSection::add() {
    if (!m_model->addSymptom(m_name->text())) {
        m_name->setFocus();
        return;
    }
    m_name->clear();
    refresh();
    m_table->scrollToBottom();
}

void SymptomsSection::move(int way) {
    const QModelIndex current = m_table->currentIndex();
    const int row = m_model->moveSymptom(current.row(), way);
    refresh();
    if (row >= 0)
        m_table->setCurrentIndex(m_model->index(row, current.column()));
}

void SymptomsSection::refresh() {
    m_model->refresh();
    fitRows(*m_table, 1, mostRows);
}

} // namespace ladlework::ui
