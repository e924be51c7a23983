#include "trace/join_lines.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <utility>

namespace rampwright::ui {
namespace {

using Eigen::Vector2d;

Vector2d& begin_of(DrawnLine& line) {
    return line.pieces.front().control[0];
}
Vector2d& end_of(DrawnLine& line) {
    return line.pieces.back().control[3];
}

void turn_round(DrawnLine& line) {
    std::reverse(line.pieces.begin(), line.pieces.end());
    for (OutlinePiece& piece : line.pieces)
        std::reverse(piece.control.begin(), piece.control.end());
}

/// The free ends by the place they lie at, so that a drawing of many thousand lines is joined at once.
class Ends {
public:
    Ends(std::vector<NamedLine>& lines, double within) : lines_(lines), within_(within) {
        for (std::size_t n = 0; n < lines.size(); ++n)
            if (loose(n))
                for (const Vector2d& at : {begin_of(lines[n].line), end_of(lines[n].line)})
                    cells_[cell(at)].push_back(n);
    }

    /// The nearest line with an end here.
    std::optional<std::size_t> at(const Vector2d& place) {
        std::optional<std::size_t> found;
        double nearest = within_;
        const Cell middle = cell(place);
        for (double across : {-1., 0., 1.})
            for (double up : {-1., 0., 1.}) {
                const auto here = cells_.find({middle.first + across, middle.second + up});
                if (here == cells_.end()) continue;
                for (const std::size_t n : here->second) {
                    if (!loose(n)) continue;
                    DrawnLine& line = lines_[n].line;
                    const double off =
                        std::min((begin_of(line) - place).norm(), (end_of(line) - place).norm());
                    if (off >= nearest) continue;
                    nearest = off;
                    found = n;
                }
            }
        return found;
    }

private:
    using Cell = std::pair<double, double>;
    Cell cell(const Vector2d& at) const {
        return {std::floor(at.x() / within_), std::floor(at.y() / within_)};
    }
    bool loose(std::size_t n) const { return !lines_[n].line.pieces.empty() && !lines_[n].line.closed; }

    std::vector<NamedLine>& lines_;
    double within_;
    std::map<Cell, std::vector<std::size_t>> cells_;
};

/// Goes on from the line's end through every line that meets it, until it closes or nothing does.
void follow(NamedLine& made, std::vector<NamedLine>& lines, Ends& ends, double within) {
    DrawnLine& line = made.line;
    while (true) {
        close_where_met(line, within);
        if (line.closed) return;
        const auto next = ends.at(end_of(line));
        if (!next) return;
        DrawnLine more = std::exchange(lines[*next].line, {});
        if ((end_of(more) - end_of(line)).norm() < (begin_of(more) - end_of(line)).norm()) turn_round(more);
        begin_of(more) = end_of(line);
        line.pieces.insert(line.pieces.end(), more.pieces.begin(), more.pieces.end());
    }
}

} // namespace

void close_where_met(DrawnLine& line, double within) {
    if (line.closed || line.pieces.size() < 2 || (end_of(line) - begin_of(line)).norm() >= within) return;
    end_of(line) = begin_of(line);
    line.closed = true;
}

std::vector<NamedLine> join_lines(std::vector<NamedLine> lines, double within) {
    Ends ends(lines, within);
    std::vector<NamedLine> joined;
    for (NamedLine& each : lines) {
        if (each.line.pieces.empty()) continue;
        NamedLine made{std::exchange(each.line, {}), each.name};
        if (!made.line.closed) {
            follow(made, lines, ends, within);
            if (!made.line.closed) {
                turn_round(made.line);
                follow(made, lines, ends, within);
            }
            int count = 0;
            for (OutlinePiece& piece : made.line.pieces)
                piece.from = count++;
        }
        joined.push_back(std::move(made));
    }
    return joined;
}

} // namespace rampwright::ui
