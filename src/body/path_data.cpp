#include <rampwright/body/path_data.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numbers>
#include <string>

namespace rampwright {

namespace {

using Eigen::Vector2d;
using std::numbers::pi;

constexpr double largest_number = 1e7;

bool is_space(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f';
}

/// Reads along a text of numbers and letters.
class Reader {
public:
    explicit Reader(std::string_view text) : text_(text) {}

    [[noreturn]] void refuse(const std::string& wrong, const std::string& remedy) const {
        throw Problem(Exit::not_ours, "character " + std::to_string(at_ + 1), wrong, remedy);
    }

    void skip_spaces() {
        while (at_ < text_.size() && is_space(text_[at_]))
            ++at_;
    }
    void skip_separator() {
        skip_spaces();
        if (at_ < text_.size() && text_[at_] == ',') {
            ++at_;
            skip_spaces();
        }
    }
    bool at_end() const { return at_ >= text_.size(); }
    char peek() const { return at_end() ? '\0' : text_[at_]; }
    char take() { return text_[at_++]; }
    bool at_number() const {
        const char c = peek();
        return (c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.';
    }

    double number() {
        std::size_t start = at_;
        if (start < text_.size() && text_[start] == '+') ++start;
        const std::size_t digit =
            start + (start == at_ && start < text_.size() && text_[start] == '-' ? 1 : 0);
        const char first = digit < text_.size() ? text_[digit] : '\0';
        double value = 0;
        const char* end = text_.data() + text_.size();
        const auto [stop, error] = std::from_chars(text_.data() + start, end, value);
        // "inf" and "nan" are numbers to the library and none to a drawing.
        if (!((first >= '0' && first <= '9') || first == '.') || error == std::errc::invalid_argument)
            refuse(Core::tr("a number is missing"),
                   Core::tr("save the drawing again from the program that made it"));
        if (error != std::errc{} || !(std::abs(value) <= largest_number))
            refuse(Core::tr("a number is beyond all size"), Core::tr("draw the car at its own size"));
        at_ = static_cast<std::size_t>(stop - text_.data());
        skip_separator();
        return value;
    }
    /// Of an arc: a single 0 or 1, which need not be parted from what follows.
    bool flag() {
        if (peek() != '0' && peek() != '1')
            refuse(Core::tr("a flag of an arc is neither 0 nor 1"),
                   Core::tr("save the drawing again from the program that made it"));
        const bool on = take() == '1';
        skip_separator();
        return on;
    }

private:
    std::string_view text_;
    std::size_t at_ = 0;
};

double angle_between(const Vector2d& u, const Vector2d& v) {
    return std::atan2(u.x() * v.y() - u.y() * v.x(), u.dot(v));
}

/// Draws one line after the other.
class Pen {
public:
    explicit Pen(std::vector<DrawnLine>& lines) : lines_(lines) {}

    const Vector2d& at() const { return at_; }
    void move(const Vector2d& to) {
        finish(false);
        at_ = start_ = to;
    }
    void line(const Vector2d& to) { add({{at_, at_ + (to - at_) / 3, to + (at_ - to) / 3, to}, true, 0}); }
    void cubic(const Vector2d& one, const Vector2d& two, const Vector2d& to) {
        add({{at_, one, two, to}, false, 0});
    }
    void quadratic(const Vector2d& control, const Vector2d& to) {
        cubic(at_ + 2. / 3 * (control - at_), to + 2. / 3 * (control - to), to);
    }
    void arc(Vector2d radii, double turned, bool large, bool sweep, const Vector2d& to);
    void close() {
        line(start_);
        at_ = start_;
        finish(true);
    }
    void finish(bool closed) {
        if (!line_.pieces.empty()) {
            line_.closed = closed || line_.pieces.back().control[3] == line_.pieces.front().control[0];
            lines_.push_back(std::move(line_));
        }
        line_ = {};
    }

private:
    void add(OutlinePiece piece) {
        at_ = piece.control[3];
        const auto& c = piece.control;
        if (c[0] == c[3] && (piece.straight || (c[1] == c[0] && c[2] == c[0]))) return;
        if (c[0] == c[3]) {
            // A loop: as two halves, so that no piece has its ends in one place.
            const Vector2d a = (c[0] + c[1]) / 2, m = (c[1] + c[2]) / 2, b = (c[2] + c[3]) / 2;
            const Vector2d p = (a + m) / 2, q = (m + b) / 2, middle = (p + q) / 2;
            if (middle == c[0]) return;
            push({{c[0], a, p, middle}, false, 0});
            push({{middle, q, b, c[3]}, false, 0});
            return;
        }
        push(piece);
    }
    void push(OutlinePiece piece) {
        piece.from = static_cast<int>(line_.pieces.size());
        line_.pieces.push_back(piece);
    }

    std::vector<DrawnLine>& lines_;
    DrawnLine line_;
    Vector2d at_ = Vector2d::Zero(), start_ = Vector2d::Zero();
};

/// SVG 1.1, appendix F.6: from the ends of an arc to its centre, radii that are too small enlarged.
void Pen::arc(Vector2d radii, double turned, bool large, bool sweep, const Vector2d& to) {
    const Vector2d from = at_;
    if (from == to) return;
    radii = radii.cwiseAbs();
    if (!(radii.x() > 0 && radii.y() > 0)) return line(to);
    const double c = std::cos(turned), s = std::sin(turned);
    const auto from_axes = [&](const Vector2d& v) {
        return Vector2d(c * v.x() - s * v.y(), s * v.x() + c * v.y());
    };
    const Vector2d half = (from - to) / 2;
    const Vector2d p(c * half.x() + s * half.y(), -s * half.x() + c * half.y());
    const double over = p.cwiseQuotient(radii).squaredNorm();
    if (over > 1) radii *= std::sqrt(over);
    const Vector2d unit = p.cwiseQuotient(radii);
    const double length2 = unit.squaredNorm();
    if (!(length2 > 0)) return line(to); // radii so large that the arc is straight
    const double k = (large == sweep ? -1 : 1) * std::sqrt(std::max(0., (1 - length2) / length2));
    const Vector2d middle(k * unit.y(), -k * unit.x()); // of the unit circle
    const Vector2d centre = from_axes(middle.cwiseProduct(radii)) + (from + to) / 2;
    const Vector2d first = unit - middle, last = -unit - middle;
    double way = angle_between(first, last);
    if (!sweep && way > 0) way -= 2 * pi;
    if (sweep && way < 0) way += 2 * pi;
    const double begin = std::atan2(first.y(), first.x());
    const int count = std::max(1, static_cast<int>(std::ceil(std::abs(way) / (pi / 8) - 1e-9)));
    const double step = way / count, pull = 4. / 3 * std::tan(step / 4);
    const auto place = [&](double x, double y) {
        return Vector2d(centre + from_axes(Vector2d(x, y).cwiseProduct(radii)));
    };
    for (int i = 0; i < count; ++i) {
        const double a = begin + i * step, b = a + step;
        cubic(place(std::cos(a) - pull * std::sin(a), std::sin(a) + pull * std::cos(a)),
              place(std::cos(b) + pull * std::sin(b), std::sin(b) - pull * std::cos(b)),
              i + 1 == count ? to : place(std::cos(b), std::sin(b)));
    }
}

void read_commands(Reader& reader, Pen& pen) {
    const auto point = [&](bool relative) {
        const double x = reader.number(), y = reader.number();
        return relative ? Vector2d(pen.at() + Vector2d(x, y)) : Vector2d(x, y);
    };
    char command = '\0', before = '\0';
    Vector2d control = Vector2d::Zero(); // the last of the command before, for S and T
    bool drawing = false, after_close = false;
    reader.skip_spaces();
    while (!reader.at_end()) {
        if (!reader.at_number() || command == '\0' || command == 'z' || command == 'Z') {
            command = reader.peek();
            if (std::string_view("MmLlHhVvCcSsQqTtAaZz").find(command) == std::string_view::npos)
                reader.refuse(Core::tr("the path has a command that is none"),
                              Core::tr("save the drawing again from the program that made it"));
            if (!drawing && command != 'M' && command != 'm')
                reader.refuse(Core::tr("the path does not begin with a move"),
                              Core::tr("save the drawing again from the program that made it"));
            reader.take();
            reader.skip_spaces();
            drawing = true;
        }
        const bool relative = command >= 'a';
        const char kind = static_cast<char>(relative ? command - 'a' + 'A' : command);
        if (kind != 'M' && after_close) pen.move(pen.at());
        after_close = false;
        const Vector2d at = pen.at();
        Vector2d next_control = at;
        switch (kind) {
        case 'M':
            pen.move(point(relative));
            command = relative ? 'l' : 'L'; // further pairs are lines
            break;
        case 'L':
            pen.line(point(relative));
            break;
        case 'H':
            pen.line({reader.number() + (relative ? at.x() : 0), at.y()});
            break;
        case 'V':
            pen.line({at.x(), reader.number() + (relative ? at.y() : 0)});
            break;
        case 'C':
        case 'S': {
            const bool smooth_on = before == 'C' || before == 'S';
            const Vector2d one = kind == 'C' ? point(relative) : smooth_on ? Vector2d(2 * at - control) : at;
            next_control = point(relative);
            pen.cubic(one, next_control, point(relative));
            break;
        }
        case 'Q':
        case 'T': {
            const bool smooth_on = before == 'Q' || before == 'T';
            next_control = kind == 'Q' ? point(relative) : smooth_on ? Vector2d(2 * at - control) : at;
            pen.quadratic(next_control, point(relative));
            break;
        }
        case 'A': {
            const double rx = reader.number(), ry = reader.number(), turned = reader.number();
            const bool large = reader.flag(), sweep = reader.flag();
            pen.arc({rx, ry}, std::remainder(turned, 360.) * pi / 180, large, sweep, point(relative));
            break;
        }
        default:
            pen.close();
            after_close = true;
        }
        before = kind;
        control = next_control;
        reader.skip_spaces();
    }
    pen.finish(false);
}

} // namespace

std::vector<DrawnLine> read_path_data(std::string_view data) {
    std::vector<DrawnLine> lines;
    Reader reader(data);
    Pen pen(lines);
    read_commands(reader, pen);
    return lines;
}

std::vector<double> read_number_list(std::string_view text) {
    std::vector<double> numbers;
    Reader reader(text);
    reader.skip_spaces();
    while (!reader.at_end())
        numbers.push_back(reader.number());
    return numbers;
}

DrawnLine drawn_polyline(const std::vector<Vector2d>& points, bool closed) {
    std::vector<DrawnLine> lines;
    Pen pen(lines);
    for (std::size_t i = 0; i < points.size(); ++i)
        i == 0 ? pen.move(points[i]) : pen.line(points[i]);
    closed && !points.empty() ? pen.close() : pen.finish(false);
    return lines.empty() ? DrawnLine{} : lines.front();
}

DrawnLine drawn_rectangle(const Vector2d& low, const Vector2d& size, const Vector2d& radii) {
    const Vector2d high = low + size;
    const double rx = radii.x(), ry = radii.y();
    if (!(rx > 0 && ry > 0))
        return drawn_polyline({low, {high.x(), low.y()}, high, {low.x(), high.y()}}, true);
    std::vector<DrawnLine> lines;
    Pen pen(lines);
    pen.move({low.x() + rx, low.y()});
    pen.line({high.x() - rx, low.y()});
    pen.arc(radii, 0, false, true, {high.x(), low.y() + ry});
    pen.line({high.x(), high.y() - ry});
    pen.arc(radii, 0, false, true, {high.x() - rx, high.y()});
    pen.line({low.x() + rx, high.y()});
    pen.arc(radii, 0, false, true, {low.x(), high.y() - ry});
    pen.line({low.x(), low.y() + ry});
    pen.arc(radii, 0, false, true, {low.x() + rx, low.y()});
    pen.close();
    return lines.empty() ? DrawnLine{} : lines.front();
}

DrawnLine drawn_ellipse(const Vector2d& centre, const Vector2d& radii) {
    std::vector<DrawnLine> lines;
    Pen pen(lines);
    const Vector2d across(radii.x(), 0);
    pen.move(centre + across);
    pen.arc(radii, 0, false, true, centre - across);
    pen.arc(radii, 0, false, true, centre + across);
    pen.close();
    return lines.empty() ? DrawnLine{} : lines.front();
}

} // namespace rampwright
