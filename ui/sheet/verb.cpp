#include "sheet/verb.hpp"

#include "sheet/paint.hpp"
#include "sheet/sheet.hpp"
#include "sheet/words.hpp"

#include <rampwright/project/document.hpp>
#include <rampwright/units/entry.hpp>

#include <QGuiApplication>
#include <QHash>

#include <cctype>
#include <charconv>
#include <filesystem>
#include <memory>
#include <set>

namespace rampwright::ui {
namespace {

using namespace paper;

constexpr double picture_dpi = 200;

Problem sheet_call(const std::string& wrong, const std::string& remedy) {
    return {Exit::wrong_call, "-", wrong, remedy};
}

/// The toolkit without a display and without widgets; nothing where a program has started it already.
std::unique_ptr<QGuiApplication> start_painting() {
    if (QCoreApplication::instance()) return nullptr;
    static int count = 1;
    static char name[] = "rampwright";
    static char* words[] = {name, nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // Standard error is for messages in the program's own form.
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    return std::make_unique<QGuiApplication>(count, words);
}

struct Call {
    std::string project, out;
    std::optional<Paper> paper;
    QDate date = QDate::currentDate();
    double bar = bar_length;
    std::size_t page = 1;
};

Call read_call(const Arguments& arguments) {
    Call call;
    call.project = arguments.words[0];
    const std::string* out = arguments.find("--out");
    if (!out || out->empty())
        throw sheet_call("'sheet' does not say where to write", "give --out FILE.pdf, or --out FOLDER/");
    call.out = *out;
    if (const std::string* word = arguments.find("--paper")) {
        call.paper = find_paper(*word);
        if (!call.paper) throw sheet_call("'" + *word + "' is no paper it knows", "give letter or a4");
    }
    if (const std::string* word = arguments.find("--date")) {
        call.date = QDate::fromString(QString::fromStdString(*word), Qt::ISODate);
        if (!call.date.isValid() || word->size() != 10)
            throw sheet_call("'" + *word + "' is not a date", "write it as YYYY-MM-DD");
    }
    if (const std::string* word = arguments.find("--bar")) {
        try {
            call.bar = parse_entry(*word, Quantity::length, UnitSystem::metric) * 1e3;
        } catch (const EntryError& error) {
            throw sheet_call("--bar " + *word + ": " + error.wrong(), error.remedy());
        }
        if (!(call.bar >= least_bar && call.bar <= greatest_bar))
            throw sheet_call("a 100 mm bar that comes out at " + *word + " was not printed at 100 %",
                             "print at actual size, measure again and give 80 to 120 mm");
    }
    if (const std::string* word = arguments.find("--page")) {
        const auto [end, error] = std::from_chars(word->data(), word->data() + word->size(), call.page);
        if (error != std::errc() || end != word->data() + word->size() || call.page == 0)
            throw sheet_call("--page " + *word + " is no page", "give 1 or more");
    }
    return call;
}

/// A file's name from a car's: letters and digits of any script stay, the rest becomes "-".
std::string file_name(const std::string& car, std::set<std::string>& taken) {
    QString name;
    for (const QChar each : QString::fromStdString(car))
        name += each.isLetterOrNumber() || each.isSurrogate() ? each : QLatin1Char('-');
    if (name.isEmpty()) name = QStringLiteral("car");
    const std::string stem = name.toStdString();
    std::string unique = stem;
    for (int n = 2; !taken.insert(unique).second; ++n)
        unique = stem + "-" + std::to_string(n);
    return unique + ".pdf";
}

void write_sheet(const Project& project, std::size_t car, const Call& call,
                 const std::filesystem::path& path) {
    const Figures figures = compute_figures(project, car);
    const Paper paper = call.paper.value_or(project.units == UnitSystem::metric ? Paper::a4 : Paper::letter);
    const QString file = QString::fromStdString(std::filesystem::path(call.project).filename().string());
    const Sheet sheet = make_sheet({project, car, figures, file, call.date, paper, call.bar});
    if (path.extension() == ".png") {
        if (call.page > sheet.pages.size())
            throw sheet_call("the sheet has no page " + std::to_string(call.page),
                             "give 1 to " + std::to_string(sheet.pages.size()));
        write_file(path, to_png(sheet, call.page - 1, picture_dpi).toStdString());
    } else {
        write_file(path, to_pdf(sheet, call.date).toStdString());
    }
}

std::vector<std::size_t> cars_named(const Project& project, const Arguments& arguments,
                                    const std::string& path) {
    std::vector<std::size_t> cars;
    for (const std::string& name : arguments.all("--car")) {
        const CarPlan* car = find_car(project, name);
        if (!car)
            throw Problem(Exit::could_not, "/cars", "there is no car named '" + name + "'",
                          "see 'rampwright figures' for the names", path);
        cars.push_back(static_cast<std::size_t>(car - project.cars.data()));
    }
    if (cars.empty())
        for (std::size_t i = 0; i < project.cars.size(); ++i)
            cars.push_back(i);
    return cars;
}

void make_folder(const std::filesystem::path& folder) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error)
        throw Problem(Exit::could_not, "-", "the folder cannot be made: " + error.message(),
                      "choose another place", folder.string());
}

Exit run_sheet(const Arguments& arguments, std::ostream&, std::ostream&) {
    const Call call = read_call(arguments);
    const bool folder = call.out.ends_with('/') || std::filesystem::is_directory(call.out);
    const std::filesystem::path out(call.out);
    if (!folder && out.extension() != ".pdf" && out.extension() != ".png")
        throw sheet_call("'" + call.out + "' is neither a PDF nor a picture",
                         "give a name that ends in .pdf, in .png for one page, or a folder that ends in /");
    // Equal calls give equal bytes: the toolkit writes fonts in the order of a hash that it seeds by chance.
    QHashSeed::setDeterministicGlobalSeed();
    const auto application = start_painting();
    try {
        const Project project = read_project(load_document(call.project));
        const std::vector<std::size_t> cars = cars_named(project, arguments, call.project);
        if (!folder && cars.size() != 1)
            throw sheet_call("one file holds one car, and there are " + std::to_string(cars.size()),
                             "name one with --car, or give a folder: --out FOLDER/");
        if (folder) make_folder(out);
        std::set<std::string> taken;
        for (const std::size_t car : cars)
            write_sheet(project, car, call, folder ? out / file_name(project.cars[car].name, taken) : out);
    } catch (const Problem& problem) {
        throw problem.file().empty() && problem.exit() != Exit::wrong_call ? problem.in_file(call.project)
                                                                           : problem;
    }
    return Exit::done;
}

} // namespace

Verb sheet_verb() {
    return {"sheet",
            "sheet PROJECT --car NAME --out FILE.pdf [--paper letter|a4] [--date YYYY-MM-DD] [--bar MM]",
            "the build sheet of a car, to print at true size; all cars with --out FOLDER/",
            "  --car NAME      a car's name or id; all cars where none is named\n"
            "  --out FILE.pdf  the sheet; FILE.png: one page of it as a picture; FOLDER/: one PDF a car\n"
            "  --paper P       letter or a4 (a4; letter where the project is in inches)\n"
            "  --date D        the date on the sheet (today); the same date gives the same bytes\n"
            "  --bar MM        what the sheet's 100 mm bar measures as your printer prints it, to make up "
            "for it\n"
            "  --page N        which page becomes the picture (1)\n",
            {"--car", "--out", "--paper", "--date", "--bar", "--page"},
            {},
            1,
            run_sheet};
}

} // namespace rampwright::ui
