#include "explain/why_popover.hpp"

#include "look/theme.hpp"
#include "window/help_window.hpp"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>

#include <algorithm>

namespace rampwright::ui {
namespace {

constexpr int popover_width = 380;

std::optional<Explanation> find_explanation(const Session& session, const std::string& code) {
    const Figures* figures = session.figures();
    if (!figures) return {};
    try {
        for (Explanation& each : explain(session.project(), session.car(), *figures))
            if (each.code == code) return std::move(each);
    } catch (const Problem&) {
        // What cannot be computed has no explanation either; the panel says why.
    }
    return {};
}

} // namespace

WhyPopover::WhyPopover(Session& session, const std::string& code, QWidget* parent)
    : QFrame(parent, Qt::Popup), explanation_(find_explanation(session, code)) {
    setObjectName(QStringLiteral("why"));
    setAttribute(Qt::WA_DeleteOnClose);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setFrameShape(QFrame::StyledPanel);
    setFixedWidth(popover_width);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 14, 16, 12);
    column->setSpacing(8);
    const auto label = [&](const char* name, double size, QPalette::ColorRole ink) {
        auto* made = new QLabel(this);
        made->setObjectName(QLatin1String(name));
        made->setFont(text_font(size));
        made->setWordWrap(true);
        made->setForegroundRole(ink);
        made->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        column->addWidget(made);
        return made;
    };
    sentence_ = label("why.sentence", 1.1, QPalette::Text);
    law_ = label("why.law", 1.0, QPalette::PlaceholderText);
    formula_ = label("why.formula", 1.0, QPalette::Text);
    source_ = label("why.source", 0.95, QPalette::PlaceholderText);
    auto* buttons = new QHBoxLayout;
    more_ = new QPushButton(tr("Show the &formula"), this);
    more_->setObjectName(QStringLiteral("why.more"));
    read_ = new QPushButton(tr("&Read the model"), this);
    read_->setObjectName(QStringLiteral("why.read"));
    buttons->addWidget(more_);
    buttons->addWidget(read_);
    buttons->addStretch(1);
    column->addLayout(buttons);
    for (QLabel* each : {law_, formula_, source_})
        each->hide();
    if (explanation_) {
        sentence_->setText(QString::fromStdString(explanation_->plain));
        more_->setFocus();
    } else {
        sentence_->setText(tr("This figure has no value now, so there is nothing to explain."));
        more_->hide();
        read_->hide();
    }
    setAccessibleName(sentence_->text());
    connect(more_, &QPushButton::clicked, this, &WhyPopover::show_formula);
    connect(read_, &QPushButton::clicked, this, [this] {
        const QString section = QString::fromStdString(explanation_->section);
        close();
        HelpWindow::show_page(QStringLiteral("model"), section);
    });
}

void WhyPopover::show_formula() {
    law_->setText(QString::fromStdString(explanation_->law));
    const QString formula = QString::fromStdString(explanation_->formula);
    formula_->setText(formula);
    source_->setText(tr("Source: %1").arg(QString::fromStdString(explanation_->source)));
    law_->show();
    formula_->setVisible(!formula.isEmpty());
    source_->show();
    more_->hide();
    read_->setFocus();
    fit();
}

void WhyPopover::show_below(QWidget& place) {
    place_ = &place;
    show();
    fit();
}

/// As high as its text, below the place where there is room, above it otherwise, inside the screen.
void WhyPopover::fit() {
    layout()->activate();
    resize(popover_width, layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(popover_width)
                                                        : sizeHint().height());
    if (!place_) return;
    const QPoint below = place_->mapToGlobal(QPoint(0, place_->height() + 4));
    const QRect room = place_->screen()->availableGeometry();
    int x =
        std::clamp(below.x() - popover_width / 2, room.left(), std::max(room.left(), room.right() - width()));
    int y = below.y();
    if (y + height() > room.bottom()) y = place_->mapToGlobal(QPoint(0, 0)).y() - height() - 4;
    move(x, std::max(room.top(), y));
}

void WhyPopover::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        close();
    else
        QFrame::keyPressEvent(event);
}

} // namespace rampwright::ui
