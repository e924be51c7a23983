#include "support/languages.hpp"

#include <rampwright/core/say.hpp>

#include <QCoreApplication>
#include <QFile>
#include <QSet>
#include <QThreadPool>
#include <QXmlStreamReader>

#include <stdexcept>

namespace rampwright::ui::testing {

std::vector<Message> read_language(const QString& ts_file) {
    QFile file(ts_file);
    if (!file.open(QIODevice::ReadOnly)) throw std::runtime_error("no " + ts_file.toStdString());
    QXmlStreamReader xml(&file);
    std::vector<Message> messages;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        const auto tag = xml.name();
        if (tag == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (tag == QLatin1String("source")) {
            messages.push_back({context, xml.readElementText(), {}, false});
        } else if (tag == QLatin1String("translation")) {
            messages.back().finished = xml.attributes().value(QLatin1String("type")).isEmpty();
            // Either the text itself or one element for each number form.
            QString text;
            while (xml.readNext() != QXmlStreamReader::EndElement || xml.name() != tag) {
                if (xml.isCharacters()) text += xml.text();
                if (xml.isStartElement()) messages.back().translations << xml.readElementText();
            }
            if (messages.back().translations.isEmpty()) messages.back().translations << text;
        }
    }
    if (xml.hasError()) throw std::runtime_error(xml.errorString().toStdString());
    return messages;
}

PseudoLanguage::PseudoLanguage(const std::vector<Message>& messages) {
    for (const Message& each : messages)
        known_.insert(each.context + QLatin1Char('\n') + each.source);
}

QString PseudoLanguage::translate(const char* context, const char* source, const char*, int) const {
    const QString text = QString::fromUtf8(source);
    if (!known_.contains(QString::fromUtf8(context) + QLatin1Char('\n') + text)) return {};
    const qsizetype longer = std::max<qsizetype>(1, text.size() / 3);
    // In words of eight, since a sentence may go on on the next line.
    QString tail;
    for (qsizetype i = 0; i < longer; ++i)
        tail += QLatin1Char(i % 9 == 8 ? ' ' : '~');
    return QLatin1Char('[') + text + tail + QLatin1Char(']');
}

Spoken::Spoken(QTranslator& language) : language_(language) {
    QCoreApplication::installTranslator(&language);
    install_translation([&language](std::string_view english) {
        const std::string text(english);
        const QString said = language.translate("Core", text.c_str(), nullptr, -1);
        return said.isEmpty() ? text : said.toStdString();
    });
}

Spoken::~Spoken() {
    QThreadPool::globalInstance()->waitForDone(); // what is still computed beside a window speaks, too
    install_translation({});
    QCoreApplication::removeTranslator(&language_);
}

} // namespace rampwright::ui::testing
