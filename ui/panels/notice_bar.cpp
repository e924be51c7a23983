#include "panels/notice_bar.hpp"

#include "look/theme.hpp"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>
#include <utility>

namespace rampwright::ui {

NoticeBar::NoticeBar(QWidget* parent) : QFrame(parent), text_(new QLabel(this)), buttons_(new QHBoxLayout) {
    setObjectName(QStringLiteral("notice"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    text_->setObjectName(QStringLiteral("notice.text"));
    text_->setForegroundRole(QPalette::ToolTipText);
    text_->setWordWrap(true);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(14, 6, 8, 6);
    row->addWidget(text_, 1);
    row->addLayout(buttons_);
    hide();
}

void NoticeBar::tell(const QString& name, const QString& text, std::vector<Answer> answers) {
    Notice notice{name, text, std::move(answers)};
    const auto same = std::find_if(notices_.begin(), notices_.end(),
                                   [&](const Notice& waiting) { return waiting.name == name; });
    if (same != notices_.end())
        *same = std::move(notice);
    else
        notices_.push_back(std::move(notice));
    show_first();
}

void NoticeBar::drop(const QString& name) {
    const auto gone = std::remove_if(notices_.begin(), notices_.end(),
                                     [&](const Notice& waiting) { return waiting.name == name; });
    notices_.erase(gone, notices_.end());
    show_first();
}

void NoticeBar::show_first() {
    while (QLayoutItem* item = buttons_->takeAt(0)) {
        // It may be the button whose click is being handled.
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    setVisible(!notices_.empty());
    if (notices_.empty()) return;
    const Notice& first = notices_.front();
    text_->setText(first.text);
    for (std::size_t i = 0; i < first.answers.size(); ++i) {
        auto* button = new QPushButton(first.answers[i].text, this);
        button->setObjectName(QStringLiteral("notice.answer.%1").arg(i));
        buttons_->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, name = first.name, act = first.answers[i].act] {
            drop(name);
            if (act) act();
        });
    }
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

} // namespace rampwright::ui
