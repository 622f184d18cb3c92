#pragma once

#include "casebook/casebook.h"

#include <QWidget>

class QLabel;
class QListView;
class QPushButton;

namespace ladlework::ui {

class Section;
class GivenHandoutsModel;

/// The handouts already given: open one as it was given, save its PDF again, or remove it.
class GivenPanel final : public QWidget {
    Q_OBJECT
public:
    explicit GivenPanel(QWidget* parent = nullptr);

    /// The handout chosen stays chosen as long as it is there.
    void setHandouts(const QList<casebook::HandoutRecord>& handouts, const QTimeZone& zone);
    /// nullptr while none is chosen.
    [[nodiscard]] const casebook::HandoutRecord* chosen() const;
    [[nodiscard]] QListView* list() const { return m_list; }

Q_SIGNALS:
    void openWanted();
    void saveWanted();
    void removeWanted();

private:
    void follow();

    Section* m_section;
    GivenHandoutsModel* m_model;
    QListView* m_list;
    QLabel* m_empty;
    QList<QPushButton*> m_buttons;
};

} // namespace ladlework::ui
