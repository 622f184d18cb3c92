#include "app/command.h"

#include <QCoreApplication>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

Command sample() {
    return {QStringLiteral("sample"),
            QStringLiteral("sample FILE [--families N --years Y --seed S]"),
            say("Writes the sample workbook, or a large invented one.\n\n"
                "The sample is an invented practice whose log ends yesterday. With --families it\n"
                "is a made-up practice of N families with Y years of daily log each; the same\n"
                "numbers and the same day give the same records. FILE must not exist yet."),
            runSample,
            1,
            {QStringLiteral("families"), QStringLiteral("years"), QStringLiteral("seed")}};
}

Command reckon() {
    return {
        QStringLiteral("reckon"),
        QStringLiteral("reckon pot|cooling|ladder|patterns|week FILE.json"),
        say("Does one computation; JSON on standard output.\n\n"
            "pot       what comes out of a pot, and who may drink it\n"
            "cooling   how fast stock cools, and in how many containers it passes\n"
            "ladder    a climb replayed day by day, and when it may reach its target\n"
            "patterns  days with something taken against days with a reaction\n"
            "week      which pots on which days, proven the best; and what is in the way\n\n"
            "FILE.json is one object with SI units in the names of its keys. An unknown key, a\n"
            "missing key, a wrong type or a number out of range is refused with its place."),
        runReckon,
        2,
        {}};
}

Command handoutCommand() {
    return {
        QStringLiteral("handout"),
        QStringLiteral("handout WORKBOOK --family NAME --week YYYY-MM-DD --out FILE.pdf "
                       "[--language en|es] [--paper letter|a4] [--large-print] "
                       "[--names full|first|none] [--template NAME] [--png DIR]"),
        say("Prints one family's week to a PDF.\n\n"
            "A week begins on a Monday: for another day the Monday before it is taken, and the\n"
            "output says so. Without --language and --paper the family's own; without --names\n"
            "first names.\n"
            "With --names none the names of members are left out; the words of pots and notes\n"
            "stay as they were written. --template takes the parts, their order and the words of "
            "a\n"
            "template that the workbook keeps; cautions stay with every pot and ladder. --png "
            "also\n"
            "writes each page as a picture into the folder DIR (page-1.png ...), label sheets "
            "too.\n"
            "FILE.pdf and the pictures are replaced when they are there, a workbook never."),
        runHandout,
        1,
        {QStringLiteral("family"), QStringLiteral("week"), QStringLiteral("out"),
         QStringLiteral("language"), QStringLiteral("paper"), QStringLiteral("large-print!"),
         QStringLiteral("names"), QStringLiteral("template"), QStringLiteral("png")}};
}

Command import() {
    return {
        QStringLiteral("import"),
        QStringLiteral("import WORKBOOK --family NAME --log FILE.csv [--dry-run]"),
        say("Takes a log into a workbook: all lines or none.\n\n"
            "The first line of FILE.csv names the columns: day and member, amount or reaction,\n"
            "and where wanted asked, pot, lot, strength, red_flag, start, length, note. Days are\n"
            "YYYY-MM-DD; amounts as a kitchen says them (\"1 1/2 cups\", \"350 ml\"), \"0\" or\n"
            "\"missed\" when nothing was drunk. Lines that the workbook holds already are passed\n"
            "over. With --dry-run nothing is changed; the output lists what would be taken and\n"
            "every line that would be refused."),
        runImport,
        1,
        {QStringLiteral("family"), QStringLiteral("log"), QStringLiteral("dry-run!")}};
}

Command exportCommand() {
    return {
        QStringLiteral("export"),
        QStringLiteral("export WORKBOOK [--family NAME] --as csv|json|ics --out PATH "
                       "[--week YYYY-MM-DD] [--names full|first|none]"),
        say("Writes what the workbook holds for other programs.\n\n"
            "ics   a calendar (iCalendar) of one week: when to cook and what to add when, the\n"
            "      limits of cooling, last days of stock, new tries, the next review. Without\n"
            "      --family all families in one calendar. A week begins on a Monday: for another\n"
            "      day the Monday before it is taken, and the output says so; without --week it\n"
            "      is this week. Without --names first names. Read into the same calendar again,\n"
            "      the entries are brought up to date.\n"
            "csv   the whole log of the family given with --family, as \"import\" reads it\n"
            "json  not written yet\n\n"
            "PATH is replaced when it is there, a workbook never; only its owner may read it."),
        runExport,
        1,
        {QStringLiteral("family"), QStringLiteral("as"), QStringLiteral("out"),
         QStringLiteral("week"), QStringLiteral("names")}};
}

Command verify() {
    return {QStringLiteral("verify"),
            QStringLiteral("verify WORKBOOK"),
            say("Checks a workbook: integrity, references, records, derived values.\n\n"
                "The output lists what is wrong; the exit status is 2 when there is anything."),
            runVerify,
            1,
            {}};
}

} // namespace

const QList<Command>& commands() {
    static const QList<Command> all{sample(), reckon(),        handoutCommand(),
                                    import(), exportCommand(), verify()};
    return all;
}

} // namespace ladlework::app
