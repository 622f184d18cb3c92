#pragma once

#include "casebook/casebook.h"
#include "ui/log/log_writer.h"

#include <QWidget>
#include <memory>

class QLabel;
class QTableView;

namespace ladlework::ui {

class DrinksModel;
class ReactionsModel;
class Section;
class SourceDelegate;
class SymptomDelegate;

/// The single drinks of one member's day, each with what it came out of, and the single reactions
/// with their start and length. Cells are changed in place; Delete takes the chosen one out.
class MemberDayPanel final : public QWidget {
    Q_OBJECT
public:
    MemberDayPanel(const LogWriter& writer, QWidget* parent);
    /// Hidden without a member.
    void show(std::shared_ptr<const casebook::Casebook> casebook,
              const casebook::Standing* standing, QDate day);
    using QWidget::show;
    void fitTables();

Q_SIGNALS:
    /// What was typed could not be read.
    void refused(const QString& sentence);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void makeTables();
    void connectModels();
    QWidget* makeSide(QTableView* table, QLabel* words);
    void removeDrink();
    void removeReaction();
    [[nodiscard]] QString nameOf(MemberId member) const;

    const LogWriter& m_writer;
    std::shared_ptr<const casebook::Casebook> m_casebook;
    Section* m_section;
    QLabel* m_noDrinks;
    QLabel* m_noReactions;
    DrinksModel* m_drinks;
    QTableView* m_drinksTable;
    SourceDelegate* m_sources;
    ReactionsModel* m_reactions;
    QTableView* m_reactionsTable;
    SymptomDelegate* m_symptoms;
};

} // namespace ladlework::ui
