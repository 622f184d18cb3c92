#include "foundation/json_reader.h"
#include "handout/document_json.h"
#include "ui/handout/given_handouts_model.h"
#include "ui/handout/given_panel.h"
#include "ui/handout/handout_files.h"
#include "ui/handout/handout_screen.h"
#include "ui/handout/handout_side.h"
#include "ui/handout/pages_preview.h"
#include "ui/print/pdf_writer.h"
#include "ui/shared/week_stepper.h"

#include <QJsonDocument>
#include <QLabel>

// Handouts as they were given: recorded, shown again, saved again, removed.
namespace ladlework::ui {

void HandoutScreen::give() {
    const Result<QByteArray> pdf = pdfOf(m_document);
    if (!pdf)
        context().desk.tell(this, pdf.error().sentence);
    else if (savePdfFile(context(), this, *pdf, m_document.title))
        record(*pdf);
}

void HandoutScreen::recordAsGiven() {
    const Result<QByteArray> pdf = pdfOf(m_document);
    if (!pdf)
        context().desk.tell(this, pdf.error().sentence);
    else
        record(*pdf);
}

bool HandoutScreen::record(const QByteArray& pdf) {
    casebook::HandoutRecord handout;
    handout.family = book().records().family.id;
    handout.week = m_now.options.week;
    handout.madeUtc = context().clock.nowUtc();
    handout.title = m_document.title;
    const QByteArray json =
        QJsonDocument(handout::toJson(m_document)).toJson(QJsonDocument::Compact);
    const QString sentence = tr("Gave %1 the handout of the %2")
                                 .arg(book().records().family.name,
                                      weekInWords(handout.week).replace(0, 1, QLatin1Char('w')));
    return context().act(this, sentence, [&](store::Action& action) -> Outcome {
        const Result<HandoutId> added =
            context().workbook.handouts().addHandout(action, handout, pdf, json);
        if (!added)
            return passOn(added);
        return {};
    });
}

void HandoutScreen::openGiven() {
    const casebook::HandoutRecord* record = m_side->given()->chosen();
    if (record == nullptr)
        return;
    const Result<QJsonObject> json =
        parseJsonObject(context().workbook.handouts().documentJson(record->id));
    const Result<handout::Document> document =
        json ? handout::fromJson(*json) : Result<handout::Document>(passOn(json));
    if (!document) {
        context().desk.tell(this, tr("The pages of this handout cannot be shown, but its PDF is "
                                     "kept: use Save again."));
        return;
    }
    m_shown = record->id;
    m_document = *document;
    m_givenWords->setText(tr("As given %1").arg(givenAt(*record, book().records().family.zone)));
    m_preview->setPages(layOut(m_document), false);
    followShown();
    m_preview->setFocus();
}

void HandoutScreen::saveGiven() {
    const casebook::HandoutRecord* record = m_side->given()->chosen();
    if (record != nullptr)
        savePdfFile(context(), this, context().workbook.handouts().pdf(record->id), record->title);
}

void HandoutScreen::removeGiven() {
    const casebook::HandoutRecord* chosen = m_side->given()->chosen();
    if (chosen == nullptr)
        return;
    const HandoutId handout = chosen->id;
    const QString sentence =
        tr("Removed the handout given %1").arg(givenAt(*chosen, book().records().family.zone));
    if (m_shown == handout)
        m_shown.reset();
    context().act(this, sentence, [&](store::Action& action) {
        return context().workbook.handouts().removeHandout(action, handout);
    });
}

void HandoutScreen::backToThisWeek() {
    m_shown.reset();
    showPages(false);
    m_preview->setFocus();
}

} // namespace ladlework::ui
