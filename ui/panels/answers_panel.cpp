#include "panels/answers_panel.hpp"

#include "explain/why_button.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"

#include <rampwright/results/in_units.hpp>

#include <QGridLayout>
#include <QLabel>

#include <algorithm>

namespace rampwright::ui {
namespace {

QLabel* make_label(QWidget* parent, const char* name, double size, bool bold) {
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setFont(text_font(size, bold));
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setFocusPolicy(Qt::NoFocus);
    return label;
}

} // namespace

AnswersPanel::AnswersPanel(Session& session, QWidget* parent) : QFrame(parent), session_(session) {
    setObjectName(QStringLiteral("answers"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setFrameShape(QFrame::StyledPanel);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(14, 10, 14, 10);
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(3);
    grid->setColumnStretch(1, 1);

    auto* caption = new QLabel(tr("Heat time"), this);
    caption->setForegroundRole(QPalette::PlaceholderText);
    time_ = make_label(this, "answer.time", 1.75, true);
    time_->setToolTip(tr(
        "How long the car takes from the start line to the finish line, and how sure that is: two times in "
        "three it will be within the second number of the first."));
    time_change_ = make_label(this, "answer.time.change", 1.0, true);
    time_change_->setToolTip(tr("The change since you took hold, or since the last step. Less is faster."));
    grid->addWidget(caption, 0, 0);
    grid->addWidget(time_change_, 0, 2, Qt::AlignRight);
    grid->addWidget(time_, 1, 0, 1, 3);
    grid->addWidget(new WhyButton(session_, "heat.time_s", caption->text(), this), 1, 3);

    mass_ = add_row(QStringLiteral("answer.mass"), "mass_g", tr("Mass"),
                    tr("What the whole car weighs, wheels and axles included."));
    left_ = add_row(QStringLiteral("answer.left"), "scale.margin_g", tr("To the limit"),
                    tr("What may still be added before the race's scale shows more than the rules allow."));
    // "1.1 g too much" needs the room of the change, which is the mass's.
    grid->removeWidget(left_.value);
    grid->removeWidget(left_.change);
    left_.change->hide();
    grid->addWidget(left_.value, grid->rowCount() - 1, 1, 1, 2);
    balance_ = add_row(QStringLiteral("answer.balance"), "balance_ahead_of_rear_axle_mm", tr("Balance point"),
                       tr("Where the car would balance on a knife edge, ahead of the rear axle. Further back "
                          "is faster, until the front gets too light."));
    front_ = add_row(QStringLiteral("answer.front_load"), "front_load_g", tr("Front load"),
                     tr("What a scale under the front wheels shows on a level table. Too little, and the "
                        "front no longer keeps the car straight."));

    finding_ = make_label(this, "answer.finding", 1.0, false);
    finding_->setWordWrap(true);
    finding_->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    finding_->setTextFormat(Qt::RichText);
    connect(finding_, &QLabel::linkActivated, this, [this] { Q_EMIT finding_chosen(0); });
    grid->addWidget(finding_, grid->rowCount(), 0, 1, 4);

    connect(&session_, &Session::changed, this, &AnswersPanel::refresh);
    connect(&session_, &Session::car_chosen, this, &AnswersPanel::refresh);
    refresh();
}

AnswersPanel::Row AnswersPanel::add_row(const QString& object_name, const char* code, const QString& caption,
                                        const QString& why) {
    auto* grid = static_cast<QGridLayout*>(layout());
    const int row = grid->rowCount();
    auto* label = new QLabel(caption, this);
    label->setForegroundRole(QPalette::PlaceholderText);
    // A caption in a language of long words takes two lines; a short one never does.
    constexpr int widest = 110;
    label->setWordWrap(true);
    label->setMinimumWidth(std::min(widest, label->fontMetrics().horizontalAdvance(caption) + 2));
    Row made;
    made.value = make_label(this, "", 1.1, true);
    made.value->setObjectName(object_name);
    made.change = make_label(this, "", 0.95, false);
    made.change->setObjectName(object_name + QStringLiteral(".change"));
    for (QLabel* each : {label, made.value}) {
        each->setToolTip(why);
        each->setWhatsThis(why);
    }
    grid->addWidget(label, row, 0);
    grid->addWidget(made.value, row, 1);
    grid->addWidget(made.change, row, 2, Qt::AlignRight);
    grid->addWidget(new WhyButton(session_, code, caption, this), row, 3);
    made.value->setProperty("caption", caption);
    return made;
}

void AnswersPanel::show(const Row& row, const QString& caption, const QString& value, const QString& change) {
    row.value->setText(value);
    row.value->setAccessibleName(tr("%1: %2").arg(caption, value));
    row.change->setText(change);
}

void AnswersPanel::refresh() {
    const auto units = session_.project().units;
    const Figures* now = session_.figures();
    const Figures* before = session_.figures_before();
    const auto caption = [](const Row& row) { return row.value->property("caption").toString(); };
    if (!now) {
        const QString none = QStringLiteral("–");
        time_->setText(none);
        time_change_->clear();
        for (const Row* row : {&mass_, &left_, &balance_, &front_})
            show(*row, caption(*row), none, {});
        if (const Problem* problem = session_.problem())
            finding_->setText(problem_text(*problem).toHtmlEscaped());
        return;
    }
    const auto rows = table_rows(*now, units);
    time_->setText(row_text(rows, "heat.time_s"));
    time_->setAccessibleName(tr("Heat time: %1").arg(time_->text()));
    time_change_->setText(before && before->heat.time && now->heat.time
                              ? heat_change_text(*now->heat.time - *before->heat.time, units)
                              : QString());

    const auto change = [&](double Figures::*member, Quantity quantity) {
        return before ? change_text(now->*member - before->*member, quantity, units) : QString();
    };
    show(mass_, caption(mass_), row_text(rows, "mass_g"), change(&Figures::mass, Quantity::mass));
    const QString left = mass_left_text(*now, units);
    show(left_, caption(left_), left.isEmpty() ? tr("no limit set") : left, {});
    show(balance_, caption(balance_), row_text(rows, "balance_ahead_of_rear_axle_mm"),
         change(&Figures::balance_ahead_of_rear_axle, Quantity::length));
    show(front_, caption(front_), row_text(rows, "front_load_g"),
         change(&Figures::front_load, Quantity::mass));
    if (now->findings.empty()) {
        finding_->setText(tr("Nothing to put right."));
    } else {
        const auto& first = now->findings.front();
        finding_->setText(
            QStringLiteral("<a href=\"0\">%1</a>: %2")
                .arg(severity_word(first.severity).toHtmlEscaped(),
                     QString::fromStdString(text_of(first, session_.project().units)).toHtmlEscaped()));
    }
}

} // namespace rampwright::ui
