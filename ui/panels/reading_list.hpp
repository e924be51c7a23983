#pragma once

#include "session/session.hpp"

#include <QWidget>

class QGridLayout;
class QLabel;
class QLineEdit;

namespace rampwright::ui {

/// Several readings of one weighing: typed one after the other, each can be taken back.
class ReadingList : public QWidget {
    Q_OBJECT

public:
    /// @param what "whole", "front" or "rear".
    ReadingList(Session& session, std::vector<double> Readings::*member, const QString& what,
                const QString& guide, QWidget* parent = nullptr);

private:
    void add();
    void take_back(std::size_t index);
    void apply(const Readings& readings);
    void refuse(const Problem& problem);
    void refresh();

    Session& session_;
    std::vector<double> Readings::*member_;
    QString what_;
    QLineEdit* entry_;
    QWidget* chips_;
    QGridLayout* row_;
    QLabel *mean_, *fault_;
};

} // namespace rampwright::ui
