#pragma once

#include <QWidget>

class QTabWidget;

namespace ladlework::ui {

class GivenPanel;
class HandoutOptionsPanel;
class HandoutPartsPanel;
class KeptChoice;
class LabelsPanel;

/// The choices beside the pages, on three leaves: how the pages are put together, the jar labels,
/// the handouts already given.
class HandoutSide final : public QWidget {
    Q_OBJECT
public:
    enum class Leaf { Pages, Labels, Given };

    explicit HandoutSide(QWidget* parent = nullptr);

    [[nodiscard]] HandoutOptionsPanel* options() const { return m_options; }
    [[nodiscard]] KeptChoice* templates() const { return m_templates; }
    [[nodiscard]] HandoutPartsPanel* parts() const { return m_parts; }
    [[nodiscard]] LabelsPanel* labels() const { return m_labels; }
    [[nodiscard]] GivenPanel* given() const { return m_given; }
    [[nodiscard]] Leaf leaf() const;
    void showLeaf(Leaf leaf);
    /// A remark below the choices of the pages.
    void remark(const QString& words);

Q_SIGNALS:
    void leafChanged();

private:
    QWidget* makePages();

    HandoutOptionsPanel* m_options;
    KeptChoice* m_templates;
    HandoutPartsPanel* m_parts;
    LabelsPanel* m_labels;
    GivenPanel* m_given;
    QTabWidget* m_leaves;
    class QLabel* m_remark;
};

} // namespace ladlework::ui
