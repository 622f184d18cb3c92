#include "app/command.h"

#include <QCommandLineOption>
#include <QCommandLineParser>
#include <QCoreApplication>

namespace ladlework::app {

namespace {

QString say(const char* sentence) {
    return QCoreApplication::translate("CommandLine", sentence);
}

tl::unexpected<Problem> wrong(const QString& sentence, const QString& usage) {
    return problem(Problem::Kind::BadInput, say("%1 Usage: ladlework %2").arg(sentence, usage));
}

} // namespace

Result<Words> Words::from(const QStringList& arguments, qsizetype positional,
                          const QStringList& options, const QString& usage) {
    QCommandLineParser parser;
    for (const QString& option : options) {
        const bool isSwitch = option.endsWith(QLatin1Char('!'));
        const QString name = isSwitch ? option.chopped(1) : option;
        parser.addOption(
            QCommandLineOption(name, {}, isSwitch ? QString() : QStringLiteral("value")));
    }
    // The parser leaves out the first word, which it takes for the program's name.
    if (!parser.parse(QStringList(QStringLiteral("ladlework")) + arguments))
        return wrong(parser.errorText(), usage);

    Words words;
    words.m_usage = usage;
    words.m_positional = parser.positionalArguments();
    for (const QString& option : parser.optionNames()) {
        const QStringList values = parser.values(option);
        if (values.size() > 1 || words.m_values.contains(option))
            return wrong(say("The option --%1 is given twice.").arg(option), usage);
        words.m_values.insert(option, values.value(0));
    }
    if (words.m_positional.size() < positional)
        return wrong(say("Something is missing."), usage);
    for (const QString& word : words.m_positional)
        if (word.trimmed().isEmpty())
            return wrong(say("A name is empty."), usage);
    if (words.m_positional.size() > positional)
        return wrong(say("\"%1\" is one word too many.").arg(words.m_positional[positional]),
                     usage);
    return words;
}

Result<QString> Words::needed(const QString& option) const {
    if (!has(option) || value(option).trimmed().isEmpty())
        return wrong(say("The option --%1 is missing.").arg(option), m_usage);
    return value(option);
}

Result<qint64> Words::number(const QString& option, qint64 otherwise, qint64 least,
                             qint64 most) const {
    if (!has(option))
        return otherwise;
    bool isNumber = false;
    const qint64 number = value(option).toLongLong(&isNumber);
    if (!isNumber || number < least || number > most)
        return wrong(say("--%1 must be a whole number from %2 to %3.")
                         .arg(option, QString::number(least), QString::number(most)),
                     m_usage);
    return number;
}

Result<QDate> Words::neededDay(const QString& option, QDate today) const {
    const auto text = needed(option);
    if (!text)
        return passOn(text);
    const QDate day = QDate::fromString(*text, QStringLiteral("yyyy-MM-dd"));
    if (!day.isValid() || text->size() != 10)
        return badOption(option, say("a day written as YYYY-MM-DD"));
    constexpr int mostYearsBack = 10;
    constexpr int mostYearsAhead = 1;
    const QDate first = today.addYears(-mostYearsBack);
    const QDate last = today.addYears(mostYearsAhead);
    if (day < first || day > last)
        return badOption(option, say("a day from %1 to %2: at most %3 years back and %4 year ahead")
                                     .arg(first.toString(Qt::ISODate), last.toString(Qt::ISODate))
                                     .arg(mostYearsBack)
                                     .arg(mostYearsAhead));
    return day;
}

} // namespace ladlework::app
