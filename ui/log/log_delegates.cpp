#include "ui/log/log_delegates.h"

#include "ui/log/drink_source.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace ladlework::ui {

namespace {

constexpr char openedWith[] = "openedWith";

/// Enter over an open list of completions, with none of them taken, ends the entry: the list alone
/// would swallow it and ask for a second one.
class EnterForwarder final : public QObject {
public:
    explicit EnterForwarder(QLineEdit& line) : QObject(&line), m_line(line) {}

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        auto* list = qobject_cast<QAbstractItemView*>(watched);
        if (event->type() != QEvent::KeyPress || !list || list->currentIndex().isValid())
            return false;
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key != Qt::Key_Return && key != Qt::Key_Enter)
            return false;
        list->hide();
        QCoreApplication::sendEvent(&m_line, event);
        return true;
    }

private:
    QLineEdit& m_line;
};

} // namespace

QWidget* DrinkDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                     const QModelIndex& index) const {
    QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
    if (auto* line = qobject_cast<QLineEdit*>(editor))
        line->setPlaceholderText(tr("3/4, same (as asked), missed"));
    return editor;
}

QWidget* SymptomDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                       const QModelIndex& index) const {
    QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
    if (auto* line = qobject_cast<QLineEdit*>(editor)) {
        QStringList names;
        for (const SymptomWord& word : m_words)
            names.append(m_strengthFollows ? word.name + u' ' : word.name);
        auto* completer = new QCompleter(names, line);
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        completer->setFilterMode(Qt::MatchContains);
        line->setCompleter(completer);
        completer->popup()->installEventFilter(new EnterForwarder(*line));
        line->setPlaceholderText(m_strengthFollows ? tr("bloating 3 at 14:30 for 2 h")
                                                   : tr("what was felt"));
    }
    return editor;
}

void SourceDelegate::setCasebook(std::shared_ptr<const casebook::Casebook> casebook) {
    m_casebook = std::move(casebook);
}

QWidget* SourceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                                      const QModelIndex& /*index*/) const {
    auto* box = new QComboBox(parent);
    box->setAccessibleName(tr("What the drink came out of"));
    for (const DrinkSource& source : drinkSources(*m_casebook))
        box->addItem(source.name);
    return box;
}

void SourceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* box = qobject_cast<QComboBox*>(editor);
    const QString now = index.data(Qt::EditRole).toString();
    box->setCurrentIndex(now.isEmpty() ? 0 : std::max(0, box->findText(now, Qt::MatchStartsWith)));
    box->setProperty(openedWith, box->currentIndex());
}

void SourceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                  const QModelIndex& index) const {
    const auto* box = qobject_cast<QComboBox*>(editor);
    // An untouched cell keeps its source, also a container that was drunk to the end since.
    if (box->currentIndex() != box->property(openedWith).toInt())
        model->setData(index, box->currentIndex(), Qt::EditRole);
}

} // namespace ladlework::ui
