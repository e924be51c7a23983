#pragma once

#include <rampwright/core/problem.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/results/figures_again.hpp>

#include <QObject>
#include <QStringList>
#include <QUndoStack>

#include <filesystem>
#include <memory>
#include <optional>
#include <variant>

namespace rampwright::ui {

/// One open project: the document, what it reads as, what is computed from it, and its history.
///
/// The only door between the window and the core: views ask it, edits go through it, and `changed`
/// is the one notice. Everything it hands out is a value of its own; the core keeps no reference.
class Session : public QObject {
    Q_OBJECT

public:
    explicit Session(QObject* parent = nullptr);

    /// Replaces what is open. @throws Problem, the present project kept.
    void open(const std::filesystem::path& path);
    /// Replaces what is open by a document that has no file yet. @throws Problem.
    void start(Document document);
    /// Replaces what is open by work brought back after a crash; it is unsaved, and belongs to a file or
    /// to none. @throws Problem.
    void bring_back(Document document, const std::filesystem::path& path);
    /// The file is no longer what was opened or saved: the work here counts as unsaved.
    void mark_unsaved() { history_.resetClean(); }
    /// @throws Problem, the file untouched.
    void save(const std::filesystem::path& path);

    bool has_file() const { return !path_.empty(); }
    const std::filesystem::path& path() const { return path_; }

    const Document& document() const { return *state_->document; }
    /// The document as it is now, for a thread that reads it while the person goes on.
    std::shared_ptr<const Document> shared_document() const { return state_->document; }
    const Project& project() const { return state_->project; }

    /// The car on the sheet.
    std::size_t car() const { return car_; }
    const CarPlan& plan() const { return project().cars[car_]; }
    void choose_car(std::size_t car);

    /// Computed for the car on the sheet, always of the document as it is at this instant; nullptr
    /// where it cannot be computed, and `problem` then says why.
    const Figures* figures() const;
    const Problem* problem() const;
    /// What the same car's figures were before the last change: where a drag was picked up, or before
    /// the latest step. nullptr where there is nothing to compare.
    const Figures* figures_before() const;

    /// Does an edit as one undo step; steps with the same `merge` key that follow one another
    /// become one. An edit that changes nothing is dropped.
    void apply(const Edit& edit, const QString& merge = {});

    /// A drag: `begin_gesture`, any number of `preview` of edits of `gesture_base`, then `finish_gesture`
    /// (one undo step) or `cancel_gesture`.
    void begin_gesture();
    bool in_gesture() const { return base_ != nullptr; }
    const Document& gesture_base() const { return *base_->document; }
    void preview(const Edit& edit);
    void finish_gesture();
    void cancel_gesture();

    QUndoStack& history() { return history_; }
    bool has_unsaved_work() const { return !history_.isClean(); }

Q_SIGNALS:
    /// JSON pointers of the values that differ; empty where the whole project is another.
    void changed(const QStringList& keys);
    void car_chosen();
    void file_changed();

private:
    friend class DocumentStep;
    using Outcome = std::variant<std::monostate, Figures, Problem>;
    /// A document and what follows from it, immutable once made except for the figures, which are
    /// computed when first asked for.
    struct State {
        std::shared_ptr<const Document> document;
        Project project;
        std::vector<Outcome> outcomes;
        std::shared_ptr<WoodMemo> wood; ///< one for all: while a weight is dragged the wood stays
    };
    std::shared_ptr<State> make_state(std::shared_ptr<const Document> document) const;
    static const Outcome& outcome(State& state, std::size_t car);
    void show(std::shared_ptr<State> state, const QStringList& keys);
    void replace(std::shared_ptr<State> state, const std::filesystem::path& path);
    std::shared_ptr<State> find_or_make_state(const std::shared_ptr<const Document>& document);

    std::shared_ptr<State> state_, before_, base_, next_;
    QString gesture_name_;
    std::size_t car_ = 0;
    std::filesystem::path path_;
    QUndoStack history_;
};

} // namespace rampwright::ui
