#pragma once

#include "casebook/family_records.h"
#include "ui/shared/screen_context.h"

#include <optional>

class QWidget;

namespace ladlework::ui {

/// The templates of handouts and the label sheets of a practice, changed through one action each.
class KeptPages {
public:
    KeptPages(const ScreenContext& context, QWidget* parent)
        : m_context(context), m_parent(parent) {}

    // The id of what was added, or nothing when it was refused (the desk has told why).
    std::optional<HandoutTemplateId> add(const casebook::HandoutTemplate& kept);
    bool change(const casebook::HandoutTemplate& kept);
    bool rename(casebook::HandoutTemplate kept, const QString& name);
    bool remove(const casebook::HandoutTemplate& kept);

    std::optional<LabelStockId> add(const casebook::LabelStock& stock);
    bool change(const casebook::LabelStock& stock);
    bool rename(casebook::LabelStock stock, const QString& name);
    bool remove(const casebook::LabelStock& stock);

private:
    const ScreenContext& m_context;
    QWidget* m_parent;
};

} // namespace ladlework::ui
