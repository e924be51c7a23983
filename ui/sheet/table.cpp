#include "sheet/table.hpp"

#include <algorithm>

namespace rampwright::ui::paper {
namespace {

constexpr double pad_across = 1.2, pad_down = 0.75, box_side = 3.0;
/// More room where a column's right edge meets the next one's left: their words would run together.
constexpr double meeting = 2.6;

struct Setting {
    const Table& table;
    std::vector<double> left, width; ///< of the columns' words, mm
    double step = 0;                 ///< from line to line
};

TextStyle style_of(const Table& table, bool bold) {
    return {table.style.points, bold || table.style.bold};
}

/// The longest word of a column, mm, so that none is broken; what is longer than a name ever is counts no
/// more.
double longest_word(const Table& table, std::size_t column) {
    constexpr double most = 38;
    double longest = 0;
    const auto look = [&](const QString& text, bool bold) {
        for (const QString& word : text.simplified().split(QLatin1Char(' ')))
            if (const double width = width_of(word, style_of(table, bold)); width <= most)
                longest = std::max(longest, width);
    };
    look(table.columns[column].title, true);
    for (const std::vector<Cell>& row : table.rows)
        if (column < row.size() && row[column].kind == Cell::Kind::text)
            look(row[column].text, row[column].bold);
    return longest;
}

/// Widths of the columns with their padding: as asked, but none narrower than its longest word as long as
/// those that share what is left have theirs.
std::vector<double> share_widths(const Flow& flow, const Table& table, const std::vector<double>& apart) {
    constexpr double hair = 0.01;
    const std::size_t count = table.columns.size();
    std::vector<double> least(count), widths(count, 0);
    for (std::size_t i = 0; i < count; ++i)
        least[i] = longest_word(table, i) + apart[i] + pad_across + hair;
    const auto share = [&](bool whole_words) {
        double room = flow.body().width(), shares = 0;
        std::vector<bool> set(count, false);
        for (std::size_t i = 0; i < count; ++i) {
            const double asked = table.columns[i].width;
            if (asked > 0) {
                widths[i] = whole_words ? std::max(asked, least[i]) : asked;
                room -= widths[i];
                set[i] = true;
            } else {
                shares -= asked;
            }
        }
        for (bool again = whole_words; again;) {
            again = false;
            for (std::size_t i = 0; i < count; ++i)
                if (!set[i] && -table.columns[i].width / shares * room < least[i]) {
                    widths[i] = least[i];
                    room -= least[i];
                    shares += table.columns[i].width;
                    set[i] = again = true;
                }
        }
        for (std::size_t i = 0; i < count; ++i)
            if (!set[i]) widths[i] = -table.columns[i].width / shares * room;
        return room >= -hair;
    };
    if (!share(true)) share(false);
    return widths;
}

Setting set_columns(const Flow& flow, const Table& table) {
    Setting setting{table, {}, {}, leading_of(table.style)};
    std::vector<double> apart;
    Align before = Align::left;
    for (const Column& column : table.columns) {
        apart.push_back(pad_across + (before == Align::right && column.align != Align::right ? meeting : 0));
        before = column.align;
    }
    const std::vector<double> widths = share_widths(flow, table, apart);
    double x = flow.body().left();
    for (std::size_t i = 0; i < widths.size(); ++i) {
        setting.left.push_back(x + apart[i]);
        setting.width.push_back(widths[i] - apart[i] - pad_across);
        x += widths[i];
    }
    return setting;
}

using Lines = std::vector<QStringList>; ///< by column

Lines break_row(const Setting& setting, const std::vector<Cell>& row) {
    Lines lines;
    for (std::size_t i = 0; i < row.size(); ++i)
        lines.push_back(row[i].kind == Cell::Kind::text && !row[i].text.isEmpty()
                            ? wrapped(row[i].text, style_of(setting.table, row[i].bold), setting.width[i])
                            : QStringList());
    return lines;
}

qsizetype count_of(const Lines& lines) {
    qsizetype most = 1;
    for (const QStringList& each : lines)
        most = std::max(most, each.size());
    return most;
}

/// Sets lines `from` to `to` of a row; boxes and blanks stand at its first line.
void put_lines(Flow& flow, const Setting& setting, const std::vector<Cell>& row, const Lines& lines,
               qsizetype from, qsizetype to) {
    const double height =
        std::max(setting.step * double(to - from) + 2 * pad_down, setting.table.least_height);
    const double top = flow.y() + pad_down;
    for (std::size_t i = 0; i < row.size(); ++i) {
        const double left = setting.left[i], right = left + setting.width[i];
        const Align align = setting.table.columns[i].align;
        const double x = align == Align::left ? left : align == Align::right ? right : (left + right) / 2;
        const TextStyle style = style_of(setting.table, row[i].bold);
        for (qsizetype n = from; n < std::min(to, lines[i].size()); ++n)
            flow.put({x, top + setting.step * double(n - from) + ascent_of(style)}, lines[i][n], style,
                     align);
        if (from > 0) continue;
        const bool box = row[i].kind == Cell::Kind::box || row[i].kind == Cell::Kind::ticked;
        if (box)
            flow.tick_box({align == Align::left ? left : x - box_side / 2, top + 0.2}, box_side,
                          row[i].kind == Cell::Kind::ticked);
        if (row[i].kind == Cell::Kind::blank)
            flow.line({left, flow.y() + height - 1}, {right, flow.y() + height - 1}, 0.2);
    }
    flow.skip(height);
    flow.line({flow.body().left(), flow.y()}, {flow.body().right(), flow.y()}, 0.1);
}

void put_head(Flow& flow, const Setting& setting) {
    std::vector<Cell> head;
    bool any = false;
    for (const Column& column : setting.table.columns) {
        head.emplace_back(column.title, true);
        any = any || !column.title.isEmpty();
    }
    if (!any) {
        flow.line({flow.body().left(), flow.y()}, {flow.body().right(), flow.y()}, 0.3);
        return;
    }
    const Lines lines = break_row(setting, head);
    put_lines(flow, setting, head, lines, 0, count_of(lines));
    flow.line({flow.body().left(), flow.y()}, {flow.body().right(), flow.y()}, 0.35);
}

} // namespace

void put_table(Flow& flow, const Table& table) {
    const Setting setting = set_columns(flow, table);
    const auto height_of = [&](qsizetype lines) {
        return std::max(setting.step * double(lines) + 2 * pad_down, table.least_height);
    };
    bool headed = false;
    for (const std::vector<Cell>& row : table.rows) {
        const Lines lines = break_row(setting, row);
        const qsizetype count = count_of(lines);
        for (qsizetype from = 0; from < count;) {
            // A row is kept together unless it fills half a page by itself.
            const bool divide = height_of(count) > flow.body().height() / 2;
            const double wanted = height_of(divide ? std::min<qsizetype>(3, count - from) : count);
            const double before = flow.y();
            flow.need(wanted + (headed ? 0 : 8));
            if (!headed || flow.y() < before) {
                put_head(flow, setting);
                headed = true;
            }
            const auto fits = static_cast<qsizetype>((flow.room() - 2 * pad_down) / setting.step);
            const qsizetype to = divide ? std::min(count, from + std::max<qsizetype>(1, fits)) : count;
            put_lines(flow, setting, row, lines, from, to);
            from = to;
        }
    }
    flow.skip(1.5);
}

} // namespace rampwright::ui::paper
