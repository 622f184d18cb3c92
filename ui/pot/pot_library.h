#pragma once

#include "kitchen/pot.h"

#include <QWidget>
#include <utility>

class QAction;
class QLineEdit;
class QListView;

namespace ladlework::ui {

class PotLibraryModel;

/// The pots to choose from: a line that filters as one types, the list under its headings, and a
/// button for each action. What is chosen stays chosen while the filter hides it.
class PotLibrary final : public QWidget {
    Q_OBJECT
public:
    /// The actions stand below the list as buttons with these words.
    PotLibrary(const QList<std::pair<QAction*, QString>>& actions, QWidget* parent);
    /// Takes the pots; keeps the one chosen, else takes its neighbour. Says nothing.
    void show(const QList<kitchen::Pot>& pots);
    using QWidget::show;
    void choose(PotId pot);
    /// nullptr while there is no pot.
    [[nodiscard]] const kitchen::Pot* chosen() const;
    [[nodiscard]] bool isEmpty() const;
    [[nodiscard]] QWidget* list() const;

Q_SIGNALS:
    void potChosen();
    void removeWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void makeFilter();
    void takeCurrent(int row);
    void showChosen();

    PotLibraryModel* m_model;
    QLineEdit* m_filter;
    QListView* m_list;
    PotId m_chosen;
};

} // namespace ladlework::ui
