#include "ui/shell/screen_names.h"

#include <QCoreApplication>

namespace ladlework::ui {

namespace {
struct Words {
    Q_DECLARE_TR_FUNCTIONS(ScreenNames)
};
} // namespace

QList<ScreenName> screenNames() {
    return {
        {QStringLiteral("today"), Words::tr("&Today"),
         Words::tr("Who drinks what today, what is on the stove, what wants attention")},
        {QStringLiteral("members"), Words::tr("&Members"),
         Words::tr("People, phases, targets, tolerance notes, cautions; the family's kitchen")},
        {QStringLiteral("pots"), Words::tr("&Pots"),
         Words::tr("Build a pot and see what it yields and who may drink it")},
        {QStringLiteral("log"), Words::tr("&Log"),
         Words::tr("Enter what was drunk and how it was borne")},
        {QStringLiteral("progress"), Words::tr("P&rogress"),
         Words::tr("The climb of each member to the target")},
        {QStringLiteral("week"), Words::tr("&Week"),
         Words::tr("Put pots on days and see whether the week holds")},
        {QStringLiteral("handout"), Words::tr("&Handout"),
         Words::tr("Preview, print and keep the pages the family takes home")},
        {QStringLiteral("notes"), Words::tr("&Notes"), Words::tr("What was said and agreed")},
    };
}

} // namespace ladlework::ui
