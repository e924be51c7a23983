#include "trace/outline_dialog.hpp"

#include "session/aside.hpp"
#include "text/figure_text.hpp"
#include "trace/outline_preview.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {

OutlineDialog::OutlineDialog(Session& session, const QString& path, bool plan, QWidget* parent)
    : QDialog(parent), session_(session), plan_(plan) {
    setWindowTitle(plan ? tr("Read the Top Outline") : tr("Read the Side Outline"));
    auto* column = new QVBoxLayout(this);
    about_ = new QLabel(tr("Reading %1…").arg(QFileInfo(path).fileName()), this);
    about_->setObjectName(QStringLiteral("outline.about"));
    about_->setWordWrap(true);
    column->addWidget(about_);
    list_ = new QListWidget(this);
    list_->setObjectName(QStringLiteral("outline.list"));
    list_->setAccessibleName(tr("Closed lines of the drawing, largest first"));
    list_->setMaximumHeight(110);
    column->addWidget(list_);
    const BodyPlan& body = session.plan().body;
    preview_ = new OutlinePreview(plan ? body.plan : body.profile, this);
    column->addWidget(preview_, 1);
    size_ = new QLabel(this);
    size_->setObjectName(QStringLiteral("outline.size"));
    size_->setWordWrap(true);
    column->addWidget(size_);
    auto* form = new QFormLayout;
    length_ = new QLineEdit(this);
    length_->setObjectName(QStringLiteral("outline.length"));
    length_->setToolTip(tr("How long the outline is to be, in any unit: its height follows."));
    form->addRow(tr("&Length"), length_);
    factor_field_ = new QLineEdit(this);
    factor_field_->setObjectName(QStringLiteral("outline.factor"));
    factor_field_->setToolTip(tr("What the size that was read is multiplied with."));
    form->addRow(tr("&Factor"), factor_field_);
    mirrored_ = new QCheckBox(tr("&Mirror it: its nose points left"), this);
    mirrored_->setObjectName(QStringLiteral("outline.mirror"));
    form->addRow(mirrored_);
    column->addLayout(form);
    result_ = new QLabel(this);
    result_->setObjectName(QStringLiteral("outline.result"));
    result_->setWordWrap(true);
    column->addWidget(result_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    take_ = buttons->addButton(tr("&Take It In"), QDialogButtonBox::AcceptRole);
    take_->setObjectName(QStringLiteral("outline.take"));
    take_->setEnabled(false);
    column->addWidget(buttons);
    for (QWidget* each : {static_cast<QWidget*>(length_), static_cast<QWidget*>(factor_field_),
                          static_cast<QWidget*>(mirrored_), static_cast<QWidget*>(list_)})
        each->setEnabled(false);
    connect(list_, &QListWidget::currentRowChanged, this, [this] {
        show_size();
        follow();
    });
    connect(length_, &QLineEdit::editingFinished, this, &OutlineDialog::type_length);
    connect(factor_field_, &QLineEdit::editingFinished, this, &OutlineDialog::type_factor);
    connect(mirrored_, &QCheckBox::toggled, this, &OutlineDialog::follow);
    connect(take_, &QPushButton::clicked, this, &OutlineDialog::take);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    resize(560, 620);
    work_aside(
        this,
        [path] {
            Read read;
            try {
                read.file = std::make_shared<const DrawnFile>(read_svg_file(path));
            } catch (const Problem& problem) {
                read.fault = problem_text(problem);
            }
            return read;
        },
        [this](const Read& read) { show_file(read); });
}

QString OutlineDialog::size_text(const DrawnShape& shape, double factor) const {
    const UnitSystem units = session_.project().units;
    const Vec2 size = factor * 1e-3 * (shape.high - shape.low);
    return tr("%1 × %2").arg(quantity_text(size.x(), Quantity::length, units),
                             quantity_text(size.y(), Quantity::length, units));
}

void OutlineDialog::show_file(const Read& read) {
    if (!read.file) {
        about_->setText(tr("Not read: %1").arg(read.fault));
        return;
    }
    file_ = read.file;
    QStringList about{tr("%n closed line(s), the largest first. Choose the one that is the outline.", nullptr,
                         static_cast<int>(file_->shapes.size()))};
    if (!file_->sized)
        about << tr(
            "The file does not state its size in a unit of length: 96 of its units were taken for an inch. "
            "Check the length below.");
    if (file_->open_lines > 0) about << tr("%n open line(s) left out.", nullptr, file_->open_lines);
    if (file_->references > 0)
        about << tr("%n copy/copies of other parts (\"use\") left out.", nullptr, file_->references);
    about_->setText(about.join(QLatin1Char(' ')));
    // A template of ours holds both views: each knows its own.
    const QString own = plan_ ? QStringLiteral("top-outline") : QStringLiteral("side-outline");
    int first = 0;
    for (int i = 0; i < static_cast<int>(file_->shapes.size()); ++i) {
        const DrawnShape& shape = file_->shapes[static_cast<std::size_t>(i)];
        list_->addItem(shape.name.isEmpty() ? size_text(shape, 1)
                                            : tr("%1, %2").arg(size_text(shape, 1), shape.name));
        if (shape.name == own) first = i;
    }
    for (QWidget* each : {static_cast<QWidget*>(length_), static_cast<QWidget*>(factor_field_),
                          static_cast<QWidget*>(mirrored_), static_cast<QWidget*>(list_)})
        each->setEnabled(true);
    list_->setCurrentRow(first);
}

const DrawnShape* OutlineDialog::chosen() const {
    const int row = list_->currentRow();
    return file_ && row >= 0 ? &file_->shapes[static_cast<std::size_t>(row)] : nullptr;
}

void OutlineDialog::show_size() {
    const DrawnShape* shape = chosen();
    if (!shape) return;
    const UnitSystem units = session_.project().units;
    const BodyPlan& body = session_.plan().body;
    const auto text = [units](double si) { return quantity_text(si, Quantity::length, units); };
    size_->setText(tr("Read as %1, taken in as %2. The block is %3 × %4.")
                       .arg(size_text(*shape, 1), size_text(*shape, factor_), text(body.block.x()),
                            text(plan_ ? body.block.y() : body.block.z())));
    const double length = factor_ * 1e-3 * (shape->high.x() - shape->low.x());
    length_->setText(QString::fromStdString(format_entry(length, Quantity::length, units)));
    factor_field_->setText(QString::fromStdString(format_entry(factor_, Quantity::plain, units)));
    for (QLineEdit* field : {length_, factor_field_})
        field->setModified(false);
}

void OutlineDialog::type_length() {
    const DrawnShape* shape = chosen();
    if (!shape || !length_->isModified()) return;
    try {
        const double length =
            parse_entry(length_->text().toStdString(), Quantity::length, session_.project().units);
        const double read = 1e-3 * (shape->high.x() - shape->low.x());
        if (!(length > 0 && length < 1))
            throw Problem(Exit::could_not, "-",
                          Core::tr("an outline is longer than nothing and shorter than a metre"),
                          Core::tr("type another length"));
        factor_ = length / read;
        show_size();
        follow();
    } catch (const Problem& problem) {
        say(plain_text(problem));
    }
}

void OutlineDialog::type_factor() {
    if (!chosen() || !factor_field_->isModified()) return;
    try {
        const double factor =
            parse_entry(factor_field_->text().toStdString(), Quantity::plain, session_.project().units);
        if (!(factor > 0 && factor < 1e6))
            throw Problem(Exit::could_not, "-", Core::tr("a factor is above nothing"),
                          Core::tr("type another"));
        factor_ = factor;
        show_size();
        follow();
    } catch (const Problem& problem) {
        say(plain_text(problem));
    }
}

void OutlineDialog::say(const QString& fault) {
    ++asked_;
    take_->setEnabled(false);
    points_.clear();
    preview_->show_points({});
    result_->setText(not_taken(fault));
}

void OutlineDialog::follow() {
    const DrawnShape* shape = chosen();
    if (!shape) return;
    take_->setEnabled(false);
    const double length = factor_ * 1e-3 * (shape->high - shape->low).maxCoeff();
    if (length > 1) return say(tr("it would be longer than a metre; type its length or a factor"));
    result_->setText(tr("Following the line…"));
    const TakeIn how{plan_, factor_, mirrored_->isChecked(), place_of_outline(session_.plan().body, plan_)};
    work_aside(
        this,
        [file = file_, shape, how] {
            Followed followed;
            try {
                followed.points = outline_from(*shape, how);
            } catch (const Problem& problem) {
                followed.fault = plain_text(problem);
            }
            return followed;
        },
        [this, asked = ++asked_](Followed followed) {
            if (asked != asked_) return;
            if (!followed.fault.isEmpty()) return say(followed.fault);
            points_ = std::move(followed.points);
            preview_->show_points(points_);
            result_->setText(
                tr("%n point(s), nowhere farther than %1 from the line.", nullptr, points_taken())
                    .arg(QString::fromStdString(
                        format(outline_tolerance, Quantity::length, UnitSystem::metric, {.decimals = 2}))));
            take_->setEnabled(true);
        });
}

void OutlineDialog::take() {
    try {
        session_.apply(set_outline(session_.document(), session_.car(), plan_, points_));
        accept();
    } catch (const Problem& problem) {
        result_->setText(not_taken(plain_text(problem)));
    }
}

} // namespace rampwright::ui
