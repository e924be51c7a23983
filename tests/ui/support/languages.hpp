#pragma once

#include <QSet>
#include <QString>
#include <QTranslator>

#include <string>
#include <vector>

namespace rampwright::ui::testing {

/// One sentence of a language's file.
struct Message {
    QString context, source;
    QStringList translations; ///< one, or one for each number form
    bool finished = false;
};

/// @throws std::runtime_error where the file cannot be read.
std::vector<Message> read_language(const QString& ts_file);

/// A language that nobody speaks: every sentence of the German file in brackets and a third longer. What a
/// screen shows without brackets does not come by the door of the translations.
class PseudoLanguage : public QTranslator {
public:
    explicit PseudoLanguage(const std::vector<Message>& messages);
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* comment, int n) const override;

private:
    QSet<QString> known_;
};

/// Speaks a language in window and core while it lives.
class Spoken {
public:
    explicit Spoken(QTranslator& language);
    ~Spoken();
    Spoken(const Spoken&) = delete;
    Spoken& operator=(const Spoken&) = delete;

private:
    QTranslator& language_;
};

} // namespace rampwright::ui::testing
