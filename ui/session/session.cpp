#include "session/session.hpp"

#include <rampwright/project/pictures.hpp>

#include <QScopedValueRollback>
#include <QUndoCommand>

#include <algorithm>
#include <utility>

namespace rampwright::ui {
namespace {

QStringList to_list(const std::vector<std::string>& keys) {
    QStringList list;
    list.reserve(static_cast<qsizetype>(keys.size()));
    for (const auto& key : keys)
        list << QString::fromStdString(key);
    return list;
}

} // namespace

/// A step of the history: the documents on both sides of it. Neighbouring steps share theirs.
class DocumentStep : public QUndoCommand {
public:
    DocumentStep(Session& session, std::shared_ptr<const Document> before,
                 std::shared_ptr<const Document> after, const QString& name, QStringList keys, QString merge)
        : QUndoCommand(name),
          session_(session),
          before_(std::move(before)),
          after_(std::move(after)),
          keys_(std::move(keys)),
          merge_(std::move(merge)) {}

    void undo() override { session_.show(session_.find_or_make_state(before_), keys_); }
    void redo() override { session_.show(session_.find_or_make_state(after_), keys_); }
    int id() const override { return merge_.isEmpty() ? -1 : 1; }

    bool mergeWith(const QUndoCommand* other) override {
        const auto& next = static_cast<const DocumentStep&>(*other);
        if (next.merge_ != merge_) return false;
        after_ = next.after_;
        for (const auto& key : next.keys_)
            if (!keys_.contains(key)) keys_ << key;
        // Nudged there and back is no step at all.
        setObsolete(*before_ == *after_);
        return true;
    }

private:
    Session& session_;
    std::shared_ptr<const Document> before_, after_;
    QStringList keys_;
    QString merge_;
};

Session::Session(QObject* parent) : QObject(parent) {}

std::shared_ptr<Session::State> Session::make_state(std::shared_ptr<const Document> document) const {
    auto state = std::make_shared<State>();
    state->project = read_project(*document);
    state->document = std::move(document);
    state->outcomes.resize(state->project.cars.size());
    state->wood = state_ ? state_->wood : std::make_shared<WoodMemo>();
    return state;
}

std::shared_ptr<Session::State> Session::find_or_make_state(const std::shared_ptr<const Document>& document) {
    for (const auto& known : {next_, state_, before_, base_})
        if (known && known->document == document) return known;
    return make_state(document);
}

const Session::Outcome& Session::outcome(State& state, std::size_t car) {
    static const Outcome none;
    if (car >= state.outcomes.size()) return none;
    auto& slot = state.outcomes[car];
    if (std::holds_alternative<std::monostate>(slot)) {
        try {
            slot = compute_figures(state.project, car, *state.wood);
        } catch (const Problem& problem) {
            slot = problem;
        }
    }
    return slot;
}

void Session::replace(std::shared_ptr<State> state, const std::filesystem::path& path) {
    if (state->project.cars.empty())
        throw Problem(Exit::could_not, "/cars", "the project has no car", "add a car to it");
    base_ = before_ = nullptr;
    state_ = std::move(state);
    car_ = 0;
    path_ = path;
    history_.clear();
    Q_EMIT file_changed();
    Q_EMIT changed({});
    Q_EMIT car_chosen();
}

void Session::open(const std::filesystem::path& path) {
    try {
        replace(make_state(std::make_shared<const Document>(
                    with_full_picture_paths(load_document(path), path.parent_path()))),
                path);
    } catch (const Problem& problem) {
        throw problem.file().empty() ? problem.in_file(path.string()) : problem;
    }
}

void Session::start(Document document) {
    replace(make_state(std::make_shared<const Document>(std::move(document))), {});
}

void Session::bring_back(Document document, const std::filesystem::path& path) {
    replace(make_state(std::make_shared<const Document>(std::move(document))), path);
    mark_unsaved();
    Q_EMIT file_changed();
}

void Session::save(const std::filesystem::path& path) {
    save_document(path, with_picture_paths_from(document(), path.parent_path()));
    path_ = path;
    history_.setClean();
    Q_EMIT file_changed();
}

void Session::choose_car(std::size_t car) {
    if (car == car_ || car >= project().cars.size()) return;
    car_ = car;
    before_ = nullptr;
    Q_EMIT car_chosen();
}

const Figures* Session::figures() const {
    return state_ ? std::get_if<Figures>(&outcome(*state_, car_)) : nullptr;
}

const Problem* Session::problem() const {
    return state_ ? std::get_if<Problem>(&outcome(*state_, car_)) : nullptr;
}

const Figures* Session::figures_before() const {
    return before_ ? std::get_if<Figures>(&outcome(*before_, car_)) : nullptr;
}

void Session::show(std::shared_ptr<State> state, const QStringList& keys) {
    if (!base_ && state != state_) before_ = state_;
    const std::size_t count = state_->project.cars.size();
    state_ = std::move(state);
    const bool other_cars = project().cars.size() != count;
    if (other_cars) {
        // The sheet may show another car now: what was compared with does not apply.
        car_ = std::min(car_, project().cars.size() - 1);
        before_ = nullptr;
    }
    Q_EMIT changed(keys);
    if (other_cars) Q_EMIT car_chosen();
}

void Session::apply(const Edit& edit, const QString& merge) {
    if (!edit.changed()) return;
    auto after = make_state(std::make_shared<const Document>(edit.document));
    const auto before = state_->document;
    auto step = std::make_unique<DocumentStep>(*this, before, after->document,
                                               QString::fromStdString(edit.name), to_list(edit.keys), merge);
    // Handed over, so that the step's own redo finds this very state and computes nothing twice.
    const QScopedValueRollback guard(next_, std::move(after));
    history_.push(step.release());
}

void Session::begin_gesture() {
    base_ = before_ = state_;
    gesture_name_.clear();
}

void Session::preview(const Edit& edit) {
    gesture_name_ = QString::fromStdString(edit.name);
    show(make_state(std::make_shared<const Document>(edit.document)),
         to_list(difference(document(), edit.document)));
}

void Session::finish_gesture() {
    const auto base = std::exchange(base_, nullptr);
    if (!base) return;
    before_ = base;
    const auto keys = difference(*base->document, document());
    if (keys.empty()) return;
    history_.push(
        new DocumentStep(*this, base->document, state_->document, gesture_name_, to_list(keys), {}));
}

void Session::cancel_gesture() {
    const auto base = std::exchange(base_, nullptr);
    if (!base) return;
    const auto keys = to_list(difference(document(), *base->document));
    state_ = base;
    before_ = nullptr;
    if (!keys.isEmpty()) Q_EMIT changed(keys);
}

} // namespace rampwright::ui
