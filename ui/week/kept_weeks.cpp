#include "ui/week/kept_weeks.h"

#include "ui/paint/theme.h"
#include "ui/week/plan_edits.h"

#include <QAction>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>

namespace ladlework::ui {

namespace {
constexpr int nameCharacters = 30;
constexpr int mostNameLength = 80;

/// A name as a menu shows it: its own & is no mnemonic.
QString menuText(QString name) {
    return name.replace(QLatin1Char('&'), QStringLiteral("&&"));
}
} // namespace

KeptWeeks::KeptWeeks(const ScreenContext& context, QAction* keep, QWidget* parent)
    : QWidget(parent), m_context(context), m_keep(keep),
      m_button(new QPushButton(tr("&Kept weeks"))), m_menu(new QMenu(this)), m_words(new QLabel),
      m_name(new QLineEdit), m_done(new QPushButton(tr("Keep"))) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(step(*this));
    m_words->setBuddy(m_name);
    m_name->setMaxLength(mostNameLength);
    m_name->setMinimumWidth(fontMetrics().averageCharWidth() * nameCharacters);
    m_name->installEventFilter(this);
    auto* leaving = new QPushButton(tr("Leave it"));
    leaving->setFlat(true);
    row->addWidget(m_words);
    row->addWidget(m_name);
    row->addWidget(m_done);
    row->addWidget(leaving);
    row->addStretch();
    hide();
    m_button->setMenu(m_menu);
    m_button->setToolTip(tr("Weeks under a name, to be used again"));
    connect(m_keep, &QAction::triggered, this, &KeptWeeks::askForName);
    connect(m_name, &QLineEdit::returnPressed, this, &KeptWeeks::take);
    connect(m_done, &QPushButton::clicked, this, &KeptWeeks::take);
    connect(leaving, &QPushButton::clicked, this, &KeptWeeks::leave);
}

void KeptWeeks::showWeeks(std::shared_ptr<const casebook::Casebook> casebook,
                          const week::WeekPlan& plan) {
    if (m_casebook != nullptr &&
        (m_casebook->records().family.id != casebook->records().family.id ||
         m_plan.start != plan.start))
        hide();
    m_casebook = std::move(casebook);
    m_plan = plan;
    m_keep->setEnabled(!plan.placements.isEmpty());
    fillMenu();
}

void KeptWeeks::fillMenu() {
    m_menu->clear();
    m_menu->addAction(m_keep);
    m_menu->addSeparator();
    const QList<week::WeekTemplate>& weeks = m_casebook->records().weekTemplates;
    if (weeks.isEmpty())
        m_menu->addAction(tr("No week is kept yet"))->setEnabled(false);
    for (const week::WeekTemplate& kept : weeks) {
        QMenu* own = m_menu->addMenu(menuText(kept.name));
        connect(own->addAction(tr("&Use it for this week")), &QAction::triggered, this,
                [this, kept] { Q_EMIT useWanted(kept); });
        connect(own->addAction(tr("Re&name it")), &QAction::triggered, this,
                [this, kept] { askFor(kept); });
        connect(own->addAction(tr("&Remove it")), &QAction::triggered, this,
                [this, kept] { remove(kept); });
    }
}

bool KeptWeeks::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_name && event->type() == QEvent::ShortcutOverride &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        return true;
    }
    if (watched == m_name && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        leave();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void KeptWeeks::askForName() {
    askFor({});
}

void KeptWeeks::askFor(const week::WeekTemplate& renamed) {
    m_renamed = renamed;
    const bool renames = renamed.id.isStored();
    m_words->setText(renames ? tr("Another name for %1:").arg(renamed.name)
                             : tr("Keep this week as:"));
    m_done->setText(renames ? tr("Rename") : tr("Keep"));
    m_name->setText(renamed.name);
    m_name->setAccessibleName(m_words->text());
    m_name->selectAll();
    show();
    m_name->setFocus(Qt::OtherFocusReason);
}

void KeptWeeks::leave() {
    hide();
    Q_EMIT left();
}

void KeptWeeks::take() {
    const QString name = m_name->text().simplified();
    if (m_renamed.id.isStored() && name == m_renamed.name)
        leave();
    else if (m_renamed.id.isStored())
        rename(m_renamed, name);
    else
        keep(name);
}

void KeptWeeks::keep(const QString& name) {
    const week::WeekTemplate kept = keptFrom(m_plan, name);
    if (m_context.act(this, tr("Kept a week as %1").arg(name),
                      [&](store::Action& action) -> Outcome {
                          const Result<WeekTemplateId> stored =
                              m_context.workbook.weeks().addTemplate(action, kept);
                          if (!stored)
                              return passOn(stored);
                          return {};
                      }))
        leave();
}

void KeptWeeks::rename(week::WeekTemplate kept, const QString& name) {
    const QString before = kept.name;
    kept.name = name;
    if (m_context.act(this, tr("Renamed the kept week %1 to %2").arg(before, name),
                      [&](store::Action& action) {
                          return m_context.workbook.weeks().changeTemplate(action, kept);
                      }))
        leave();
}

void KeptWeeks::remove(const week::WeekTemplate& kept) {
    m_context.act(this, tr("Removed the kept week %1").arg(kept.name), [&](store::Action& action) {
        return m_context.workbook.weeks().removeTemplate(action, kept.id);
    });
}

} // namespace ladlework::ui
