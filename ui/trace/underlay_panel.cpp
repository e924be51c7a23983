#include "trace/underlay_panel.hpp"

#include "drawing/car_canvas.hpp"
#include "fields/quiet_combo_box.hpp"
#include "fields/value_editor.hpp"
#include "text/figure_text.hpp"
#include "trace/measure_dialog.hpp"
#include "trace/picture_store.hpp"
#include "trace/trace.hpp"

#include <QCheckBox>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>

#include <cmath>
#include <utility>

namespace rampwright::ui {

UnderlayPanel::UnderlayPanel(Session& session, CarCanvas& canvas, QWidget* parent)
    : QWidget(parent), session_(session), canvas_(canvas) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    const auto button = [this](const QString& text, const char* name, const QString& why) {
        auto* made = new QPushButton(text, this);
        made->setObjectName(QLatin1String(name));
        made->setToolTip(why);
        made->setWhatsThis(why);
        return made;
    };
    auto* which = new QFormLayout;
    which->setLabelAlignment(Qt::AlignLeft);
    view_ = new QuietComboBox(this);
    view_->setObjectName(QStringLiteral("trace.view"));
    view_->addItems({tr("side view"), tr("top view")});
    view_->setWhatsThis(tr("Which view's picture the fields below are about."));
    which->addRow(tr("&In the"), view_);
    column->addLayout(which);
    auto* lay = button(tr("Lay a Picture…"), "trace.lay",
                       tr("A photo, a scan or a sketch under the drawing, to trace. It can be dropped on the "
                          "drawing, too. It is never printed."));
    auto* read = button(tr("Outline from SVG…"), "trace.outline",
                        tr("Takes a closed line of an SVG drawing in as the outline, at its own size."));
    auto* bring = new QHBoxLayout;
    bring->addWidget(lay);
    bring->addWidget(read);
    column->addLayout(bring);

    form_ = new QWidget(this);
    auto* rows = new QVBoxLayout(form_);
    rows->setContentsMargins(0, 0, 0, 0);
    name_ = new QLabel(form_);
    name_->setObjectName(QStringLiteral("trace.name"));
    name_->setWordWrap(true);
    rows->addWidget(name_);
    fault_ = new QLabel(form_);
    fault_->setObjectName(QStringLiteral("trace.fault"));
    fault_->setWordWrap(true);
    rows->addWidget(fault_);
    find_ = button(tr("Find It Again…"), "trace.find",
                   tr("Chooses the picture's file anew; scale and place stay as they are."));
    rows->addWidget(find_);
    auto* hold = new QHBoxLayout;
    scale_ = button(tr("&Scale by Two Points"), "trace.scale",
                    tr("Click two places on the picture and type how far apart they are."));
    move_ = button(tr("Mo&ve"), "trace.move", tr("While it is on, the picture is dragged, not the car."));
    for (QPushButton* each : {scale_, move_}) {
        each->setCheckable(true);
        hold->addWidget(each);
    }
    rows->addLayout(hold);
    auto* fields = new QFormLayout;
    fields->setLabelAlignment(Qt::AlignLeft);
    width_ = new ValueEditor(session_, form_);
    width_->field()->setObjectName(QStringLiteral("trace.width"));
    width_->field()->setAccessibleName(tr("Width of the picture"));
    fields->addRow(tr("Width"), width_);
    turned_ = new ValueEditor(session_, form_);
    turned_->field()->setObjectName(QStringLiteral("trace.turned"));
    turned_->field()->setAccessibleName(tr("How far the picture is turned, counter-clockwise"));
    fields->addRow(tr("Turned"), turned_);
    opacity_ = new QSlider(Qt::Horizontal, form_);
    opacity_->setObjectName(QStringLiteral("trace.opacity"));
    opacity_->setAccessibleName(tr("How strongly the picture shows"));
    opacity_->setRange(5, 100);
    opacity_->setPageStep(10);
    fields->addRow(tr("Strength"), opacity_);
    rows->addLayout(fields);
    auto* marks = new QHBoxLayout;
    mirrored_ = new QCheckBox(tr("M&irrored"), form_);
    mirrored_->setObjectName(QStringLiteral("trace.mirrored"));
    shown_ = new QCheckBox(tr("Sho&wn"), form_);
    shown_->setObjectName(QStringLiteral("trace.shown"));
    remove_ = button(tr("Remove"), "trace.remove", tr("Takes the picture away; its file stays where it is."));
    marks->addWidget(mirrored_);
    marks->addWidget(shown_);
    marks->addStretch(1);
    marks->addWidget(remove_);
    rows->addLayout(marks);
    column->addWidget(form_);

    connect(view_, &QComboBox::currentIndexChanged, this, &UnderlayPanel::refresh);
    connect(lay, &QPushButton::clicked, this, [this] { say(lay_picture(*window(), session_, plan())); });
    connect(read, &QPushButton::clicked, this, [this] { say(read_outline(*window(), session_, plan())); });
    connect(find_, &QPushButton::clicked, this, [this] { say(find_picture(*window(), session_, plan())); });
    for (const auto& [each, tool] : {std::pair{scale_, Tool::measure_picture}, {move_, Tool::move_picture}})
        connect(each, &QPushButton::clicked, this, [this, t = tool](bool on) {
            canvas_.set_tool(on ? t : Tool::pick);
            show_tool(canvas_.tool());
            if (canvas_.tool() != Tool::pick) canvas_.setFocus();
        });
    connect(opacity_, &QSlider::valueChanged, this, [this](int percent) {
        change(
            tr("Strength of picture"), [percent](Underlay& u) { u.opacity = percent / 100.; },
            QStringLiteral("opacity %1 %2").arg(session_.car()).arg(plan()));
    });
    connect(mirrored_, &QCheckBox::clicked, this,
            [this](bool on) { change(tr("Mirror picture"), [on](Underlay& u) { u.mirrored = on; }); });
    connect(shown_, &QCheckBox::clicked, this, [this](bool on) {
        change(on ? tr("Show picture") : tr("Hide picture"), [on](Underlay& u) { u.hidden = !on; });
    });
    connect(remove_, &QPushButton::clicked, this, [this] {
        canvas_.set_tool(Tool::pick);
        try {
            session_.apply(remove_underlay(session_.document(), session_.car(), plan()));
        } catch (const Problem& problem) {
            say(plain_text(problem));
        }
    });
    connect(&canvas_, &CarCanvas::tool_changed, this, &UnderlayPanel::show_tool);
    connect(&canvas_, &CarCanvas::picture_measured, this, &UnderlayPanel::measure);
    connect(&canvas_.pictures(), &PictureStore::changed, this, &UnderlayPanel::refresh);
    connect(&session_, &Session::changed, this, &UnderlayPanel::refresh);
    connect(&session_, &Session::car_chosen, this, &UnderlayPanel::refresh);
    refresh();
}

void UnderlayPanel::showEvent(QShowEvent* event) {
    canvas_.pictures().try_again();
    QWidget::showEvent(event);
    refresh();
}

bool UnderlayPanel::plan() const {
    return view_->currentIndex() == 1;
}

const std::optional<Underlay>& UnderlayPanel::underlay() const {
    return session_.plan().underlays[plan() ? 1 : 0];
}

void UnderlayPanel::say(const QString& text) {
    if (!text.isEmpty()) Q_EMIT canvas_.hint(text);
}

void UnderlayPanel::change(const QString& name, const std::function<void(Underlay&)>& how,
                           const QString& merge) {
    if (!underlay()) return;
    Underlay changed = *underlay();
    how(changed);
    try {
        session_.apply(set_underlay(session_.document(), session_.car(), plan(), changed, name.toStdString()),
                       merge);
    } catch (const Problem& problem) {
        say(plain_text(problem));
    }
}

void UnderlayPanel::measure(bool plan, const QPointF& one, const QPointF& other) {
    MeasureDialog dialog(QLineF(one, other).length(), session_.project().units, window());
    if (dialog.exec() != QDialog::Accepted) return;
    view_->setCurrentIndex(plan ? 1 : 0);
    const auto& present = underlay();
    if (!present) return;
    try {
        const Underlay scaled = scaled_underlay(*present, {one.x(), one.y()}, {other.x(), other.y()},
                                                dialog.distance(), dialog.level());
        session_.apply(set_underlay(session_.document(), session_.car(), plan, scaled,
                                    tr("Scale picture").toStdString()));
        say(tr("The picture is %1 wide now.")
                .arg(quantity_text(scaled.width, Quantity::length, session_.project().units)));
    } catch (const Problem& problem) {
        say(plain_text(problem));
    }
}

void UnderlayPanel::show_tool(Tool tool) {
    scale_->setChecked(tool == Tool::measure_picture);
    move_->setChecked(tool == Tool::move_picture);
}

void UnderlayPanel::bind_fields() {
    const bool top = plan();
    const std::string id = "underlay/" + std::to_string(session_.car()) + (top ? "/top/" : "/side/");
    // A field may ask once more after an undo took the picture away.
    const auto now = [this, top] { return session_.plan().underlays[top ? 1 : 0].value_or(Underlay{}); };
    const auto write = [this, top, now](const QString& name, double Underlay::*member) {
        return [this, top, now, name, member](double value) {
            Underlay changed = now();
            changed.*member = value;
            return set_underlay(session_.document(), session_.car(), top, changed, name.toStdString());
        };
    };
    width_->field()->bind(PlanValue{id + "width", Quantity::length, [now] { return now().width; },
                                    write(tr("Width of picture"), &Underlay::width)});
    turned_->field()->bind(PlanValue{id + "turned", Quantity::angle, [now] { return now().turned; },
                                     write(tr("Turn picture"), &Underlay::turned)});
}

void UnderlayPanel::refresh() {
    const auto& present = underlay();
    form_->setVisible(present.has_value());
    if (!present) {
        width_->field()->unbind();
        turned_->field()->unbind();
        return;
    }
    // What nobody sees is not sent for.
    const bool seen = isVisible();
    const QString path = QString::fromStdString(present->picture);
    const PictureStore::Picture picture = seen ? canvas_.pictures().picture(path) : PictureStore::Picture{};
    name_->setText(seen && !picture.read ? tr("Reading %1…").arg(QFileInfo(path).fileName())
                                         : QFileInfo(path).fileName());
    name_->setToolTip(path);
    fault_->setText(
        picture.fault.isEmpty()
            ? QString()
            : tr("%1. Its scale and place are kept: put it back, or find it again.").arg(picture.fault));
    fault_->setVisible(!picture.fault.isEmpty());
    find_->setVisible(!picture.fault.isEmpty());
    const bool there = !picture.image.isNull() && !present->hidden;
    scale_->setEnabled(there);
    move_->setEnabled(there);
    {
        const QSignalBlocker blocker(opacity_);
        opacity_->setValue(static_cast<int>(std::lround(100 * present->opacity)));
    }
    mirrored_->setChecked(present->mirrored);
    shown_->setChecked(!present->hidden);
    bind_fields();
}

} // namespace rampwright::ui
