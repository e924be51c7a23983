#include "panels/scale_panel.hpp"

#include "fields/quiet_combo_box.hpp"
#include "look/labels.hpp"
#include "look/theme.hpp"
#include "panels/value_slip.hpp"
#include "session/follow.hpp"
#include "text/said.hpp"

#include <rampwright/materials/materials.hpp>
#include <rampwright/rules/scale_words.hpp>

#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

/// The materials that are rolled into pellets.
std::vector<const Material*> putties() {
    std::vector<const Material*> list;
    for (const char* id : {"tungsten-putty", "modelling-clay", "epoxy-putty"})
        if (const Material* material = find_material(id)) list.push_back(material);
    return list;
}

} // namespace

ScaleFields::ScaleFields(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), reads_(new QuietComboBox(this)), putty_(new QuietComboBox(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(new ValueSlip(session_, scale_fields(), this));
    auto* form = new QFormLayout;
    form->setLabelAlignment(Qt::AlignLeft);
    reads_->setObjectName(QStringLiteral("scale.reads"));
    reads_->addItems({tr("rounds to the nearest"), tr("cuts off")});
    reads_->setWhatsThis(tr("Most scales round to the nearest step; some cut off what is less than a step."));
    putty_->setObjectName(QStringLiteral("tools.putty"));
    putty_->setWhatsThis(
        tr("The putty you trim with: how much of it weighs a tenth follows from its density."));
    for (const Material* material : putties())
        putty_->addItem(said(material->name));
    for (QComboBox* each : {reads_, putty_})
        each->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    form->addRow(tr("The scale"), reads_);
    form->addRow(tr("Putty"), putty_);
    column->addLayout(form);
    connect(reads_, &QComboBox::activated, this, [this](int index) {
        session_.apply(set_value(session_.document(), "/scale/reads", index == 0 ? "nearest" : "down",
                                 tr("Set how the scale reads").toStdString()));
    });
    connect(putty_, &QComboBox::activated, this, [this](int index) {
        session_.apply(set_value(session_.document(), "/tools/putty",
                                 putties()[static_cast<std::size_t>(index)]->id,
                                 tr("Choose the putty").toStdString()));
    });
    connect(&session_, &Session::changed, this, &ScaleFields::refresh);
    refresh();
}

void ScaleFields::refresh() {
    reads_->setCurrentIndex(session_.project().scale.rounds_down ? 1 : 0);
    const Material* chosen = find_material(session_.project().tools.putty);
    const auto list = putties();
    for (std::size_t i = 0; i < list.size(); ++i)
        if (list[i] == chosen) putty_->setCurrentIndex(static_cast<int>(i));
}

ScaleWords::ScaleWords(Session& session, const QString& name, QWidget* parent)
    : QWidget(parent), session_(session), words_(new QLabel(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(3);
    auto* title = heading_label(tr("On the scales"), this);
    column->addWidget(title);
    words_->setObjectName(name);
    words_->setWordWrap(true);
    words_->setFont(text_font(0.92));
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    column->addWidget(words_);
    follow_while_seen(*this, session_, [this] { refresh(); });
    refresh();
}

void ScaleWords::refresh() {
    QStringList lines;
    if (const Figures* figures = session_.figures())
        for (const std::string& line : scale_words(session_.project(), *figures))
            lines << QString::fromStdString(line);
    words_->setText(lines.isEmpty() ? tr("The rules set no greatest mass.")
                                    : lines.join(QStringLiteral("\n\n")));
}

} // namespace rampwright::ui
