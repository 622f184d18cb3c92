#include "ui/handout/kept_pages.h"

#include <QCoreApplication>

namespace ladlework::ui {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(KeptPages)
};

/// Runs an action that adds a record, and gives its id.
template <class IdType, class Add>
std::optional<IdType> added(const ScreenContext& context, QWidget* parent, const QString& sentence,
                            const Add& add) {
    std::optional<IdType> made;
    context.act(parent, sentence, [&](store::Action& action) -> Outcome {
        const Result<IdType> id = add(action);
        if (!id)
            return passOn(id);
        made = *id;
        return {};
    });
    return made;
}
} // namespace

std::optional<HandoutTemplateId> KeptPages::add(const casebook::HandoutTemplate& kept) {
    return added<HandoutTemplateId>(
        m_context, m_parent, Words::tr("Kept the handout template %1").arg(kept.name),
        [&](store::Action& action) {
            return m_context.workbook.practice().addHandoutTemplate(action, kept);
        });
}

bool KeptPages::change(const casebook::HandoutTemplate& kept) {
    return m_context.act(m_parent, Words::tr("Changed the handout template %1").arg(kept.name),
                         [&](store::Action& action) {
                             return m_context.workbook.practice().changeHandoutTemplate(action,
                                                                                        kept);
                         });
}

bool KeptPages::rename(casebook::HandoutTemplate kept, const QString& name) {
    const QString sentence =
        Words::tr("Renamed the handout template %1 to %2").arg(kept.name, name);
    kept.name = name;
    return m_context.act(m_parent, sentence, [&](store::Action& action) {
        return m_context.workbook.practice().changeHandoutTemplate(action, kept);
    });
}

bool KeptPages::remove(const casebook::HandoutTemplate& kept) {
    return m_context.act(m_parent, Words::tr("Removed the handout template %1").arg(kept.name),
                         [&](store::Action& action) {
                             return m_context.workbook.practice().removeHandoutTemplate(action,
                                                                                        kept.id);
                         });
}

std::optional<LabelStockId> KeptPages::add(const casebook::LabelStock& stock) {
    return added<LabelStockId>(
        m_context, m_parent, Words::tr("Kept the label sheets %1").arg(stock.name),
        [&](store::Action& action) {
            return m_context.workbook.practice().addLabelStock(action, stock);
        });
}

bool KeptPages::change(const casebook::LabelStock& stock) {
    return m_context.act(m_parent,
                         Words::tr("Changed the measures of the label sheets %1").arg(stock.name),
                         [&](store::Action& action) {
                             return m_context.workbook.practice().changeLabelStock(action, stock);
                         });
}

bool KeptPages::rename(casebook::LabelStock stock, const QString& name) {
    const QString sentence = Words::tr("Renamed the label sheets %1 to %2").arg(stock.name, name);
    stock.name = name;
    return m_context.act(m_parent, sentence, [&](store::Action& action) {
        return m_context.workbook.practice().changeLabelStock(action, stock);
    });
}

bool KeptPages::remove(const casebook::LabelStock& stock) {
    return m_context.act(m_parent, Words::tr("Removed the label sheets %1").arg(stock.name),
                         [&](store::Action& action) {
                             return m_context.workbook.practice().removeLabelStock(action,
                                                                                   stock.id);
                         });
}

} // namespace ladlework::ui
