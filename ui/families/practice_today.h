#pragma once

#include "ui/families/need_model.h"
#include "ui/shared/screen_context.h"

#include <QWidget>

class QLabel;
class QStackedWidget;

namespace ladlework::ui {

class AttentionReader;
class NeedTable;
class Section;

/// "Who needs me today?": what wants the practitioner in all families, worst first; the reviews of
/// the coming days; the cookings of which nothing was recorded.
class PracticeToday final : public QWidget {
    Q_OBJECT
public:
    PracticeToday(const ScreenContext& context, const AttentionReader& reader, QWidget* parent);

    /// Shows the newest summaries; costs nothing while the page is hidden.
    void refresh();

Q_SIGNALS:
    void wanted(FamilyId family, const QString& screen);
    void newFamilyWanted();

protected:
    void showEvent(QShowEvent* event) override;

private:
    struct Part {
        Section* section;
        NeedTable* table;
        QLabel* calm; ///< stands where the table would be when there is nothing
    };
    Part makePart(const QString& title, const QString& calm);
    void build();
    static void fill(const Part& part, const QList<Need>& needs);
    [[nodiscard]] QString summaryWords(const QList<Need>& needs) const;

    const ScreenContext& m_context;
    const AttentionReader& m_reader;
    QStackedWidget* m_pages = nullptr;
    QLabel* m_day = nullptr;
    QLabel* m_summary = nullptr;
    Part m_now;
    Part m_reviews;
    Part m_cookings;
};

/// The needs of all families, worst first and by family, in the order the page shows them.
QList<Need> needsNow(const AttentionReader& reader);
/// Reviews after today and within the next seven days, by day.
QList<Need> reviewsToCome(const AttentionReader& reader, QDate today);
/// Planned cookings that nothing was recorded of, by day.
QList<Need> cookingsToRecord(const AttentionReader& reader);

} // namespace ladlework::ui
