#include "ui/handout/handout_options_panel.h"
#include "ui/handout/handout_parts_panel.h"
#include "ui/handout/handout_screen.h"
#include "ui/handout/handout_side.h"
#include "ui/handout/kept_choice.h"
#include "ui/handout/labels_panel.h"

#include <algorithm>

// The choices beside the pages: what is printed, the templates and label sheets that are kept.
namespace ladlework::ui {

void HandoutScreen::connectTemplates() {
    KeptChoice* templates = m_side->templates();
    connect(templates, &KeptChoice::chosen, this,
            [this](qint64 id) { useTemplate(HandoutTemplateId{id}); });
    connect(templates, &KeptChoice::keepAsWanted, this, &HandoutScreen::keepTemplate);
    connect(templates, &KeptChoice::saveWanted, this, [this] {
        if (keptTemplate() != nullptr)
            m_kept.change(templateNow());
    });
    connect(templates, &KeptChoice::renameWanted, this, [this](const QString& name) {
        if (const casebook::HandoutTemplate* kept = keptTemplate())
            m_kept.rename(*kept, name);
    });
    connect(templates, &KeptChoice::removeWanted, this, [this] {
        if (const casebook::HandoutTemplate* kept = keptTemplate())
            m_kept.remove(casebook::HandoutTemplate(*kept));
    });
}

void HandoutScreen::connectLabels() {
    LabelsPanel* labels = m_side->labels();
    connect(labels, &LabelsPanel::choiceChanged, this, &HandoutScreen::takeLabels);
    connect(labels, &LabelsPanel::stockEdited, this,
            [this](const casebook::LabelStock& stock) { m_kept.change(stock); });
    connect(labels->kept(), &KeptChoice::keepAsWanted, this, &HandoutScreen::keepStock);
    connect(labels->kept(), &KeptChoice::renameWanted, this, [this](const QString& name) {
        if (const casebook::LabelStock* kept = keptStock())
            m_kept.rename(*kept, name);
    });
    connect(labels->kept(), &KeptChoice::removeWanted, this, [this] {
        if (const casebook::LabelStock* kept = keptStock())
            m_kept.remove(casebook::LabelStock(*kept));
    });
}

void HandoutScreen::showChoices() {
    const casebook::FamilyRecords& records = book().records();
    const bool mayChange = context().workbook.readOnlyReason().isEmpty();
    m_side->options()->setOptions(m_now.options, records.family.paper,
                                  records.family.handoutLanguage);
    m_side->parts()->setSections(m_now.options.sections);
    QList<KeptChoice::Item> items{{0, tr("Usual pages")}};
    for (const casebook::HandoutTemplate& kept : records.handoutTemplates)
        items << KeptChoice::Item{kept.id.value, kept.name};
    m_side->templates()->setMayChange(mayChange);
    m_side->templates()->setItems(items, m_now.from.value);
    const casebook::HandoutTemplate* kept = keptTemplate();
    m_side->templates()->setChanged(kept != nullptr && templateNow() != *kept);
    // A sheet whose measures were changed, or that is gone, is not the one that was chosen.
    if (m_now.options.labels.stock) {
        const casebook::LabelStock* stock = keptStock();
        if (stock != nullptr)
            m_now.options.labels.stock = *stock;
        else if (m_now.options.labels.stock->id.value > 0)
            m_now.options.labels.stock.reset();
    }
    m_side->labels()->show(m_now.options.labels, records, mayChange);
}

void HandoutScreen::takeOptions() {
    m_side->options()->takeInto(m_now.options);
    m_chosen.insert(book().records().family.id, m_now);
    m_shown.reset();
    showChoices();
    showPages(true);
}

void HandoutScreen::takeParts() {
    m_now.options.sections = m_side->parts()->sections();
    m_chosen.insert(book().records().family.id, m_now);
    m_shown.reset();
    const casebook::HandoutTemplate* kept = keptTemplate();
    m_side->templates()->setChanged(kept != nullptr && templateNow() != *kept);
    showPages(true);
}

void HandoutScreen::takeLabels() {
    m_now.options.labels = m_side->labels()->choice();
    m_chosen.insert(book().records().family.id, m_now);
    m_shown.reset();
    showChoices();
    showPages(true);
}

const casebook::HandoutTemplate* HandoutScreen::keptTemplate() const {
    const auto& all = book().records().handoutTemplates;
    const auto found = std::find_if(all.cbegin(), all.cend(),
                                    [this](const auto& kept) { return kept.id == m_now.from; });
    return found == all.cend() ? nullptr : &*found;
}

const casebook::LabelStock* HandoutScreen::keptStock() const {
    const LabelStockId id = m_now.options.labels.stock
                                ? m_now.options.labels.stock->id
                                : handout::labelStockFor(book().records()).id;
    const auto& all = book().records().labelStocks;
    const auto found =
        std::find_if(all.cbegin(), all.cend(), [id](const auto& stock) { return stock.id == id; });
    return found == all.cend() ? nullptr : &*found;
}

casebook::HandoutTemplate HandoutScreen::templateNow() const {
    casebook::HandoutTemplate now;
    if (const casebook::HandoutTemplate* kept = keptTemplate())
        now = *kept;
    now.sections = m_now.options.sections;
    now.largePrint = m_now.options.largePrint;
    // What is kept must hold to what is printed.
    for (casebook::HandoutSection& section : now.sections)
        if (section.part == casebook::HandoutPart::Cautions && handout::needsCautions(now.sections))
            section.shown = true;
    return now;
}

void HandoutScreen::useTemplate(HandoutTemplateId id) {
    m_now.from = id;
    const casebook::HandoutTemplate* kept = keptTemplate();
    m_now.options.sections = kept != nullptr ? kept->sections : casebook::usualSections();
    if (kept != nullptr)
        m_now.options.largePrint = kept->largePrint;
    m_chosen.insert(book().records().family.id, m_now);
    m_shown.reset();
    showChoices();
    showPages(false);
}

void HandoutScreen::keepTemplate(const QString& name) {
    casebook::HandoutTemplate kept = templateNow();
    kept.id = {};
    kept.name = name;
    const std::optional<HandoutTemplateId> made = m_kept.add(kept);
    if (!made)
        return;
    m_now.from = *made;
    m_chosen.insert(book().records().family.id, m_now);
    showChoices();
}

void HandoutScreen::keepStock(const QString& name) {
    casebook::LabelStock stock =
        m_side->labels()->choice().stock.value_or(handout::labelStockFor(book().records()));
    stock.id = {};
    stock.name = name;
    const std::optional<LabelStockId> made = m_kept.add(stock);
    if (!made)
        return;
    stock.id = *made;
    m_now.options.labels.stock = stock;
    m_chosen.insert(book().records().family.id, m_now);
    showChoices();
    showPages(true);
}

} // namespace ladlework::ui
