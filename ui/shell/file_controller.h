#pragma once

#include "kitchen/catalogue.h"
#include "store/workbook.h"
#include "ui/shared/desk.h"
#include "ui/shell/preferences.h"

#include <QObject>
#include <QTemporaryDir>
#include <functional>
#include <memory>

class QMenu;

namespace ladlework::ui {

/// Makes, opens and samples workbooks. What went wrong is told at the desk; a workbook that is
/// ready goes to the receiver.
class FileController final : public QObject {
    Q_OBJECT
public:
    using Receiver = std::function<void(std::unique_ptr<store::Workbook>)>;

    FileController(const kitchen::Catalogue& catalogue, const Clock& clock, Desk& desk,
                   Preferences& preferences, QWidget* window);
    void setReceiver(Receiver receiver) { m_receiver = std::move(receiver); }

    void makeNew();
    void open();
    void openSample();
    /// Opens a file and remembers it; the Problem says why it could not be. Nothing is told.
    Outcome openPath(const QString& path);
    /// openPath() with the Problem told at the desk.
    void openOrTell(const QString& path);
    /// Fills the menu with the workbooks opened last.
    void fillRecent(QMenu& menu);

private:
    void receive(std::unique_ptr<store::Workbook> workbook);
    [[nodiscard]] static Outcome fillFromComputer(store::Action& action, store::Workbook& workbook);

    const kitchen::Catalogue& m_catalogue;
    const Clock& m_clock;
    Desk& m_desk;
    Preferences& m_preferences;
    QWidget* m_window;
    Receiver m_receiver;
    std::unique_ptr<QTemporaryDir> m_sampleFolder; ///< goes with the program
};

} // namespace ladlework::ui
